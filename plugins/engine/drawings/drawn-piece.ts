import { chordsOf, type Outline, type PathEdge, type Point } from '../geometry/index.ts';
import type { Piece } from '../spec/index.ts';
import type { PieceStrokes, WorkLine } from '../wording/index.ts';
import type { LineRole, SceneArc, SceneLine, ScenePoint } from './scene.ts';

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

/** A line of a piece as it is drawn. */
export interface DrawnLine {
  readonly line: WorkLine;
  readonly drawn: SceneLine;
}

export function drawnAt(piece: Piece, left: number, top: number, scale: number): DrawnPiece {
  const right = left + piece.width.toMm() * scale;
  return { piece, left, top, right, bottom: top + piece.height.toMm() * scale, scale };
}

/** Where a point of the piece lies on the sheet. */
export function onSheet({ left, top, scale }: DrawnPiece, { x, y }: Point): ScenePoint {
  return { x: left + x.valueOf() * scale, y: top + y.valueOf() * scale };
}

/** The outer edge, edges of windows and cuts round shapes. */
export function edgeItems(
  drawn: DrawnPiece,
  { edges, windows, shapes }: PieceStrokes,
): readonly (SceneLine | SceneArc)[] {
  return [
    ...edges.map(({ edge }) => drawnEdge(drawn, edge, 'outline')),
    ...[...windows, ...shapes].map(({ edge }) => drawnEdge(drawn, edge, 'cut')),
  ];
}

/** The straight lines of a piece, in their line styles. */
export function drawnLines(drawn: DrawnPiece, { lines }: PieceStrokes): readonly DrawnLine[] {
  return lines.map((line) => ({
    line,
    drawn: { kind: 'line', role: roleOf(line), from: onSheet(drawn, line.from), to: onSheet(drawn, line.to) },
  }));
}

function roleOf({ does, fold }: WorkLine): LineRole {
  return does === 'crease' ? (fold ?? 'valley') : does;
}

function drawnEdge(drawn: DrawnPiece, edge: PathEdge, role: LineRole): SceneLine | SceneArc {
  const [from, to] = [onSheet(drawn, edge.from), onSheet(drawn, edge.to)];
  if (edge.is === 'line') return { kind: 'line', role, from, to };
  const centre = onSheet(drawn, edge.centre);
  const [rx, ry] = [edge.rx.valueOf() * drawn.scale, edge.ry.valueOf() * drawn.scale];
  const degreesAt = ({ x, y }: ScenePoint): number =>
    snapped((Math.atan2((y - centre.y) / ry, (x - centre.x) / rx) * 180) / Math.PI);
  const [a, b] = edge.clockwise ? [degreesAt(from), degreesAt(to)] : [degreesAt(to), degreesAt(from)];
  return { kind: 'arc', role, centre, rx, ry, from: a, to: b > a ? b : b + 360 };
}

/** Whole quarters without the error of floats, so that quarters of a circle meet. */
function snapped(degrees: number): number {
  const quarter = Math.round(degrees / 90) * 90;
  return Math.abs(degrees - quarter) < 1e-7 ? quarter : degrees;
}

/** A closed path on the sheet, arcs as chords too short to be seen. */
export function outlineOnSheet(drawn: DrawnPiece, outline: Outline): readonly ScenePoint[] {
  return outline.flatMap((edge) => chordsOf(edge).slice(0, -1)).map((point) => onSheet(drawn, point));
}
