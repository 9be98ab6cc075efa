import { expect } from 'vitest';
import {
  formatNumber,
  type Piece,
  type Scene,
  type SceneArc,
  type SceneLabel,
  type SceneLine,
  type ScenePoint,
  type System,
} from '../../../plugins/engine/index.ts';
import { type RealBox, realBox, realFont } from './real-font.ts';

const regular = realFont('latin', 400);
const bold = realFont('latin', 700);

export function labelsOf(scene: Scene): readonly SceneLabel[] {
  return scene.items.filter((item) => item.kind === 'label');
}

export function linesOf(scene: Scene, ...roles: readonly SceneLine['role'][]): readonly SceneLine[] {
  return scene.items.filter((item) => item.kind === 'line' && roles.includes(item.role)) as readonly SceneLine[];
}

export function inkOf(label: SceneLabel): RealBox {
  return realBox(label, regular, bold);
}

/** No letter touches a letter of another label or a line, and none leaves the scene. By the font's own outlines. */
export function expectClear(scene: Scene): void {
  const boxes = labelsOf(scene).map(inkOf);
  const meetings = boxes.flatMap((a, i) =>
    boxes
      .slice(i + 1)
      .filter((b) => meet(a, b))
      .map((b) => `${a.text} on ${b.text}`),
  );
  expect(meetings).toEqual([]);
  const lines = scene.items.filter((item) => item.kind === 'line');
  const arcs = scene.items
    .filter((item) => item.kind === 'arc')
    .map((arc) => ({ role: arc.role, points: alongArc(arc) }));
  const crossings = boxes.flatMap((box) => [
    ...lines.filter((line) => crosses(line, box)).map(({ role }) => `${box.text} on ${role} line`),
    ...arcs.filter(({ points }) => points.some((at) => lies(at, box))).map(({ role }) => `${box.text} on ${role} arc`),
  ]);
  expect(crossings).toEqual([]);
  const outside = boxes.filter(
    ({ left, right, top, bottom }) => left < 0 || top < 0 || right > scene.width || bottom > scene.height,
  );
  expect(outside).toEqual([]);
}

/** Zero once for each side with creases, each position once, width once, height once; nothing else (ISO 129-1). */
export function expectEachSizeOnce(scene: Scene, piece: Piece, system: System, hand: 'left' | 'right'): void {
  const across = piece.creases.filter(({ runs }) => runs === 'across');
  const down = piece.creases.filter(({ runs }) => runs === 'down');
  const expected = [
    ...[across, down].filter((side) => side.length > 0).map(() => '0'),
    ...across.map(({ at }) => formatNumber(at, system)),
    ...down.map(({ at }) => formatNumber(hand === 'left' ? piece.width.minus(at) : at, system)),
    formatNumber(piece.width, system),
    formatNumber(piece.height, system),
  ];
  expect([...figuresOf(scene)].sort()).toEqual(expected.sort());
}

/** No position stands twice along one edge: above the piece, or to its left. */
export function expectNoSizeTwice(scene: Scene): void {
  const edges = scene.items.filter((item) => (item.kind === 'line' || item.kind === 'arc') && item.role === 'outline');
  const first = edges[0];
  expect(first).toBeDefined();
  const dimensions = linesOf(scene, 'dimension');
  const levels = dimensions.filter(({ from, to }) => from.y === to.y).map(({ from }) => from.y);
  const uprights = dimensions.filter(({ from, to }) => from.x === to.x).map(({ from }) => from.x);
  const figures = labelsOf(scene).filter(({ role, text }) => role === 'figure' && !/[\u00b0\u00d8R]/.test(text));
  const above = figures.filter(({ at }) => at.y < Math.min(...levels));
  const beside = figures.filter(({ at, turn }) => turn === 0 && at.x < Math.min(...uprights));
  for (const group of [above, beside].map((some) => some.map(({ text }) => text)))
    expect(group).toEqual([...new Set(group)]);
}

function meet(a: RealBox, b: RealBox): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

/** Whether a straight line goes through a box: an end lies in it, or it crosses one of the box's diagonals. */
function crosses({ from, to }: SceneLine, { left, right, top, bottom, text }: RealBox): boolean {
  if (lies(from, { left, right, top, bottom, text }) || lies(to, { left, right, top, bottom, text })) return true;
  const side = (a: ScenePoint, b: ScenePoint, c: ScenePoint): number =>
    Math.sign((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));
  const diagonals = [
    [
      { x: left, y: top },
      { x: right, y: bottom },
    ],
    [
      { x: left, y: bottom },
      { x: right, y: top },
    ],
  ] as const;
  return diagonals.some(([a, b]) => side(a, b, from) * side(a, b, to) < 0 && side(from, to, a) * side(from, to, b) < 0);
}

/** Points of an arc, less than a twentieth of a millimetre apart. */
export function alongArc({ centre, rx, ry, from, to }: SceneArc): readonly ScenePoint[] {
  const count = Math.ceil((((to - from) * Math.PI) / 180) * Math.max(rx, ry) * 20) + 1;
  return Array.from({ length: count + 1 }, (_, i) => {
    const radians = ((from + (i * (to - from)) / count) * Math.PI) / 180;
    return { x: centre.x + rx * Math.cos(radians), y: centre.y + ry * Math.sin(radians) };
  });
}

function lies({ x, y }: ScenePoint, { left, right, top, bottom }: RealBox): boolean {
  return x > left && x < right && y > top && y < bottom;
}

/** Figures of a drawing as they are written by hand. */
export function figuresOf(scene: Scene): readonly string[] {
  return labelsOf(scene)
    .filter(({ role }) => role === 'figure')
    .map(({ text }) => text.replaceAll('\u2009', ' ').replaceAll('\u2044', '/'));
}
