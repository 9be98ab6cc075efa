import { closedPose } from '../assembly/index.ts';
import { panelsOf } from '../panels/index.ts';
import type { Card, Piece, Pose } from '../spec/index.ts';
import type { FoldedCard } from './types.ts';

/** What a post says of paper and envelope for one edition of a card. */
export type PaperInUse = Pick<FoldedCard, 'asked' | 'envelope' | 'clearance' | 'sheets' | 'promised'>;

/**
 * The card folded in its closed pose: the pose called `closed`, or every crease shut when there is none.
 *
 * The pieces that fold are folded; when none does, each flat piece is its own closed pose. A piece with a crease off
 * its paper, or two in one place, is left out, since it has no panels to speak of; `scores-inside` reports it.
 */
export function foldCard(card: Card, paper: PaperInUse): FoldedCard {
  const panelling = panelsOf(card);
  const pose = card.poses.find(({ name }) => name === 'closed') ?? allShut(card);
  const closed = closingPieces(card)
    .filter(isScoredInside)
    .map((piece) => closedPose(piece, panelling, pose));
  return { card, panelling, closed, ...paper };
}

/** The pieces whose closed pose matters: those that fold or, in a card without creases, all. */
export function closingPieces(card: Card): readonly Piece[] {
  const folding = card.pieces.filter((piece) => piece.creases.length > 0);
  return folding.length > 0 ? folding : card.pieces;
}

/** Every panel has some width and height. */
export function isScoredInside(piece: Piece): boolean {
  return [...piece.columns, ...piece.rows].every((band) => band.size.isPositive);
}

function allShut(card: Card): Pose {
  return {
    name: 'closed',
    turns: card.pieces.flatMap((piece) =>
      piece.creases.map((crease) => ({ piece: piece.name, crease: crease.name, turn: 'shut' as const })),
    ),
  };
}
