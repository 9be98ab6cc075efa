import { type FoldDirection, type Piece, type RecipeStep, type Score, scoresOf } from '../spec/index.ts';
import { Length } from '../units/index.ts';

/** A recipe's sheet laid on a piece, in the way round that fits it best. */
export interface LaidSheet {
  /** Sides of the recipe's sheet that lie along the piece's width and height. */
  readonly width: Length;
  readonly height: Length;
  /** The way the recipe's scores are counted, on the piece's drawing. */
  readonly along: 'across' | 'down';
}

/** A crease of the piece beside the score that the recipe gives for it, both from the same end. */
export interface MatchedScore {
  readonly wrote: Length;
  readonly takes: Length;
  readonly wroteFold: FoldDirection;
  /** Undefined for a crease that does not fold one way all along: a recipe has no word for that. */
  readonly takesFold: FoldDirection | undefined;
  /** Index of the score in the recipe. */
  readonly index: number;
}

/** The recipe's sheet as drawn or turned, whichever is nearer; of two as near, the one scored as the piece is. */
export function laySheet(step: RecipeStep, piece: Piece): LaidSheet {
  const asDrawn: LaidSheet = { width: step.width, height: step.height, along: step.along };
  const turned: LaidSheet = {
    width: step.height,
    height: step.width,
    along: step.along === 'across' ? 'down' : 'across',
  };
  const off = (sheet: LaidSheet): Length =>
    sheet.width.minus(piece.width).abs().plus(sheet.height.minus(piece.height).abs());
  const scored = (sheet: LaidSheet): number => (creasesAlong(piece, sheet.along).length > 0 ? 0 : 1);
  const nearer = off(turned).compare(off(asDrawn)) || scored(turned) - scored(asDrawn);
  return nearer < 0 ? turned : asDrawn;
}

/** The creases that are met in going along a side, nearest first. */
export function creasesAlong(piece: Piece, along: 'across' | 'down'): Score[] {
  return scoresOf(piece, along === 'across' ? 'down' : 'across');
}

/** Whether a score that the recipe gives is folded as the piece's crease is, as far as that has one direction. */
export function foldsAlike({ wroteFold, takesFold }: MatchedScore): boolean {
  return takesFold === undefined || wroteFold === takesFold;
}

/**
 * Scores paired with as many creases, counted from whichever end agrees better: in position first, then in direction,
 * then in the sum of differences. `same` says which positions agree.
 */
export function matchScores(
  step: RecipeStep,
  creases: readonly Score[],
  side: Length,
  same: (a: Length, b: Length) => boolean,
): MatchedScore[] {
  const scores = step.scores.map((score, index) => ({ ...score, index })).toSorted((a, b) => a.at.compare(b.at));
  const pair = (takes: readonly Pick<Score, 'at' | 'fold'>[]): MatchedScore[] =>
    scores.flatMap((score, i) => {
      const crease = takes[i];
      if (crease === undefined) return [];
      return [{ wrote: score.at, takes: crease.at, wroteFold: score.fold, takesFold: crease.fold, index: score.index }];
    });
  const fromStart = pair(creases);
  const fromEnd = pair(creases.toReversed().map((crease) => ({ at: side.minus(crease.at), fold: crease.fold })));
  return worse(fromStart, fromEnd, same) > 0 ? fromEnd : fromStart;
}

function worse(
  one: readonly MatchedScore[],
  other: readonly MatchedScore[],
  same: (a: Length, b: Length) => boolean,
): number {
  const misplaced = (pairs: readonly MatchedScore[]) => pairs.filter(({ wrote, takes }) => !same(wrote, takes)).length;
  const misdirected = (pairs: readonly MatchedScore[]) => pairs.filter((pair) => !foldsAlike(pair)).length;
  const distance = (pairs: readonly MatchedScore[]) =>
    Length.sum(pairs.map(({ wrote, takes }) => wrote.minus(takes).abs()));
  return (
    misplaced(one) - misplaced(other) || misdirected(one) - misdirected(other) || distance(one).compare(distance(other))
  );
}
