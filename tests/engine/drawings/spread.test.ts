import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spread } from '../../../plugins/engine/drawings/spread.ts';

const SLACK = 1e-9;

/** Least sum of squares by exhaustive search on a grid of halves: an oracle for small cases. */
function bestOnGrid(wanted: readonly number[], gap: number, low: number, high: number): number {
  let best = Number.POSITIVE_INFINITY;
  const search = (index: number, from: number, sum: number): void => {
    const want = wanted[index];
    if (sum >= best) return;
    if (want === undefined) {
      best = sum;
      return;
    }
    for (let at = from; at <= high; at += 0.5) search(index + 1, at + gap, sum + (at - want) ** 2);
  };
  search(0, low, 0);
  return best;
}

describe('spread', () => {
  const places = fc
    .array(fc.integer({ min: 0, max: 20 }), { minLength: 1, maxLength: 4 })
    .map((list) => list.sort((a, b) => a - b));

  it('keeps the order, the gap and the room, and moves no more than any other way would', () => {
    fc.assert(
      fc.property(places, fc.constantFrom(1, 2, 3, 5), (wanted, gap) => {
        const placed = spread(wanted, gap, 0, 20);
        if (placed === undefined) throw new Error('there is room');
        placed.forEach((at, i) => {
          expect(at).toBeGreaterThanOrEqual(-SLACK);
          expect(at).toBeLessThanOrEqual(20 + SLACK);
          if (i > 0) expect(at - (placed[i - 1] ?? 0)).toBeGreaterThanOrEqual(gap - SLACK);
        });
        const moved = placed.reduce((sum, at, i) => sum + (at - (wanted[i] ?? 0)) ** 2, 0);
        expect(moved).toBeLessThanOrEqual(bestOnGrid(wanted, gap, 0, 20) + SLACK);
      }),
    );
  });

  it('leaves alone what does not collide', () => {
    expect(spread([1, 4, 9], 3, 0, 10)).toEqual([1, 4, 9]);
  });

  it('says when there is no room', () => {
    expect(spread([1, 2, 3], 6, 0, 11)).toBeUndefined();
    expect(spread([1, 2, 3], 6, 0, 12)).toEqual([0, 6, 12]);
  });
});
