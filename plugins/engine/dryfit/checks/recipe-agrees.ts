import type { Card, Piece, RecipeStep } from '../../spec/index.ts';
import type { Length } from '../../units/index.ts';
import { finding } from '../finding.ts';
import { creasesAlong, foldsAlike, type LaidSheet, laySheet, type MatchedScore, matchScores } from '../recipe-match.ts';
import { senseOfStep, sidesOfStep } from '../recipe-sense.ts';
import type { Finding, FoldedCard } from '../types.ts';

/**
 * Whether a lesson's recipe makes sense in itself and gives the sheet and scores of the card, number by number: the
 * sheet either way round, the scores from either end, the directions seen from the face.
 *
 * A recipe is compared as written; what differs by less than a mark of the edition's ruler is the same there.
 */
export function recipeAgrees({ card }: FoldedCard): Finding[] {
  const pairs = card.lesson.map((step, index) => ({ step, piece: pieceFor(step, index, card) }));
  return pairs.flatMap(({ step, piece }) => {
    const sense = senseOfStep(step);
    if (piece === undefined) return [...sense, unknownPiece(step, card)];
    const others = pairs.filter((pair) => pair.piece === piece && pair.step !== step).map((pair) => pair.step);
    const sheet = laySheet(step, piece);
    const found = [...sheetOff(step, piece, sheet, card.mark), ...sense];
    const makesSense = sense.every(({ state }) => state !== 'fail');
    if (makesSense) found.push(...scoresOff(step, others, piece, sheet, card.mark));
    return found.length > 0 ? found : [agreement(step, piece)];
  });
}

/** A step that names no piece is for the piece in its own place in the list. */
function pieceFor(step: RecipeStep, index: number, card: Card): Piece | undefined {
  return step.piece === undefined ? card.pieces[index] : card.pieces.find(({ name }) => name === step.piece);
}

function unknownPiece(step: RecipeStep, card: Card): Finding {
  const facts = { piece: step.piece ?? '', pieces: card.pieces.map(({ name }) => name).join(', ') };
  return finding('recipe-agrees', 'piece-unknown', { facts, at: step, witness: step.piece ?? '' });
}

function agreement(step: RecipeStep, piece: Piece): Finding {
  const scores = step.scores.map(({ at }) => at);
  const facts = { piece: piece.name, width: step.width, height: step.height, scores };
  return finding('recipe-agrees', 'agrees', { facts, at: step, figure: scores.length, witness: piece.name });
}

function differs(a: Length, b: Length, mark: Length): boolean {
  return !a.minus(b).abs().lessThan(mark);
}

function sheetOff(step: RecipeStep, piece: Piece, sheet: LaidSheet, mark: Length): Finding[] {
  const sides: readonly [Length, Length][] = [
    [sheet.width, piece.width],
    [sheet.height, piece.height],
  ];
  return sides
    .filter(([wrote, takes]) => differs(wrote, takes, mark))
    .map(([wrote, takes]) => {
      const { name, width, height } = piece;
      const facts = { piece: name, wrote, takes, by: wrote.minus(takes).abs(), width, height };
      const at = { place: step.place, path: `${step.path}.cut` };
      return finding('recipe-agrees', 'sheet-side', { facts, at, figure: wrote, limit: takes, witness: name });
    });
}

/** `others` are the further steps that score the same sheet, along its other side. */
function scoresOff(
  step: RecipeStep,
  others: readonly RecipeStep[],
  piece: Piece,
  sheet: LaidSheet,
  mark: Length,
): Finding[] {
  const at = { place: step.scores[0]?.place ?? step.place, path: `${step.path}.score` };
  const creases = creasesAlong(piece, sheet.along);
  const elsewhere = creasesAlong(piece, sheet.along === 'across' ? 'down' : 'across');
  if (creases.length === 0 && step.scores.length > 0 && elsewhere.length > 0) {
    const facts = { piece: piece.name, wrote: sidesOfStep(step).side, takes: sidesOfStep(step).other };
    return [finding('recipe-agrees', 'other-side', { facts, at, witness: piece.name })];
  }
  const uneven = creases.length !== step.scores.length ? [countOff(step, piece, creases, at)] : [];
  const forgotten = others.length === 0 && elsewhere.length > 0 ? [countOff(undefined, piece, elsewhere, at)] : [];
  if (uneven.length > 0) return [...uneven, ...forgotten];
  const side = sheet.along === 'across' ? piece.width : piece.height;
  const matches = matchScores(step, creases, side, (a, b) => !differs(a, b, mark));
  return [
    ...matches
      .filter(({ wrote, takes }) => differs(wrote, takes, mark))
      .map((off) => positionOff(off, step, piece, matches)),
    ...directionsOff(step, piece, matches),
    ...forgotten,
  ];
}

function countOff(
  step: RecipeStep | undefined,
  piece: Piece,
  creases: readonly { readonly at: Length }[],
  at: Pick<RecipeStep, 'place' | 'path'>,
): Finding {
  const wrote = step?.scores.map((score) => score.at) ?? [];
  const takes = creases.map((crease) => crease.at);
  const shown = { at, figure: wrote.length, limit: takes.length, witness: piece.name };
  return finding('recipe-agrees', 'score-count', { facts: { piece: piece.name, wrote, takes }, ...shown });
}

function positionOff(off: MatchedScore, step: RecipeStep, piece: Piece, all: readonly MatchedScore[]): Finding {
  const { wrote, takes, index } = off;
  const scores = all.map((match) => match.takes);
  const facts = { piece: piece.name, wrote, takes, by: wrote.minus(takes).abs(), scores };
  const at = { place: step.scores[index]?.place ?? step.place, path: `${step.path}.score` };
  return finding('recipe-agrees', 'score-position', { facts, at, figure: wrote, limit: takes, witness: piece.name });
}

/** Every crease the other way is the same card made from the other face of the paper. */
function directionsOff(step: RecipeStep, piece: Piece, matches: readonly MatchedScore[]): Finding[] {
  const off = matches.filter((match) => !foldsAlike(match));
  if (off.length > 0 && off.length === matches.filter(({ takesFold }) => takesFold !== undefined).length) {
    const at = { place: step.place, path: `${step.path}.score` };
    return [finding('recipe-agrees', 'other-face', { facts: { piece: piece.name }, at, witness: piece.name })];
  }
  return off.flatMap(({ wrote, wroteFold, takesFold, index }) => {
    if (takesFold === undefined) return [];
    const facts = { piece: piece.name, at: wrote, wrote: wroteFold, takes: takesFold };
    const at = { place: step.scores[index]?.place ?? step.place, path: `${step.path}.score` };
    return finding('recipe-agrees', 'score-direction', { facts, at, witness: piece.name });
  });
}
