import fc from 'fast-check';
import { Length, type Reading } from '../../../plugins/engine/units/index.ts';

/** Lengths on the marks of an inch ruler: whole 64ths, up to 44 in. */
export const INCH_MARKS = fc.integer({ min: 1, max: 44 * 64 }).map((count) => Length.fromInches(`${count}/64`));

/** Lengths on the marks of a metric ruler: whole halves of a millimetre, up to 1189 mm. */
export const METRIC_MARKS = fc.integer({ min: 1, max: 1189 * 2 }).map((count) => Length.fromMm(`${count}/2`));

/** Lengths that need not lie on any mark. */
export const ANY_LENGTH = fc
  .tuple(fc.integer({ min: 0, max: 5000 }), fc.integer({ min: 1, max: 360 }))
  .map(([numerator, denominator]) => Length.fromMm(`${numerator}/${denominator}`));

export function codes(reading: Reading<unknown>): string[] {
  return reading.faults.map(({ code }) => code);
}
