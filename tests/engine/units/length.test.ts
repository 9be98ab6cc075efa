import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Length } from '../../../plugins/engine/units/index.ts';
import { ANY_LENGTH } from './numbers.ts';

describe('Length', () => {
  it('adds and takes away without loss, in any order', () => {
    fc.assert(
      fc.property(fc.array(ANY_LENGTH, { minLength: 1, maxLength: 12 }), (lengths) => {
        const total = Length.sum(lengths);
        const back = [...lengths].reverse().reduce((rest, length) => rest.minus(length), total);
        expect(back.isZero).toBe(true);
        expect(Length.sum([...lengths].reverse()).equals(total)).toBe(true);
      }),
    );
  });

  it('divides what it multiplied', () => {
    fc.assert(
      fc.property(ANY_LENGTH, fc.integer({ min: 1, max: 1000 }), (length, factor) => {
        expect(length.times(factor).dividedBy(factor).equals(length)).toBe(true);
      }),
    );
  });

  it('orders as its millimetres do', () => {
    fc.assert(
      fc.property(ANY_LENGTH, ANY_LENGTH, (a, b) => {
        expect(a.compare(b)).toBe(Math.sign(a.mm.sub(b.mm).valueOf()));
        expect(Length.smaller(a, b).moreThan(Length.larger(a, b))).toBe(false);
      }),
    );
  });

  it('refuses to divide by nothing', () => {
    expect(() => Length.fromMm(5).dividedBy(0)).toThrow(RangeError);
    expect(() => Length.fromMm(5).per(Length.zero)).toThrow(RangeError);
  });
});
