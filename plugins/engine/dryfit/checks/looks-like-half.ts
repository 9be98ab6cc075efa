import type { Band, Card, Piece } from '../../spec/index.ts';
import { Length } from '../../units/index.ts';
import { finding } from '../finding.ts';
import type { Finding, FoldedCard } from '../types.ts';

/** Halves that differ by at most this part of the sheet look like a slip (our own judgement, no source). */
const SLIP_PART = '1/8';

/**
 * A piece with one crease whose two panels are nearly equal was most likely meant to be folded in half.
 *
 * Not asked when the card declares how they differ: an equality between measures (checked by itself) names the piece,
 * or the difference is one of the card's parameters, as a short front's is, to less than a mark.
 */
export function looksLikeHalf({ card }: FoldedCard): Finding[] {
  return card.pieces.flatMap((piece) => {
    const [first, second, ...more] = piece.columns.length > 1 ? piece.columns : piece.rows;
    if (piece.creases.length !== 1 || !first || !second || more.length > 0) return [];
    if (!first.size.isPositive || !second.size.isPositive || isDeclared(card, piece, first, second)) return [];
    return ofHalves(piece, first, second);
  });
}

function ofHalves(piece: Piece, first: Band, second: Band): Finding[] {
  const total = first.size.plus(second.size);
  const half = total.dividedBy(2);
  const apart = first.size.minus(second.size).abs();
  const at = piece.creases[0] ?? piece;
  const shown = { at, figure: first.size, limit: half, witness: piece.creases[0]?.name ?? piece.name };
  if (apart.isZero)
    return [finding('looks-like-half', 'even', { facts: { piece: piece.name, half, total }, ...shown })];
  if (apart.moreThan(total.times(SLIP_PART))) return [];
  const [firstName, secondName] = [first.name ?? 'the first panel', second.name ?? 'the second panel'];
  const facts = {
    piece: piece.name,
    first: firstName,
    second: secondName,
    firstSize: first.size,
    secondSize: second.size,
    half,
    total,
  };
  return [finding('looks-like-half', 'uneven', { facts, ...shown })];
}

function isDeclared(card: Card, piece: Piece, first: Band, second: Band): boolean {
  const apart = first.exact.minus(second.exact).abs();
  const byEquality = card.equalities.some(({ measures }) =>
    measures.some(({ text }) => text.trim().startsWith(`${piece.name}.`)),
  );
  return (
    byEquality ||
    card.parameters.some(({ value }) => value instanceof Length && value.minus(apart).abs().lessThan(card.mark))
  );
}
