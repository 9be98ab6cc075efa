import type { Numeral } from '../numeral.ts';
import { matchAt, sticky } from '../scan.ts';
import { ARTICLE_BEFORE, COUNTED_BEFORE, DETERMINERS, MEASURING } from './words.ts';

/** An `in` after a number, of which it is asked whether it is the unit. */
export interface DoubtfulIn {
  readonly numeral: Numeral;
  /** Where the number starts. */
  readonly start: number;
  readonly inSize: boolean;
  /** What stands between the number and `in`. */
  readonly gap: string;
  /** Where the text after `in`, or after `in.`, starts. */
  readonly end: number;
}

/** Larger whole numbers before `in` are years. */
const LARGEST_WHOLE = 999;

const CLAUSE_END = /^(?:$|[.,;:!?)\]}…–—"”'’]|\s+[–—(])/;
const NEXT_WORD = sticky("\\s*([\\p{L}\\p{N}’']*)", 'u');

const RULER_DENOMINATOR = 64n;

/**
 * Whether `in` after a number is the unit.
 *
 * Sure: run together with the number or held to it by a no-break space or a hyphen, or after a whole number and a fraction.
 * A size, a ruler fraction or a decimal: unless a word like `the`, a number or a capital follows. A whole number:
 * only at the end of a clause, before a word of measuring, or after `a` or `an`.
 */
export function isUnitIn(text: string, doubtful: DoubtfulIn): boolean {
  const { numeral, start, inSize, gap, end } = doubtful;
  const next = wordAfter(text, end);
  const hyphen = /^[-\u2010\u2011]$/.test(gap);
  if (text[end] === '-') return hyphen ? MEASURING.has(wordAfter(text, end + 1)) : /\d/.test(text[end + 1] ?? '');
  if (hyphen) return true;
  if (gap === '' || /[\u00a0\u2009\u202f]/.test(gap)) return true;
  if (text[end - 1] === '.') return true;
  if (numeral.shape === 'mixed') return true;
  const clause = CLAUSE_END.test(text.slice(end, end + 3));
  const stop = DETERMINERS.has(next) || /^[\p{N}\p{Lu}]/u.test(next);
  if (inSize || isRulerNumber(numeral)) return clause || !stop;
  const before = text.slice(Math.max(0, start - 24), start);
  if (numeral.shape === 'whole' && (numeral.value.gt(LARGEST_WHOLE) || COUNTED_BEFORE.test(before))) return false;
  if (clause || MEASURING.has(next)) return true;
  return ARTICLE_BEFORE.test(before) && next !== '' && !stop;
}

function wordAfter(text: string, at: number): string {
  return matchAt(NEXT_WORD, text, at)?.[1] ?? '';
}

/** A decimal, or a proper fraction that a ruler has: `10/31` is a date. */
function isRulerNumber({ shape, value }: Numeral): boolean {
  if (shape === 'decimal') return true;
  return shape === 'fraction' && value.lt(1) && RULER_DENOMINATOR % value.d === 0n;
}
