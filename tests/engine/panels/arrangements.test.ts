import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Card, LineWork, Panel } from '../../../plugins/engine/index.ts';
import { partsOf, SMALLEST } from '../../oracles/paper-parts.ts';
import { card, line, piece, region, shape } from './paper.ts';
import { exactArea, expectSound } from './sound.ts';
import { VIEWS } from './views.ts';

const WIDE = 12;
const HIGH = 9;
type Four = readonly [number, number, number, number];

const stretches = fc
  .tuple(...[WIDE, HIGH, WIDE, HIGH].map((most) => fc.integer({ min: 0, max: most })))
  .filter(([x1, y1, x2, y2]) => x1 !== x2 || y1 !== y2) as unknown as fc.Arbitrary<Four>;
const work = fc.constantFrom<LineWork[]>('cut', 'crease', 'crease');

function sheet(cuts: readonly Four[], works: readonly LineWork[] = []): Card {
  const lines = cuts.map(([x1, y1, x2, y2], i) => line(works[i] ?? 'crease', `line(${i})`, [x1, y1], [x2, y2]));
  return card(piece('sheet', WIDE, HIGH, { lines }));
}

/** Square inches of those that are large enough to be counted. */
function sizes(panels: readonly Panel[]): number[] {
  return panels.map((panel) => exactArea([panel]).valueOf() / 25.4 ** 2).filter((size) => size > SMALLEST);
}

describe('random lines on a sheet', () => {
  it('divide it into the parts that it falls into when it is cut along them', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(stretches, work), { minLength: 1, maxLength: 9 }), (drawn) => {
        const cuts = drawn.map(([four]) => four);
        const { panels } = expectSound(
          sheet(
            cuts,
            drawn.map(([, does]) => does),
          ),
        );
        const expected = partsOf({ width: WIDE, height: HIGH, cuts });
        const areas = sizes(panels);
        expect(areas.length).toBe(expected.length);
        for (const [i, area] of areas.sort((a, b) => b - a).entries()) expect(area).toBeCloseTo(expected[i] ?? 0, 2);
        expect(exactArea(panels).toFraction()).toBe(exactArea(expectSound(sheet([])).panels).toFraction());
      }),
      { numRuns: 60 },
    );
  });

  it.each(VIEWS)('divide it into as many parts with as many hinges whichever way it lies: $view', ({ of }) => {
    fc.assert(
      fc.property(fc.array(stretches, { minLength: 1, maxLength: 6 }), (cuts) => {
        const made = sheet(cuts);
        const [one, other] = [expectSound(made), expectSound(of(made))];
        expect(other.panels).toHaveLength(one.panels.length);
        expect(other.hinges).toHaveLength(one.hinges.length);
        expect(other.slips.map(({ is, name }) => `${is} ${name}`)).toEqual(
          one.slips.map(({ is, name }) => `${is} ${name}`),
        );
      }),
      { numRuns: 8 },
    );
  });

  it('round windows too', () => {
    fc.assert(
      fc.property(fc.array(stretches, { minLength: 1, maxLength: 6 }), (cuts) => {
        const window = [
          [4.1, 3.3],
          [7.7, 2.9],
          [6.9, 6.1],
        ] as const;
        const lines = cuts.map(([x1, y1, x2, y2], i) => line('cut', `line(${i})`, [x1, y1], [x2, y2]));
        const outline = shape.polygon(...window.map(([x, y]) => [`${x * 10}/10`, `${y * 10}/10`] as const));
        const made = card(piece('sheet', WIDE, HIGH, { lines, windows: [region('window', outline)] }));
        const { panels } = expectSound(made);
        expect(sizes(panels)).toHaveLength(partsOf({ width: WIDE, height: HIGH, cuts, windows: [window] }).length);
      }),
      { numRuns: 30 },
    );
  });
});

describe('lines from edge to edge', () => {
  it("keep to Euler's formula: a panel for the sheet, each line and each crossing; a hinge for each line, two for each crossing", () => {
    const chord = fc.tuple(fc.integer({ min: 1, max: 10_000 }), fc.integer({ min: 1, max: 10_000 }));
    fc.assert(
      fc.property(fc.uniqueArray(chord, { minLength: 1, maxLength: 8, selector: ([a]) => a }), (chords) => {
        const bottoms = new Set(chords.map(([, b]) => b));
        fc.pre(bottoms.size === chords.length);
        const crossings = chords.flatMap(([a, b], i) => chords.slice(i + 1).filter(([c, d]) => (a - c) * (b - d) < 0));
        const lines = chords.map(([a, b], i) => line('crease', `line(${i})`, [`${a}/1000`, 0], [`${b}/1000`, HIGH]));
        const { panels, hinges, slips } = expectSound(card(piece('sheet', WIDE, HIGH, { lines })));
        expect(panels).toHaveLength(1 + chords.length + crossings.length);
        expect(hinges).toHaveLength(chords.length + 2 * crossings.length);
        expect(slips).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });
});
