import type Fraction from 'fraction.js';

/** An exact angle, in degrees. */
export class Angle {
  readonly degrees: Fraction;
  constructor(degrees: Fraction) {
    this.degrees = degrees;
  }
}
