import { describe, expect, it } from 'vitest';
import {
  cuttingDrawing,
  LEGEND_WORDS,
  legendOf,
  panelsOf,
  type Scene,
  type SceneArc,
  type ScenePoint,
  type System,
} from '../../../plugins/engine/index.ts';
import { everyKind } from './every-kind.ts';
import { cardOf } from './pieces.ts';
import { SHAPED, type ShapedCase } from './shaped-pieces.ts';
import { expectClear, figuresOf, inkOf, labelsOf, linesOf } from './sound-drawing.ts';

const HANDS = ['right', 'left'] as const;

function draw({ piece }: ShapedCase, system: System, hand: 'left' | 'right' = 'right', widthMm?: number): Scene {
  const made = piece(system);
  return cuttingDrawing(made, panelsOf(cardOf(system, made)), { system, hand, widthMm });
}

function caseOf(name: string): ShapedCase {
  const found = SHAPED.find((one) => one.name === name);
  if (found === undefined) throw new Error(`there is no ${name}`);
  return found;
}

/** What must be written on each, worked by hand from the inches of `shaped-pieces.ts`; sizes last. */
const FIGURES: Readonly<Record<string, readonly string[]>> = {
  'a slit and part creases': ['0', '2', '4', '8', '10', '0', '1 1/2', '5 1/2', '12', '7'],
  // The circle's top and bottom are where the crease ends: 2 3/4 less and more 1 1/4.
  'a circle that swings': ['0', '2 3/4', '4 1/8', '0', '1 1/2', '2 3/4', '4', 'Ø 2 1/2', '8 1/4', '5 1/2'],
  // 2 sin 50 = 1.5321 to either side of 4 1/4: 2.7179 and 5.7821; 2 + 2 cos 50 = 3.2856. To 1/64 in.
  'angled marks': ['0', '2 23/32', '4 1/4', '5 25/32', '0', '2', '3 9/32', '50°', '50°', '8 1/2', '5 1/2'],
  // 2 1/2 - 2 tan 20 = 1.7721 = 1 49.4/64.
  'creases that meet at a point': ['0', '2', '0', '1 49/64', '70°', '70°', '4', '2 1/2'],
  'creases from corner to corner': ['0', '2 3/4', '5 1/2', '5 1/2'],
  'a disc with a crease': ['0', '1', 'Ø 2'],
  'a plain disc': ['Ø 1 1/2'],
  'a frame': ['0', '3/4', '3 1/2', '0', '3/4', '4 3/4', '4 1/4', '5 1/2'],
  'a ring of foam': ['0', '1/2', '3 1/2', '0', '1/2', '4 3/4', '4', '5 1/4'],
  'corners cut away': ['0', '4', '8', '0', '4', '8', '12', '12'],
  'corners cut loose': ['0', '1 1/2', '5 9/16', '0', '1 1/2', '5 9/16', '7 1/16', '7 1/16'],
  'a perforated stub, worked both ways': ['0', '1', '3', '6', '3'],
  'round windows and round corners': [
    ...['0', '1 1/2', '2 1/2', '2 3/4', '4 1/4', '0', '1/2', '3/4', '2', '3 1/4'],
    ...['Ø 1 1/2', 'Ø 1/4', 'R 1/2', '5', '4'],
  ],
  'an outline of lines and arcs': ['0', '1', '1 1/2', '3', '4', '0', '2', 'Ø 1/2', 'R 2', '6', '4'],
  'a notch and a window with a slanting side': ['0', '4', '5', '6', '7', '0', '1', '2 1/2', '4', 'Ø 1', '8', '5'],
};

describe.each(SHAPED)('the drawing of $name', (one) => {
  it('lets no label touch another, a line, an arc or the edge of the sheet', () => {
    for (const system of ['inch', 'metric'] as const)
      for (const hand of HANDS) for (const width of [90, 110, 160]) expectClear(draw(one, system, hand, width));
  });

  it('writes what must be measured, each once', () => {
    expect([...figuresOf(draw(one, 'inch'))].sort()).toEqual([...(FIGURES[one.name] ?? [])].sort());
  });

  it('explains in words the kinds of line that it has, and no other', () => {
    const scene = draw(one, 'inch');
    const explained = Object.keys(LEGEND_WORDS);
    const used = scene.items.flatMap((item) => (item.kind === 'line' || item.kind === 'arc' ? [item.role] : []));
    expect(
      legendOf(scene)
        .map(({ role }) => role)
        .sort(),
    ).toEqual([...new Set(used.filter((role) => explained.includes(role)))].sort());
    const written = labelsOf(scene)
      .filter(({ role }) => role === 'note')
      .map(({ text }) => text)
      .join(' ');
    for (const [role, words] of Object.entries(LEGEND_WORDS))
      expect(written.includes(words), role).toBe(used.includes(role as (typeof used)[number]));
  });
});

