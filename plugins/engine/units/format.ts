import Fraction from 'fraction.js';
import type { Length } from './length.ts';
import { roundHalfEven } from './marks.ts';
import type { System } from './system.ts';

/** Fractions of an inch are printed down to 1/64; anything finer or off the ruler as a decimal. */
const FINEST_FRACTION = 64n;

/** Decimals printed where a length is off the ruler: 0.001 in and 0.01 mm are finer than paper can be cut. */
const DECIMALS: Readonly<Record<System, number>> = { inch: 3, metric: 2 };

const UNIT: Readonly<Record<System, string>> = { inch: 'in', metric: 'mm' };

/** `5 1/2 in`, `139.7 mm`. Exact when the inches are whole 64ths, or the millimetres whole hundredths; else rounded. */
export function formatLength(length: Length, system: System): string {
  return `${formatNumber(length, system)} ${UNIT[system]}`;
}

/** As `formatLength`, without the unit. */
export function formatNumber(length: Length, system: System): string {
  const value = system === 'inch' ? length.inches : length.mm;
  if (system === 'inch' && FINEST_FRACTION % value.d === 0n) return mixedNumber(value);
  return decimalNumber(value, DECIMALS[system]);
}

/** `4 1/4 x 5 1/2 in`: width first, the unit at the end serves both. */
export function formatSize(width: Length, height: Length, system: System): string {
  return formatLengths([width, height], system);
}

/** A size of any number of measures, as `formatSize`. */
export function formatLengths(lengths: readonly Length[], system: System): string {
  return `${lengths.map((length) => formatNumber(length, system)).join(' x ')} ${UNIT[system]}`;
}

function mixedNumber(value: Fraction): string {
  const size = value.abs();
  const whole = size.floor();
  const rest = size.sub(whole);
  const sign = value.s < 0n ? '−' : '';
  if (rest.equals(0)) return `${sign}${whole.n}`;
  return whole.equals(0) ? `${sign}${rest.n}/${rest.d}` : `${sign}${whole.n} ${rest.n}/${rest.d}`;
}

/** At most `places` decimals, half to even, without zeros at the end. */
export function decimalNumber(value: Fraction, places: number): string {
  const scale = 10n ** BigInt(places);
  const rounded = roundHalfEven(value.abs().mul(new Fraction(scale))).n;
  const sign = value.s < 0n && rounded !== 0n ? '−' : '';
  const decimals = String(rounded % scale)
    .padStart(places, '0')
    .replace(/0+$/, '');
  return `${sign}${rounded / scale}${decimals === '' ? '' : `.${decimals}`}`;
}
