import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { Length, readLength, readNumber, readNumeral, readSize } from '../../../plugins/engine/units/index.ts';

/** Five and a half inches, as makers and their word processors write it. */
const FIVE_AND_A_HALF = [
  '5 1/2 in',
  '5 1/2in',
  '5½ in',
  '5 ½ in',
  '5-1/2 in',
  '5-½ in',
  '5\u20101/2 in',
  '5\u20111/2 in',
  '5 1⁄2 in',
  '5\u20091⁄2\u00a0in',
  '5\u00a01/2\u202fin',
  '5 1∕2 in',
  '5 ¹⁄₂ in',
  '5 ⅟2 in',
  '5.5 in',
  '5 1/2 in.',
  '5 1/2 inch',
  '5 1/2 inches',
  '5 1/2 INCHES',
  '5 1/2-inch',
  '11/2 in',
  ' 5  1/2  in ',
  '5\u200b 1/2 in',
] as const;

/** Marks for inches: straight, curly, primes, low and wide quotes, and two single marks of any kind. */
const INCH_MARKS = [
  '"',
  '”',
  '“',
  '„',
  '‟',
  '″',
  '‶',
  'ʺ',
  '˝',
  'ˮ',
  '״',
  '〃',
  '〝',
  '〞',
  '〟',
  '❝',
  '❞',
  '＂',
  "''",
  '’’',
  '‘‘',
  '′′',
  '‵‵',
  'ʹʹ',
  '´´',
  '``',
  '＇＇',
  "’'",
] as const;

/** Every fraction character of Unicode that has a numerator and a denominator (Latin-1 Supplement and Number Forms). */
const FRACTION_CHARACTERS = [
  ['¼', 1, 4],
  ['½', 1, 2],
  ['¾', 3, 4],
  ['⅐', 1, 7],
  ['⅑', 1, 9],
  ['⅒', 1, 10],
  ['⅓', 1, 3],
  ['⅔', 2, 3],
  ['⅕', 1, 5],
  ['⅖', 2, 5],
  ['⅗', 3, 5],
  ['⅘', 4, 5],
  ['⅙', 1, 6],
  ['⅚', 5, 6],
  ['⅛', 1, 8],
  ['⅜', 3, 8],
  ['⅝', 5, 8],
  ['⅞', 7, 8],
] as const;

describe('readLength', () => {
  it.each(FIVE_AND_A_HALF)('reads %j as five and a half inches', (text) => {
    expect(readLength(text).value).toEqual({ length: Length.fromInches('11/2'), unit: 'in' });
  });

  it.each(INCH_MARKS)('reads %s as inches', (mark) => {
    for (const text of [`5 1/2${mark}`, `5½${mark}`, `5 1/2 ${mark}`]) {
      expect(readLength(text)).toEqual({ value: { length: Length.fromInches('11/2'), unit: 'in' }, faults: [] });
    }
  });

  it.each(FRACTION_CHARACTERS)('reads the fraction character %s', (character, numerator, denominator) => {
    const fraction = new Fraction(numerator, denominator);
    // The Unicode Character Database decomposes each to its digits round a fraction slash.
    expect(character.normalize('NFKC')).toBe(`${numerator}\u2044${denominator}`);
    expect(readNumber(character).value?.equals(fraction)).toBe(true);
    expect(readNumber(`7${character}`).value?.equals(fraction.add(7))).toBe(true);
  });

  it.each([
    '139.7 mm',
    '139.7mm',
    '13.97 cm',
    '139.7 millimetres',
    '139.7 millimeters',
    '13.97 centimetres',
    '139.7 MM',
  ])('reads %s as the same length', (text) => {
    expect(readLength(text).faults).toEqual([]);
    expect(readLength(text).value?.length.equals(Length.fromMm('139.7'))).toBe(true);
  });

  it('reads a bare number in the unit of the file, and only then', () => {
    expect(readLength('5 1/2', { units: 'in' }).value).toEqual({ length: Length.fromInches('11/2'), unit: 'in' });
    expect(readLength('14', { units: 'cm' }).value?.length.equals(Length.fromMm(140))).toBe(true);
    expect(readLength('5 mm', { units: 'in' }).value?.unit).toBe('mm');
    expect(readLength('5 1/2').faults).toMatchObject([{ code: 'unit-missing', severity: 'error' }]);
  });

  it('reads a decimal comma where the language has one', () => {
    const comma = { decimalComma: true };
    expect(readLength('5,5 cm', comma)).toMatchObject({ faults: [], value: { unit: 'cm' } });
    expect(readLength('5,5 cm', comma).value?.length.equals(Length.fromMm(55))).toBe(true);
    expect(readLength('5.5 cm', comma).value?.length.equals(Length.fromMm(55))).toBe(true);
    expect(readSize('10,5 x 14,8 cm', comma).value?.height.equals(Length.fromMm(148))).toBe(true);
  });

  it('keeps thirds and fifths exact', () => {
    expect(readLength('5 1/3 in').value?.length.times(3).equals(Length.fromInches(16))).toBe(true);
    expect(readLength('5 1/3 in').faults).toEqual([]);
  });
});

describe('readSize', () => {
  it.each([
    '2 3/4 x 5 1/2 in',
    '2¾ x 5½ in',
    '2 3/4 × 5 1/2 in',
    '2 3/4×5 1/2 in',
    '2 3/4 X 5 1/2 in',
    '2 3/4 by 5 1/2 in',
    '2 3/4 in x 5 1/2 in',
    '2 3/4" x 5 1/2"',
    '2 3/4” × 5 1/2”',
    '2-3/4 x 5-1/2 in',
    '2.75 x 5.5 inches',
    '69.85 x 139.7 mm',
    '6.985 x 13.97 cm',
    '2 3/4 x 5 1/2"',
    '2 3/4-by-5 1/2-inch',
  ])('reads %s, the unit at the end serving both', (text) => {
    const { value, faults } = readSize(text);
    expect(faults).toEqual([]);
    expect(value?.width.equals(Length.fromInches('11/4'))).toBe(true);
    expect(value?.height.equals(Length.fromInches('11/2'))).toBe(true);
  });

  it('reads bare sizes in the unit of the file', () => {
    expect(readSize('5 x 7', { units: 'in' }).value?.height.equals(Length.fromInches(7))).toBe(true);
    expect(readSize('5" x 7', { units: 'in' }).faults).toEqual([]);
  });
});

describe('readNumeral', () => {
  it.each([
    ['height - 5 1/2*2', 9, 14, '11/2'],
    ['2*depth', 0, 1, '2'],
    ['front 4 1/4, back', 6, 11, '17/4'],
    ['5-1/2', 0, 1, '5'],
    ['1/2', 0, 3, '1/2'],
    ['(3/4)', 1, 4, '3/4'],
    ['5½in', 0, 2, '11/2'],
  ])('reads the number in %j at %d and stops', (text, at, end, value) => {
    const numeral = readNumeral(text, at);
    expect(numeral).toMatchObject({ end, faults: [] });
    expect(numeral?.value.equals(value)).toBe(true);
  });

  it('finds none where none starts', () => {
    for (const text of ['', 'width', '-5', '+5', '/2', '.', ' 5']) expect(readNumeral(text, 0)).toBeUndefined();
  });

  it('takes a near miss whole, so that what follows can still be read', () => {
    expect(readNumeral('1_000 + 2', 0)).toMatchObject({ end: 5, faults: [{ code: 'number-underscore' }] });
    expect(readNumeral('5x7', 0)).toMatchObject({ end: 3, faults: [{ code: 'size-spaces' }] });
  });
});
