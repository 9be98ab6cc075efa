import { DIGIT, FRACTION_CHARACTER, SLASH, SUPERSCRIPT } from '../characters.ts';

const START = `${DIGIT}|${FRACTION_CHARACTER}|\\.(?=${DIGIT})|${SUPERSCRIPT}+(?=${SLASH})|\u215f`;

/** Characters that make the number after them part of something else: a word, a price, a path, a tag. */
const JOINS = /[\p{L}\p{N}_$£€¥#@&%/\\:^]/u;
const HYPHEN_OR_DASH = /[-\u2010-\u2015\u2212]/;

/** The next place from `from` on where a number is written, or undefined. */
export function nextStart(text: string, from: number): number | undefined {
  const pattern = new RegExp(START, 'g');
  pattern.lastIndex = from;
  return pattern.exec(text)?.index;
}

/**
 * Whether a number at `at` stands by itself. Not after a letter, a digit, a colon (`10:30`), a stroke (`3/4/2026`), a
 * currency sign or a minus. `ended` is where the last measurement ended: a dash after it starts the end of a range.
 */
export function standsFree(text: string, at: number, ended: number): boolean {
  const before = text[at - 1];
  if (before === undefined || at === ended) return true;
  const twoBefore = text[at - 2] ?? ' ';
  if (HYPHEN_OR_DASH.test(before)) return at - 1 === ended || (before !== '-' && /[^\s\p{N}]/u.test(twoBefore));
  if (before === '.' || before === ',') return !/[\p{N}.]/u.test(twoBefore) && before === ',';
  if (/['’‘]/.test(before)) return false;
  return !JOINS.test(before);
}

/** Where to look on after a number that is none of ours: behind all that hangs together with it. */
export function skipRun(text: string, at: number): number {
  const run = /[\p{L}\p{N}_./:,\-\u2010-\u2015\u2044\u2215]+/uy;
  run.lastIndex = at;
  return Math.max(at + 1, at + (run.exec(text)?.[0].length ?? 0));
}
