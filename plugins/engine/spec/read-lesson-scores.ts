import Fraction from 'fraction.js';
import {
  halfOf,
  type LessonAmount,
  type LessonSheet,
  lengthOfAmount,
  reachOf,
  type Scoring,
  sayAmount,
  sideOfScoring,
  workedOut,
} from './read-lesson-sheets.ts';
import { type From, readFrom } from './read-lesson-sides.ts';
import { pastConvertedNumber, refuse } from './read-lesson-sizes.ts';
import { type LessonState, MOST_SCORES, numberAt, type Sentence } from './read-lesson-state.ts';
import type { NumberToken, Stretch, Token } from './read-lesson-tokens.ts';

const NO_SHEET = 'No sheet with a size comes before it.';
const REFUSED_SHEET = 'The size of its sheet is in question.';

/** A number that is a position of a crease, in a sentence about scoring or folding. The index after it. */
export function readScoreAt(sentence: Sentence, index: number, state: LessonState): number {
  const { tokens } = sentence;
  const number = numberAt(tokens, index);
  const { current } = state;
  if (number === undefined) return index + 1;
  if (refuse(number, state)) return index + 1;
  if (current === undefined || current.refused) {
    state.whys.set(number, current === undefined ? NO_SHEET : REFUSED_SHEET);
    return index + 1;
  }
  const amount = state.units.amount(number, current.height.unit);
  const known = state.side || state.turned ? -1 : indexOfScore(current.scorings.at(-1), amount);
  if (known >= 0) {
    state.use(number, ...sentence.verbs);
    sentence.verbs = [];
    sentence.events.push({ is: 'score', index: known, fresh: false, tokens: [number] });
    return pastConvertedNumber(tokens, index + 1, amount, state);
  }
  if (sentence.mode === 'fold' && !sentence.at) return index + 1;
  const next = pastConvertedNumber(tokens, index + 1, amount, state);
  const from = readFrom(tokens, next);
  if (from?.kind === 'unknown') {
    state.whys.set(number, 'A recipe counts from an end of the sheet, not from this.');
    return from.next;
  }
  addScores(sentence, number, amount, from?.kind ?? sentence.around?.from, state);
  if (from) state.use(...tokens.slice(next, from.next));
  return from?.next ?? next;
}

function addScores(
  sentence: Sentence,
  number: NumberToken,
  amount: LessonAmount,
  from: From | undefined,
  state: LessonState,
): void {
  const { current, side } = state;
  if (current === undefined) return;
  const scoring = scoringFor(current, number, state);
  const reach = reachOf(current, scoring);
  const opposite = workedOut(amount, lengthOfAmount(reach).minus(lengthOfAmount(amount)).per(unitOf(amount)));
  const before = scoring.scores.length;
  if (sentence.every) {
    addEvery(scoring, amount, reach);
    state.use(sentence.every);
    state.assume(number, `A crease at every ${sayAmount(amount)} ${amount.unit} of ${sayAmount(reach)} ${reach.unit}.`);
  } else if (from === 'end') {
    add(scoring, opposite);
    state.assume(number, `Counted from the other end: ${sayAmount(opposite)} ${opposite.unit} from the top or left.`);
  } else if (from === 'both' || from === 'four') {
    add(scoring, amount);
    add(scoring, opposite);
    if (from === 'four') addFour(current, amount);
  } else add(scoring, amount);
  if (scoring.scores.length === before) {
    state.whys.set(number, `A recipe has at most ${MOST_SCORES} creases on a side.`);
    return;
  }
  state.use(number, ...sentence.verbs, ...(side?.tokens ?? []), ...(sentence.around?.tokens ?? []));
  sentence.verbs = [];
  for (let index = before; index < scoring.scores.length; index++) {
    sentence.fresh.push({ token: number, index });
    sentence.events.push({ is: 'score', index, fresh: true, tokens: [number] });
  }
  state.side = undefined;
}

/** The scoring that the next score belongs to: a new one when the sheet has been turned or another side is named. */
function scoringFor(sheet: LessonSheet, at: Stretch, state: LessonState): Scoring {
  const last = sheet.scorings.at(-1);
  if (state.turned) {
    const side = last && sideOfScoring(sheet, last) === 'across' ? 'down' : 'across';
    state.use(...state.turned);
    state.assume(at, 'Turned by a quarter: measured along the other side.');
    state.turned = undefined;
    return start(sheet, { side, scores: [] });
  }
  if (state.side && last && last.scores.length > 0) {
    const next: Scoring = { side: state.side.side, scores: [] };
    if (sideOfScoring(sheet, next) !== sideOfScoring(sheet, last) || last.side === undefined) return start(sheet, next);
    return last;
  }
  return last ?? start(sheet, { side: state.side?.side, scores: [] });
}

