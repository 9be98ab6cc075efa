import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  formatLength,
  formatSize,
  Length,
  readLength,
  readSize,
  type System,
  typesetFractions,
} from '../../../plugins/engine/units/index.ts';
import { ANY_LENGTH, INCH_MARKS, METRIC_MARKS } from './numbers.ts';

const SYSTEMS: readonly (readonly [System, fc.Arbitrary<Length>])[] = [
  ['inch', INCH_MARKS],
  ['metric', METRIC_MARKS],
];

describe('print and read back', () => {
  it.each(SYSTEMS)('gives the same length on %s marks', (system, lengths) => {
    fc.assert(
      fc.property(lengths, (length) => {
        const printed = formatLength(length, system);
        expect(readLength(printed)).toMatchObject({ faults: [], value: { unit: system === 'inch' ? 'in' : 'mm' } });
        expect(readLength(printed).value?.length.equals(length)).toBe(true);
        expect(readLength(typesetFractions(printed)).value?.length.equals(length)).toBe(true);
      }),
    );
  });

  it.each(SYSTEMS)('gives the same size on %s marks', (system, lengths) => {
    fc.assert(
      fc.property(lengths, lengths, (width, height) => {
        for (const printed of [
          formatSize(width, height, system),
          typesetFractions(formatSize(width, height, system)),
        ]) {
          const { value, faults } = readSize(printed);
          expect(faults).toEqual([]);
          expect(value?.width.equals(width) && value.height.equals(height)).toBe(true);
        }
      }),
    );
  });

  it('is off by at most half of the last digit where a length is off the ruler', () => {
    fc.assert(
      fc.property(ANY_LENGTH, (length) => {
        const inches = readLength(formatLength(length, 'inch')).value?.length ?? Length.zero;
        const metric = readLength(formatLength(length, 'metric')).value?.length ?? Length.zero;
        expect(inches.minus(length).abs().inches.lte('0.0005')).toBe(true);
        expect(metric.minus(length).abs().mm.lte('0.005')).toBe(true);
      }),
    );
  });

  it('prints equal halves alike, in both systems', () => {
    fc.assert(
      fc.property(ANY_LENGTH, (length) => {
        const [one, other] = [length.dividedBy(2), length.minus(length.dividedBy(2))];
        for (const [system] of SYSTEMS) expect(formatLength(one, system)).toBe(formatLength(other, system));
      }),
    );
  });
});

describe('formatLength', () => {
  it.each([
    ['5 1/2', '5 1/2 in', '139.7 mm'],
    ['11', '11 in', '279.4 mm'],
    ['3/64', '3/64 in', '1.19 mm'],
    ['1/3', '0.333 in', '8.47 mm'],
    ['0', '0 in', '0 mm'],
    ['-1/8', '−1/8 in', '−3.18 mm'],
  ])('prints %s in as %s and %s', (inches, inch, metric) => {
    expect(formatLength(Length.fromInches(inches), 'inch')).toBe(inch);
    expect(formatLength(Length.fromInches(inches), 'metric')).toBe(metric);
  });
});

describe('typesetFractions', () => {
  // U+2044 lets a font with the `frac` feature set the fraction; U+2009 is a thin space (The Unicode Standard).
  it.each([
    ['5 1/2 in', '5\u20091\u20442 in'],
    ['5-1/2 in', '5\u20091\u20442 in'],
    ['5½ in', '5\u20091\u20442 in'],
    ['5 ½ in', '5\u20091\u20442 in'],
    ['a ½ in gap', 'a 1\u20442 in gap'],
    ['4 1/4 x 5 1/2 in', '4\u20091\u20444 × 5\u20091\u20442 in'],
    ['105 x 148 mm', '105 × 148 mm'],
    ['score 3/4, then 2 1/8.', 'score 3\u20444, then 2\u20091\u20448.'],
  ])('sets %s', (written, set) => {
    expect(typesetFractions(written)).toBe(set);
  });

  it.each(['3/4/2026', '24/7', 'and/or', '1/2:3', 'https://saltmarsh-paper.example/1/2', 'v1/2', 'solve for x in'])(
    'leaves %s alone',
    (written) => {
      expect(typesetFractions(written)).toBe(written);
    },
  );

  it('does nothing the second time', () => {
    for (const written of ['5 1/2 x 4 1/4 in', '5½', 'a 3/4 and 7⅞']) {
      expect(typesetFractions(typesetFractions(written))).toBe(typesetFractions(written));
    }
  });
});
