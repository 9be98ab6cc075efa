import fc from 'fast-check';
import Fraction from 'fraction.js';
import polygonClipping, { type MultiPolygon, type Ring } from 'polygon-clipping';
import { describe, expect, it } from 'vitest';
import {
  type Card,
  type ClosedPose,
  closedOutline,
  type Line,
  OVERHANG_MM,
  overhangs,
  type Point,
} from '../../../plugins/engine/index.ts';
import { card, mm, piece, pose, posed } from '../dryfit/made-card.ts';
import { VIEWS } from '../dryfit/views.ts';
import { BRIDGE, explosionInsert } from '../support/joined-cards.ts';
import { at, glue, line, ref, withLines } from '../support/made-joins.ts';
import { poseIn } from './posed-card.ts';

const unitIn = (view: string) => (view === 'in millimetres' ? 10 : 25.4);

const firstPiece = (closed: ClosedPose): string[] => {
  const [first] = closed.assembly.card.pieces;
  return closed.panels.filter((one) => one.piece === first?.name).map(({ panel }) => panel);
};

const ring = (outline: readonly Point[]): Ring => outline.map(({ x, y }) => [x.valueOf(), y.valueOf()]);
const polygons = (panels: ClosedPose['panels']): MultiPolygon[] =>
  panels.map(({ outline, holes }) => [[ring(outline), ...holes.map(ring)]]);

function areaOf(shape: readonly (readonly Ring[])[]): number {
  const one = (points: Ring): number =>
    Math.abs(
      points.reduce((sum, [x, y], i) => {
        const [nextX = 0, nextY = 0] = points[(i + 1) % points.length] ?? [];
        return sum + x * nextY - nextX * y;
      }, 0),
    ) / 2;
  return shape.reduce(
    (sum, [outer = [], ...holes]) => holes.reduce((left, hole) => left - one(hole), sum + one(outer)),
    0,
  );
}

const asRings = (areas: readonly (readonly (readonly { x: number; y: number }[])[])[]): Ring[][] =>
  areas.map((area) => area.map((rim) => rim.map(({ x, y }): [number, number] => [x, y])));

describe('overhangs', () => {
  it.each(VIEWS)('finds the 3 in by which a bridge reaches past its base: $view', ({ of, view }) => {
    const closed = poseIn(of(BRIDGE));
    const found = overhangs(closed, firstPiece(closed)).filter(({ panel }) => panel !== 'ornament');
    expect(found.map(({ panel }) => panel).sort()).toEqual(['bridge.end', 'bridge.span']);
    for (const { mm: by } of found) expect(by / unitIn(view)).toBeCloseTo(3, 9);
  });

  it.each(VIEWS)('makes no sliver where edges touch exactly, aslant too: $view', ({ of }) => {
    const closed = poseIn(of(explosionInsert()));
    expect(overhangs(closed, firstPiece(closed))).toEqual([]);
  });

  it.each(VIEWS)('measures a corner that sticks out square to the edge: $view', ({ of, view }) => {
    // A mat glued 1/4 too far down and to the right of the front: its corner is past two edges, 1/4 past each.
    const pieces = [piece('base', ['4'], ['5']), piece('mat', ['4'], ['5'])];
    const joins = [glue([ref('mat'), at('0', '0')], [ref('base'), at('1/4', '1/4')])];
    const [out, ...more] = overhangs(poseIn(of(card(pieces, { joins, poses: [posed('closed', [])] }))), ['base']);
    expect(more).toEqual([]);
    // The corner is nearest to the corner of the base: the root of 2, times 1/4.
    expect((out?.mm ?? 0) / unitIn(view)).toBeCloseTo(Math.SQRT2 / 4, 6);
  });

  it('fills what the cover closes round, but not what lies past it', () => {
    const window = { name: 'window', place: BRIDGE.place, path: '' };
    const frame = piece('frame', ['4'], ['5']);
    const hole = [at('1', '1'), at('3', '1'), at('3', '4'), at('1', '4')];
    const outline = hole.map((from, i) => ({ is: 'line' as const, from, to: hole[(i + 1) % 4] ?? from }));
    const framed = { ...frame, windows: [{ ...window, outline }] };
    const backing = piece('backing', ['3'], ['4']);
    const joins = [
      glue([ref('backing'), at('0', '0')], [ref('frame'), at('1/2', '1/2')], { ontoSide: 'back', partSide: 'face' }),
    ];
    const closed = poseIn(card([framed, backing], { joins, poses: [posed('closed', [])] }));
    expect(overhangs(closed, ['frame'])).toEqual([]);
    // The frame past its backing is a ring, 1/2 wide on each side.
    const [ringed, ...more] = overhangs(closed, ['backing']);
    expect(more).toEqual([]);
    expect(ringed?.region).toHaveLength(2);
    expect(ringed?.mm).toBeCloseTo(Math.SQRT2 * 12.7, 6);
  });

  it('ignores less than its tolerance, and sees ten times that', () => {
    const by = (excess: number) => {
      const pieces = [piece('base', ['100'], ['100'], mm), piece('mat', ['100'], ['100'], mm)];
      const q = { x: new Fraction(excess), y: new Fraction(0) };
      const joins = [glue([ref('mat'), at('0', '0')], [ref('base'), q])];
      return overhangs(poseIn(card(pieces, { joins, poses: [posed('closed', [])], system: 'metric' })), ['base']);
    };
    expect(by(OVERHANG_MM / 10)).toEqual([]);
    expect(by(OVERHANG_MM * 10)).toMatchObject([{ side: 'right', panel: 'mat' }]);
  });
});

