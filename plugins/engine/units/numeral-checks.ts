import type Fraction from 'fraction.js';
import { plainDigits } from './characters.ts';
import { type Fault, faultAt } from './fault.ts';
import type { WrittenDecimal, WrittenFraction } from './numeral-parts.ts';
import { NUMBER_TAKES } from './numeral-slips.ts';

/** Denominators found on rulers marked in inches. */
const RULER_DENOMINATORS: readonly bigint[] = [2n, 4n, 8n, 16n, 32n, 64n];

/** Faults of a number without a fraction. `value` is kept in all of them. */
export function checkDecimal(text: string, decimal: WrittenDecimal): Fault[] {
  const faults: Fault[] = [];
  const { start, end, whole } = decimal;
  const written = text.slice(start, end);
  const warn = (code: string, remedy: string): void => {
    faults.push(faultAt(text, start, end, { code, severity: 'warning', takes: NUMBER_TAKES, remedy }));
  };
  if (plainDigits(written) !== written)
    warn('number-wide-digits', `Write \`${plainDigits(written)}\`, in ordinary digits.`);
  if (whole === '') warn('number-bare-point', `Write \`0${written}\` if no digit is missing before the point.`);
  if (/^0\d/.test(whole)) {
    const plain = plainDigits(written).replace(/^0+(?=\d)/, '');
    warn('number-leading-zero', `It is read as ${plain}. Write \`${plain}\` if that is what you meant.`);
  }
  return faults;
}

/** Faults of a fraction, alone or after a whole number. */
export function checkFraction(
  text: string,
  start: number,
  fraction: WrittenFraction,
  whole: Fraction | undefined,
): Fault[] {
  const { numerator, denominator, end } = fraction;
  const mixed = whole !== undefined;
  if (denominator === 0n) {
    const remedy = 'A fraction cannot have 0 below its line. Write the number you measured.';
    return [faultAt(text, start, end, { code: 'fraction-zero', takes: NUMBER_TAKES, remedy })];
  }
  if (mixed && numerator >= denominator) {
    const sum = whole.mul(denominator).add(numerator).div(denominator).toFraction(true);
    const remedy = `After a whole number the fraction is less than 1. Did you mean \`${sum}\`?`;
    return [faultAt(text, start, end, { code: 'fraction-too-big', takes: NUMBER_TAKES, remedy })];
  }
  if (!mixed && numerator > denominator) {
    const guesses = splitDigits(fraction);
    if (guesses.length === 0) return [];
    const value = mixedText(numerator, denominator);
    const remedy = `Did you mean \`${guesses.join('` or `')}\`? Then put a space after the whole number. As written it is ${value}: if that is right, write \`${value}\`.`;
    const takes = 'a space between the whole number and its fraction, as in `5 3/4`';
    return [faultAt(text, start, end, { code: 'fraction-run-together', severity: 'warning', takes, remedy })];
  }
  return [];
}

/** What `53/4` may have lost a space from: `5 3/4`. The likeliest first: the longest whole number. */
function splitDigits({ digits, denominator }: WrittenFraction): string[] {
  if (!RULER_DENOMINATORS.includes(denominator)) return [];
  const guesses: string[] = [];
  for (let cut = digits.length - 1; cut > 0; cut--) {
    const whole = digits.slice(0, cut);
    const rest = digits.slice(cut);
    if (/^0/.test(whole) || /^0/.test(rest) || BigInt(rest) >= denominator) continue;
    guesses.push(`${whole} ${rest}/${denominator}`);
  }
  return guesses;
}

function mixedText(numerator: bigint, denominator: bigint): string {
  const rest = numerator % denominator;
  return rest === 0n ? String(numerator / denominator) : `${numerator / denominator} ${rest}/${denominator}`;
}
