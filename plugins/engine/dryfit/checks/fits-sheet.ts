import { materialOf } from '../../layers/index.ts';
import type { Piece } from '../../spec/index.ts';
import { Length } from '../../units/index.ts';
import { finding } from '../finding.ts';
import { nextSize, roomIn, sidesOf } from '../sizes.ts';
import type { Finding, FoldedCard } from '../types.ts';

/**
 * Whether each piece can be cut from the sheet of its stock, either way round. One piece and one sheet at a time: grain
 * and what else is to come from the sheet are not looked at here.
 */
export function fitsSheet(folded: FoldedCard): Finding[] {
  return folded.card.pieces.filter((piece) => !isTape(piece, folded)).map((piece) => onSheet(piece, folded));
}

/** Foam that its supply gives no sheet for is sold as tape, and its piece is laid of strips. */
function isTape({ stock }: Piece, { materials }: FoldedCard): boolean {
  const { sort, sheet, assumed } = materialOf(stock, materials);
  return sort === 'foam' && sheet === undefined && !assumed;
}

function onSheet(piece: Piece, { asked, card, sheets }: FoldedCard): Finding {
  const sheet = sheets[piece.stock] ?? sheets[''];
  const cut = { piece: piece.name, width: piece.width, height: piece.height };
  const inner = sidesOf(piece);
  const at = asked ?? piece;
  if (sheet === undefined) {
    const instead = nextSize('sheet', card.system, inner, Length.zero);
    return finding('fits-sheet', 'no-sheet', { facts: { ...cut, stock: piece.stock, instead }, at });
  }
  const { along, across, least } = roomIn(sidesOf(sheet), inner);
  const facts = { ...cut, sheet: sheet.name, along, across };
  const shown = { at, figure: least, limit: Length.zero, witness: piece.name };
  if (!least.lessThan(Length.zero)) return finding('fits-sheet', 'fits', { facts, ...shown });
  const instead = nextSize('sheet', card.system, inner, Length.zero);
  return finding('fits-sheet', 'too-big', { facts: { ...facts, instead }, ...shown });
}
