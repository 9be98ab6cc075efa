import fc from 'fast-check';
import { expect } from 'vitest';
import { brokenText } from './broken-texts.ts';
import { KINDS } from './kind-texts.ts';
import { type End, goTheWholeWay, RUNAWAY_MS, sumOf } from './whole-way.ts';

/**
 * Texts with one or two slips of the hand each, all the way: each ends in located problems or in a card that is dry-fitted,
 * put into words and, one in eight, drawn. None takes more than `RUNAWAY_MS` of the processor.
 */
export function surviveTexts(seeds: readonly string[], runs: number): void {
  const ends: Record<End, number> = { 'no-yaml': 0, 'no-fold': 0, 'no-card': 0, folded: 0 };
  fc.assert(
    fc.property(brokenText(seeds, 2), fc.nat(7), (text, dice) => {
      const { end, ms } = goTheWholeWay(text, { kinds: KINDS, draws: dice === 0 });
      expect(sumOf(ms)).toBeLessThan(RUNAWAY_MS);
      ends[end]++;
    }),
    { numRuns: runs },
  );
  // It would be no test if nearly all ended at the same station.
  expect(ends['no-yaml']).toBeGreaterThan(runs / 20);
  expect(ends['no-fold']).toBeGreaterThan(runs / 10);
  expect(ends.folded).toBeGreaterThan(runs / 10);
}
