import { type LessonState, numberAt, type Sentence, wordAt } from './read-lesson-state.ts';
import type { Token } from './read-lesson-tokens.ts';
import { CUTTING, FOLDING, PIECE_NAMES, PLAIN_NAMES, SCORING } from './read-lesson-words.ts';

interface Name {
  readonly name: string;
  readonly tokens: readonly Token[];
}

/** Words between which no name reaches over. */
const AWAY = new Set([
  'to',
  'on',
  'onto',
  'over',
  'inside',
  'and',
  'then',
  'glue',
  'adhere',
  'attach',
  'stick',
  'layer',
]);

/** How far from its size a name may stand, in words. */
const REACH = 8;

/** What the sheet of a size is called: by the words after it (`for the mat`, `mat`), else by those before it. */
export function nameOfSheet(sentence: Sentence, first: number, last: number, state: LessonState): Name | undefined {
  const after = windowAfter(sentence.tokens, last);
  return (
    namesIn(sentence.tokens, after, state)[0] ??
    namesIn(sentence.tokens, windowBefore(sentence.tokens, first), state)[0]
  );
}

/** A sheet that was cut before, by its name. */
export function sheetNamed(sentence: Sentence, index: number, state: LessonState): LessonState['current'] {
  const name = PIECE_NAMES.get(wordAt(sentence.tokens, index) ?? '');
  if (name === undefined) return undefined;
  const own = state.sheets.findLast((sheet) => sheet.name === name);
  if (own) return own;
  const [first] = state.sheets;
  return name === 'base' && first?.name === undefined ? first : undefined;
}

function windowAfter(tokens: readonly Token[], last: number): number[] {
  const window: number[] = [];
  for (let index = last + 1; index <= last + REACH && index < tokens.length; index++) {
    const token = tokens[index];
    if (token?.kind === 'number' || (token?.kind === 'mark' && !'()-–—"'.includes(token.mark))) break;
    const word = wordAt(tokens, index) ?? '';
    if (AWAY.has(word) || isVerb(word)) break;
    window.push(index);
  }
  return window;
}

/** The nearest first. */
function windowBefore(tokens: readonly Token[], first: number): number[] {
  const window: number[] = [];
  for (let index = first - 1; index >= Math.max(0, first - REACH); index--) {
    const word = wordAt(tokens, index) ?? '';
    if (numberAt(tokens, index) || SCORING.has(word) || FOLDING.has(word)) break;
    if (AWAY.has(word) && !['to', 'and', 'then', 'layer'].includes(word)) break;
    window.push(index);
  }
  return window;
}

function isVerb(word: string): boolean {
  return CUTTING.has(word) || SCORING.has(word) || FOLDING.has(word);
}

/** The names in a window, the more telling ones first. */
function namesIn(tokens: readonly Token[], window: readonly number[], { used }: LessonState): Name[] {
  const found = window.flatMap((index): Name[] => {
    const token = tokens[index];
    const word = wordAt(tokens, index) ?? '';
    const name = PIECE_NAMES.get(word);
    if (name === undefined || token === undefined || used.has(token)) return [];
    // Cover stock is paper.
    if (/^(?:card)?stock$|^weight$|^papers?$/u.test(wordAt(tokens, index + 1) ?? '')) return [];
    return [{ name, tokens: [token] }];
  });
  const telling = found.filter(({ name }) => !PLAIN_NAMES.has(name));
  return telling.length > 0 ? telling : found;
}
