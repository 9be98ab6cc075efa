import { Length } from '../units/index.ts';
import type { Line } from './card-types.ts';
import type { Crease, FoldDirection, Piece } from './types.ts';

/** A crease square to a side of its piece, as a scoring board has it: one distance from the left or the top. */
export interface Score {
  readonly runs: Crease['runs'];
  readonly at: Length;
  /** Undefined when it is worked both ways, or folds one way on one stretch and the other way on another. */
  readonly fold: FoldDirection | undefined;
}

/** The scores of a piece that run one way, nearest first. Creases of part width on one line are one score. */
export function scoresOf(piece: Piece, runs: Crease['runs']): Score[] {
  const scores: Score[] = piece.creases.filter((crease) => crease.runs === runs);
  for (const line of piece.lines) {
    const at = line.does === 'crease' ? distanceOf(line, runs) : undefined;
    if (at === undefined) continue;
    const same = scores.findIndex((score) => score.at.equals(at));
    const [only] = new Set(line.folds).size === 1 ? line.folds : [];
    const fold = only === 'both' ? undefined : only;
    const before = scores[same];
    if (before === undefined) scores.push({ runs, at, fold });
    else if (before.fold !== fold) scores[same] = { ...before, fold: undefined };
  }
  return scores.toSorted((a, b) => a.at.compare(b.at));
}

function distanceOf({ from, to }: Line, runs: Crease['runs']): Length | undefined {
  const [start, end] = runs === 'down' ? [from.x, to.x] : [from.y, to.y];
  return start.equals(end) ? Length.fromMm(start) : undefined;
}
