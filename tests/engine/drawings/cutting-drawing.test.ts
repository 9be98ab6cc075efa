import { describe, expect, it } from 'vitest';
import {
  cuttingDrawing,
  LINE_TYPES,
  legendOf,
  type Piece,
  panelsOf,
  type Scene,
  type System,
} from '../../../plugins/engine/index.ts';
import { everyKind } from './every-kind.ts';
import { cardOf, inches, millimetres, pieceOf } from './pieces.ts';
import { expectClear, expectEachSizeOnce, inkOf, labelsOf, linesOf } from './sound-drawing.ts';

const HANDS = ['right', 'left'] as const;

function draw(piece: Piece, system: System, hand: 'left' | 'right' = 'right', widthMm?: number): Scene {
  return cuttingDrawing(piece, panelsOf(cardOf(system, piece)), { system, hand, widthMm });
}

describe.each(everyKind())('$name', ({ system, card }) => {
  const panelling = panelsOf(card);
  const scenes = card.pieces.flatMap((piece) =>
    HANDS.map((hand) => ({ piece, hand, scene: cuttingDrawing(piece, panelling, { system, hand }) })),
  );

  it('lets no label touch another, a line or the edge of the sheet', () => {
    for (const { scene } of scenes) expectClear(scene);
  });

  it('states each size once', () => {
    for (const { piece, hand, scene } of scenes) expectEachSizeOnce(scene, piece, system, hand);
  });

  it('names every panel and crease, and shows the grain', () => {
    for (const { piece, scene } of scenes) {
      const names = labelsOf(scene)
        .filter(({ role }) => role === 'name')
        .map(({ text }) => text);
      for (const band of [...piece.columns, ...piece.rows])
        if (band.name !== undefined) expect(names).toContain(band.name.replace('-', ' '));
      for (const crease of piece.creases) expect(names).toContain(`${crease.name.replace('-', ' ')}, ${crease.fold}`);
      if (piece.grain !== undefined) {
        expect(names).toContain('grain');
        const [arrow] = linesOf(scene, 'grain');
        expect(arrow?.arrows).toBe('both');
        expect(arrow?.from.x === arrow?.to.x).toBe(piece.grain === 'down');
      }
    }
  });

  it('draws edges and creases where they are, all to one scale', () => {
    for (const { piece, scene } of scenes) {
      const edges = linesOf(scene, 'outline').filter(
        ({ from, to }) => from.y < scene.height - 20 || to.y < scene.height - 20,
      );
      const xs = edges.slice(0, 4).flatMap(({ from, to }) => [from.x, to.x]);
      const ys = edges.slice(0, 4).flatMap(({ from, to }) => [from.y, to.y]);
      const [left, top] = [Math.min(...xs), Math.min(...ys)];
      const scale = (Math.max(...xs) - left) / piece.width.toMm();
      expect((Math.max(...ys) - top) / piece.height.toMm()).toBeCloseTo(scale, 9);
      for (const crease of piece.creases) {
        const drawn = linesOf(scene, crease.fold).some(({ from, to }) =>
          crease.runs === 'down'
            ? near(from.x, left + crease.at.toMm() * scale) &&
              near(from.x, to.x) &&
              near(from.y, top) &&
              near(to.y, Math.max(...ys))
            : near(from.y, top + crease.at.toMm() * scale) &&
              near(from.y, to.y) &&
              near(from.x, left) &&
              near(to.x, Math.max(...xs)),
        );
        expect(drawn, crease.name).toBe(true);
      }
    }
  });
});

function near(a: number, b: number): boolean {
  return Math.abs(a - b) < 1e-9;
}

