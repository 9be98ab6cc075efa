import { panelName } from '../../panels/index.ts';
import type { Band, Crease, Piece } from '../../spec/index.ts';
import { Length } from '../../units/index.ts';
import { finding } from '../finding.ts';
import type { Finding, FoldedCard } from '../types.ts';

/**
 * The least width of a panel that folds cleanly: 1/8 in, a groove of a scoring board (common practice, no source).
 * The same paper in millimetres has the same limit, put down to 3 mm.
 */
const LEAST_PANEL = { inch: Length.fromInches('1/8'), metric: Length.fromMm(3) } as const;

/** Whether each crease lies strictly inside its paper, and far enough from the edges and from other creases. */
export function scoresInside({ card }: FoldedCard): Finding[] {
  const least = LEAST_PANEL[card.system];
  return card.pieces.filter((piece) => piece.creases.length > 0).flatMap((piece) => ofPiece(piece, least));
}

function ofPiece(piece: Piece, least: Length): Finding[] {
  const outside = piece.creases.filter((crease) => !isInside(crease, sideOf(piece, crease)));
  if (outside.length > 0) return outside.map((crease) => beyondPaper(piece, crease));
  const panels = panelsOf(piece);
  const without = panels.filter(({ band }) => !band.size.isPositive);
  if (without.length > 0) {
    return without.map(({ name, band }) => {
      const facts = { piece: piece.name, panel: name, size: band.size };
      return finding('scores-inside', 'no-room', {
        facts,
        at: band,
        figure: band.size,
        limit: Length.zero,
        witness: name,
      });
    });
  }
  const narrow = panels.filter(({ band }) => band.size.lessThan(least));
  if (narrow.length > 0) {
    return narrow.map(({ name, band }) => {
      const facts = { piece: piece.name, panel: name, size: band.size, least };
      return finding('scores-inside', 'narrow', { facts, at: band, figure: band.size, limit: least, witness: name });
    });
  }
  return panels
    .toSorted((a, b) => a.band.size.compare(b.band.size))
    .slice(0, 1)
    .map(({ name, band }) => {
      const facts = { piece: piece.name, scores: piece.creases.length, panel: name, least: band.size };
      return finding('scores-inside', 'inside', { facts, at: piece, figure: band.size, limit: least, witness: name });
    });
}

function sideOf(piece: Piece, crease: Crease): Length {
  return crease.runs === 'down' ? piece.width : piece.height;
}

function isInside(crease: Crease, side: Length): boolean {
  return crease.at.isPositive && crease.at.lessThan(side);
}

function beyondPaper(piece: Piece, crease: Crease): Finding {
  const side = sideOf(piece, crease);
  const facts = { piece: piece.name, crease: crease.name, at: crease.at, side };
  return finding('scores-inside', 'outside', {
    facts,
    at: crease,
    figure: crease.at,
    limit: side,
    witness: crease.name,
  });
}

/** The bands of the sides that are divided, called as the panels between the creases are. */
function panelsOf(piece: Piece): { name: string; band: Band }[] {
  const columns =
    piece.columns.length > 1 ? piece.columns.map((band, i) => ({ name: columnName(piece, i), band })) : [];
  const rows = piece.rows.length > 1 ? piece.rows.map((band, i) => ({ name: rowName(piece, i), band })) : [];
  return [...columns, ...rows];
}

function columnName(piece: Piece, column: number): string {
  return piece.columns[column]?.name ?? panelName(piece, column, 0);
}

function rowName(piece: Piece, row: number): string {
  return piece.rows[row]?.name ?? panelName(piece, 0, row);
}
