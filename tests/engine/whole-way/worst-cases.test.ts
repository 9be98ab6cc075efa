import { describe, expect, it } from 'vitest';
import { goTheWholeWay, RUNAWAY_MS } from '../support/whole-way.ts';
import { WORST_CASES } from './worst-cases.ts';

/** For the runner alone, in case one never ends. */
const PATIENCE_MS = 120_000;

describe('far too much ends in a message or a result, soon', () => {
  it.each(WORST_CASES)('$asks', { timeout: PATIENCE_MS }, ({ text, ends }) => {
    const { end, problems, ms } = goTheWholeWay(text, { draws: true });
    expect(end === 'folded' ? end : problems[0]?.code).toBe(ends);
    // What one build, one dry fit or one drawing takes, each by itself.
    for (const leg of Object.values(ms)) expect(leg).toBeLessThan(RUNAWAY_MS);
  });
});
