import Fraction from 'fraction.js';
import { HYPHEN, SPACE } from './characters.ts';
import { type Fault, faultAt } from './fault.ts';
import { checkDecimal, checkFraction } from './numeral-checks.ts';
import { readDecimal, readFraction, startsFraction, type WrittenFraction } from './numeral-parts.ts';
import { NUMBER_TAKES, readLongRun, readSlip } from './numeral-slips.ts';
import { matchAt, sticky } from './scan.ts';

/** A number as makers write it, found at one place of a text. */
export interface Numeral {
  /** Exact and never negative. Has a value even when an error stands among the faults, so that reading can go on. */
  readonly value: Fraction;
  /** Where the text after the number starts. */
  readonly end: number;
  readonly faults: readonly Fault[];
  readonly shape: 'whole' | 'decimal' | 'fraction' | 'mixed';
}

export interface NumeralOptions {
  /** Read `5-1/2` as five and a half. Not in expressions, where a hyphen would be a minus. */
  readonly hyphen?: boolean;
  readonly decimalComma?: boolean | undefined;
}

const ZERO = new Fraction(0);

const GAP = sticky(`${SPACE}{0,4}`);
const GAP_OR_HYPHEN = sticky(`${SPACE}{0,4}${HYPHEN}?`);
const COMMAS = sticky('\\d+(?:,\\d+)+');

/**
 * The number that starts exactly at `at`, or undefined when none does: `5`, `5.5`, `1/2`, `5 1/2`, `5½`, `2⁄3`.
 *
 * Reads one number and stops: a unit, an operator or another word is left to the caller. A sign is never part of it.
 * Near misses (`53/4`, `1_000`, `5 4/3`, `5,5`) are taken whole and carry a fault.
 */
export function readNumeral(text: string, at: number, options: NumeralOptions = {}): Numeral | undefined {
  const slip = readSlip(text, at) ?? (options.decimalComma ? undefined : readComma(text, at));
  if (slip) return { value: ZERO, end: slip.end, faults: [slip.fault], shape: 'decimal' };
  const numeral = scanNumeral(text, at, options);
  if (!numeral || text[numeral.end] !== '.' || numeral.shape === 'decimal') return numeral;
  const remedy = `Write \`${text.slice(at, numeral.end)}\` without the point, or the digits that are missing after it.`;
  const fault = faultAt(text, at, numeral.end + 1, { code: 'number-open-point', takes: NUMBER_TAKES, remedy });
  return { ...numeral, end: numeral.end + 1, faults: [...numeral.faults, fault] };
}

/** As `readNumeral`, for running text, where a full stop or a comma after a number belongs to the sentence. */
export function scanNumeral(text: string, at: number, options: NumeralOptions = {}): Numeral | undefined {
  const long = readLongRun(text, at);
  if (long) return { value: ZERO, end: long.end, faults: [long.fault], shape: 'whole' };
  const alone = readFraction(text, at);
  if (alone) {
    const faults = checkFraction(text, at, alone, undefined);
    return afterFraction(text, at, { value: rationalOf(alone), end: alone.end, faults, shape: 'fraction' });
  }
  const decimal = readDecimal(text, at, options.decimalComma === true);
  if (!decimal) return undefined;
  const shape = decimal.decimals === undefined ? 'whole' : 'decimal';
  const number: Numeral = { value: decimal.value, end: decimal.end, faults: checkDecimal(text, decimal), shape };
  return withFraction(text, at, number, options.hyphen === true);
}

/** The fraction after a whole number, if one follows. */
function withFraction(text: string, at: number, number: Numeral, hyphen: boolean): Numeral {
  const joint = joinTo(text, number.end, hyphen);
  const fraction = joint === undefined ? undefined : readFraction(text, joint);
  if (joint === undefined || !fraction) return number;
  const long = readLongRun(text, joint);
  if (long) return { ...number, end: long.end, faults: [...number.faults, long.fault] };
  const faults = [...number.faults, ...checkFraction(text, at, fraction, number.value)];
  if (number.shape === 'decimal') {
    const remedy = 'Write the number with a point or with a fraction, not with both.';
    faults.push(faultAt(text, at, fraction.end, { code: 'number-point-and-fraction', takes: NUMBER_TAKES, remedy }));
  }
  const value = number.value.add(rationalOf(fraction));
  return afterFraction(text, at, { value, end: fraction.end, faults, shape: 'mixed' });
}

/** Where the fraction after a whole number starts: past a space, past a hyphen, or at once for a fraction character. */
function joinTo(text: string, at: number, hyphen: boolean): number | undefined {
  const gap = matchAt(hyphen ? GAP_OR_HYPHEN : GAP, text, at)?.[0].length ?? 0;
  const start = at + gap;
  return startsFraction(text, start) && (gap > 0 || !/[0-9\uff10-\uff19]/.test(text[start] ?? '')) ? start : undefined;
}

/** A second fraction after the first is taken with it and refused. */
function afterFraction(text: string, at: number, numeral: Numeral): Numeral {
  const gap = matchAt(GAP, text, numeral.end)?.[0].length ?? 0;
  const second = startsFraction(text, numeral.end + gap) ? readFraction(text, numeral.end + gap) : undefined;
  if (!second || numeral.faults.some((fault) => fault.severity === 'error')) return numeral;
  const remedy = 'Two fractions follow each other. Write one of them, or their sum.';
  const fault = faultAt(text, at, second.end, { code: 'number-two-fractions', takes: NUMBER_TAKES, remedy });
  return { ...numeral, end: second.end, faults: [...numeral.faults, fault] };
}

function rationalOf({ numerator, denominator }: WrittenFraction): Fraction {
  return denominator === 0n ? ZERO : new Fraction(numerator, denominator);
}

/** `5,5` where the language has no decimal comma: taken whole and asked about. */
function readComma(text: string, at: number): { fault: Fault; end: number } | undefined {
  const match = matchAt(COMMAS, text, at);
  if (!match) return undefined;
  const wrote = match[0];
  const end = at + wrote.length;
  const thousands = /^\d{1,3}(?:,\d{3})+$/.test(wrote) ? ` For thousands write \`${wrote.replace(/,/g, '')}\`.` : '';
  const remedy =
    wrote.split(',').length > 2
      ? `Write one number with a point, or several with spaces after the commas.${thousands}`
      : `Write \`${wrote.replace(',', '.')}\` with a point.${thousands} For two numbers put a space after the comma.`;
  return { end, fault: faultAt(text, at, end, { code: 'number-comma', takes: NUMBER_TAKES, remedy }) };
}
