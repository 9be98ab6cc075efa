import Fraction from 'fraction.js';
import { findNamedSize, lengthOf, type Unit } from '../units/index.ts';
import { halfOf, type LessonAmount, lengthOfAmount, sayAmount } from './read-lesson-sheets.ts';
import { cut, isOutside, pastConversion } from './read-lesson-sizes.ts';
import { type LessonState, type Sentence, wordAt } from './read-lesson-state.ts';
import type { Token } from './read-lesson-tokens.ts';

/** A sheet by its name, as `A4`. The index after it, or undefined. */
export function readNamedSheet(sentence: Sentence, index: number, state: LessonState): number | undefined {
  const { tokens } = sentence;
  const token = tokens[index];
  const word = wordAt(tokens, index) ?? '';
  const letter =
    /^letter(?:-sized?)?$/u.test(word) &&
    /^(?:sheet|size|sized|paper|cardstock)$/u.test(wordAt(tokens, index + 1) ?? '-');
  if (token === undefined || !(/^a[3-7]$/u.test(word) || letter || /^letter-sized?$/u.test(word))) return undefined;
  if (isOutside(tokens, index, index)) return undefined;
  const named = findNamedSize(/^a/u.test(word) ? `ISO ${word.toUpperCase()}` : 'US Letter', 'sheet').value;
  if (named === undefined) return undefined;
  const amount = (length: typeof named.width, unit: Unit): LessonAmount => ({
    start: token.start,
    end: token.end,
    value: length.per(lengthOf(ONE, unit)),
    shape: unit === 'in' ? 'mixed' : 'decimal',
    unit,
  });
  const { width, height, unit } = named;
  const size = {
    width: amount(width, unit),
    height: amount(height, unit),
    tokens: [token],
    last: index,
    refused: false,
  };
  if (sentence.mode === 'finished') {
    state.finished = size;
    state.use(token, ...sentence.verbs);
    sentence.verbs = [];
    return index + 1;
  }
  cut(sentence, index, size, state);
  if (
    wordAt(tokens, index - 1) === 'half' ||
    (/^(?:an?|of)$/u.test(wordAt(tokens, index - 1) ?? '') && wordAt(tokens, index - 2) === 'half')
  ) {
    const half = [index - 1, index - 2].find((at) => wordAt(tokens, at) === 'half');
    state.use(tokens[half ?? index]);
    cutInHalf(token, state);
  }
  return pastConversion(tokens, index + 1, size, state);
}

const ONE = new Fraction(1);

/** Halves the sheet that is spoken of. False when there is none, or it is scored. */
export function cutInHalf(token: Token, state: LessonState): boolean {
  const { current } = state;
  if (current === undefined || current.refused || current.scorings.length > 0) return false;
  const across = lengthOfAmount(current.width).compare(lengthOfAmount(current.height)) >= 0;
  if (across) current.width = halfOf(current.width);
  else current.height = halfOf(current.height);
  const size = `${sayAmount(current.width)} x ${sayAmount(current.height)} ${current.height.unit}`;
  state.assume(token, `Cut in half across its long side: ${size}.`);
  return true;
}
