import { expect } from 'vitest';
import {
  formatNumber,
  type Piece,
  type Scene,
  type SceneLabel,
  type SceneLine,
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
  const lines = scene.items.filter((item) => item.kind === 'line').map(boxOf);
  const crossings = boxes.flatMap((box) =>
    lines.filter((line) => meet(box, line)).map((line) => `${box.text} on ${line.text}`),
  );
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
  const figures = labelsOf(scene)
    .filter(({ role }) => role === 'figure')
    .map(({ text }) => text.replaceAll('\u2009', ' ').replaceAll('\u2044', '/'));
  expect(figures.sort()).toEqual(expected.sort());
}

function meet(a: RealBox, b: RealBox): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

function boxOf({ role, from, to }: SceneLine): RealBox {
  const text = `${role} line`;
  return {
    left: Math.min(from.x, to.x),
    right: Math.max(from.x, to.x),
    top: Math.min(from.y, to.y),
    bottom: Math.max(from.y, to.y),
    text,
  };
}
