import fc from 'fast-check';
import { orient2d } from 'robust-predicates';
import { describe, expect, it } from 'vitest';
import {
  type ArcEdge,
  arcMeetsArc,
  circle,
  ellipse,
  lineMeetsArc,
  meetSegments,
  type PathEdge,
  type Point,
  seen,
  sideOf,
} from '../../../plugins/engine/geometry/index.ts';
import { exactly, f, p, xy } from './numbers.ts';

const small = fc.integer({ min: 0, max: 6 });
const dot = fc.tuple(small, small);
const pair = fc.tuple(dot, dot).filter(([[a, b], [c, d]]) => a !== c || b !== d);

function segment([[x1, y1], [x2, y2]]: readonly [readonly [number, number], readonly [number, number]]) {
  return { from: seen(p(x1, y1)), to: seen(p(x2, y2)) };
}

describe('sideOf', () => {
  it('agrees with adaptive floats on points that lie next to a line', () => {
    const near = fc.tuple(fc.integer({ min: -4, max: 4 }), fc.integer({ min: -4, max: 4 }));
    fc.assert(
      fc.property(near, fc.double({ min: 0.1, max: 300, noNaN: true }), ([i, j], size) => {
        const step = 2 ** -44;
        const c = [size / 2 + i * step, size / 2 + j * step] as const;
        // On a drawing y counts down, so that what turns anticlockwise there turns clockwise here.
        const side = sideOf(
          ...(([[0.1, 0.1], [size, size], c] as const).map(([x, y]) =>
            seen({ x: exactly(x), y: exactly(y) }),
          ) as unknown as Parameters<typeof sideOf>),
        );
        expect(side).toBe(Math.sign(-orient2d(0.1, 0.1, size, size, c[0], c[1])) + 0);
      }),
      { numRuns: 300 },
    );
  });
});

describe('meetSegments', () => {
  it('finds what two segments of whole numbers share', () => {
    fc.assert(
      fc.property(pair, pair, (one, other) => {
        const found = meetSegments(segment(one), segment(other));
        const expected = shared(one, other);
        expect(found.is).toBe(expected.length === 0 ? 'apart' : expected.length === 1 ? 'point' : 'overlap');
        const points = found.is === 'point' ? [found.at] : found.is === 'overlap' ? [found.from, found.to] : [];
        for (const [i, point] of points.entries()) expect(xy(point.at)).toEqual(expected[i]?.map((value) => value + 0));
      }),
      { numRuns: 2000 },
    );
  });

  it('crosses exactly however flat the angle', () => {
    const meeting = meetSegments(
      { from: seen(p(0, 0)), to: seen(p(300, '1/1000000000000')) },
      { from: seen(p(0, '1/1000000000000')), to: seen(p(300, 0)) },
    );
    expect(meeting).toMatchObject({ is: 'point', proper: true });
    if (meeting.is === 'point') expect(meeting.at.at.x.toFraction()).toBe('150');
  });

  it('puts the crossing of rounded lines on the grid, and says so', () => {
    const meeting = meetSegments(
      { from: seen({ ...p(0, 0), rounded: true }), to: seen(p(3, 1)) },
      { from: seen(p(0, 1)), to: seen(p(1, 0)) },
    );
    if (meeting.is !== 'point') throw new RangeError('they cross');
    expect(meeting.at.at.rounded).toBe(true);
    expect(10n ** 12n % meeting.at.at.x.d).toBe(0n);
  });
});

/** From the first to the last point along `one` that lies on both, by shares worked out in whole numbers. */
function shared(
  [[ax, ay], [bx, by]]: readonly [readonly [number, number], readonly [number, number]],
  [[cx, cy], [dx, dy]]: readonly [readonly [number, number], readonly [number, number]],
): number[][] {
  const [ux, uy, vx, vy] = [bx - ax, by - ay, dx - cx, dy - cy];
  const cross = ux * vy - uy * vx;
  const at = (share: number): number[] => [ax + share * ux, ay + share * uy];
  if (cross !== 0) {
    const along = (cx - ax) * vy - (cy - ay) * vx;
    const across = (cx - ax) * uy - (cy - ay) * ux;
    const within = (part: number): boolean => part * cross >= 0 && Math.abs(part) <= Math.abs(cross);
    return within(along) && within(across)
      ? [[(ax * cross + along * ux) / cross, (ay * cross + along * uy) / cross]]
      : [];
  }
  if ((cx - ax) * uy !== (cy - ay) * ux) return [];
  const square = ux * ux + uy * uy;
  const shares = [(cx - ax) * ux + (cy - ay) * uy, (dx - ax) * ux + (dy - ay) * uy].sort((a, b) => a - b);
  const [low, high] = [Math.max(0, shares[0] ?? 0), Math.min(square, shares[1] ?? 0)];
  if (low > high) return [];
  return low === high ? [at(low / square)] : [at(low / square), at(high / square)];
}