describe('drawing practice', () => {
  const gate = pieceOf(
    'base',
    [
      ['left', inches('17/8')],
      ['back', inches('17/4'), 'valley', 'left-fold'],
      ['right', inches('17/8'), 'mountain', 'right-fold'],
    ],
    inches('11/2'),
    'down',
  );

  it('keeps wide and narrow lines 2:1, edges wide and all else of the drawing narrow (ISO 128-2)', () => {
    const widths = new Set(Object.values(LINE_TYPES).map(({ width }) => width));
    expect([...widths].sort()).toEqual([0.25, 0.5]);
    expect(LINE_TYPES.outline).toEqual({ width: 0.5, dash: [] });
    expect(LINE_TYPES.dimension).toEqual({ width: 0.25, dash: [] });
  });

  it('dashes valleys and draws mountains dash, dot, dot (Yoshizawa-Randlett), with the lengths of ISO 128-2', () => {
    const d = 0.25;
    expect(LINE_TYPES.valley.dash).toEqual([12 * d, 3 * d]);
    const [long, gap, dot, , second] = LINE_TYPES.mountain.dash;
    expect([long, gap]).toEqual([24 * d, 3 * d]);
    expect(dot).toBe(second);
    expect(LINE_TYPES.mountain.dash).toHaveLength(6);
    const forms = Object.entries(LINE_TYPES).filter(([role]) =>
      ['outline', 'valley', 'mountain', 'perforation', 'hidden', 'join'].includes(role),
    );
    expect(new Set(forms.map(([, type]) => JSON.stringify(type))).size).toBe(forms.length);
  });

  it('letters in the heights of ISO 3098-1, none under 2.5 mm', () => {
    for (const { size } of labelsOf(draw(gate, 'inch'))) expect([2.5, 3.5, 5, 7]).toContain(size);
  });

  it('sets the first dimension line 10 mm or more from the outline (ISO 129-1 practice), figures above it', () => {
    const scene = draw(gate, 'inch');
    const outline = linesOf(scene, 'outline')[0];
    const running = linesOf(scene, 'dimension').filter(
      ({ from, to }) => from.y === to.y && from.y < (outline?.from.y ?? 0),
    );
    expect(running).toHaveLength(2);
    for (const { from } of running) expect((outline?.from.y ?? 0) - from.y).toBeGreaterThanOrEqual(10);
    for (const text of ['0', '2\u20091\u20448', '6\u20093\u20448']) {
      const label = labelsOf(scene).find((each) => each.text === text);
      expect(label && inkOf(label).bottom).toBeLessThan(running[0]?.from.y ?? 0);
    }
  });

  it('runs its positions from one zero: from the left, or for the left hand from the right', () => {
    for (const hand of HANDS) {
      const scene = draw(gate, 'inch', hand);
      const arcs = scene.items.filter((item) => item.kind === 'arc');
      const xs = linesOf(scene, 'outline')
        .slice(0, 4)
        .flatMap(({ from }) => from.x);
      expect(arcs.map(({ centre }) => centre.x)).toEqual([hand === 'left' ? Math.max(...xs) : Math.min(...xs)]);
      const arrows = linesOf(scene, 'dimension').filter(({ arrows }) => arrows === 'end');
      for (const { from, to } of arrows) expect(Math.sign(to.x - from.x)).toBe(hand === 'left' ? -1 : 1);
    }
  });

  it('explains in words every kind of line that asks for work, and no other', () => {
    const legend = legendOf(draw(gate, 'inch'));
    expect(legend.map(({ role }) => role)).toEqual(['outline', 'valley', 'mountain', 'grain']);
    const written = labelsOf(draw(gate, 'inch'))
      .map(({ text }) => text)
      .join(' ');
    for (const { words } of legend) expect(written).toContain(words);
  });
});

describe('crowded and hostile pieces', () => {
  const strip = (count: number, each: string, height: string): Piece =>
    pieceOf(
      'strip',
      Array.from(
        { length: count },
        (_, i) => [`page-${i + 1}`, inches(each), i % 2 === 0 ? 'mountain' : 'valley'] as const,
      ),
      inches(height),
      'across',
    );
  const cases: readonly (readonly [string, Piece])[] = [
    ...[3, 6, 12, 18, 24].map((count) => [`accordion of ${count}`, strip(count, '37/16', '4')] as const),
    [
      'gusset',
      pieceOf(
        'base',
        [
          ['front', millimetres('148')],
          ['a', millimetres('3.5'), 'mountain', 'fore'],
          ['b', millimetres('3.5'), 'valley', 'spine'],
          ['back', millimetres('148'), 'mountain', 'hinge'],
        ],
        millimetres('105.5'),
      ),
    ],
    [
      'lid',
      pieceOf(
        'lid',
        [
          ['left', inches('3/2')],
          ['middle', inches('65/16')],
          ['right', inches('3/2')],
        ],
        [
          ['head', inches('3/2')],
          ['middle', inches('65/16'), 'mountain', 'crown'],
          ['foot', inches('3/2')],
        ],
        'down',
      ),
    ],
    [
      'long names',
      pieceOf(
        'base',
        [
          ['a-very-long-name-for-a-panel', inches('1/2')],
          ['b', inches('1/2'), 'valley', 'an-even-longer-name-for-a-crease-than-that'],
        ],
        inches('1/2'),
      ),
    ],
    [
      'close to the edge',
      pieceOf(
        'base',
        [
          ['lip', inches('1/16')],
          ['back', inches('8'), 'valley', 'hinge'],
        ],
        [
          ['lip', inches('1/16')],
          ['rest', inches('5'), 'valley', 'top-hinge'],
        ],
      ),
    ],
    [
      'sliver',
      pieceOf('sliver', inches('1/8'), [
        ['a', inches('6')],
        ['b', inches('6'), 'valley', 'middle'],
      ]),
    ],
    ['plain', pieceOf('mat', inches('33/8'), inches('43/8'), 'down')],
  ];

  it.each(cases)('%s: nothing touches, each size once, both hands', (_, piece) => {
    for (const system of ['inch', 'metric'] as const) {
      for (const hand of HANDS) {
        const scene = draw(piece, system, hand);
        expectClear(scene);
        expectEachSizeOnce(scene, piece, system, hand);
      }
    }
  });

  it('keys the name of a crease that finds no room, and says the key below', () => {
    const scene = draw(
      pieceOf('base', inches('2'), [
        ['front', inches('8')],
        ['back', inches('8'), 'valley', 'long-middle-spine'],
      ]),
      'inch',
    );
    const texts = labelsOf(scene).map(({ text }) => text);
    expect(texts).toContain('1');
    expect(texts).toContain('1 is the long middle spine, a valley fold.');
  });

  it('leaves figures that cannot stand side by side to the words', () => {
    const piece = strip(60, '1/4', '4');
    const scene = draw(piece, 'inch');
    expectClear(scene);
    expect(labelsOf(scene).filter(({ role }) => role === 'figure')).toHaveLength(2);
    expect(scene.words.filter((sentence) => sentence.startsWith('Score'))).toHaveLength(59);
  });

  it('fits other widths of sheet', () => {
    for (const width of [90, 120, 160, 200]) expectClear(draw(strip(6, '2', '5'), 'metric', 'right', width));
  });
});
