import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import {
  caliperFor,
  GRADES,
  type GradeId,
  gramsPerSquareMetre,
  Length,
  poundsOf,
  readCaliper,
  readWeight,
} from '../../../plugins/engine/units/index.ts';
import { basisFactor } from '../../oracles/converted.ts';
import {
  COVER_POINTS,
  FACTORS,
  INDEX_CALIPERS,
  PRINTER_MANUAL_1,
  PRINTER_MANUAL_2,
  type WeightRow,
  WORKED_EXAMPLES,
  WRONG_COVER_FACTOR,
} from '../../oracles/paper-tables.ts';
import { codes } from './numbers.ts';

describe('pounds and grams', () => {
  it.each(FACTORS)('a pound of $grade agrees with mathjs and with the printed factors', ({ grade, sheet, printed }) => {
    const factor = gramsPerSquareMetre(1, grade).valueOf();
    expect(Math.abs(factor / basisFactor(sheet[0], sheet[1]) - 1)).toBeLessThan(1e-12);
    for (const one of printed) expect(factor.toFixed(one.length - 2)).toBe(one);
  });

  it('goes there and back exactly on all six grades', () => {
    expect(GRADES.map(({ id }) => id).sort()).toEqual(FACTORS.map(({ grade }) => grade).sort());
    for (const { id } of GRADES) {
      for (const pounds of [20, 65, 110, new Fraction(67, 3)]) {
        expect(poundsOf(gramsPerSquareMetre(pounds, id), id).equals(pounds)).toBe(true);
      }
    }
  });

  it.each(WORKED_EXAMPLES)('$pounds lb $grade is $gsm g/m² but for the rounded factor', ({ pounds, grade, gsm }) => {
    // One in the last figure of the guide's factor, for each pound.
    expect(Math.abs(gramsPerSquareMetre(pounds, grade).valueOf() - gsm)).toBeLessThanOrEqual(pounds * 0.0001);
  });

  it.each([...PRINTER_MANUAL_1, ...PRINTER_MANUAL_2])('finds the printed pounds of $gsm g/m²', (row) => {
    for (const [grade, printed] of poundsIn(row)) {
      const exact = poundsOf(row.gsm, grade).valueOf();
      // The tables round or cut to a pound; light text papers are given as the nearest weight sold, a multiple of ten.
      const sold = grade === 'text' && printed <= 120 ? Math.round(exact / 10) * 10 : exact;
      expect(Math.abs(sold - printed)).toBeLessThanOrEqual(1);
    }
  });

  it('makes 110 lb cover 297 g/m²: the 298 that is often quoted comes of a wrong factor', () => {
    expect(gramsPerSquareMetre(110, 'cover').valueOf()).toBeCloseTo(297.45, 2);
    expect(Math.round(110 * WRONG_COVER_FACTOR)).toBe(298);
  });

  it('makes 65 lb cover 175.77 g/m², which packets print as 175 or 176', () => {
    expect(gramsPerSquareMetre(65, 'cover').valueOf()).toBeCloseTo(175.77, 2);
  });
});

function poundsIn({ gsm: _, ...pounds }: WeightRow): (readonly [GradeId, number])[] {
  return GRADES.flatMap(({ id }) => {
    const printed = pounds[id];
    return printed === undefined ? [] : [[id, printed] as const];
  });
}

