import { describe, expect, it } from 'vitest';
import {
  findNamedSize,
  type Length,
  NAMED_SIZES,
  type NamedSize,
  type SizeUse,
} from '../../../plugins/engine/units/index.ts';
import { converted } from '../../oracles/converted.ts';
import { ISO_216, ISO_269, US_ENVELOPES, US_SHEETS, US_SHEETS_MM } from '../../oracles/size-tables.ts';
import { codes } from './numbers.ts';

/** The named size, which must be found without a fault. */
function found(name: string, use: SizeUse): NamedSize {
  const { value, faults } = findNamedSize(name, use);
  expect(faults).toEqual([]);
  if (!value) throw new Error(`${name} was not found`);
  return value;
}

/** Both sides, the shorter first. */
function sides({ width, height }: { width: Length; height: Length }, unit: 'mm' | 'in'): number[] {
  return [width, height].map((side) => (unit === 'mm' ? side.mm : side.inches).valueOf()).sort((a, b) => a - b);
}

describe('published sizes', () => {
  it.each([...ISO_216, ...ISO_269, ...US_SHEETS, ...US_ENVELOPES])('$name, $use, is $sides $unit', (row) => {
    expect(sides(found(row.name, row.use), row.unit)).toEqual(row.sides);
  });

  it.each(US_SHEETS)('$name is as many millimetres as the tables and mathjs say', ({ name, sides: inches }) => {
    const mm = sides(found(name, 'sheet'), 'mm');
    expect(mm).toEqual(US_SHEETS_MM.get(name));
    inches.forEach((side, i) => {
      expect(mm[i]).toBeCloseTo(converted(side, 'inch', 'mm'), 9);
    });
  });

  it.each(US_ENVELOPES)('$name is $ratio times as long as it is high', ({ name, ratio }) => {
    const { width, height } = found(name, 'envelope');
    expect(width.per(height).valueOf()).toBeCloseTo(ratio, 2);
    expect(width.lessThan(height)).toBe(false);
  });

  it('halves an A sheet into the next, cut to the whole millimetre, as ISO 216 says', () => {
    for (let n = 0; n < 10; n++) {
      const [short = 0, long = 0] = sides(found(`ISO A${n}`, 'sheet'), 'mm');
      expect(sides(found(`ISO A${n + 1}`, 'sheet'), 'mm')).toEqual([Math.floor(long / 2), short]);
    }
  });

  it.each(US_ENVELOPES.filter(({ card }) => card))(
    'the card sold for $name goes in',
    ({ name, sides: envelope, card }) => {
      expect(sides(found(name, 'card'), 'in')).toEqual(card);
      for (const i of [0, 1] as const) expect(envelope[i] - (card?.[i] ?? 0)).toBeGreaterThan(0);
    },
  );

  it('knows that published inserts and practice disagree: the A2 card is higher than the A2 insert', () => {
    // The lists take 1/4 in off each side, or 1/8 in off the height; the card sold for it has 1/8 in.
    const listed = US_ENVELOPES.find(({ name }) => name === 'US A2')?.insert?.[0] ?? Number.NaN;
    expect(sides(found('US A2', 'card'), 'in')[0]).toBeGreaterThan(listed);
  });

  it('stands sheets and cards upright, lays envelopes down, and has a source for each under its own id', () => {
    expect(new Set(NAMED_SIZES.map(({ id }) => id)).size).toBe(NAMED_SIZES.length);
    for (const { use, width, height, source } of NAMED_SIZES) {
      expect(use === 'envelope' ? height.moreThan(width) : width.moreThan(height)).toBe(false);
      expect(source).not.toBe('');
    }
  });
});

describe('names', () => {
  it.each([
    ['A4', 'sheet', 'ISO A4'],
    ['a4', 'sheet', 'ISO A4'],
    ['ISO-A4', 'sheet', 'ISO A4'],
    ['Letter', 'sheet', 'US Letter'],
    ['us letter', 'sheet', 'US Letter'],
    [' US  Letter ', 'sheet', 'US Letter'],
    ['Letter paper', 'sheet', 'US Letter'],
    ['Ledger', 'sheet', 'US Tabloid'],
    ['C6', 'envelope', 'ISO C6'],
    ['C6 envelope', 'envelope', 'ISO C6'],
    ['DL', 'envelope', 'ISO DL'],
    ['DL', 'card', 'ISO DL'],
    ['#10', 'envelope', 'US #10'],
    ['No. 10', 'envelope', 'US #10'],
    ['number 10', 'envelope', 'US #10'],
    ['4 bar', 'envelope', 'US 4-Bar'],
    ['#6 3/4', 'envelope', 'US #6 3/4'],
    ['US A2 card', 'card', 'US A2'],
    ['12 x 12 in', 'sheet', '12 x 12 in'],
    ['12" x 12"', 'sheet', '12 x 12 in'],
    ['11 x 8 1/2 in', 'sheet', 'US Letter'],
    ['210 × 297 mm', 'sheet', 'ISO A4'],
    ['5 x 7 in', 'card', 'US A7'],
  ] as const)('%j as a %s is %s', (text, use, name) => {
    expect(found(text, use)).toMatchObject({ name, use });
  });

  it.each(['A1', 'A2', 'A6', 'A7', 'A8', 'A9', 'A10'])('%s alone is asked about, wherever it stands', (name) => {
    for (const use of ['sheet', 'envelope', 'card'] as const) {
      const reading = findNamedSize(name, use);
      expect(reading.value).toBeUndefined();
      expect(codes(reading)).toEqual(['size-ambiguous']);
      expect(reading.faults[0]?.remedy).toContain(`US ${name}`);
      expect(reading.faults[0]?.remedy).toContain(`ISO ${name}`);
    }
  });

  it('keeps US A2 the card, its envelope, and ISO A2 the sheet apart', () => {
    expect(sides(found('US A2', 'card'), 'in')).toEqual([4.25, 5.5]);
    expect(sides(found('US A2', 'envelope'), 'in')).toEqual([4.375, 5.75]);
    expect(sides(found('ISO A2', 'sheet'), 'mm')).toEqual([420, 594]);
  });

  it.each([
    ['US Leter', 'sheet', 'size-unknown', 'US Letter'],
    ['ISO C66', 'envelope', 'size-unknown', 'ISO C6'],
    ['US A22', 'envelope', 'size-unknown', 'US A2'],
    ['US A4', 'sheet', 'size-unknown', 'ISO A4'],
    ['kelp', 'card', 'size-unknown', 'US A1, US A2'],
    ['', 'sheet', 'size-unknown', 'name of a sheet'],
    ['US A2', 'sheet', 'size-use', 'an envelope and a card'],
    ['ISO A3', 'card', 'size-use', 'a sheet'],
    ['US A2 card', 'envelope', 'size-use', 'an envelope is wanted'],
    ['12x12', 'sheet', 'size-spaces', '12 x 12'],
    ['12 x 12', 'sheet', 'unit-missing', 'in'],
  ] as const)('refuses %j as a %s: %s', (text, use, code, remedy) => {
    const reading = findNamedSize(text, use);
    expect(reading.value).toBeUndefined();
    expect(codes(reading)).toEqual([code]);
    expect(reading.faults[0]?.remedy).toContain(remedy);
  });

  it('takes a size of no name as it is written, bare in the unit of the file', () => {
    const plain = found('8 x 10 in', 'sheet');
    expect(plain).toMatchObject({ id: '8-x-10-in-sheet', name: '8 x 10 in', use: 'sheet', source: 'as written' });
    expect(findNamedSize('8 x 10', 'sheet', { units: 'in' }).value).toEqual(plain);
  });
});
