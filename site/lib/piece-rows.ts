import {
  type Band,
  type Crease,
  creaseLabel,
  Length,
  type Line,
  lineLabel,
  type Piece,
  sayName,
} from '../../plugins/engine/index.ts';

/**
 * One row of a piece's table: a band with its size, or a crease with its distance from the zero edge; any other line square
 * to the edges with its distance and its length.
 */
export type PieceRow =
  | { readonly kind: 'band'; readonly label: string; readonly at: Length; readonly size: Length }
  | { readonly kind: 'crease'; readonly label: string; readonly at: Length }
  | { readonly kind: 'line'; readonly label: string; readonly at: Length; readonly size: Length };

/** A side of a piece that is divided, read from its zero edge. */
export interface PieceSide {
  readonly heading: string;
  readonly rows: readonly PieceRow[];
}

/** The divided sides of a piece, across before down, each row where a maker with a ruler meets it. */
export function sidesOf(piece: Piece): readonly PieceSide[] {
  const across = { heading: 'Across, from the left edge', rows: rowsOf(piece, piece.columns, 'down') };
  const down = { heading: 'Down, from the top edge', rows: rowsOf(piece, piece.rows, 'across') };
  return [across, down].filter((side) => side.rows.length > 1);
}

function rowsOf(piece: Piece, bands: readonly Band[], runs: Crease['runs']): readonly PieceRow[] {
  const bandRows = bands.map(
    ({ name, start, size }): PieceRow => ({ kind: 'band', label: sayName(name ?? 'panel'), at: start, size }),
  );
  const creaseRows = piece.creases
    .filter((crease) => crease.runs === runs)
    .map((crease): PieceRow => ({ kind: 'crease', label: creaseLabel(crease), at: crease.at }));
  const lineRows = piece.lines.flatMap((line) => lineRow(line, runs) ?? []);
  return [...bandRows, ...creaseRows, ...lineRows].sort((a, b) => a.at.compare(b.at) || ORDER[a.kind] - ORDER[b.kind]);
}

/** At one distance the line is met before the band that begins there. */
const ORDER: Readonly<Record<PieceRow['kind'], number>> = { crease: 0, line: 1, band: 2 };

/** Undefined for a line that does not run that way. */
function lineRow({ name, does, folds, from, to }: Line, runs: Crease['runs']): PieceRow | undefined {
  const [at, end] = runs === 'down' ? [from.x, to.x] : [from.y, to.y];
  if (!at.equals(end)) return undefined;
  const size = runs === 'down' ? to.y.sub(from.y) : to.x.sub(from.x);
  const fold = new Set(folds).size === 1 ? folds[0] : undefined;
  return {
    kind: 'line',
    label: lineLabel({ name, does, fold }),
    at: Length.fromMm(at),
    size: Length.fromMm(size.abs()),
  };
}
