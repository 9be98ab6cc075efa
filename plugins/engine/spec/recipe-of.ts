import { formatNumber, formatSize } from '../units/index.ts';
import { scoresOf } from './scores-of.ts';
import type { Card, Crease, Piece } from './types.ts';

/** A step of a recipe as it is written in a post; read again, it gives the same sheet and scores. */
export interface RecipeLine {
  /** Named when the card has several pieces, or one that is scored both ways. */
  readonly piece?: string;
  /** `8 1/2 x 5 1/2 in`: its unit serves the scores too. */
  readonly cut: string;
  /** The side that the scores run along, when it is not the long one. */
  readonly along?: string;
  readonly score?: string;
}

/** The card as makers say it: each sheet, and its scores from the left or top end. */
export function recipeOf(card: Card): RecipeLine[] {
  return card.pieces.flatMap((piece) => linesOf(piece, card));
}

function linesOf(piece: Piece, card: Card): RecipeLine[] {
  const directions = (['down', 'across'] as const).filter((runs) => scoresOf(piece, runs).length > 0);
  const named = card.pieces.length > 1 || directions.length > 1 ? { piece: piece.name } : {};
  const cut = formatSize(piece.width, piece.height, card.system);
  if (directions.length === 0) return [{ ...named, cut }];
  return directions.map((runs) => ({
    ...named,
    cut,
    ...alongOf(piece, runs, card),
    score: scoreText(piece, runs, card),
  }));
}

/** Creases that run down are measured along the width, and the other way round. */
function alongOf(piece: Piece, runs: Crease['runs'], card: Card): { along?: string } {
  const order = piece.width.compare(piece.height);
  if (order === 0) return runs === 'down' ? {} : { along: 'down' };
  const alongWidth = runs === 'down';
  if (alongWidth === order > 0) return {};
  return { along: formatNumber(alongWidth ? piece.width : piece.height, card.system) };
}

function scoreText(piece: Piece, runs: Crease['runs'], card: Card): string {
  return scoresOf(piece, runs)
    .map(({ at, fold }) => `${formatNumber(at, card.system)}${fold === 'mountain' ? ' mountain' : ''}`)
    .join(', ');
}
