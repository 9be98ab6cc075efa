import type { Point } from '../geometry/index.ts';
import type { Piece } from '../spec/index.ts';
import type { System } from '../units/index.ts';
import { nearly } from './drawings-forms.ts';
import { acrossFrom, type EndPlace, endPlace, type Hand, type WorkLine } from './drawings-lines.ts';
import { sayMeasure } from './drawings-measures.ts';

/** Where words of a drawing speak from. */
export interface Telling {
  readonly piece: Piece;
  readonly system: System;
  readonly hand: Hand;
}

/** Said before points: from where they are measured. */
export function sayOrigin({ hand }: Telling): string {
  return `Measure across from the ${zeroSide(hand)} edge and down from the top edge.`;
}

/** The side that distances across count from. */
export function zeroSide(hand: Hand): 'left' | 'right' {
  return hand === 'left' ? 'right' : 'left';
}

export function sayAcross(point: Point, { piece, system, hand }: Telling): string {
  return sayMeasure(acrossFrom(point.x, piece, hand), point.rounded === true, system);
}

export function sayDown(point: Point, { system }: Telling): string {
  return sayMeasure(point.y, point.rounded === true, system);
}

/** "the top left corner", "the left edge, 2 in down", "2 in across and 3 in down". */
export function sayPoint(point: Point, telling: Telling): string {
  switch (endPlace(point, telling.piece)) {
    case 'corner':
      return sayCorner(point, telling.piece);
    case 'left':
      return `the left edge, ${sayDown(point, telling)} down`;
    case 'right':
      return `the right edge, ${sayDown(point, telling)} down`;
    case 'top':
      return `the top edge, ${sayAcross(point, telling)} across`;
    case 'bottom':
      return `the bottom edge, ${sayAcross(point, telling)} across`;
    default:
      return `${sayAcross(point, telling)} across and ${sayDown(point, telling)} down`;
  }
}

/** Of the smallest rectangle round the piece. */
function sayCorner({ x, y }: Point, { width, height }: Piece): string {
  const upper = y.valueOf() < height.toMm() / 2 ? 'top' : 'bottom';
  return `the ${upper} ${x.valueOf() < width.toMm() / 2 ? 'left' : 'right'} corner`;
}

/** How far an upright or level line runs: "from top to bottom", "from the top edge to 1 1/2 in down". */
export function sayExtent(line: WorkLine, telling: Telling): string {
  const down = line.runs === 'down';
  const { piece, hand } = telling;
  const along = ({ x, y }: Point): number => (down ? y.valueOf() : acrossFrom(x, piece, hand).valueOf());
  const [first, last] = [line.from, line.to].sort((a, b) => along(a) - along(b));
  if (first === undefined || last === undefined) return '';
  const length = down ? piece.height.mm : piece.width.mm;
  const sides = down ? ['top', 'bottom'] : hand === 'left' ? ['right', 'left'] : ['left', 'right'];
  const ends = [first, last].map((point, i): { readonly edge: string | undefined; readonly at: string } => {
    const place: EndPlace = endPlace(point, piece);
    const at = down ? sayDown(point, telling) : sayAcross(point, telling);
    if (place === 'inside') return { edge: undefined, at };
    const reach = down ? point.y : acrossFrom(point.x, piece, hand);
    const extreme = nearly(reach, i === 0 ? length.sub(length) : length);
    return { edge: extreme ? sides[i] : '', at };
  });
  const [start, end] = ends;
  const word = down ? 'down' : 'across';
  if (start?.edge === undefined && end?.edge === undefined) return `from ${start?.at} to ${end?.at} ${word}`;
  if (start?.edge === '' && end?.edge === '') return `from edge to edge ${word}`;
  if (start?.edge && end?.edge) return down ? 'from top to bottom' : 'from left to right';
  const say = (one: (typeof ends)[number] | undefined): string =>
    one?.edge === undefined ? `${one?.at} ${word}` : one.edge === '' ? 'the edge' : `the ${one.edge} edge`;
  return `from ${say(start)} to ${say(end)}`;
}
