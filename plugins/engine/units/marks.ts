import Fraction from 'fraction.js';
import type { Length } from './length.ts';

/** How a length is put on a mark: the nearest, or for limits the next one below or above. */
export type RoundingMode = 'nearest' | 'down' | 'up';

/**
 * The length on a mark of a ruler whose marks are `mark` apart.
 *
 * A length exactly between two marks goes to the even one (NIST SP 811, 2008, B.7.1; cited from memory), so that many
 * halves do not drift one way. A largest allowed size is put `down` and a smallest one `up`: rounding never admits
 * a piece that the rule excludes. Throws RangeError unless `mark` is positive.
 */
export function toMarks(length: Length, mark: Length, mode: RoundingMode): Length {
  if (!mark.isPositive) throw new RangeError('marks must be a positive length apart');
  const count = length.per(mark);
  if (mode === 'down') return mark.times(count.floor());
  if (mode === 'up') return mark.times(count.ceil());
  return mark.times(roundHalfEven(count));
}

/** The nearest whole number; of two equally near, the even one. */
export function roundHalfEven(value: Fraction): Fraction {
  const below = value.floor();
  const rest = value.sub(below).compare(HALF);
  if (rest < 0) return below;
  if (rest > 0) return below.add(1);
  return below.mod(2).equals(0) ? below : below.add(1);
}

const HALF = new Fraction(1, 2);
