import { equal, fraction, multiply } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { formatMass, readDensity, readMass, spokenMass } from '../../../plugins/engine/index.ts';

/** The only fault's code; fails when there is none. */
function code(reading: { readonly faults: readonly { readonly code: string }[] }): string | undefined {
  expect(reading.faults).toHaveLength(1);
  return reading.faults[0]?.code;
}

describe('a mass', () => {
  /* 1 lb = 453.59237 g exactly (1959 agreement), and an ounce is a sixteenth of it. */
  const ounce = multiply(fraction('453.59237'), fraction(1, 16));

  it.each([
    ['3 g', fraction(3)],
    ['250 mg', fraction('0.25')],
    ['2½ grams', fraction('2.5')],
    ['0.03 kg', fraction(30)],
    ['1/8 oz', multiply(ounce, fraction(1, 8))],
    ['3 1/2 ounces', multiply(ounce, fraction('3.5'))],
  ])('%s', (text, grams) => {
    expect(equal(fraction(readMass(text).value?.toFraction() ?? ''), grams)).toBe(true);
    expect(readMass(text).faults).toEqual([]);
  });

  it.each([
    ['3', 'mass-unit'],
    ['3 gsm', 'mass-unit'],
    ['80 lb cover', 'mass-unit'],
    ['3 gulls', 'mass-unit'],
    ['0 g', 'mass-zero'],
    ['5 kg', 'mass-range'],
    ['', 'number-missing'],
    ['-3 g', 'number-sign'],
    ['light', 'number-missing'],
  ])('refuses %j', (text, wanted) => {
    const reading = readMass(text);
    expect(reading.value).toBeUndefined();
    expect(code(reading)).toBe(wanted);
    expect(reading.faults[0]?.takes).toContain('3 g');
  });

  it('says that the weight of a paper stands elsewhere', () => {
    expect(readMass('216 gsm').faults[0]?.remedy).toContain('`weight`');
  });

  /* One ounce is 28.349523125 g, so 10 g is 0.3527 oz. */
  it('is printed as a letter scale shows it, and read aloud in words', () => {
    const ten = readMass('10 g').value;
    if (ten === undefined) throw new Error('not read');
    expect([formatMass(ten, 'inch'), formatMass(ten, 'metric')]).toEqual(['0.35 oz', '10 g']);
    expect([spokenMass(ten, 'inch'), spokenMass(ten, 'metric')]).toEqual(['0.35 ounces', '10 grams']);
    const one = readMass('1 g').value ?? ten;
    expect([formatMass(one, 'inch'), spokenMass(one, 'metric')]).toEqual(['0.04 oz', '1 gram']);
  });

  it('too small for the scale is not nothing', () => {
    const little = readMass('1 mg').value;
    if (little === undefined) throw new Error('not read');
    expect([formatMass(little, 'inch'), formatMass(little, 'metric')]).toEqual(['under 0.01 oz', 'under 0.1 g']);
    expect(spokenMass(little, 'metric')).toBe('under 0.1 grams');
    expect(formatMass(little.mul(0), 'metric')).toBe('0 g');
  });
});

describe('a density', () => {
  it.each([
    ['1.5 g/cm³', '3/2'],
    ['1.5 g/cm3', '3/2'],
    ['1 1/2 g per cc', '3/2'],
    ['0.1 g/ml', '1/10'],
    ['100 kg/m³', '1/10'],
  ])('%s', (text, wanted) => {
    expect(readDensity(text).value?.toFraction()).toBe(wanted);
  });

  it.each([
    ['1.5', 'density-unit'],
    ['1.5 g', 'density-unit'],
    ['1.5 g/m²', 'density-unit'],
    ['0 g/cm³', 'density-range'],
    // Lead, 11.3 g/cm³ in the tables, is in no card.
    ['11.3 g/cm³', 'density-range'],
    ['heavy', 'number-missing'],
  ])('refuses %j', (text, wanted) => {
    const reading = readDensity(text);
    expect(reading.value).toBeUndefined();
    expect(code(reading)).toBe(wanted);
  });
});
