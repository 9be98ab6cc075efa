import Fraction from 'fraction.js';

/*
 * Arithmetic of exact numbers that skips what changes nothing: most entries of a placement are 0 or 1, and most paper is
 * cut square.
 */

export const ZERO = new Fraction(0);
export const ONE = new Fraction(1);

/** Grid steps in a millimetre: `1 / GRID_MM`. */
const GRID_STEPS = 1e12;
const GRID_DENOMINATOR = 10n ** 12n;

export function isZero(a: Fraction): boolean {
  return a.n === 0n;
}

function isOne(a: Fraction): boolean {
  return a.n === 1n && a.d === 1n;
}

export function plus(a: Fraction, b: Fraction): Fraction {
  if (b.n === 0n) return a;
  return a.n === 0n ? b : a.add(b);
}

export function minus(a: Fraction, b: Fraction): Fraction {
  if (b.n === 0n) return a;
  return a.n === 0n ? negated(b) : a.sub(b);
}

export function times(a: Fraction, b: Fraction): Fraction {
  if (a.n === 0n || b.n === 0n) return ZERO;
  if (isOne(a)) return a.s < 0n ? negated(b) : b;
  if (isOne(b)) return b.s < 0n ? negated(a) : a;
  return a.mul(b);
}

export function negated(a: Fraction): Fraction {
  return a.n === 0n ? a : a.neg();
}

/** Same number: both are in lowest terms. */
export function same(a: Fraction, b: Fraction): boolean {
  return a === b || (a.n === b.n && a.d === b.d && (a.s === b.s || a.n === 0n));
}

export function smaller(a: Fraction, b: Fraction): Fraction {
  return a.compare(b) <= 0 ? a : b;
}

export function larger(a: Fraction, b: Fraction): Fraction {
  return a.compare(b) >= 0 ? a : b;
}

export function between(a: Fraction, b: Fraction): Fraction {
  return a.add(b).div(2);
}

/**
 * Nearest grid point (`GRID_MM`) of a number that is no fraction. Halves go away from zero, so that a mirrored drawing
 * rounds to its mirror image. Throws RangeError for what is no finite number.
 */
export function onGrid(value: number): Fraction {
  if (!Number.isFinite(value)) throw new RangeError('only a finite number has a nearest grid point');
  const steps = BigInt(Math.round(Math.abs(value) * GRID_STEPS));
  return new Fraction(value < 0 ? -steps : steps, GRID_DENOMINATOR);
}

/** The exact square root of an exact number that is not negative; undefined when it is no fraction. */
export function exactRoot(square: Fraction): Fraction | undefined {
  const n = wholeRoot(square.n);
  const d = n === undefined ? undefined : wholeRoot(square.d);
  return n === undefined || d === undefined ? undefined : new Fraction(n, d);
}

/** By Newton's steps from above. */
function wholeRoot(square: bigint): bigint | undefined {
  if (square < 2n) return square;
  let root = 1n << BigInt((square.toString(2).length + 1) >> 1);
  for (;;) {
    const next = (root + square / root) >> 1n;
    if (next >= root) return root * root === square ? root : undefined;
    root = next;
  }
}
