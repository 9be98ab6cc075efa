import { describe, expect, it } from 'vitest';
import { findNamedSize, NAMED_SIZES, type SizeUse } from '../../../plugins/engine/index.ts';

function millimetres(text: string, use: SizeUse): number[] {
  const { value, faults } = findNamedSize(text, use);
  expect(faults).toEqual([]);
  return value ? [value.width.toMm(), value.height.toMm()].sort((a, b) => a - b) : [];
}

function inches(text: string, use: SizeUse): number[] {
  return millimetres(text, use).map((mm) => Math.round((mm / 25.4) * 1e9) / 1e9);
}

describe('sheets', () => {
  // Cited as "ISO 216".
  it.each([
    ['ISO A0', 841, 1189],
    ['ISO A1', 594, 841],
    ['ISO A2', 420, 594],
    ['A3', 297, 420],
    ['A4', 210, 297],
    ['ISO A5', 148, 210],
    ['ISO A6', 105, 148],
    ['ISO A7', 74, 105],
    ['ISO B4', 250, 353],
    ['ISO B5', 176, 250],
    ['ISO B6', 125, 176],
  ])('%s is %d x %d mm', (name, short, long) => expect(millimetres(name, 'sheet')).toEqual([short, long]));

  it('halves an A sheet into the next within the millimetre that ISO 216 rounds down', () => {
    for (let n = 0; n < 7; n++) {
      const [short = 0, long = 0] = millimetres(`ISO A${n}`, 'sheet');
      const [nextShort = 0, nextLong = 0] = millimetres(`ISO A${n + 1}`, 'sheet');
      expect(nextLong).toBe(short);
      expect(nextShort).toBe(Math.floor(long / 2));
    }
  });

  // Cited as "Y14.1"; Legal and 12 x 12 are trade sizes (common practice, no source).
  it.each([
    ['Letter', 8.5, 11],
    ['US Letter', 8.5, 11],
    ['US Legal', 8.5, 14],
    ['US Tabloid', 11, 17],
    ['12 x 12 in', 12, 12],
  ])('%s is %d x %d in', (name, short, long) => expect(inches(name, 'sheet')).toEqual([short, long]));
});

describe('envelopes', () => {
  // Cited as "ISO 269".
  it.each([
    ['DL', 110, 220],
    ['ISO C7/C6', 81, 162],
    ['C6', 114, 162],
    ['ISO C6/C5', 114, 229],
    ['C5', 162, 229],
    ['ISO C4', 229, 324],
    ['ISO C3', 324, 458],
    ['ISO B6', 125, 176],
    ['ISO B5', 176, 250],
    ['ISO B4', 250, 353],
    ['ISO E4', 280, 400],
  ])('%s is %d x %d mm', (name, short, long) => expect(millimetres(name, 'envelope')).toEqual([short, long]));

  // Published trade lists: trade names, not a standard.
  it.each([
    ['US A1', 3.625, 5.125],
    ['US A2', 4.375, 5.75],
    ['US A6', 4.75, 6.5],
    ['US A7', 5.25, 7.25],
    ['US A8', 5.5, 8.125],
    ['US A10', 6, 9.5],
    ['#10', 4.125, 9.5],
    ['No. 10', 4.125, 9.5],
  ])('%s is %d x %d in', (name, short, long) => expect(inches(name, 'envelope')).toEqual([short, long]));
});

describe('names that mean two things', () => {
  it.each([
    ['A2', 'envelope'],
    ['A6', 'sheet'],
    ['A7', 'envelope'],
    ['a 2', 'card'],
  ] as const)('%s as a %s is asked about', (name, use) => {
    const { value, faults } = findNamedSize(name, use);
    expect(value).toBeUndefined();
    expect(faults[0]?.code).toBe('size-ambiguous');
    expect(faults[0]?.remedy).toContain('US A');
    expect(faults[0]?.remedy).toContain('ISO A');
  });

  it('keeps the card US A2, its envelope and the sheet ISO A2 apart', () => {
    expect(inches('US A2', 'card')).toEqual([4.25, 5.5]);
    expect(inches('US A2', 'envelope')).toEqual([4.375, 5.75]);
    expect(millimetres('ISO A2', 'sheet')).toEqual([420, 594]);
  });

  it.each([
    ['US Leter', 'sheet', 'US Letter'],
    ['ISO C66', 'envelope', 'ISO C6'],
    ['US A22', 'envelope', 'US A2'],
  ] as const)('%s: nearest name', (name, use, near) =>
    expect(findNamedSize(name, use).faults[0]?.remedy).toContain(near),
  );

  it('has unique ids and a source for every size', () => {
    expect(new Set(NAMED_SIZES.map((size) => size.id)).size).toBe(NAMED_SIZES.length);
    for (const size of NAMED_SIZES) expect(size.source).not.toBe('');
  });
});
