import { refuse } from './read-lesson-sizes.ts';
import { type LessonState, numberAt, type Sentence, wordAt } from './read-lesson-state.ts';
import type { Token } from './read-lesson-tokens.ts';
import { LONG, SHORT, SIDE_WORDS } from './read-lesson-words.ts';

/** A side by its length or by a word: `the 11 in side`, `the long edge`. The index after it, or undefined. */
export function readSideAt(sentence: Sentence, index: number, state: LessonState): number | undefined {
  const { tokens } = sentence;
  const number = numberAt(tokens, index);
  const start = number ? index + 1 : index;
  const word = wordAt(tokens, start) ?? '';
  const longOrShort = LONG.has(word) ? 'long' : SHORT.has(word) ? 'short' : undefined;
  const last = longOrShort ? start + 1 : start;
  const noun = wordAt(tokens, last) ?? '';
  if (!SIDE_WORDS.has(noun) && !(longOrShort && !number && /^(?:way|length|end)$/u.test(noun))) return undefined;
  if (!number && !longOrShort) return undefined;
  const taken = tokens.slice(index, last + 1);
  if (number && refuse(number, state)) return last + 1;
  const side = number ? state.units.amount(number, state.current?.height.unit) : (longOrShort ?? 'long');
  const scoring = state.current?.scorings.at(-1);
  // After the scores of its sentence it is theirs; before them it waits.
  if (sentence.fresh.length > 0 && scoring && scoring.side === undefined) {
    scoring.side = side;
    state.use(...taken);
  } else state.side = { side, tokens: taken };
  return last + 1;
}

/** `all four sides`, `each end`, before the position. The index after it, or undefined. */
export function readAround(sentence: Sentence, index: number): number | undefined {
  if (sentence.mode !== 'score') return undefined;
  const { tokens } = sentence;
  let last = index;
  while (/^(?:all|four|both|each|of|the)$/u.test(wordAt(tokens, last) ?? '')) last++;
  if (last === index || !/^(?:sides?|edges?|ends?)$/u.test(wordAt(tokens, last) ?? '')) return undefined;
  const words = tokens.slice(index, last).flatMap((token) => (token.kind === 'word' ? [token.word] : []));
  const four = words.includes('four') || words.includes('all');
  if (!four && !words.some((word) => word === 'both' || word === 'each')) return undefined;
  sentence.around = { from: four ? 'four' : 'both', tokens: tokens.slice(index, last + 1) };
  return last + 1;
}

export type From = 'start' | 'end' | 'both' | 'four' | 'unknown';

const NEUTRAL = new Set(['the', 'edge', 'side', 'end', 'edges', 'sides', 'ends', 'of', 'in', 'short', 'long', 'outer']);

/** `from the left`, `from each end`: where a position counts from, and the index after it. */
export function readFrom(tokens: readonly Token[], index: number): { kind: From; next: number } | undefined {
  if (wordAt(tokens, index) !== 'from' && !(wordAt(tokens, index) === 'in' && wordAt(tokens, index + 1) === 'from'))
    return undefined;
  let at = wordAt(tokens, index) === 'from' ? index + 1 : index + 2;
  let kind: From | undefined;
  for (; at < tokens.length && at < index + 8; at++) {
    const word = wordAt(tokens, at) ?? '';
    const said = FROM_WORDS.get(word);
    if (said && kind === undefined) kind = said;
    else if (word === 'four' || (word === 'all' && kind === undefined)) kind = 'four';
    else if (!NEUTRAL.has(word)) break;
    else if (/^(?:edge|side|end)s?$/u.test(word)) {
      at++;
      break;
    }
  }
  return { kind: kind ?? 'unknown', next: at };
}

const FROM_WORDS: ReadonlyMap<string, From> = new Map([
  ['left', 'start'],
  ['top', 'start'],
  ['right', 'end'],
  ['bottom', 'end'],
  ['other', 'end'],
  ['opposite', 'end'],
  ['each', 'both'],
  ['both', 'both'],
  ['either', 'both'],
]);
