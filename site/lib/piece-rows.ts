import { type Band, type Crease, creaseLabel, type Length, type Piece, sayName } from '../../plugins/engine/index.ts';

/** One line of a piece's table: a band with its size, or a crease with its distance from the zero edge. */
export type PieceRow =
  | { readonly kind: 'band'; readonly label: string; readonly at: Length; readonly size: Length }
  | { readonly kind: 'crease'; readonly label: string; readonly at: Length };

/** A side of a piece that is divided by creases, read from its zero edge. */
export interface PieceSide {
  readonly heading: string;
  readonly rows: readonly PieceRow[];
}

/** The divided sides of a piece, across before down, each row where a maker with a ruler meets it. */
export function sidesOf(piece: Piece): readonly PieceSide[] {
  const across = { heading: 'Across, from the left edge', rows: rowsOf(piece.columns, piece.creases, 'down') };
  const down = { heading: 'Down, from the top edge', rows: rowsOf(piece.rows, piece.creases, 'across') };
  return [across, down].filter((side) => side.rows.length > 1);
}

function rowsOf(bands: readonly Band[], creases: readonly Crease[], runs: Crease['runs']): readonly PieceRow[] {
  const bandRows = bands.map(
    ({ name, start, size }): PieceRow => ({ kind: 'band', label: sayName(name ?? 'panel'), at: start, size }),
  );
  const creaseRows = creases
    .filter((crease) => crease.runs === runs)
    .map((crease): PieceRow => ({ kind: 'crease', label: creaseLabel(crease), at: crease.at }));
  return [...bandRows, ...creaseRows].sort((a, b) => a.at.compare(b.at) || (a.kind === 'crease' ? -1 : 1));
}
