import { describe, expect, it } from 'vitest';
import {
  areaOf,
  boundsOf,
  chordsOf,
  circle,
  cornersOf,
  crossingIn,
  ellipse,
  moved,
  type Outline,
  polygon,
  reachOf,
  rectangle,
  roundedRectangle,
  SAG_MM,
  splitArc,
  twiceSignedArea,
} from '../../../plugins/engine/geometry/index.ts';
import { f, p, xy } from './numbers.ts';

const BUILT: readonly { what: string; outline: Outline; area: number; edges: number; round: number }[] = [
  { what: 'rectangle', outline: rectangle(f(1), f(2), f('17/4'), f(3)), area: 12.75, edges: 4, round: 0 },
  { what: 'circle', outline: circle(p(50, 60), f(40)), area: Math.PI * 1600, edges: 4, round: 80 * Math.PI },
  { what: 'ellipse', outline: ellipse(p(50, 60), f(40), f(15)), area: Math.PI * 600, edges: 4, round: 80 * Math.PI },
  {
    what: 'round corners',
    outline: roundedRectangle(f(0), f(0), f(100), f(60), f(10)),
    ...{ area: 6000 - (4 - Math.PI) * 100, edges: 8, round: 20 * Math.PI },
  },
  {
    what: 'round ends',
    outline: roundedRectangle(f(0), f(0), f(100), f(60), f(30)),
    ...{ area: 40 * 60 + Math.PI * 900, edges: 6, round: 60 * Math.PI },
  },
  { what: 'triangle', outline: polygon([p(0, 0), p(0, 4), p(3, 0)]) ?? [], area: 6, edges: 3, round: 0 },
];

describe('builders of outlines', () => {
  it.each(BUILT)('$what: closed, clockwise, of the right area', ({ outline, area, edges, round }) => {
    expect(outline).toHaveLength(edges);
    for (const [i, edge] of outline.entries())
      expect(xy(outline[(i + 1) % edges]?.from ?? p(0, 0))).toEqual(xy(edge.to));
    const twice = twiceSignedArea(cornersOf(outline)).valueOf();
    expect(twice).toBeGreaterThan(0);
    // Chords lie within.
    expect(twice / 2).toBeLessThanOrEqual(area + 1e-9);
    expect(twice / 2).toBeGreaterThan(area - SAG_MM * round - 1e-9);
    expect(crossingIn(outline)).toBeUndefined();
    expect(areaOf(cornersOf(moved(outline, f('1/3'), f(-7)))).toFraction()).toBe(
      areaOf(cornersOf(outline)).toFraction(),
    );
  });

  it('refuse what has no size, and round corners that are too large', () => {
    expect(() => rectangle(f(0), f(0), f(0), f(1))).toThrow(RangeError);
    expect(() => circle(p(0, 0), f(-1))).toThrow(RangeError);
    expect(() => roundedRectangle(f(0), f(0), f(4), f(2), f('11/10'))).toThrow(RangeError);
  });

  it('a polygon is put clockwise, counts a point written twice once, and is none when it encloses nothing', () => {
    const anticlockwise = polygon([p(0, 0), p(0, 2), p(0, 2), p(2, 2), p(2, 0), p(0, 0)]);
    expect(anticlockwise?.map(({ from }) => xy(from))).toEqual([
      [0, 0],
      [2, 0],
      [2, 2],
      [0, 2],
    ]);
    expect(polygon([p(0, 0), p(1, 1), p(2, 2)])).toBeUndefined();
    expect(polygon([p(0, 0), p(1, 1)])).toBeUndefined();
  });

  it('tell where a path crosses or touches itself', () => {
    const bow = polygon([p(0, 0), p(4, 3), p(4, 0), p(0, 4)]) ?? [];
    expect(crossingIn(bow)).toMatchObject({ first: 0, second: 2 });
    const touching = polygon([p(0, 0), p(4, 0), p(4, 4), p(2, 0), p(0, 4)]) ?? [];
    expect(crossingIn(touching)).toMatchObject({ first: 0, second: 2 });
  });
});

describe('chordsOf', () => {
  const radii = [
    [0.5, 0.5],
    [3, 3],
    [31.75, 31.75],
    [150, 150],
    [80, 10],
    [10, 80],
  ] as const;

  it.each(radii)('stays within the sag on a quarter of %d by %d', (rx, ry) => {
    for (const edge of ellipse(p(7, 9), f(rx), f(ry))) {
      const chords = chordsOf(edge);
      for (const [i, corner] of chords.entries()) {
        const next = chords[i + 1];
        if (!next) continue;
        const [[ax, ay], [bx, by]] = [xy(corner), xy(next)];
        const [startAngle, endAngle] = [
          Math.atan2((ay - 9) / ry, (ax - 7) / rx),
          Math.atan2((by - 9) / ry, (bx - 7) / rx),
        ];
        const turn = ((endAngle - startAngle + 3 * Math.PI) % (2 * Math.PI)) - Math.PI;
        for (let k = 1; k < 10; k++) {
          const angle = startAngle + (turn * k) / 10;
          const [x, y] = [7 + rx * Math.cos(angle), 9 + ry * Math.sin(angle)];
          const off = Math.abs((bx - ax) * (y - ay) - (by - ay) * (x - ax)) / Math.hypot(bx - ax, by - ay);
          expect(off).toBeLessThan(SAG_MM * 1.0001);
        }
      }
    }
  });

  it('gives a mirrored quarter the mirrored points, exactly, and the same points backwards', () => {
    const [topRight, bottomRight, bottomLeft, topLeft] = circle(p('100/3', 20), f('127/4')).map(chordsOf);
    const mirror = (corners = topRight): string[] =>
      (corners ?? []).map(({ x, y }) => `${f('200/3').sub(x).toFraction()} ${y.toFraction()}`);
    const plain = (corners = topLeft): string[] =>
      (corners ?? []).map(({ x, y }) => `${x.toFraction()} ${y.toFraction()}`);
    expect(mirror(topRight).reverse()).toEqual(plain(topLeft));
    expect(mirror(bottomRight).reverse()).toEqual(plain(bottomLeft));
    const [edge] = circle(p('100/3', 20), f('127/4'));
    if (edge?.is !== 'arc') throw new RangeError('a circle is arcs');
    const backwards = chordsOf({ ...edge, from: edge.to, to: edge.from, clockwise: false });
    expect(plain(backwards).reverse()).toEqual(plain(chordsOf(edge)));
  });
});

describe('arcs', () => {
  it('are divided at points in their order, whichever way they are given', () => {
    const [quarter] = circle(p(0, 0), f(5));
    if (quarter?.is !== 'arc') throw new RangeError('a circle is arcs');
    const parts = splitArc(quarter, [p(4, -3), p(3, -4), p(5, 0)]);
    expect(parts.map(({ from, to }) => [xy(from), xy(to)])).toEqual([
      [
        [0, -5],
        [3, -4],
      ],
      [
        [3, -4],
        [4, -3],
      ],
      [
        [4, -3],
        [5, 0],
      ],
    ]);
  });

  it('reach to the quarter points that lie on them', () => {
    const half = {
      is: 'arc',
      from: p(3, -4),
      to: p(3, 4),
      centre: p(0, 0),
      rx: f(5),
      ry: f(5),
      clockwise: true,
    } as const;
    const box = (clockwise: boolean): number[] =>
      Object.values(boundsOf(reachOf({ ...half, clockwise }))).map((side) => side.valueOf());
    expect(box(true)).toEqual([3, -4, 5, 4]);
    expect(box(false)).toEqual([-5, -5, 3, 5]);
  });
});
