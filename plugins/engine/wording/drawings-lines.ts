import type Fraction from 'fraction.js';
import { type PathEdge, type Point, ZERO } from '../geometry/index.ts';
import type { Panelling, Stroke } from '../panels/index.ts';
import type { CreaseFold, LineWork, Piece } from '../spec/index.ts';
import { nearly, nearlyAt } from './drawings-forms.ts';

export type Hand = 'left' | 'right';

/** A straight line of a piece, as far as there is paper. A line with a window in its way is two. */
export interface WorkLine {
  readonly does: LineWork;
  readonly name: string;
  /** For a crease. */
  readonly fold: CreaseFold | undefined;
  readonly from: Point;
  readonly to: Point;
  readonly runs: 'down' | 'across' | 'angled';
}

/** Strokes of one piece, sorted by what they are. */
export interface PieceStrokes {
  /** The outer edge, with that of what is cut away. */
  readonly edges: readonly Stroke[];
  readonly windows: readonly Stroke[];
  /** Cuts round shapes that swing. */
  readonly shapes: readonly Stroke[];
  readonly lines: readonly WorkLine[];
}

export function strokesOf(piece: Piece, panelling: Panelling): PieceStrokes {
  const own = panelling.strokes.filter((stroke) => stroke.piece === piece.name);
  const windows = new Set(piece.windows.map(({ name }) => name));
  const shapes = new Set(piece.shapes.map(({ name }) => name));
  const isShape = ({ does, name }: Stroke): boolean => does === 'cut' && shapes.has(name);
  return {
    edges: own.filter(({ does, name }) => does === 'edge' && !windows.has(name)),
    windows: own.filter(({ does, name }) => does === 'edge' && windows.has(name)),
    shapes: own.filter(isShape),
    lines: own.flatMap((stroke): WorkLine[] => {
      const { does, name, fold, edge } = stroke;
      if (does === 'edge' || edge.is === 'arc' || isShape(stroke)) return [];
      return [{ does, name, fold, from: edge.from, to: edge.to, runs: wayOf(edge) }];
    }),
  };
}

function wayOf({ from, to }: PathEdge): WorkLine['runs'] {
  if (nearly(from.x, to.x)) return 'down';
  return nearly(from.y, to.y) ? 'across' : 'angled';
}

/** Lines that run one way, in the order in which they are measured. */
export function measuredLines(lines: readonly WorkLine[], runs: 'down' | 'across', hand: Hand): readonly WorkLine[] {
  const [way, other] = runs === 'down' ? (['x', 'y'] as const) : (['y', 'x'] as const);
  const sign = hand === 'left' ? -1 : 1;
  const order = (axis: 'x' | 'y', a: Point, b: Point): number =>
    nearly(a[axis], b[axis]) ? 0 : a[axis].compare(b[axis]) * (axis === 'x' ? sign : 1);
  return lines
    .filter((line) => line.runs === runs)
    .sort((a, b) => order(way, a.from, b.from) || order(other, a.from, b.from));
}

/** Where the end of a line lies, as it is said. */
export type EndPlace = 'corner' | 'left' | 'right' | 'top' | 'bottom' | 'edge' | 'inside';

/**
 * Where a point lies on a piece: on a corner of the smallest rectangle round it, on a straight part of one of that rectangle's sides,
 * on another part of the outer edge, or anywhere else. The outer edge is the piece's before anything is cut away.
 */
export function endPlace(point: Point, piece: Piece): EndPlace {
  const [width, height] = [piece.width.mm, piece.height.mm];
  const sides = [
    nearly(point.x, ZERO) ? 'left' : nearly(point.x, width) ? 'right' : undefined,
    nearly(point.y, ZERO) ? 'top' : nearly(point.y, height) ? 'bottom' : undefined,
  ] as const;
  const on = piece.outline.filter((edge) => liesOn(point, edge));
  if (on.length === 0) return 'inside';
  if (sides[0] !== undefined && sides[1] !== undefined) return 'corner';
  const side = sides[0] ?? sides[1];
  if (side === undefined) return 'edge';
  return on.some((edge) => edge.is === 'line' && runsAlong(edge, side)) ? side : 'edge';
}

function runsAlong({ from, to }: PathEdge, side: 'left' | 'right' | 'top' | 'bottom'): boolean {
  return side === 'left' || side === 'right' ? nearly(from.x, to.x) : nearly(from.y, to.y);
}

/** How far a point may lie from an edge that it is on, in mm. */
const ON_MM = 1e-6;

/** Whether a point lies on an edge, its ends included. */
export function liesOn(point: Point, edge: PathEdge): boolean {
  if (nearlyAt(point, edge.from) || nearlyAt(point, edge.to)) return true;
  const [px, py] = floats(point);
  const [ax, ay] = floats(edge.from);
  const [bx, by] = floats(edge.to);
  if (edge.is === 'line') {
    const length = Math.hypot(bx - ax, by - ay);
    const off = ((px - ax) * (by - ay) - (py - ay) * (bx - ax)) / length;
    const along = ((px - ax) * (bx - ax) + (py - ay) * (by - ay)) / length;
    return Math.abs(off) < ON_MM && along > 0 && along < length;
  }
  const [cx, cy] = floats(edge.centre);
  const [rx, ry] = [edge.rx.valueOf(), edge.ry.valueOf()];
  if (Math.abs(Math.hypot((px - cx) / rx, (py - cy) / ry) - 1) * Math.min(rx, ry) > ON_MM) return false;
  // An arc of less than a turn lies on one side of its chord.
  const side = (bx - ax) * (py - ay) - (by - ay) * (px - ax);
  return edge.clockwise ? side < 0 : side > 0;
}

export function floats({ x, y }: Point): readonly [number, number] {
  return [x.valueOf(), y.valueOf()];
}

/** A distance from the left edge as it is measured: from there, or for the left hand from the right edge. */
export function acrossFrom(x: Fraction, piece: Piece, hand: Hand): Fraction {
  return hand === 'left' ? piece.width.mm.sub(x) : x;
}
