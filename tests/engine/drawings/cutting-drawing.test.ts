import { describe, expect, it } from 'vitest';
import {
  cuttingDrawing,
  LINE_TYPES,
  legendOf,
  type Piece,
  panelsOf,
  type Scene,
  type SceneArc,
  type SceneLine,
  type ScenePoint,
  type Stroke,
  type System,
} from '../../../plugins/engine/index.ts';
import { everyKind } from './every-kind.ts';
import { cardOf, inches, millimetres, pieceOf } from './pieces.ts';
import { expectClear, expectEachSizeOnce, expectNoSizeTwice, inkOf, labelsOf, linesOf } from './sound-drawing.ts';

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
    for (const { piece, hand, scene } of scenes) {
      if (isStrip(piece)) expectEachSizeOnce(scene, piece, system, hand);
      else expectNoSizeTwice(scene);
    }
  });

  it('names every crease, at the crease or by a number that the notes explain, and shows the grain', () => {
    for (const { piece, scene } of scenes) {
      const names = labelsOf(scene)
        .filter(({ role }) => role === 'name')
        .map(({ text }) => text);
      const notes = labelsOf(scene)
        .filter(({ role }) => role === 'note')
        .map(({ text }) => text)
        .join(' ');
      const drawn = panelling.strokes.filter((stroke) => stroke.piece === piece.name && stroke.does === 'crease');
      for (const name of new Set(drawn.map((stroke) => stroke.name))) {
        if (name.includes('|')) continue;
        const said = name.replaceAll('-', ' ').replace(/\((\d+)\)/, ' $1');
        const family = said.replace(/ \d+$/, '');
        const told =
          names.some((text) => text === said || text.startsWith(`${said}, `)) ||
          notes.includes(` is the ${said}, `) ||
          (family !== said && notes.includes(`A number at a line is that of the ${family}.`));
        expect(told, `${piece.name}: ${said}`).toBe(true);
      }
      if (piece.grain !== undefined) {
        if (notes.includes('The grain of the paper runs')) continue;
        expect(names).toContain('grain');
        const [arrow] = linesOf(scene, 'grain');
        expect(arrow?.arrows).toBe('both');
        expect(arrow?.from.x === arrow?.to.x).toBe(piece.grain === 'down');
      }
    }
  });

  it('draws every line where it is, all to one scale, and no other', () => {
    for (const { piece, scene } of scenes) {
      const work = scene.items.filter(
        (item): item is SceneLine | SceneArc => (item.kind === 'line' || item.kind === 'arc') && isWork(item.role),
      );
      const strokes = panelling.strokes.filter((stroke) => stroke.piece === piece.name);
      // The legend's samples come after the piece.
      const onPiece = work.slice(0, strokes.length);
      const boxes = onPiece.filter(({ role }) => role === 'outline').map(boxOfItem);
      const [left, right] = [Math.min(...boxes.map((box) => box[0])), Math.max(...boxes.map((box) => box[1]))];
      const [top, bottom] = [Math.min(...boxes.map((box) => box[2])), Math.max(...boxes.map((box) => box[3]))];
      const scale = (right - left) / piece.width.toMm();
      expect((bottom - top) / piece.height.toMm()).toBeCloseTo(scale, 6);
      const ends = ({ from, to }: Stroke['edge']): string =>
        [from, to]
          .map(({ x, y }) => `${place(x.valueOf())} ${place(y.valueOf())}`)
          .sort()
          .join(' to ');
      const drawn = onPiece.map((item) =>
        endsOf(item)
          .map(({ x, y }) => `${place((x - left) / scale)} ${place((y - top) / scale)}`)
          .sort()
          .join(' to '),
      );
      expect(drawn.sort()).toEqual(strokes.map(({ edge }) => ends(edge)).sort());
    }
  });
});

/** Nothing but bands: what the drawing of a strip must state can be told from its bands alone. */
function isStrip(piece: Piece): boolean {
  const { lines, windows, away, shapes, outline } = piece;
  return [lines, windows, away, shapes].every((list) => list.length === 0) && outline.every(({ is }) => is === 'line');
}

function isWork(role: SceneLine['role']): boolean {
  return ['outline', 'cut', 'valley', 'mountain', 'both', 'perforation', 'mark'].includes(role);
}

/** To a hundredth of a millimetre; a little is added, since marks lie half way between two of those. */
function place(mm: number): string {
  return (Math.round((mm + 0.0013) * 100) / 100).toFixed(2);
}

function endsOf(item: SceneLine | SceneArc): readonly ScenePoint[] {
  if (item.kind === 'line') return [item.from, item.to];
  return [item.from, item.to].map((degrees) => {
    const radians = (degrees * Math.PI) / 180;
    return { x: item.centre.x + item.rx * Math.cos(radians), y: item.centre.y + item.ry * Math.sin(radians) };
  });
}

/** Left, right, top, bottom. Of an arc, of its whole circle. */
function boxOfItem(item: SceneLine | SceneArc): readonly [number, number, number, number] {
  if (item.kind === 'arc') {
    const { centre, rx, ry } = item;
    return [centre.x - rx, centre.x + rx, centre.y - ry, centre.y + ry];
  }
  const [xs, ys] = [
    [item.from.x, item.to.x],
    [item.from.y, item.to.y],
  ];
  return [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
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
