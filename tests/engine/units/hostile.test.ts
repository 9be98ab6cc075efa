import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  findMeasures,
  findNamedSize,
  Length,
  readCaliper,
  readLength,
  readNumber,
  readNumeral,
  readSize,
  readWeight,
  typesetFractions,
} from '../../../plugins/engine/units/index.ts';
import { codes } from './numbers.ts';

/** What makers mistype as a length: the text, the fault, and a part of the remedy that sets it right. */
const REFUSED: readonly (readonly [text: string, code: string, remedy: string])[] = [
  ['', 'number-missing', 'Write a number'],
  ['   ', 'number-missing', 'Write a number'],
  ['in', 'number-missing', 'in digits'],
  ['five inches', 'number-missing', 'in digits'],
  ['"', 'number-missing', 'in digits'],
  ['5 1/2', 'unit-missing', '5 1/2 in'],
  ['½', 'unit-missing', '½ in'],
  ["5'", 'unit-feet', '60 in'],
  ['5′', 'unit-feet', '60 in'],
  ["5 1/2'", 'unit-feet', '66 in'],
  ['2 ft', 'unit-unknown', '24 in'],
  ['0.3 m', 'unit-unknown', '300 mm'],
  ['14 pt', 'unit-unknown', '0.014 in'],
  ['5 inchs', 'unit-unknown', 'inches'],
  ['5 milimetres', 'unit-unknown', 'millimetres'],
  ['5 apples', 'unit-unknown', '`cm`'],
  ['5 1/2 1/4 in', 'number-two-fractions', 'one of them'],
  ['5½ 1/4 in', 'number-two-fractions', 'one of them'],
  ['5 4/3 in', 'fraction-too-big', '6 1/3'],
  ['5 8/8 in', 'fraction-too-big', '6'],
  ['1/0 in', 'fraction-zero', '0 below'],
  ['5 1/0 in', 'fraction-zero', '0 below'],
  ['5.5 1/2 in', 'number-point-and-fraction', 'not with both'],
  ['5..5 in', 'number-points', '5.5'],
  ['1.2.3 mm', 'number-points', 'one point'],
  ['5. in', 'number-open-point', 'without the point'],
  ['1_000 mm', 'number-underscore', '1000'],
  ['1e3 mm', 'number-exponent', '1000'],
  ['1E-1 in', 'number-exponent', '0.1'],
  ['0x10 in', 'number-hexadecimal', 'ordinary digits'],
  ['5,5 cm', 'number-comma', '5.5'],
  ['1,000 mm', 'number-comma', '1000'],
  ['-5 in', 'number-sign', 'without a sign'],
  ['−5 in', 'number-sign', 'without a sign'],
  ['- 1/2 in', 'number-sign', 'without a sign'],
  ['+5 in', 'number-sign', 'without a sign'],
  ['5 l/2 in', 'number-letter', '5 1/2'],
  ['5 I/2 in', 'number-letter', '5 1/2'],
  ['l/2 in', 'number-letter', '1/2'],
  ['1O in', 'number-letter', '10'],
  ['O.5 in', 'number-letter', '0.5'],
  ['1 / 2 in', 'number-spaced-slash', '1/2'],
  ['1/ 2 in', 'number-spaced-slash', '1/2'],
  ['5–1/2 in', 'number-dash', '5 1/2'],
  ['5—1/2 in', 'number-dash', '5 1/2'],
  ['5−½ in', 'number-dash', '5 ½'],
  ['5-6 in', 'number-range', 'range'],
  ['1/8-1/4 in', 'number-range', 'range'],
  ['1/8 to 1/4 in', 'number-range', 'range'],
  ['5 or 6 in', 'number-range', 'range'],
  ['5 x 7 in', 'number-size', 'size'],
  ['5 in x 7 in', 'number-size', 'size'],
  ['5x7', 'size-spaces', '5 x 7'],
  ['2 in, 4 in', 'number-list', 'several'],
  ['5 in wide', 'number-leftover', 'wide'],
  ['5 1/2/2 in', 'number-leftover', '/2'],
  [`${'9'.repeat(40)} in`, 'number-long', '9 digits'],
  [`1/${'9'.repeat(40)} in`, 'number-long', '9 digits'],
  [`5 1/${'9'.repeat(40)} in`, 'number-long', '9 digits'],
  [`0.${'3'.repeat(40)} in`, 'number-long', '9 digits'],
  ['9'.repeat(100_000), 'number-long', 'too long'],
];

/** What is read and asked about: the text, the fault, a part of the remedy, and the length that is kept. */
const QUESTIONED: readonly (readonly [text: string, code: string, remedy: string, inches: string])[] = [
  ['53/4 in', 'fraction-run-together', '5 3/4', '13 1/4'],
  ['53⁄4 in', 'fraction-run-together', '5 3/4', '13 1/4'],
  ['11/4 in', 'fraction-run-together', '1 1/4', '2 3/4'],
  ['41/8 in', 'fraction-run-together', '4 1/8', '5 1/8'],
  ['105/8 in', 'fraction-run-together', '10 5/8', '13 1/8'],
  ['115/16 in', 'fraction-run-together', '11 5/16` or `1 15/16', '7 3/16'],
  ['.5 in', 'number-bare-point', '0.5', '0.5'],
  ['010 in', 'number-leading-zero', '10', '10'],
  ['05 1/2 in', 'number-leading-zero', '5', '5 1/2'],
  ['５ in', 'number-wide-digits', '5', '5'],
];