/** The scale and the corner of a drawing whose outline reaches its four sides. */
function frameOf(
  scene: Scene,
  width: number,
): { x: (inches: number) => number; y: (inches: number) => number; scale: number } {
  const straight = linesOf(scene, 'outline').filter(({ from }) => isAbove(from, scene));
  const round = scene.items.flatMap((item) =>
    item.kind === 'arc' && item.role === 'outline'
      ? [
          { x: item.centre.x - item.rx, y: item.centre.y - item.ry },
          { x: item.centre.x + item.rx, y: item.centre.y + item.ry },
        ]
      : [],
  );
  const points = straight.length > 0 ? straight.flatMap(({ from, to }) => [from, to]) : round;
  const [left, right] = [Math.min(...points.map(({ x }) => x)), Math.max(...points.map(({ x }) => x))];
  const top = Math.min(...points.map(({ y }) => y));
  const scale = (right - left) / width;
  return { scale, x: (inches) => left + inches * scale, y: (inches) => top + inches * scale };
}

/** Not one of the legend's samples, which begin 2 mm from the sheet's edge. */
function isAbove(point: ScenePoint, scene: Scene): boolean {
  const samples = linesOf(scene, 'outline').filter(({ from, to }) => from.x === 2 && to.x === 17 && from.y === to.y);
  return samples.every(({ from }) => point.y < from.y);
}

describe('round things', () => {
  const arcsOf = (scene: Scene, role: string): readonly SceneArc[] =>
    scene.items.filter((item) => item.kind === 'arc' && item.role === role) as readonly SceneArc[];

  it('are drawn as arcs of their own centre and size, all the way round', () => {
    const scene = draw(caseOf('round windows and round corners'), 'inch');
    const { x, y, scale } = frameOf(scene, 5);
    for (const [cx, cy, rx, ry] of [
      [1.5, 2, 0.75, 0.75],
      [3.5, 2, 0.75, 1.25],
      [2.5, 0.5, 0.125, 0.125],
    ] as const) {
      const arcs = arcsOf(scene, 'cut').filter((arc) => Math.hypot(arc.centre.x - x(cx), arc.centre.y - y(cy)) < 1e-6);
      expect(arcs.reduce((sum, { from, to }) => sum + to - from, 0)).toBeCloseTo(360, 6);
      for (const arc of arcs)
        expect([arc.rx / scale, arc.ry / scale]).toEqual([expect.closeTo(rx, 9), expect.closeTo(ry, 9)]);
    }
    const corners = arcsOf(scene, 'outline');
    expect(corners.map(({ from, to }) => to - from)).toEqual(
      [90, 90, 90, 90].map((quarter) => expect.closeTo(quarter, 6)),
    );
  });

  it('are cut only where they swing free', () => {
    const scene = draw(caseOf('a circle that swings'), 'inch');
    const arcs = arcsOf(scene, 'cut');
    expect(arcs.reduce((sum, { from, to }) => sum + to - from, 0)).toBeCloseTo(180, 6);
    // Left of its centre: from straight down over the left to straight up.
    for (const { from, to } of arcs) expect(((((from + to) / 2) % 360) + 360) % 360).toBeGreaterThan(90);
    const { x, y } = frameOf(scene, 8.25);
    const swing = linesOf(scene, 'mountain').filter(({ from, to }) => from.x === to.x);
    expect(swing.map(({ from, to }) => [from.y, to.y])).toEqual([
      [expect.closeTo(y(0), 6), expect.closeTo(y(1.5), 6)],
      [expect.closeTo(y(4), 6), expect.closeTo(y(5.5), 6)],
    ]);
    expect(swing[0]?.from.x).toBeCloseTo(x(2.75), 6);
  });

  it('have a cross at their centre, for compasses', () => {
    const scene = draw(caseOf('a plain disc'), 'inch');
    const { x, y } = frameOf(scene, 1.5);
    const crosses = linesOf(scene, 'frame').map(({ from, to }) => ({ x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 }));
    expect(crosses).toHaveLength(2);
    for (const cross of crosses)
      expect([cross.x, cross.y]).toEqual([expect.closeTo(x(0.75), 6), expect.closeTo(y(0.75), 6)]);
  });
});

describe('angles', () => {
  it('stand between the two lines they are of, their arc about the point where these meet', () => {
    const scene = draw(caseOf('angled marks'), 'inch');
    const { x, y } = frameOf(scene, 8.5);
    const arcs = scene.items.filter((item): item is SceneArc => item.kind === 'arc' && item.to - item.from < 360);
    expect(arcs.map(({ centre }) => [centre.x, centre.y])).toEqual(
      [0, 1].map(() => [expect.closeTo(x(4.25), 6), expect.closeTo(y(2), 6)]),
    );
    // Down the spine is 90 degrees on the drawing; the marks go 50 degrees to either side of it.
    expect(arcs.map(({ from, to }) => [from, to]).sort((a, b) => (a[0] ?? 0) - (b[0] ?? 0))).toEqual([
      [expect.closeTo(40, 6), expect.closeTo(90, 6)],
      [expect.closeTo(90, 6), expect.closeTo(140, 6)],
    ]);
    for (const { text, at } of labelsOf(scene).filter(({ text }) => text === '50°'))
      expect(Math.hypot(at.x - x(4.25), at.y - y(2)), text).toBeLessThan(20);
  });
});

