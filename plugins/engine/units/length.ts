import Fraction from 'fraction.js';

/** One inch is 127/5 mm exactly (international yard and pound agreement, 1 July 1959). */
const MM_PER_INCH = new Fraction(127, 5);

/** What a rational number may be given as. A string is read by fraction.js: `17/4`, `2.54`. */
export type RationalInput = Fraction | number | bigint | string;

/**
 * An exact length: a rational number of millimetres, never a float.
 *
 * Immutable. Becomes a float once, on entering float geometry (`toMm`), and is rounded once, in a renderer.
 */
export class Length {
  readonly mm: Fraction;

  private constructor(mm: Fraction) {
    this.mm = mm;
  }

  static readonly zero = new Length(new Fraction(0));

  static fromMm(value: RationalInput): Length {
    return new Length(new Fraction(value));
  }

  static fromInches(value: RationalInput): Length {
    return new Length(new Fraction(value).mul(MM_PER_INCH));
  }

  /** Exact number of inches. */
  get inches(): Fraction {
    return this.mm.div(MM_PER_INCH);
  }

  plus(other: Length): Length {
    return new Length(this.mm.add(other.mm));
  }

  minus(other: Length): Length {
    return new Length(this.mm.sub(other.mm));
  }

  times(factor: RationalInput): Length {
    return new Length(this.mm.mul(factor));
  }

  /** Throws RangeError on zero: the caller has read the divisor and can say where it stands. */
  dividedBy(divisor: RationalInput): Length {
    const by = new Fraction(divisor);
    if (by.equals(0)) throw new RangeError('a length was divided by zero');
    return new Length(this.mm.div(by));
  }

  /** How many times `other` goes into this, exactly. Throws RangeError when `other` is zero. */
  per(other: Length): Fraction {
    if (other.isZero) throw new RangeError('a length was divided by a length of zero');
    return this.mm.div(other.mm);
  }

  negated(): Length {
    return new Length(this.mm.neg());
  }

  abs(): Length {
    return new Length(this.mm.abs());
  }

  /** -1, 0 or 1. */
  compare(other: Length): -1 | 0 | 1 {
    return Math.sign(this.mm.compare(other.mm)) as -1 | 0 | 1;
  }

  equals(other: Length): boolean {
    return this.mm.equals(other.mm);
  }

  lessThan(other: Length): boolean {
    return this.compare(other) < 0;
  }

  moreThan(other: Length): boolean {
    return this.compare(other) > 0;
  }

  get isZero(): boolean {
    return this.mm.equals(0);
  }

  get isPositive(): boolean {
    return this.mm.compare(0) > 0;
  }

  /** Nearest float, in millimetres. */
  toMm(): number {
    return this.mm.valueOf();
  }

  static sum(lengths: Iterable<Length>): Length {
    let total = Length.zero;
    for (const length of lengths) total = total.plus(length);
    return total;
  }

  static smaller(a: Length, b: Length): Length {
    return a.compare(b) <= 0 ? a : b;
  }

  static larger(a: Length, b: Length): Length {
    return a.compare(b) >= 0 ? a : b;
  }
}
