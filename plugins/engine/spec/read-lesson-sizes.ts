import { nameOfSheet, sheetNamed } from './read-lesson-names.ts';
import { isConversion, type LessonAmount, type LessonSheet, lengthOfAmount, sayAmount } from './read-lesson-sheets.ts';
import { type LessonState, MOST_SHEETS, markAt, numberAt, type Sentence, wordAt } from './read-lesson-state.ts';
import type { NumberToken, Token } from './read-lesson-tokens.ts';
import { COUNTABLE, COUNTS, KNOWN_SHEET, OUTSIDE, PIECE_NAMES } from './read-lesson-words.ts';

interface Size {
  readonly width: LessonAmount;
  readonly height: LessonAmount;
  readonly tokens: readonly Token[];
  /** Index of the last token. */
  readonly last: number;
  readonly refused: boolean;
}

/** `5 1/2 x 11`, `6" square`: a sheet, or the finished size. The index after it, or undefined when none stands there. */
export function readSizeAt(sentence: Sentence, index: number, state: LessonState): number | undefined {
  const { tokens } = sentence;
  const size = sizeAt(tokens, index, state);
  if (size === undefined) return undefined;
  const { last } = size;
  if (markAt(tokens, last + 1) === 'x' && numberAt(tokens, last + 2)) {
    explain(size.tokens, 'Three measures are no sheet.', state);
    return last + 3;
  }
  const next = pastConversion(tokens, last + 1, size, state);
  if (isOutside(tokens, index, last)) return next;
  if (size.refused) {
    explain(size.tokens, '', state);
    state.begin(sheetOf(size, undefined, 1));
    return next;
  }
  if (sentence.mode === 'finished') {
    state.finished = { width: size.width, height: size.height };
    state.use(...size.tokens, ...sentence.verbs);
    sentence.verbs = [];
    return next;
  }
  if (trimsKnown(sentence, index, state)) trim(sentence, size, state);
  else cut(sentence, index, size, state);
  return next;
}

function sizeAt(tokens: readonly Token[], index: number, state: LessonState): Size | undefined {
  const width = numberAt(tokens, index);
  if (width === undefined) return undefined;
  const height = markAt(tokens, index + 1) === 'x' ? numberAt(tokens, index + 2) : undefined;
  if (height) {
    const near = width.unit ?? height.unit;
    const whole = { width: state.units.amount(width, near), height: state.units.amount(height, near) };
    const refused = refuse(width, state) || refuse(height, state);
    return { ...whole, tokens: tokens.slice(index, index + 3), last: index + 2, refused };
  }
  const square = ['square', 'squares'].includes(wordAt(tokens, index + 1) ?? '') ? index + 1 : undefined;
  if (square === undefined) return undefined;
  const side = state.units.amount(width, undefined);
  const refused = refuse(width, state);
  return { width: side, height: side, tokens: tokens.slice(index, square + 1), last: square, refused };
}

/** True for a number that is in question; what is asked is kept for the end. */
export function refuse(number: NumberToken, state: LessonState): boolean {
  if (number.refused === undefined) return false;
  state.whys.set(number, number.refused.remedy);
  return true;
}

function explain(tokens: readonly Token[], why: string, state: LessonState): void {
  for (const token of tokens) if (token.kind === 'number' && !state.whys.has(token)) state.whys.set(token, why);
}

/** The size of an envelope is no sheet. */
export function isOutside(tokens: readonly Token[], first: number, last: number): boolean {
  const near = [first - 1, first - 2, first - 3, last + 1, last + 2];
  return near.some((index) => OUTSIDE.has(wordAt(tokens, index) ?? ''));
}

function sheetOf({ width, height, refused }: Size, name: string | undefined, count: number): LessonSheet {
  const { start } = width;
  return { start, end: height.end, width, height, name, count, refused, scorings: [], pleated: undefined };
}

export function cut(sentence: Sentence, index: number, size: Size, state: LessonState): void {
  const { count: several } = sentence;
  const made = state.sheets.reduce((sum, { count }) => sum + count, 0);
  if (made + (several?.count ?? 1) > MOST_SHEETS) {
    explain(size.tokens, `A recipe has at most ${MOST_SHEETS} sheets.`, state);
    return;
  }
  const said = sentence.mode === 'score' || sentence.mode === 'fold' ? sheetOfSize(size, state) : undefined;
  if (said) {
    state.current = said;
    state.use(...size.tokens, ...sentence.verbs);
    return;
  }
  const name = nameOfSheet(sentence, index, size.last, state);
  state.begin(sheetOf(size, name?.name, several?.count ?? 1));
  state.use(...size.tokens, ...sentence.verbs, ...(name?.tokens ?? []), ...(several?.tokens ?? []));
  sentence.verbs = [];
  sentence.count = undefined;
}