describe('hatching', () => {
  const middleOf = ({ from, to }: { from: ScenePoint; to: ScenePoint }): ScenePoint => ({
    x: (from.x + to.x) / 2,
    y: (from.y + to.y) / 2,
  });

  /** Hatching of the piece, not of the legend. */
  const hatchOf = (scene: Scene): ReturnType<typeof linesOf> =>
    linesOf(scene, 'hatch').filter(({ from }) => isAbove(from, scene));

  it.each([
    ['a frame', 4.25, 2.75 * 4, (x: number, y: number) => x > 0.75 && x < 3.5 && y > 0.75 && y < 4.75],
    ['corners cut away', 12, 4 * 16, (x: number, y: number) => (x < 4 || x > 8) && (y < 4 || y > 8)],
    [
      'a notch and a window with a slanting side',
      8,
      // Half of the circle lies on the card; a kite is half the product of its diagonals.
      (Math.PI * 0.25) / 2 + 3,
      (x: number, y: number) => Math.hypot(x, y - 2.5) < 0.5 || Math.abs(x - 6) + Math.abs(y - 2.5) * (1 / 1.5) < 1,
    ],
  ] as const)('covers the waste of %s, and nothing else', (name, width, area, isWaste) => {
    const scene = draw(caseOf(name), 'inch');
    const { x, y, scale } = frameOf(scene, width);
    const strokes = hatchOf(scene);
    for (const stroke of strokes) {
      const middle = middleOf(stroke);
      expect(isWaste((middle.x - x(0)) / scale, (middle.y - y(0)) / scale)).toBe(true);
      expect(stroke.to.y - stroke.from.y).toBeCloseTo(stroke.from.x - stroke.to.x, 6);
    }
    // Strokes 2.5 mm apart: their length times that is the area, but for the letters that stand within.
    const inked = strokes.reduce((sum, { from, to }) => sum + Math.hypot(to.x - from.x, to.y - from.y), 0) * 2.5;
    const within = labelsOf(scene)
      .map(inkOf)
      .filter(({ left, right, top, bottom }) =>
        isWaste(((left + right) / 2 - x(0)) / scale, ((top + bottom) / 2 - y(0)) / scale),
      );
    const letters = within.reduce(
      (sum, { left, right, top, bottom }) => sum + (right - left + 2) * (bottom - top + 2),
      0,
    );
    expect(inked).toBeLessThan(area * scale ** 2 * 1.06);
    expect(inked).toBeGreaterThan((area * scale ** 2 - letters) * 0.85);
  });

  it('is named where there is room', () => {
    const names = (name: string): readonly string[] => labelsOf(draw(caseOf(name), 'inch')).map(({ text }) => text);
    expect(names('a frame')).toContain('window');
    expect(names('corners cut away').filter((text) => text === 'cut away')).toHaveLength(4);
  });
});

describe('names', () => {
  it('of a crease that is drawn in several stretches are written once', () => {
    const names = labelsOf(draw(caseOf('a slit and part creases'), 'inch')).map(({ text }) => text);
    for (const name of ['outer 1', 'outer 2', 'inner 1', 'inner 2'])
      expect(names.filter((text) => text === name)).toHaveLength(1);
  });

  it('stay out of windows: a panel with a hole is named on its paper', () => {
    const scene = draw(caseOf('a notch and a window with a slanting side'), 'inch');
    const { x, y, scale } = frameOf(scene, 8);
    const back = labelsOf(scene).find(({ text }) => text === 'back');
    if (back === undefined) throw new Error('the back has no name');
    const { left, right, top, bottom } = inkOf(back);
    const [cx, cy] = [((left + right) / 2 - x(0)) / scale, ((top + bottom) / 2 - y(0)) / scale];
    expect(Math.abs(cx - 6) + Math.abs(cy - 2.5) / 1.5).toBeGreaterThan(1);
    expect(cx).toBeGreaterThan(4);
  });
});

describe('many equal lines', () => {
  it('have every figure, and a number at every second one in one size, where there is no room for all', () => {
    const [kind] = everyKind().filter(({ name }) => name === 'Accordion, pages 24, inch');
    const piece = kind?.card.pieces[0];
    if (kind === undefined || piece === undefined) throw new Error('there is no accordion of 24 pages');
    const scene = cuttingDrawing(piece, panelsOf(kind.card), { system: 'inch' });
    const numbers = labelsOf(scene).filter(({ role, text }) => role === 'name' && /^\d+$/.test(text));
    expect(numbers.map(({ text }) => Number(text))).toEqual(Array.from({ length: 11 }, (_, i) => 2 * i + 2));
    expect(new Set(numbers.map(({ size, at }) => `${size} ${at.y.toFixed(6)}`)).size).toBe(1);
    expect(labelsOf(scene).map(({ text }) => text)).toContain('A number at a line is that of the fold.');
    // 23 folds from zero, then the width and the height.
    expect(figuresOf(scene)).toHaveLength(26);
  });
});
