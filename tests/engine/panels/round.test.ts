import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Card, panelsOf } from '../../../plugins/engine/index.ts';
import { areaWithout, type Oval } from '../../oracles/paper-parts.ts';
import { card, line, type Pair, partCut, piece, region, shape } from './paper.ts';
import { exactArea, expectSound } from './sound.ts';
import { VIEWS } from './views.ts';

/** A chord leaves its arc by no more than this, so a region is off by no more than this times its round edge, in mm. */
const SAG = 0.02;

const ROUND: readonly { what: string; made: Card; panels: number; hinges: number; area: number; round: number }[] = [
  {
    what: 'a disc with two creases through its middle',
    made: card(
      piece('disc', 4, 4, {
        outline: shape.circle([2, 2], 4),
        lines: [line('crease', 'down', [2, 0], [2, 4]), line('crease', 'across', [0, 2], [4, 2])],
      }),
    ),
    ...{ panels: 4, hinges: 4, area: Math.PI * 4, round: Math.PI * 4 },
  },
  {
    what: 'a disc with a slanting crease beside its middle',
    made: card(
      piece('disc', 4, 4, {
        outline: shape.circle([2, 2], 4),
        lines: [line('crease', 'slanting', [0, 1], [4, 2])],
      }),
    ),
    ...{ panels: 2, hinges: 1, area: Math.PI * 4, round: Math.PI * 4 },
  },
  {
    what: 'an ellipse with a crease that touches a round window',
    made: card(
      piece('oval', 6, 4, {
        outline: shape.ellipse([3, 2], 6, 4),
        windows: [region('window', shape.circle([2, 2], 1))],
        lines: [line('crease', 'beside', ['5/2', 0], ['5/2', 4])],
      }),
    ),
    ...{ panels: 2, hinges: 1, area: Math.PI * (6 - 0.25), round: 20 },
  },
  {
    what: 'round corners, with a crease from where one begins',
    made: card(
      piece('rounded', 6, 4, {
        outline: shape.rounded(0, 0, 6, 4, '1/2'),
        lines: [line('crease', 'tangent', ['1/2', 0], ['1/2', 4]), line('crease', 'through', ['1/4', 0], ['1/4', 4])],
      }),
    ),
    ...{ panels: 3, hinges: 2, area: 24 - (4 - Math.PI) / 4, round: Math.PI },
  },
  {
    what: 'a round bite out of a round piece',
    made: card(
      piece('moon', 4, 4, {
        outline: shape.circle([2, 2], 4),
        away: [region('bite', shape.circle([4, 2], 4))],
      }),
    ),
    // Two circles of radius 2 whose middles are 2 apart share 8 pi / 3 - 2 sqrt 3.
    ...{ panels: 1, hinges: 0, area: 4 * Math.PI - (8 * Math.PI) / 3 + 2 * Math.sqrt(3), round: 4 * Math.PI },
  },
  {
    what: 'a round shape that swings, over a slanting crease',
    made: card(
      piece('card', ['flap 3', 'valley swing', 'strip 3'], 6, {
        shapes: [partCut('disc', shape.circle([3, 3], 3), 'strip')],
        lines: [line('crease', 'slanting', [0, 0], [6, 6])],
      }),
    ),
    // The slanting crease stops at the disc: it parts the flap from its corner to the cut, and ends within the strip.
    ...{ panels: 3, hinges: 3, area: 36, round: 0 },
  },
  {
    what: 'an ellipse across an ellipse',
    made: card(
      piece('cross', 6, 6, {
        outline: shape.ellipse([3, 3], 6, 3),
        windows: [region('window', shape.ellipse([3, 3], 1, 2))],
        away: [region('bite', shape.ellipse([3, 0], 2, 4))],
      }),
    ),
    ...{ panels: 1, hinges: 0, area: Number.NaN, round: 0 },
  },
];

describe.each(VIEWS)('round paper, $view', ({ of, perInch }) => {
  it.each(ROUND)('$what', ({ made, panels, hinges, area, round }) => {
    const found = expectSound(of(made));
    expect(found.panels).toHaveLength(panels);
    expect(found.hinges).toHaveLength(hinges);
    if (Number.isNaN(area)) return;
    const off = Math.abs(exactArea(found.panels).valueOf() - area * perInch ** 2);
    expect(off).toBeLessThan(SAG * round * perInch + 1e-6);
  });

  it('draws arcs as arcs, and all of them', () => {
    const made = card(
      piece('disc', 4, 4, {
        outline: shape.circle([2, 2], 4),
        lines: [line('crease', 'slanting', [0, 1], [4, 2])],
      }),
    );
    const edges = panelsOf(of(made)).strokes.filter(({ does }) => does === 'edge');
    const length = edges.reduce((sum, { edge }) => {
      if (edge.is === 'line') throw new RangeError('a disc has no straight edge');
      const from = Math.atan2(edge.from.y.sub(edge.centre.y).valueOf(), edge.from.x.sub(edge.centre.x).valueOf());
      const to = Math.atan2(edge.to.y.sub(edge.centre.y).valueOf(), edge.to.x.sub(edge.centre.x).valueOf());
      const turn = (to - from + 4 * Math.PI) % (2 * Math.PI);
      return sum + (edge.clockwise ? turn : 2 * Math.PI - turn) * edge.rx.valueOf();
    }, 0);
    expect(length).toBeCloseTo(4 * Math.PI * perInch, 6);
  });
});

function quarters(number: string | number): number {
  return Number.parseInt(String(number), 10) / 4;
}

describe('anything round', () => {
  const number = fc.integer({ min: 0, max: 24 }).map((eighths) => `${eighths}/4`);
  const pair = fc.tuple(number, number) as unknown as fc.Arbitrary<Pair>;
  const size = fc.integer({ min: 1, max: 16 }).map((eighths) => `${eighths}/4`);
  const oval = fc.tuple(pair, size, size);
  const drawn = fc.record({
    away: fc.array(oval, { maxLength: 2 }),
    windows: fc.array(oval, { maxLength: 3 }),
    shapes: fc.array(oval, { maxLength: 2 }),
    lines: fc.array(fc.tuple(pair, pair), { maxLength: 4 }),
  });

  it('ends in panels that tile, and in no exception', () => {
    fc.assert(
      fc.property(drawn, ({ away, windows, shapes, lines }) => {
        const ovals = (list: typeof away, name: string) =>
          list.map(([centre, wide, high], i) => region(`${name}(${i})`, shape.ellipse(centre, wide, high)));
        const made = card(
          piece('sheet', ['left 3', 'valley spine', 'right 3'], 6, {
            away: ovals(away, 'away'),
            windows: ovals(windows, 'window'),
            shapes: ovals(shapes, 'shape').map(({ name, outline }) => partCut(name, outline, 'right')),
            lines: lines
              .filter(([[x1, y1], [x2, y2]]) => x1 !== x2 || y1 !== y2)
              .map(([from, to], i) => line('crease', `line(${i})`, from, to)),
          }),
        );
        const taken = [...away, ...windows].map(([[x, y], wide, high]): Oval => {
          const [w, h] = [quarters(wide), quarters(high)];
          return [quarters(x) - w / 2, quarters(y) - h / 2, w, h];
        });
        const round = taken.reduce((sum, [, , wide, high]) => sum + Math.PI * Math.max(wide, high), 0) * 25.4;
        const off = exactArea(expectSound(made).panels).valueOf() - areaWithout(6, 6, taken) * 25.4 ** 2;
        expect(Math.abs(off)).toBeLessThan(SAG * round + 1e-6);
      }),
      { numRuns: 60 },
    );
  });
});