/** The sheet that was cut to this size before: `score the 4 x 5 1/4 panel`. */
function sheetOfSize({ width, height }: Size, { sheets }: LessonState): LessonSheet | undefined {
  return sheets.findLast(
    (sheet) =>
      !sheet.refused &&
      lengthOfAmount(sheet.width).equals(lengthOfAmount(width)) &&
      lengthOfAmount(sheet.height).equals(lengthOfAmount(height)),
  );
}

/** `trim it to 5 x 8`, `trim the card base down to 5 x 8`. */
function trimsKnown(sentence: Sentence, index: number, state: LessonState): boolean {
  const { tokens } = sentence;
  if (wordAt(tokens, index - 1) !== 'to') return false;
  for (let at = index - 2; at >= Math.max(0, index - 7); at--) {
    const word = wordAt(tokens, at) ?? '';
    if (!/^trim/u.test(word)) continue;
    if (!KNOWN_SHEET.has(wordAt(tokens, at + 1) ?? '')) return false;
    const rest = Array.from({ length: index - 1 - (at + 2) }, (_, step) => at + 2 + step);
    const named = rest.map((place) => sheetNamed(sentence, place, state)).find((sheet) => sheet !== undefined);
    if (named) {
      state.current = named;
      state.use(
        ...tokens.slice(at + 2, index - 1).filter((token) => token.kind === 'word' && PIECE_NAMES.has(token.word)),
      );
    }
    const known = /^(?:card|base|sheet|paper|piece|cardstock|down)$/u;
    return named !== undefined || rest.every((place) => known.test(wordAt(tokens, place) ?? ''));
  }
  return false;
}

function trim(sentence: Sentence, size: Size, state: LessonState): void {
  const { current } = state;
  if (current === undefined || current.refused || current.scorings.some(({ scores }) => scores.length > 0)) {
    explain(
      size.tokens,
      current === undefined
        ? 'No sheet has been cut before it is trimmed.'
        : 'Its sheet is scored already, and the lesson does not say which edges are trimmed.',
      state,
    );
    return;
  }
  const before = `${sayAmount(current.width)} x ${sayAmount(current.height)} ${current.height.unit}`;
  state.assume(
    { start: size.width.start, end: size.height.end },
    `Trimmed before anything is scored: the sheet is cut to this, not to ${before}.`,
  );
  current.width = size.width;
  current.height = size.height;
  state.use(...size.tokens, ...sentence.verbs);
  sentence.verbs = [];
}

const OPENERS = ['(', '/', '=', '['];

/** Past the same size in the other unit, as `(21.6 x 14 cm)`, which says nothing new. */
export function pastConversion(tokens: readonly Token[], index: number, size: Size, state: LessonState): number {
  if (!OPENERS.includes(markAt(tokens, index) ?? '')) return index;
  const [width, times, height] = [numberAt(tokens, index + 1), markAt(tokens, index + 2), numberAt(tokens, index + 3)];
  if (!width || times !== 'x' || !height) return index;
  const unit = width.unit ?? height.unit;
  if (unit === undefined || unit === size.height.unit) return index;
  const same =
    isConversion(size.width, state.units.amount(width, unit)) &&
    isConversion(size.height, state.units.amount(height, unit));
  if (!same) {
    explain([width, height], 'This is not the size before it in another unit.', state);
    return index + 4;
  }
  state.use(...tokens.slice(index, index + 4));
  return index + 4;
}

/** As `pastConversion`, for one number. */
export function pastConvertedNumber(
  tokens: readonly Token[],
  index: number,
  amount: LessonAmount,
  state: LessonState,
): number {
  if (!OPENERS.includes(markAt(tokens, index) ?? '')) return index;
  const number = numberAt(tokens, index + 1);
  if (number?.unit === undefined || number.unit === amount.unit) return index;
  if (!isConversion(amount, state.units.amount(number, number.unit))) return index;
  state.use(tokens[index], number);
  return index + 2;
}

/** `four strips`, `2 pieces`: how many sheets of the next size. The index after it, or undefined. */
export function readCount(sentence: Sentence, index: number): number | undefined {
  const { tokens } = sentence;
  const number = numberAt(tokens, index);
  const whole = number?.shape === 'whole' && number.unit === undefined ? Number(number.value.n) : undefined;
  const count = whole ?? COUNTS.get(wordAt(tokens, index) ?? '');
  if (count === undefined || count < 2 || count > MOST_SHEETS) return undefined;
  const noun = [index + 1, index + 2].find((at) => COUNTABLE.has(wordAt(tokens, at) ?? ''));
  if (noun === undefined) return undefined;
  sentence.count = {
    count,
    tokens: tokens.slice(index, noun + 1).filter((_, at, all) => at === 0 || at === all.length - 1),
  };
  return index + 1;
}
