import Fraction from 'fraction.js';
import type { Point } from '../geometry/index.ts';
import type { Corner, GlueJoin, Line, PanelRef } from './card-types.ts';
import type { Rectangle } from './outlines.ts';
import { point, ZERO } from './plane.ts';
import type { Band, Piece, PieceSpec } from './types.ts';
import { CORNERS } from './words.ts';

/** One of the four cells where a first or last column meets a first or last row. */
export interface CornerCell {
  readonly corner: Corner;
  /** `column.row`. */
  readonly name: string;
  readonly column: Band;
  readonly row: Band;
  readonly rectangle: Rectangle;
  /** The corner of the cell that lies on the floor of the box. */
  readonly inner: Point;
}

/** The four corner cells of a piece with bands both ways. */
export function cornerCells(piece: Piece): CornerCell[] {
  const { columns, rows } = piece;
  if (columns.length < 2 || rows.length < 2) return [];
  return CORNERS.flatMap((corner) => {
    const [across, down] = [
      corner.endsWith('left') ? 0 : columns.length - 1,
      corner.startsWith('top') ? 0 : rows.length - 1,
    ];
    const [column, row] = [columns[across], rows[down]];
    if (column === undefined || row === undefined) return [];
    const rectangle = cellRectangle(piece, across, down);
    const { left, top, width, height } = rectangle;
    const inner = point(across === 0 ? left.add(width) : left, down === 0 ? top.add(height) : top);
    const name = `${column.name ?? across + 1}.${row.name ?? down + 1}`;
    return [{ corner, name, column, row, rectangle, inner }];
  });
}

/** Where a column and a row meet; -1 for all of them. */
export function cellRectangle({ columns, rows, width, height }: Piece, column: number, row: number): Rectangle {
  const [across, down] = [columns[column], rows[row]];
  return {
    left: across?.start.mm ?? ZERO,
    top: down?.start.mm ?? ZERO,
    width: (across?.size ?? width).mm,
    height: (down?.size ?? height).mm,
  };
}

/** `corners: tabs`: each corner cell is cut from the wall above or below, and stays with the wall at its side. */
export function tabCuts(spec: PieceSpec, piece: Piece): Line[] {
  if (spec.corners !== 'tabs') return [];
  return cornerCells(piece).map(({ name, rectangle: { top, height }, inner }) => {
    const [from, to] = [point(inner.x, top), point(inner.x, top.add(height))];
    return { name, family: name, does: 'cut', from, to, folds: [], place: spec.place, path: spec.path };
  });
}

/**
 * The glue that `corners: tabs` brings with it: the back of each tab onto the face of the head or foot wall, vertex on vertex, turned by a
 * quarter so that it lies along that wall when the walls and the tab stand at 90 degrees.
 */
export function tabJoins(spec: PieceSpec, piece: Piece): GlueJoin[] {
  if (spec.corners !== 'tabs') return [];
  return cornerCells(piece).map(({ corner, name, column, row, inner }) => {
    const middle = piece.columns.at(corner.endsWith('left') ? 1 : -2);
    const origin = { place: spec.place, path: spec.path };
    const panel = (across: Band | undefined): PanelRef => ({
      piece: piece.name,
      part: { is: 'cell', column: across?.name, row: row.name },
      text: `${piece.name}.${across?.name ?? ''}.${row.name ?? ''}`,
      ...origin,
    });
    const clockwise = corner === 'top-left' || corner === 'bottom-right';
    return {
      is: 'glue',
      part: panel(column),
      onto: panel(middle),
      p: inner,
      q: inner,
      turn: { cos: new Fraction(0), sin: new Fraction(clockwise ? 1 : -1) },
      partSide: 'back',
      ontoSide: 'face',
      foam: undefined,
      laid: undefined,
      implied: true,
      text: `${piece.name}.${name} onto ${panel(middle).text}`,
      ...origin,
    };
  });
}
