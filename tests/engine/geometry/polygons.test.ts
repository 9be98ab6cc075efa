import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  areaOf,
  cornersOf,
  ellipse,
  insideOf,
  type Point,
  paperArea,
  rectangle,
  standingIn,
  standingInPaper,
} from '../../../plugins/engine/geometry/index.ts';
import { f, p, xy } from './numbers.ts';

const dot = fc.tuple(fc.integer({ min: 0, max: 8 }), fc.integer({ min: 0, max: 8 }));

/** Corners sorted round a middle are a polygon that does not cross itself. */
const star = fc
  .uniqueArray(dot, { minLength: 3, maxLength: 9, selector: ([x, y]) => Math.atan2(y - 4.123, x - 3.877) })
  .map((corners) =>
    corners.sort((a, b) => Math.atan2(a[1] - 4.123, a[0] - 3.877) - Math.atan2(b[1] - 4.123, b[0] - 3.877)),
  );

/** By the sum of the angles under which the edges are seen; undefined on an edge. */
function turnsRound(x: number, y: number, corners: readonly (readonly [number, number])[]): number | undefined {
  let sum = 0;
  for (const [i, [ax, ay]] of corners.entries()) {
    const [bx, by] = corners[(i + 1) % corners.length] ?? [ax, ay];
    const cross = (ax - x) * (by - y) - (ay - y) * (bx - x);
    const along = (ax - x) * (bx - x) + (ay - y) * (by - y);
    if (cross === 0 && along <= 0) return undefined;
    sum += Math.atan2(cross, along);
  }
  return Math.round(sum / (2 * Math.PI));
}

describe('standingIn', () => {
  it('agrees with the angle under which the edges are seen, either way round', () => {
    fc.assert(
      fc.property(star, dot, (corners, [x, y]) => {
        const turns = turnsRound(x, y, corners);
        const expected = turns === undefined ? 'edge' : turns === 0 ? 'outside' : 'inside';
        const points = corners.map(([a, b]) => p(a, b));
        expect(standingIn(p(x, y), points)).toBe(expected);
        expect(standingIn(p(x, y), points.toReversed())).toBe(expected);
      }),
      { numRuns: 1000 },
    );
  });

  it('takes a hole out, and its edge for an edge', () => {
    const outline = cornersOf(rectangle(f(0), f(0), f(10), f(10)));
    const hole = cornersOf(rectangle(f(2), f(2), f(4), f(4))).toReversed();
    const standing = (x: number, y: number) => standingInPaper(p(x, y), outline, [hole]);
    expect([standing(1, 1), standing(3, 3), standing(2, 3), standing(10, 5), standing(11, 5)]).toEqual([
      ...['inside', 'outside', 'edge', 'edge', 'outside'],
    ]);
    expect(paperArea(outline, [hole]).valueOf()).toBe(84);
  });
});

describe('insideOf', () => {
  it('is inside of any polygon, however thin', () => {
    fc.assert(
      fc.property(star, fc.integer({ min: 0, max: 12 }), (corners, power) => {
        const points = corners.map(([x, y]): Point => ({ x: f(x), y: f(y).div(10 ** power) }));
        fc.pre(areaOf(points).compare(0) > 0 && insidesExist(corners));
        const inside = insideOf(points);
        expect(inside && standingIn(inside, points)).toBe('inside');
      }),
      { numRuns: 300 },
    );
  });

  it('is the middle of a rectangle, exactly', () => {
    expect(xy(insideOf(cornersOf(rectangle(f('1/3'), f(0), f('1/3'), f(5)))) ?? p(0, 0))).toEqual([0.5, 2.5]);
  });

  it('is nearly as far from the edges as a point can be', () => {
    const [x, y] = xy(insideOf(cornersOf(ellipse(p(50, 50), f(40), f(40)))) ?? p(0, 0));
    expect(Math.hypot(x - 50, y - 50)).toBeLessThan(4);
    // In a frame 10 wide: no point is further than about 5.9 from the edges, in a corner.
    const outline = cornersOf(rectangle(f(0), f(0), f(100), f(100)));
    const hole = cornersOf(rectangle(f(10), f(10), f(80), f(80))).toReversed();
    const [cx, cy] = xy(insideOf(outline, [hole]) ?? p(50, 50));
    expect(Math.min(cx, cy, 100 - cx, 100 - cy)).toBeGreaterThan(4.4);
    expect(Math.max(Math.abs(cx - 50), Math.abs(cy - 50)) - 40).toBeGreaterThan(0);
  });

  it('is nowhere in nothing', () => {
    expect(insideOf([p(0, 0), p(1, 1), p(2, 2)])).toBeUndefined();
    expect(insideOf([])).toBeUndefined();
  });
});

/** Not every corner set sorted round a point outside of it is free of crossings: the middle must be seen inside. */
function insidesExist(corners: readonly (readonly [number, number])[]): boolean {
  return turnsRound(3.877, 4.123, corners) === 1;
}
