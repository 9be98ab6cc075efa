import type Fraction from 'fraction.js';
import { formatNumber } from './format.ts';
import type { Length } from './length.ts';
import { fractionWords, numberWords } from './number-words.ts';
import type { System } from './system.ts';

/**
 * A length as it is read aloud: `five and a half inches`, `three quarters of an inch`, `139.7 millimetres`.
 *
 * For screen readers, which make nothing of a typeset fraction. Metric lengths keep their digits, which read well.
 */
export function spokenLength(length: Length, system: System): string {
  return system === 'inch' ? spokenInches(length) : spokenMillimetres(length);
}

/** `four and a quarter by five and a half inches`, `105 by 148 millimetres`: width first. */
export function spokenSize(width: Length, height: Length, system: System): string {
  return spokenLengths([width, height], system);
}

/** As `spokenSize`, for any number of measures. A measure that is no more than one unit brings the unit to each. */
export function spokenLengths(lengths: readonly Length[], system: System): string {
  const say = (length: Length): string => spokenLength(length, system);
  const many = lengths.map((length) => manyWords(length, system));
  if (lengths.length === 1 || many.includes(undefined)) return lengths.map(say).join(' by ');
  return `${many.join(' by ')} ${system === 'inch' ? 'inches' : 'millimetres'}`;
}

/** The number alone, when it takes a plural unit. */
function manyWords(length: Length, system: System): string | undefined {
  const value = system === 'inch' ? length.inches : length.mm;
  if (value.compare(1) <= 0 || length.isZero) return undefined;
  return system === 'inch' ? mixedWords(value) : formatNumber(length, system);
}

function spokenInches(length: Length): string {
  const value = length.inches;
  if (value.compare(0) < 0) return `minus ${spokenInches(length.negated())}`;
  if (onRuler(value) && value.compare(0) > 0 && value.compare(1) < 0) {
    const words = fractionWords(Number(value.n), Number(value.d));
    return value.d === 2n ? 'half an inch' : `${words} of an inch`;
  }
  return value.equals(1) ? 'one inch' : `${mixedWords(value)} inches`;
}

function spokenMillimetres(length: Length): string {
  if (length.mm.compare(0) < 0) return `minus ${spokenMillimetres(length.negated())}`;
  if (length.mm.equals('1/2')) return 'half a millimetre';
  const digits = formatNumber(length, 'metric');
  return digits === '1' ? '1 millimetre' : `${digits} millimetres`;
}

/** `five and a half`, `eleven`; off the ruler the digits of a decimal. */
function mixedWords(value: Fraction): string {
  if (!onRuler(value))
    return value
      .valueOf()
      .toFixed(3)
      .replace(/\.?0+$/, '');
  const whole = value.floor();
  const rest = value.sub(whole);
  const words = numberWords(Number(whole.n));
  return rest.equals(0) ? words : `${words} and ${fractionWords(Number(rest.n), Number(rest.d))}`;
}

function onRuler(value: Fraction): boolean {
  return 64n % value.d === 0n;
}
