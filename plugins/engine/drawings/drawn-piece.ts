import type { Crease, Piece } from '../spec/index.ts';
import type { Length } from '../units/index.ts';
import type { SceneLine, ScenePoint } from './scene.ts';

/** A piece where it lies on a drawing sheet: its top left corner, in mm of the sheet, and the scale. */
export interface DrawnPiece {
  readonly piece: Piece;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  /** Mm of the sheet for a mm of the piece. */
  readonly scale: number;
}

export function drawnAt(piece: Piece, left: number, top: number, scale: number): DrawnPiece {
  const right = left + piece.width.toMm() * scale;
  return { piece, left, top, right, bottom: top + piece.height.toMm() * scale, scale };
}

/** Where a distance from the left edge lies on the sheet. */
export function acrossTo(drawn: DrawnPiece, x: Length): number {
  return drawn.left + x.toMm() * drawn.scale;
}

/** Where a distance from the top edge lies on the sheet. */
export function downTo(drawn: DrawnPiece, y: Length): number {
  return drawn.top + y.toMm() * drawn.scale;
}

/** The four edges, clockwise from the top. */
export function edgeLines(drawn: DrawnPiece): readonly SceneLine[] {
  const { left, top, right, bottom } = drawn;
  const corners: ScenePoint[] = [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ];
  return corners.map((from, i) => ({ kind: 'line', role: 'outline', from, to: corners[(i + 1) % 4] ?? from }));
}

/** A crease from edge to edge, in its line style. */
export function creaseLine(drawn: DrawnPiece, crease: Crease): SceneLine {
  if (crease.runs === 'down') {
    const x = acrossTo(drawn, crease.at);
    return { kind: 'line', role: crease.fold, from: { x, y: drawn.top }, to: { x, y: drawn.bottom } };
  }
  const y = downTo(drawn, crease.at);
  return { kind: 'line', role: crease.fold, from: { x: drawn.left, y }, to: { x: drawn.right, y } };
}
