import type Fraction from 'fraction.js';
import type { Point } from '../geometry/index.ts';
import { Length } from '../units/index.ts';
import type { PanelPart } from './card-types.ts';
import { type Box, edgeOfBox } from './line-named.ts';
import { plus, point, type Segment, ZERO } from './plane.ts';
import type { Band, Piece } from './types.ts';
import { EDGES } from './words.ts';

/** A rectangle on a piece's drawing. */
export interface PanelBox extends Box {
  readonly corner: Point;
}

/**
 * The rectangle round a panel, as far as names tell: of a whole piece and of a column, row or both. Undefined for the panel at
 * an edge, corner or point, which only the lines of the piece decide.
 */
export function boxOf(piece: Piece, part: PanelPart): PanelBox | undefined {
  if (part.is === 'whole') return { corner: point(ZERO, ZERO), width: piece.width, height: piece.height };
  if (part.is !== 'cell') return undefined;
  const across = sideOf(piece.columns, part.column, piece.width);
  const down = sideOf(piece.rows, part.row, piece.height);
  return { corner: point(across.start, down.start), width: across.size, height: down.size };
}

function sideOf(bands: readonly Band[], name: string | undefined, whole: Length): { start: Fraction; size: Length } {
  const band = name === undefined ? undefined : bands.find((candidate) => candidate.name === name);
  return band ? { start: band.start.mm, size: band.size } : { start: ZERO, size: whole };
}

/**
 * An edge of a box, at its place on the piece's drawing. Undefined when the word is no edge. A band without any size, of which the dry
 * fit tells, has an edge a millimetre long, so that it runs somewhere.
 */
export function edgeAt(box: PanelBox, word: string): Segment | undefined {
  const edge = EDGES.find((known) => known === word);
  if (edge === undefined) return undefined;
  const [width, height] = [box.width, box.height].map((size) => (size.isPositive ? size : A_LITTLE));
  const { from, to } = edgeOfBox({ ...box, ...(width && { width }), ...(height && { height }) }, edge);
  return { from: plus(from, box.corner), to: plus(to, box.corner) };
}

const A_LITTLE = Length.fromMm(1);

export function centreOf({ corner, width, height }: PanelBox): Point {
  return plus(corner, point(width.mm.div(2), height.mm.div(2)));
}
