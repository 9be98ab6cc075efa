import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Length, readLength, toMarks } from '../../../plugins/engine/units/index.ts';
import { converted, evaluated } from '../../oracles/converted.ts';

/** Double precision of the oracle, as a part of the length. */
const PART = 1e-12;

describe('conversion, against mathjs', () => {
  it('gives the millimetres of inches and the inches of millimetres', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100_000 }), fc.integer({ min: 1, max: 64 }), (numerator, denominator) => {
        const value = numerator / denominator;
        const mm = Length.fromInches(`${numerator}/${denominator}`).toMm();
        const inches = Length.fromMm(`${numerator}/${denominator}`).inches.valueOf();
        expect(Math.abs(mm / converted(value, 'inch', 'mm') - 1)).toBeLessThan(PART);
        expect(Math.abs(inches / converted(value, 'mm', 'inch') - 1)).toBeLessThan(PART);
      }),
    );
  });

  it.each(['5 1/2', '3/4', '5.5', '11', '2 63/64', '0.125', '139.7', '12 5/8'])('reads %s in each unit', (number) => {
    for (const [unit, name] of [
      ['in', 'inch'],
      ['mm', 'mm'],
      ['cm', 'cm'],
    ] as const) {
      const read = readLength(`${number} ${unit}`).value?.length.toMm() ?? Number.NaN;
      expect(Math.abs(read / converted(evaluated(number), name, 'mm') - 1)).toBeLessThan(PART);
    }
  });

  it('is exact: an inch is 25.4 mm, a yard 0.9144 m (international agreement of 1 July 1959)', () => {
    expect(Length.fromInches(1).mm.equals('25.4')).toBe(true);
    expect(Length.fromInches(36).mm.equals('914.4')).toBe(true);
    // Thirty-six thirds of an inch are a foot, with nothing lost on the way.
    expect(Length.sum(Array.from({ length: 36 }, () => Length.fromInches('1/3'))).equals(Length.fromInches(12))).toBe(
      true,
    );
  });

  // NIST, Writing with SI (Metric Style Guide): 36 in is 91 cm and 40.1 in is 101.9 cm at the digits the data justify.
  it.each([
    ['36', 10, 910],
    ['40.1', 1, 1019],
  ])('rounds %s in once, from the exact length', (inches, mark, mm) => {
    expect(toMarks(Length.fromInches(inches), Length.fromMm(mark), 'nearest').toMm()).toBe(mm);
  });
});
