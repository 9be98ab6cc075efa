import type Fraction from 'fraction.js';
import { DASH, DIGIT, FRACTION_CHARACTER, HYPHEN, SPACE } from './characters.ts';
import { type Fault, faultAt, LONGEST_TEXT, type Reading, type ReadOptions, reading } from './fault.ts';
import { leftoverFault } from './leftover.ts';
import { type Numeral, readNumeral } from './numeral.ts';
import { lettersAsDigits, NUMBER_TAKES } from './numeral-slips.ts';
import { matchAt, skipSpaces, sticky } from './scan.ts';

const SIGNED = sticky(`(?:[-+]|${HYPHEN}|${DASH})${SPACE}*(?:[.]|${DIGIT}|${FRACTION_CHARACTER})`);

/** A number standing alone, exactly: `5 1/2`, `5½`, `5-1/2`, `2.75`, `1⁄2`. Never negative, never with a unit. */
export function readNumber(text: string, options: ReadOptions = {}): Reading<Fraction> {
  const opening = openNumber(text, NUMBER_TAKES, options);
  if ('fault' in opening) return { value: undefined, faults: [opening.fault] };
  const { numeral, start } = opening;
  const faults: Fault[] = [...numeral.faults];
  const end = skipSpaces(text, numeral.end);
  if (end < text.length && !hasError(faults)) faults.push(leftoverFault(text, start, numeral.end, NUMBER_TAKES));
  return reading(numeral.value, faults);
}

/** The number that a value must begin with, or the fault of a value that does not. */
export function openNumber(
  text: string,
  takes: string,
  options: ReadOptions,
): { readonly numeral: Numeral; readonly start: number } | { readonly fault: Fault } {
  const start = skipSpaces(text, 0);
  const end = text.trimEnd().length;
  const refuse = (code: string, remedy: string): { fault: Fault } => ({
    fault: faultAt(text, Math.min(start, end), end, { code, takes, remedy }),
  });
  if (start >= text.length) return refuse('number-missing', 'Nothing is written here. Write a number.');
  if (text.length > LONGEST_TEXT) return refuse('number-long', 'This is too long for a measurement. Write one number.');
  if (matchAt(SIGNED, text, start)) {
    return refuse('number-sign', 'Write the number without a sign before it.');
  }
  const numeral = readNumeral(text, start, { hyphen: true, decimalComma: options.decimalComma });
  if (numeral) return { numeral, start };
  return refuse(...startFault(text, start, end));
}

/** A value that begins with no digit: a letter typed for one, a number in words, or something else altogether. */
function startFault(text: string, start: number, end: number): [code: string, remedy: string] {
  const written = text.slice(start, end);
  if (/^[oOlI|][\doOlI|./\s]*/.test(written) && /[\d/.]/.test(written)) {
    const digits = written.replace(/^[\doOlI|./\s]+/, (part) => lettersAsDigits(part));
    if (readNumeral(digits, 0))
      return ['number-letter', `Did you mean \`${digits}\`? A letter stands there in place of a digit.`];
  }
  return ['number-missing', 'Begin with a number in digits.'];
}

function hasError(faults: readonly Fault[]): boolean {
  return faults.some((fault) => fault.severity === 'error');
}