describe('lengths that are refused', () => {
  it.each(REFUSED)('%s: %s', (text, code, remedy) => {
    const { value, faults } = readLength(text);
    expect(value).toBeUndefined();
    expect(faults).toMatchObject([{ code, severity: 'error' }]);
    expect(faults[0]?.remedy).toContain(remedy);
  });
});

describe('lengths that are questioned', () => {
  it.each(QUESTIONED)('%s: %s', (text, code, remedy, inches) => {
    const { value, faults } = readLength(text);
    expect(faults).toMatchObject([{ code, severity: 'warning' }]);
    expect(faults[0]?.remedy).toContain(remedy);
    expect(value?.length.equals(Length.fromInches(inches))).toBe(true);
  });

  it.each(['3/2 in', '19/8 in', '10/2 in', '16/3 in', '22/7 in', '100/16 in', '2 in', '0 in', '0.5 in', '15/16 in'])(
    'takes %s without a question',
    (text) => {
      expect(readLength(text).faults).toEqual([]);
    },
  );
});

describe('sizes', () => {
  it.each([
    ['5x7', 'size-spaces', '5 x 7'],
    ['5x7 in', 'size-spaces', '5 x 7 in'],
    ['5"x7"', 'size-spaces', '5" x 7"'],
    ['4 1/4x5 1/2 in', 'size-spaces', '4 1/4 x 5 1/2 in'],
    ['5½x7 in', 'size-spaces', '5½ x 7 in'],
    ['5 in', 'size-one-measure', 'with an x'],
    ['5 x 7', 'unit-missing', '5 x 7 in'],
    ['5 x 7 x 2 in', 'size-three-measures', 'width and the height'],
    ['0 x 5 in', 'size-zero', 'above zero'],
    ['5 x in', 'number-leftover', 'in'],
    ['5 ft x 7 in', 'unit-unknown', '60 in'],
    ["5 in x 7'", 'unit-feet', '84 in'],
    ['5,5 x 7 cm', 'number-comma', '5.5'],
    ['', 'number-missing', 'Write a number'],
  ])('refuses %s: %s', (text, code, remedy) => {
    const { value, faults } = readSize(text);
    expect(value).toBeUndefined();
    expect(faults[0]).toMatchObject({ code, severity: 'error' });
    expect(faults[0]?.remedy).toContain(remedy);
  });

  it.each([
    ['5 in x 148 mm', 'size-mixed-units'],
    ['5 in x 7', 'size-unit-first'],
    ['53/4 x 7 in', 'fraction-run-together'],
    ['5 x 53/4 in', 'fraction-run-together'],
  ])('questions %s: %s', (text, code) => {
    expect(codes(readSize(text))).toEqual([code]);
    expect(readSize(text).value).toBeDefined();
  });

  it('reports the faults of both measures at once', () => {
    expect(codes(readSize('5 4/3 x 1_000 in'))).toEqual(['fraction-too-big', 'number-underscore']);
  });
});

describe('any text at all', () => {
  const pieces = fc.constantFrom(
    '5',
    '1/2',
    '½',
    ' ',
    '.',
    ',',
    '/',
    '-',
    '–',
    'x',
    '×',
    'in',
    'in.',
    'mm',
    '"',
    '”',
    "'",
    '“',
    'a',
    'to',
    '0',
    '53/4',
    '_',
    '\u00a0',
    '\u200b',
    'e3',
    '(',
    ':',
    'lb',
    'cover',
    'gsm',
    '#',
    '😀',
    '\ud800',
    '٣',
    'l',
    'O',
    '1',
    '\n',
    '²',
    '⅟',
    '¹⁄₂',
    'US A2',
  );
  const hostile = fc.oneof(
    fc.array(pieces, { maxLength: 14 }).map((parts) => parts.join('')),
    fc.string({ unit: 'binary', maxLength: 40 }),
  );
  const readers = {
    number: (text: string) => readNumber(text),
    length: (text: string) => readLength(text, { units: 'in' }),
    'length with comma': (text: string) => readLength(text, { decimalComma: true }),
    size: (text: string) => readSize(text),
    weight: (text: string) => readWeight(text),
    caliper: (text: string) => readCaliper(text),
    envelope: (text: string) => findNamedSize(text, 'envelope'),
  };

  it.each(Object.entries(readers))('is read as a %s or refused with its place, and never throws', (_, read) => {
    fc.assert(
      fc.property(hostile, (text) => {
        const { value, faults } = read(text);
        const errors = faults.filter(({ severity }) => severity === 'error');
        expect(value === undefined).toBe(errors.length > 0);
        for (const { offset, wrote, takes, remedy } of faults) {
          expect(text.slice(offset).startsWith(wrote.replace(/…$/, ''))).toBe(true);
          expect(takes).toMatch(/^[a-z]/);
          expect(remedy.length).toBeGreaterThan(5);
        }
      }),
      { numRuns: 400 },
    );
  });

  it('is searched for measures that lie in order and do not overlap', () => {
    fc.assert(
      fc.property(hostile, (text) => {
        let behind = 0;
        for (const { start, end, lengths, faults } of findMeasures(text)) {
          expect(start).toBeGreaterThanOrEqual(behind);
          expect(end).toBeGreaterThan(start);
          expect(end).toBeLessThanOrEqual(text.length);
          expect(lengths.length === 0).toBe(faults.some(({ severity }) => severity === 'error'));
          behind = end;
        }
        typesetFractions(text);
      }),
      { numRuns: 400 },
    );
  });

  it('is read as a numeral that moves on', () => {
    fc.assert(
      fc.property(hostile, fc.nat(20), (text, at) => {
        const numeral = readNumeral(text, at);
        if (numeral) expect(numeral.end).toBeGreaterThan(at);
      }),
    );
  });
});