/** A sheet with one crease aslant, shut, from the top edge to the bottom edge. */
function slanted(from: number, to: number): Card {
  const crease: Line = line('slant', mmAt(from, 0), mmAt(to, 100), ['valley']);
  const sheet = withLines(piece('sheet', ['100'], ['100'], mm), crease);
  return card([sheet], { system: 'metric', poses: [pose('closed', [sheet])] });
}

const mmAt = (x: number, y: number): Point => ({ x: new Fraction(x), y: new Fraction(y) });

describe('areas against polygon-clipping', () => {
  const crease = fc.tuple(fc.integer({ min: 20, max: 80 }), fc.integer({ min: 20, max: 80 }));

  it('agrees on the closed outline and on what sticks out, for sheets folded aslant', () => {
    fc.assert(
      fc.property(crease, ([from, to]) => {
        const closed = poseIn(slanted(from, to));
        const [first, ...others] = polygons(closed.panels);
        if (!first) throw new Error('panels');
        const union = polygonClipping.union(first, ...others);
        expect(areaOf(asRings(closedOutline(closed)))).toBeCloseTo(areaOf(union), 3);
        const out = overhangs(closed, [closed.ground]);
        const ground = closed.panels.filter(({ panel }) => panel === closed.ground);
        const rest = closed.panels.filter(({ panel }) => panel !== closed.ground);
        const [a, b] = [polygons(rest)[0], polygons(ground)[0]];
        const difference = a && b ? polygonClipping.difference(a, b) : [];
        expect(areaOf(asRings(out.map(({ region }) => region)))).toBeCloseTo(areaOf(difference), 2);
      }),
      { numRuns: 40, seed: 1959 },
    );
  });

  it('has the worst point outside of the cover, and none further out among samples', () => {
    fc.assert(
      fc.property(crease, ([from, to]) => {
        const closed = poseIn(slanted(from, to));
        const cover = ring(closed.panels.find(({ panel }) => panel === closed.ground)?.outline ?? []);
        for (const { region, mm: most } of overhangs(closed, [closed.ground])) {
          // The cover is convex here: from points between the corners of a region none is further than the worst.
          const rim = (region[0] ?? []).map(({ x, y }): [number, number] => [x, y]);
          for (const [i, [x, y]] of rim.entries()) {
            for (const [x2, y2] of rim.slice(i)) {
              expect(distanceFrom(cover, (x + x2) / 2, (y + y2) / 2)).toBeLessThanOrEqual(most + 1e-5);
            }
          }
        }
      }),
      { numRuns: 20, seed: 1959 },
    );
  });
});

/** Zero inside of a convex ring. */
function distanceFrom(cover: Ring, x: number, y: number): number {
  const turn = Math.sign(
    cover.reduce((sum, [a, b], i) => {
      const [c = 0, d = 0] = cover[(i + 1) % cover.length] ?? [];
      return sum + a * d - c * b;
    }, 0),
  );
  let [inside, best] = [true, Number.POSITIVE_INFINITY];
  for (const [i, [a, b]] of cover.entries()) {
    const [c = 0, d = 0] = cover[(i + 1) % cover.length] ?? [];
    if (((c - a) * (y - b) - (d - b) * (x - a)) * turn < 0) inside = false;
    const share = ((x - a) * (c - a) + (y - b) * (d - b)) / ((c - a) ** 2 + (d - b) ** 2);
    const t = Math.min(1, Math.max(0, share));
    best = Math.min(best, Math.hypot(x - a - t * (c - a), y - b - t * (d - b)));
  }
  return inside ? 0 : best;
}