function around(outline: readonly PathEdge[], meet: (arc: ArcEdge) => readonly Point[]): Point[] {
  const all = outline.flatMap((edge) => (edge.is === 'arc' ? meet(edge) : []));
  return all.filter((point, i) => all.findIndex((other) => other.x.equals(point.x) && other.y.equals(point.y)) === i);
}

describe('lineMeetsArc', () => {
  it('is exact where the coordinates are fractions: quarter points, 3-4-5, touching lines', () => {
    const ring = circle(p(0, 0), f(5));
    const meets = (from: Point, to: Point) => around(ring, (arc) => lineMeetsArc(from, to, arc));
    expect(
      meets(p(-9, 0), p(9, 0))
        .map(xy)
        .sort((a, b) => a[0] - b[0]),
    ).toEqual([
      [-5, 0],
      [5, 0],
    ]);
    expect(meets(p(0, -3), p(9, -3))).toMatchObject([{ x: f(4), y: f(-3) }]);
    expect(meets(p(-9, -5), p(9, -5)).map(xy)).toEqual([[0, -5]]);
    expect(meets(p('25/3', 0), p(0, '25/4')).map(xy)).toEqual([[3, 4]]);
    for (const point of meets(p(-9, 3), p(9, 3))) expect(point.rounded).toBeUndefined();
    expect(meets(p(-9, '-51/10'), p(9, '-51/10'))).toEqual([]);
  });

  it('else lies on the ellipse and on the line to the grid, in the right number', () => {
    const eighth = fc.integer({ min: -80, max: 80 });
    const size = fc.integer({ min: 4, max: 60 });
    fc.assert(
      fc.property(eighth, eighth, eighth, eighth, size, size, (x1, y1, x2, y2, rx, ry) => {
        fc.pre(x1 !== x2 || y1 !== y2);
        const found = around(ellipse(p(0, 0), f(rx), f(ry)), (arc) => lineMeetsArc(p(x1, y1), p(x2, y2), arc));
        for (const point of found) {
          const [x, y] = xy(point);
          expect((x / rx) ** 2 + (y / ry) ** 2).toBeCloseTo(1, 10);
          expect(((x2 - x1) * (y - y1) - (y2 - y1) * (x - x1)) / Math.hypot(x2 - x1, y2 - y1)).toBeCloseTo(0, 9);
        }
        expect(found).toHaveLength(passes([x1 / rx, y1 / ry], [x2 / rx, y2 / ry]));
      }),
      { numRuns: 300 },
    );
  });
});

/** How often a segment meets the unit circle: by the distance of its ends and of its nearest point. */
function passes([ax, ay]: readonly [number, number], [bx, by]: readonly [number, number]): number {
  const [a, b] = [Math.hypot(ax, ay), Math.hypot(bx, by)];
  fc.pre(Math.abs(a - 1) > 1e-9 && Math.abs(b - 1) > 1e-9);
  if (a < 1 !== b < 1) return 1;
  if (a < 1) return 0;
  const length = Math.hypot(bx - ax, by - ay);
  const share = -(ax * (bx - ax) + ay * (by - ay)) / length ** 2;
  const nearest = Math.abs(ax * by - ay * bx) / length;
  fc.pre(Math.abs(nearest - 1) > 1e-9);
  return share > 0 && share < 1 && nearest < 1 ? 2 : 0;
}

describe('arcMeetsArc', () => {
  const meets = (one: readonly PathEdge[], other: readonly PathEdge[]) =>
    around(one, (a) => around(other, (b) => arcMeetsArc(a, b)));

  it('is exact for circles whose crossings are fractions, and for those that touch', () => {
    const crossing = meets(circle(p(0, 0), f(5)), circle(p(6, 0), f(5)));
    expect(crossing.map(xy).sort((a, b) => a[1] - b[1])).toEqual([
      [3, -4],
      [3, 4],
    ]);
    expect(crossing.every(({ rounded }) => rounded === undefined)).toBe(true);
    expect(meets(circle(p(0, 0), f(5)), circle(p(8, 0), f(3))).map(xy)).toEqual([[5, 0]]);
    expect(meets(circle(p(0, 0), f(5)), circle(p(2, 0), f(3))).map(xy)).toEqual([[5, 0]]);
    expect(meets(circle(p(0, 0), f(5)), circle(p(9, 0), f(3)))).toEqual([]);
  });

  it('finds four crossings of two crossed ellipses, on both', () => {
    const found = meets(ellipse(p(0, 0), f(30), f(10)), ellipse(p(1, 2), f(12), f(40)));
    expect(found).toHaveLength(4);
    for (const point of found) {
      const [x, y] = xy(point);
      expect((x / 30) ** 2 + (y / 10) ** 2).toBeCloseTo(1, 10);
      expect(((x - 1) / 12) ** 2 + ((y - 2) / 40) ** 2).toBeCloseTo(1, 10);
    }
  });
});
