import { standingInPaper } from '../geometry/index.ts';
import type { Band, Corner, Edge, Piece } from '../spec/index.ts';
import type { Unnamed } from './panel-shapes.ts';
import type { Rim } from './rim.ts';

/** What is known of a panel beyond its shape. */
export interface Standing {
  /** Columns and rows that it is part of, other than by a shape that swings with it. */
  readonly cells: readonly { readonly column: number; readonly row: number }[];
  /** The part-cut shape that it is nothing but. */
  readonly shape: string | undefined;
  readonly rim: Rim;
}

const EDGES: readonly Edge[] = ['left', 'right', 'top', 'bottom'];
const CORNERS: readonly Corner[] = ['top-left', 'top-right', 'bottom-left', 'bottom-right'];

/** Name of the panel in a column and row: `piece`, `piece.band`, or `piece.column.row` when creases run both ways. */
export function panelName(piece: Piece, column: number, row: number): string {
  const parts = [piece.name];
  if (piece.columns.length > 1) parts.push(bandName(piece.columns, column));
  if (piece.rows.length > 1) parts.push(bandName(piece.rows, row));
  return parts.join('.');
}

/** A band without a name of its own is called by its number, counted from the left or the top. */
function bandName(bands: readonly Band[], index: number): string {
  return bands[index]?.name ?? String(index + 1);
}

/**
 * A name for each panel of a piece, in their order, each once: the piece's for an only panel; else what the maker named it by a
 * point; its column and row, when it is all there is of them; the shape that it is; an edge, then a corner, that is its alone; else
 * its number, counted from the top left.
 */
export function panelNames(piece: Piece, panels: readonly Unnamed[], standings: readonly Standing[]): string[] {
  if (panels.length === 1) return [piece.name];
  const taken = new Set<string>();
  const names: (string | undefined)[] = panels.map(() => undefined);
  const offer = (panel: number, name: string | undefined): void => {
    if (name === undefined || names[panel] !== undefined || taken.has(name)) return;
    taken.add(name);
    names[panel] = name;
  };
  const each = (nameOf: (panel: number, standing: Standing) => string | undefined): void => {
    for (const [panel, standing] of standings.entries()) offer(panel, nameOf(panel, standing));
  };
  for (const { name, at } of piece.spots) {
    const panel = panels.findIndex(({ outline, holes }) => standingInPaper(at, outline, holes) === 'inside');
    if (panel >= 0) offer(panel, `${piece.name}.${name}`);
  }
  const banded = piece.columns.length > 1 || piece.rows.length > 1;
  if (banded) each((panel, { cells }) => onlyIn(piece, standings, panel, cells));
  each((_, { shape }) => shape && `${piece.name}.${shape}`);
  for (const edge of EDGES) nameOnly(edge, (rim) => rim.edges.has(edge));
  for (const corner of CORNERS) nameOnly(corner, (rim) => rim.corners.has(corner));
  for (const panel of panels.keys())
    for (let number = panel + 1; names[panel] === undefined; number += panels.length)
      offer(panel, `${piece.name}.${number}`);
  return names.map((name) => name ?? piece.name);

  function nameOnly(word: string, has: (rim: Rim) => boolean): void {
    const holders = [...standings.keys()].filter((panel) => {
      const rim = standings[panel]?.rim;
      return rim !== undefined && has(rim);
    });
    const [only] = holders;
    if (holders.length === 1 && only !== undefined) offer(only, `${piece.name}.${word}`);
  }
}

/** The name of the one cell that a panel lies in, when nothing else lies in it. */
function onlyIn(
  piece: Piece,
  standings: readonly Standing[],
  panel: number,
  cells: Standing['cells'],
): string | undefined {
  const [cell] = cells;
  if (cell === undefined || cells.length !== 1) return undefined;
  const shared = standings.some(
    (other, number) =>
      number !== panel && other.cells.some(({ column, row }) => column === cell.column && row === cell.row),
  );
  return shared ? undefined : panelName(piece, cell.column, cell.row);
}
