import type { Board } from './board.ts';
import { dimensionLine, extensionLine, FIRST_LINE_MM, OVERRUN_MM } from './dimension-line.ts';
import type { DrawnPiece } from './drawn-piece.ts';
import { FIGURE_SIZES } from './figure-plan.ts';
import type { Reach } from './reach.ts';
import type { SceneLabel } from './scene.ts';

/** From a dimension line to the baseline of its figure, and from the end of the line to a figure set beyond it. */
const FIGURE_RISE_MM = 1.5;
const BEYOND_MM = 2.5;

export interface OverallSizes {
  readonly width: string;
  /** Undefined where the width says it too: a circle. */
  readonly height: string | undefined;
  readonly reach: Reach;
}

/** The width under the piece and the height to its right; each figure above its line, read from below or the right. */
export function drawOverallSizes(board: Board, drawn: DrawnPiece, { width, height, reach }: OverallSizes): void {
  const { left, right, top, bottom, scale } = drawn;
  const end = FIRST_LINE_MM + OVERRUN_MM;
  const y = bottom + FIRST_LINE_MM;
  for (const [x, [, lowest]] of [
    [left, reach.left],
    [right, reach.right],
  ] as const)
    board.add(extensionLine({ x, y: top + lowest * scale }, { x, y: bottom + end }));
  board.add(...dimensionLine({ x: left, y }, { x: right, y }, 'both'));
  placeFigure(board, width, (size) => [
    { at: { x: (left + right) / 2, y: y - FIGURE_RISE_MM }, size, anchor: 'middle', turn: 0 },
    { at: { x: right + BEYOND_MM, y: y + size / 2 }, size, anchor: 'start', turn: 0 },
    { at: { x: left - BEYOND_MM, y: y + size / 2 }, size, anchor: 'end', turn: 0 },
  ]);

  if (height === undefined) return;
  const x = right + FIRST_LINE_MM;
  for (const [edge, [, furthest]] of [
    [top, reach.top],
    [bottom, reach.bottom],
  ] as const)
    board.add(extensionLine({ x: left + furthest * scale, y: edge }, { x: right + end, y: edge }));
  board.add(...dimensionLine({ x, y: bottom }, { x, y: top }, 'both'));
  placeFigure(board, height, (size) => [
    { at: { x: x - FIGURE_RISE_MM, y: (top + bottom) / 2 }, size, anchor: 'middle', turn: 90 },
    { at: { x: x + size / 2, y: bottom + BEYOND_MM }, size, anchor: 'end', turn: 90 },
    { at: { x: x + size / 2, y: top - BEYOND_MM }, size, anchor: 'start', turn: 90 },
  ]);
}

type Spot = Pick<SceneLabel, 'at' | 'size' | 'anchor' | 'turn'>;

function placeFigure(board: Board, text: string, spots: (size: number) => readonly Spot[]): void {
  const candidates = FIGURE_SIZES.flatMap((size) => spots(size)).map(
    (spot): SceneLabel => ({ ...spot, kind: 'label', text, role: 'figure' }),
  );
  board.place(candidates);
}
