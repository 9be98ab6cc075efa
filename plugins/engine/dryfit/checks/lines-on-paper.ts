import type { PanelSlip } from '../../panels/index.ts';
import type { Piece } from '../../spec/index.ts';
import { finding } from '../finding.ts';
import { isScoredInside } from '../fold-card.ts';
import type { Finding, FoldedCard } from '../types.ts';

/**
 * Whether every line, window and shape is on the paper and does what it should. Of a piece whose bands do not fit on it
 * `scores-inside` speaks; of a piece that is nothing but bands there is nothing to say.
 */
export function linesOnPaper({ card, assembly }: FoldedCard): Finding[] {
  return card.pieces.filter(isScoredInside).flatMap((piece) => {
    const slips = assembly.slips.panels.filter((slip) => slip.piece === piece.name);
    if (slips.length > 0) return slips.map((slip) => slipped(piece, slip));
    const lines = [...piece.lines, ...piece.windows, ...piece.away, ...piece.shapes].length;
    if (lines === 0) return [];
    return [finding('lines-on-paper', 'on-paper', { facts: { piece: piece.name, lines }, at: piece, figure: lines })];
  });
}

function slipped(piece: Piece, slip: PanelSlip): Finding {
  const all = [...piece.creases, ...piece.lines, ...piece.windows, ...piece.away, ...piece.shapes, ...piece.spots];
  const at = all.find(({ name }) => name === slip.name) ?? piece;
  const facts = { piece: piece.name, line: slip.name };
  const shown = { at, witness: slip.name };
  switch (slip.is) {
    case 'divides-nothing':
      return finding('lines-on-paper', slip.is, { facts: { ...facts, stretch: slip.stretch }, ...shown });
    case 'stretch-count': {
      const { wrote, takes } = slip;
      return finding('lines-on-paper', slip.is, {
        facts: { ...facts, wrote, takes },
        ...shown,
        figure: wrote,
        limit: takes,
      });
    }
    case 'falls-apart': {
      const { parts } = slip;
      const cut = { facts: { piece: piece.name, parts }, at: piece, witness: piece.name, figure: parts, limit: 1 };
      return finding('lines-on-paper', slip.is, cut);
    }
    case 'overlap':
      return finding('lines-on-paper', slip.is, { facts: { ...facts, other: slip.other }, ...shown });
    case 'too-many-panels': {
      const { count, before, limit } = slip;
      const all = { ...facts, count, before, limit };
      return finding('lines-on-paper', slip.is, { facts: all, ...shown, figure: before + count, limit });
    }
    default:
      return finding('lines-on-paper', slip.is, { facts, ...shown });
  }
}