function start(sheet: LessonSheet, scoring: Scoring): Scoring {
  sheet.scorings.push(scoring);
  return scoring;
}

function add(scoring: Scoring, at: LessonAmount): void {
  if (scoring.scores.length < MOST_SCORES && indexOfScore(scoring, at) < 0)
    scoring.scores.push({ at, fold: undefined });
}

function addEvery(scoring: Scoring, step: LessonAmount, reach: LessonAmount): void {
  const [length, whole] = [lengthOfAmount(step), lengthOfAmount(reach)];
  if (!length.isPositive) return;
  for (let count = 1; count <= MOST_SCORES && length.times(count).lessThan(whole); count++) {
    add(scoring, workedOut(step, step.value.mul(count)));
  }
}

/** The other two of four sides. */
function addFour(sheet: LessonSheet, amount: LessonAmount): void {
  const [last] = sheet.scorings.slice(-1);
  const side = last && sideOfScoring(sheet, last) === 'across' ? 'down' : 'across';
  const scoring = start(sheet, { side, scores: [] });
  add(scoring, amount);
  const reach = reachOf(sheet, scoring);
  add(scoring, workedOut(amount, lengthOfAmount(reach).minus(lengthOfAmount(amount)).per(unitOf(amount))));
}

function unitOf(amount: LessonAmount) {
  return lengthOfAmount({ ...amount, value: ONE });
}

const ONE = new Fraction(1);

function indexOfScore(scoring: Scoring | undefined, at: LessonAmount): number {
  return scoring?.scores.findIndex((score) => lengthOfAmount(score.at).equals(lengthOfAmount(at))) ?? -1;
}

/** `in half`, `down the middle`: a crease at half of a side. True when the words have been used. */
export function foldInHalf(sentence: Sentence, tokens: readonly Token[], state: LessonState): boolean {
  const { current } = state;
  const [at] = tokens;
  if (current === undefined || current.refused || at === undefined) return false;
  const halved = current.scorings.find((scoring) => indexOfScore(scoring, halfOf(reachOf(current, scoring))) >= 0);
  if (halved) {
    state.use(...tokens, ...sentence.verbs);
    sentence.verbs = [];
    if (halved === current.scorings.at(-1)) {
      const index = indexOfScore(halved, halfOf(reachOf(current, halved)));
      sentence.events.push({ is: 'score', index, fresh: false, tokens: [] });
    }
    return true;
  }
  if (current.scorings.some(({ scores }) => scores.length > 0)) return false;
  const named = state.side;
  const scoring = start(current, { side: named?.side, scores: [] });
  const half = halfOf(reachOf(current, scoring));
  scoring.scores.push({ at: half, fold: undefined });
  state.use(...tokens, ...sentence.verbs, ...(named?.tokens ?? []));
  sentence.verbs = [];
  state.side = undefined;
  sentence.events.push({ is: 'score', index: 0, fresh: true, tokens: [] });
  const reach = reachOf(current, scoring);
  state.assume(
    at,
    `Half of ${named ? 'that side' : 'the long side'}, ${sayAmount(reach)} ${reach.unit}: scored at ${sayAmount(half)} ${half.unit}.`,
  );
  if (named === undefined) scoring.side = 'long';
  return true;
}

/** Scores of one sentence share the unit that is written behind the last of them. */
export function shareUnits(sentence: Sentence, state: LessonState): void {
  const scores = state.current?.scorings.at(-1)?.scores;
  if (scores === undefined) return;
  for (let index = sentence.fresh.length - 2; index >= 0; index--) {
    const [own, next] = [sentence.fresh[index], sentence.fresh[index + 1]];
    if (!own || !next || own.token.unit !== undefined) continue;
    const [score, after] = [scores[own.index], scores[next.index]];
    if (score && after && score.at.unit !== after.at.unit) {
      scores[own.index] = { ...score, at: { ...score.at, unit: after.at.unit } };
    }
  }
}