describe('weights as a packet gives them', () => {
  it.each([
    ['80 lb cover', 216.33, 'cover'],
    ['80 LB COVER', 216.33, 'cover'],
    ['80lb cover', 216.33, 'cover'],
    ['80# cover', 216.33, 'cover'],
    ['80-lb cover', 216.33, 'cover'],
    ['80 pounds cover stock', 216.33, 'cover'],
    ['80 lb cardstock', 216.33, 'cover'],
    ['80 lb text', 118.41, 'text'],
    ['70 lb. offset', 103.61, 'text'],
    ['110 lb index', 198.88, 'index'],
    ['24 lb bond', 90.23, 'bond'],
    ['67 lb vellum bristol', 146.92, 'bristol'],
    ['100 lb tag', 162.75, 'tag'],
    ['216 gsm', 216, undefined],
    ['216gsm', 216, undefined],
    ['216 g/m2', 216, undefined],
    ['216 g/m²', 216, undefined],
    ['216 g/m^2', 216, undefined],
    ['216 grams per square metre', 216, undefined],
  ])('%s is %d g/m²', (text, gsm, grade) => {
    const { value, faults } = readWeight(text);
    expect(faults).toEqual([]);
    expect(value?.gsm.valueOf()).toBeCloseTo(gsm, 2);
    expect(value?.grade).toBe(grade);
  });

  it.each([
    ['80 lb', 'weight-grade-missing', '80 lb cover is 216 gsm'],
    ['80 lb', 'weight-grade-missing', '80 lb text is 118 gsm'],
    ['80 lb cuver', 'weight-grade-unknown', '80 lb cover'],
    ['80 lb kelp', 'weight-grade-unknown', 'bond, cover, bristol, index, tag, text'],
    ['80', 'weight-unit', '80 lb cover'],
    ['300 g', 'weight-unit', '300 gsm'],
    ['12 pt', 'weight-unit', 'caliper'],
    ['0.3 mm', 'weight-unit', 'caliper'],
    ['0 gsm', 'weight-range', '0 gsm'],
    ['9000 gsm', 'weight-range', '9000 gsm'],
    ['-80 gsm', 'number-sign', 'without a sign'],
    ['cover', 'number-missing', 'number'],
    ['', 'number-missing', 'number'],
  ])('refuses %j: %s', (text, code, remedy) => {
    const { value, faults } = readWeight(text);
    expect(value).toBeUndefined();
    expect(faults).toMatchObject([{ code, severity: 'error' }]);
    expect(faults[0]?.remedy).toContain(remedy);
  });
});

describe('caliper', () => {
  it.each(INDEX_CALIPERS)('$pounds lb index is $mm mm by the table', ({ pounds, gsm, mm, inches, toleranceMm }) => {
    const table = caliperFor({ weight: readWeight(`${pounds} lb index`).value });
    expect(table).toMatchObject({ origin: 'table' });
    expect(table?.length.toMm()).toBe(mm);
    expect(Math.abs((table?.length.inches.valueOf() ?? 0) - inches)).toBeLessThanOrEqual(0.00005);
    // From its grammage alone it is estimated within the standard's own tolerance.
    const estimate = caliperFor({ gsm });
    expect(estimate).toMatchObject({ origin: 'estimate' });
    expect(Math.abs((estimate?.length.toMm() ?? 0) - mm)).toBeLessThanOrEqual(toleranceMm);
  });

  it.each(COVER_POINTS)('%d lb cover is %d points by the table', (pounds, points) => {
    const caliper = caliperFor({ weight: readWeight(`${pounds} lb cover`).value });
    expect(caliper?.origin).toBe('table');
    expect(caliper?.length.equals(Length.fromInches(new Fraction(points).div(1000)))).toBe(true);
  });

  it('lets a measured thickness win over the table, and the table over the weight', () => {
    const weight = readWeight('110 lb index').value;
    const measured = Length.fromMm('0.31');
    expect(caliperFor({ weight, gsm: 200, measured })).toMatchObject({ origin: 'measured', length: measured });
    expect(caliperFor({ weight, gsm: 200 })?.origin).toBe('table');
    expect(caliperFor({ weight: readWeight('75 lb cover').value })?.origin).toBe('estimate');
    expect(caliperFor({})).toBeUndefined();
  });

  it('names a source for each', () => {
    for (const text of ['90 lb index', '80 lb cover', '240 gsm']) {
      expect(caliperFor({ weight: readWeight(text).value })?.source).not.toBe('');
    }
  });

  it.each(['12 pt', '12 pts.', '12 points', '12 mil', '0.012 in', '0.3048 mm', '304.8 µm', '304.8 microns'])(
    'reads %s as one thickness',
    (text) => {
      expect(readCaliper(text).faults).toEqual([]);
      expect(readCaliper(text).value?.equals(Length.fromInches('0.012'))).toBe(true);
    },
  );

  it('refuses a thickness without a unit, and a weight', () => {
    expect(codes(readCaliper('12'))).toEqual(['unit-missing']);
    expect(codes(readCaliper('80 lb cover'))).toEqual(['unit-unknown']);
    expect(codes(readCaliper(''))).toEqual(['number-missing']);
  });
});
