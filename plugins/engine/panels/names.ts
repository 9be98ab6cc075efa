import type { Band, Piece } from '../spec/index.ts';

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
