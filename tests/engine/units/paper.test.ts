import Fraction from 'fraction.js';
import { all, create } from 'mathjs';
import { describe, expect, it } from 'vitest';
import {
  caliperFor,
  GRADES,
  type GradeId,
  gramsPerSquareMetre,
  Length,
  poundsOf,
  readWeight,
} from '../../../plugins/engine/index.ts';

const math = create(all);

/** mathjs's own pounds, grams and inches: 500 sheets of the basic size weigh so many pounds. */
function factorByMathjs(width: number, height: number): number {
  return math.evaluate(`(1 lb / (500 * ${width} inch * ${height} inch)) to g/m^2`).toNumber('g/m^2');
}

describe('pounds and grams', () => {
  // Cited as "basis sheets": the published factors, rounded as printed.
  it.each([
    ['bond', 17, 22, 3.76],
    ['cover', 20, 26, 2.7],
    ['bristol', 22.5, 28.5, 2.19],
    ['index', 25.5, 30.5, 1.81],
    ['tag', 24, 36, 1.63],
    ['text', 25, 38, 1.48],
  ] as const)('a pound of %s agrees with mathjs and with the printed factor', (grade, width, height, printed) => {
    const factor = gramsPerSquareMetre(1, grade).valueOf();
    expect(Math.abs(factor - factorByMathjs(width, height))).toBeLessThan(1e-9);
    expect(factor.toFixed(2)).toBe(printed.toFixed(2));
  });

  it('goes there and back exactly on all six grades', () => {
    expect(GRADES).toHaveLength(6);
    for (const { id } of GRADES) {
      for (const pounds of [20, 65, 110, new Fraction(67, 3)]) {
        expect(poundsOf(gramsPerSquareMetre(pounds, id), id).equals(pounds)).toBe(true);
      }
    }
  });

  // Cited as "media guide": worked examples, which use factors of four figures.
  it.each([
    [90, 'text', 133.218],
    [100, 'cover', 270.42],
  ] as const)('%d lb %s is %d g/m2', (pounds, grade, printed) => {
    expect(Math.abs(gramsPerSquareMetre(pounds, grade).valueOf() - printed)).toBeLessThan(0.02);
  });

  // Cited as "printer manual 1" and "printer manual 2". Each entry is rounded (or cut) to a whole pound.
  it.each([
    [75, 20, 50, 28, 42],
    [90, 24, 60, 33, 50],
    [105, 28, 70, 39, 58],
    [135, 36, 90, 50, 75],
    [148, 39, 100, 55, 82],
    [176, 47, 120, 65, 97],
    [199, 53, 135, 74, 110],
    [216, 58, 146, 80, 120],
    [244, 65, 165, 90, 135],
    [253, 67, 171, 94, 140],
  ])('%d g/m2 stands in a printed table as %d bond, %d text, %d cover, %d index', (gsm, bond, text, cover, index) => {
    const printed: [GradeId, number][] = [
      ['bond', bond],
      ['text', text],
      ['cover', cover],
      ['index', index],
    ];
    for (const [grade, pounds] of printed)
      expect(Math.abs(poundsOf(gsm, grade).valueOf() - pounds)).toBeLessThanOrEqual(1);
  });

  it.each([
    [216, 'bristol', 98],
    [216, 'tag', 133],
    [271, 'bond', 72],
    [271, 'text', 183],
    [271, 'cover', 100],
  ] as const)('%d g/m2 is %s %d in a second printed table', (gsm, grade, pounds) => {
    expect(Math.abs(poundsOf(gsm, grade).valueOf() - pounds)).toBeLessThanOrEqual(1);
  });

  it('does not repeat the well-known slip: 110 lb cover is 297, not the 298 of the factor 2.708', () => {
    expect(gramsPerSquareMetre(110, 'cover').valueOf().toFixed(0)).toBe('297');
  });
});

describe('weights as a packet gives them', () => {
  it.each([
    ['80 lb cover', 216.33],
    ['80# cover', 216.33],
    ['110 lb index', 198.88],
    ['24 lb bond', 90.23],
    ['67 lb bristol', 146.92],
    ['216 gsm', 216],
    ['216 g/m2', 216],
    ['216 g/m²', 216],
  ])('%s', (text, gsm) => {
    const { value, faults } = readWeight(text);
    expect(faults).toEqual([]);
    expect(value?.gsm.valueOf()).toBeCloseTo(gsm, 2);
  });

  it.each(['80 lb', '80', 'cover', '80 lb cuver', '12 pt', '-80 gsm', '0 gsm', '9000 gsm', ''])(
    'refuses %j with a cure',
    (text) => {
      const { value, faults } = readWeight(text);
      expect(value).toBeUndefined();
      expect(faults[0]?.remedy).not.toBe('');
    },
  );

  it('names the nearest grade', () => {
    expect(readWeight('80 lb cuver').faults[0]?.remedy).toContain('cover');
  });
});

describe('caliper', () => {
  // Cited as "JCP K10": caliper in mm of index stock.
  it.each([
    ['90 lb index', 0.19],
    ['110 lb index', 0.23],
    ['140 lb index', 0.29],
    ['170 lb index', 0.35],
  ])('%s from the table', (text, mm) => {
    const weight = readWeight(text).value;
    const caliper = caliperFor({ weight });
    expect(caliper?.origin).toBe('table');
    expect(caliper?.length.toMm()).toBe(mm);
    // The same standard, from its grammage alone, within its own tolerance of 0.013 mm (0.020 for 305 g/m2).
    const estimate = caliperFor({ gsm: weight?.gsm });
    expect(estimate?.origin).toBe('estimate');
    expect(Math.abs((estimate?.length.toMm() ?? 0) - mm)).toBeLessThanOrEqual(0.02);
  });

  // Cited as "cover guide": points are thousandths of an inch.
  it.each([
    ['65 lb cover', 8],
    ['80 lb cover', 9.5],
    ['100 lb cover', 11],
    ['120 lb cover', 15],
  ])('%s is %d points', (text, points) => {
    expect(caliperFor({ weight: readWeight(text).value })?.length.inches.valueOf()).toBe(points / 1000);
  });

  it('lets a measured thickness win over the table, and knows nothing of nothing', () => {
    const measured = Length.fromMm('0.31');
    const caliper = caliperFor({ weight: readWeight('110 lb index').value, measured });
    expect(caliper).toMatchObject({ origin: 'measured' });
    expect(caliper?.length.equals(measured)).toBe(true);
    expect(caliperFor({})).toBeUndefined();
  });
});
