import type { LessonScore, LessonSheet } from './read-lesson-sheets.ts';
import { type FoldEvent, type LessonState, type Sentence, wordAt } from './read-lesson-state.ts';
import type { Token } from './read-lesson-tokens.ts';
import { EVERY, ORDINALS, OTHERS, TO_AND_FRO } from './read-lesson-words.ts';

/** A direction, a crease by its number, or pleating. The index after it, or undefined when none of them stands there. */
export function readFoldWord(sentence: Sentence, index: number): number | undefined {
  const { tokens, events } = sentence;
  const word = wordAt(tokens, index) ?? '';
  const direction = directionAt(tokens, index);
  if (direction) {
    events.push({ is: 'fold', fold: direction.fold, tokens: tokens.slice(index, direction.next) });
    if (sentence.mode === undefined || sentence.mode === 'cut') sentence.mode = 'fold';
    return direction.next;
  }
  const fro = backAndForth(tokens, index);
  if (fro !== undefined) {
    events.push({ is: 'pleat', tokens: tokens.slice(index, fro) });
    return fro;
  }
  const ordinal = ORDINALS.get(word);
  const own = tokens.slice(index, index + 1);
  if (ordinal !== undefined) events.push({ is: 'nth', index: ordinal, tokens: own });
  else if (EVERY.has(word)) events.push({ is: 'every', tokens: own });
  else if (OTHERS.has(word)) events.push({ is: 'others', tokens: own });
  else return undefined;
  return index + 1;
}

function directionAt(
  tokens: readonly Token[],
  index: number,
): { fold: 'valley' | 'mountain'; next: number } | undefined {
  const [word, second, third] = [0, 1, 2].map((step) => wordAt(tokens, index + step) ?? '');
  const you = /^you(?:rself)?$/u;
  const folds = (next: number): number => (/^folds?$/u.test(wordAt(tokens, next) ?? '') ? next + 1 : next);
  if (/^valleys?(?:-folds?|-folded)?$/u.test(word ?? '')) return { fold: 'valley', next: folds(index + 1) };
  if (/^mountains?(?:-folds?|-folded)?$/u.test(word ?? '')) return { fold: 'mountain', next: folds(index + 1) };
  if (/^towards?$/u.test(word ?? '') && you.test(second ?? '')) return { fold: 'valley', next: index + 2 };
  if (word === 'away' && second === 'from' && you.test(third ?? '')) return { fold: 'mountain', next: index + 3 };
  if (/^backwards?$/u.test(word ?? '')) return { fold: 'mountain', next: index + 1 };
  if (/^forwards?$/u.test(word ?? '')) return { fold: 'valley', next: index + 1 };
  return undefined;
}

function backAndForth(tokens: readonly Token[], index: number): number | undefined {
  const [word, second, third] = [0, 1, 2].map((step) => wordAt(tokens, index + step) ?? '');
  if (TO_AND_FRO.has(word ?? '')) return index + 1;
  if (word === 'back' && second === 'and' && third === 'forth') return index + 3;
  if (word === 'opposite' && /^(?:ways|directions)$/u.test(second ?? '')) return index + 2;
  return undefined;
}

/** Gives the creases of a sentence the directions that it says. Words that say it of no crease stay unused. */
export function settleFolds(sentence: Sentence, state: LessonState): void {
  const { events } = sentence;
  const sheet = state.current;
  if (sheet === undefined || sheet.refused) return;
  const pleats = events.filter(({ is }) => is === 'pleat');
  if (pleats.length > 0) {
    pleat(sheet, sentence, state);
    return;
  }
  const scores = sheet.scorings.at(-1)?.scores ?? [];
  const directions = events.filter(({ is }) => is === 'fold');
  const things = events.filter(({ is }) => is !== 'fold');
  const [only] = directions;
  if (things.length === 0) {
    const all = sheet.scorings.flatMap((scoring) => scoring.scores);
    if (only?.is === 'fold' && directions.length === 1 && all.length === 1 && all[0]) give(all, only, [], state);
    return;
  }
  if (directions.length === 0) return;
  if (events[0]?.is === 'fold') giveAfter(events, scores, state);
  else giveBefore(events, scores, state);
}

/** `mountain at 2 3/4, valley at 5 1/2`: a direction serves all creases up to the next one. */
function giveAfter(events: readonly FoldEvent[], scores: readonly LessonScore[], state: LessonState): void {
  let said: (FoldEvent & { is: 'fold' }) | undefined;
  for (const event of events) {
    if (event.is === 'fold') said = event;
    else if (said) give(creasesOf(event, scores), said, event.tokens, state);
  }
}

/** `2 3/4 mountain, 5 1/2 valley`; `the first and third mountain`: a direction follows what it is said of. */
function giveBefore(events: readonly FoldEvent[], scores: readonly LessonScore[], state: LessonState): void {
  let waiting: FoldEvent[] = [];
  for (const event of events) {
    if (event.is !== 'fold') {
      waiting.push(event);
      continue;
    }
    const plural = event.tokens.some(
      (token) => token.kind === 'word' && /^(?:folds|mountains|valleys)$/u.test(token.word),
    );
    const fresh = waiting.every((one) => one.is === 'score' && one.fresh);
    const meant = fresh && !plural ? waiting.slice(-1) : waiting;
    const [first] = waiting;
    if (meant.length < waiting.length && first) {
      const [token] = event.tokens;
      if (token) state.assume(token, 'Said of the crease before it, not of those before that.');
    }
    for (const one of meant) give(creasesOf(one, scores), event, one.tokens, state);
    waiting = [];
  }
}

function creasesOf(event: FoldEvent, scores: readonly LessonScore[]): LessonScore[] {
  const one = (index: number): LessonScore[] => {
    const score = scores[index < 0 ? scores.length + index : index];
    return score ? [score] : [];
  };
  switch (event.is) {
    case 'score':
    case 'nth':
      return one(event.index);
    case 'every':
      return [...scores];
    case 'others':
      return scores.filter(({ fold }) => fold === undefined);
    default:
      return [];
  }
}

function give(
  creases: readonly LessonScore[],
  said: FoldEvent & { is: 'fold' },
  tokens: readonly Token[],
  state: LessonState,
): void {
  if (creases.length === 0) return;
  for (const crease of creases) crease.fold = said.fold;
  state.use(...said.tokens, ...tokens);
}

function pleat(sheet: LessonSheet, { events }: Sentence, state: LessonState): void {
  const first = events.find((event) => event.is === 'fold');
  sheet.pleated = first?.is === 'fold' ? first.fold : 'valley';
  for (const event of events) if (event.is === 'pleat' || event.is === 'fold') state.use(...event.tokens);
  const [token] = events.find(({ is }) => is === 'pleat')?.tokens ?? [];
  if (token && first === undefined) {
    state.assume(
      token,
      'Folded to and fro: the lesson does not say how the first crease goes; it is taken as a valley.',
    );
  }
}

/** Every crease that pleating or nothing has been said of gets its direction. */
export function settlePleats(sheet: LessonSheet): void {
  if (sheet.pleated === undefined) return;
  for (const { scores } of sheet.scorings) {
    const order = [...scores].sort((a, b) => a.at.value.compare(b.at.value));
    order.forEach((score, index) => {
      const other = sheet.pleated === 'valley' ? 'mountain' : 'valley';
      score.fold ??= index % 2 === 0 ? sheet.pleated : other;
    });
  }
}
