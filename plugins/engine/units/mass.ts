import Fraction from 'fraction.js';
import { SPACE } from './characters.ts';
import { type Fault, faultAt, type Reading, reading } from './fault.ts';
import { decimalNumber } from './format.ts';
import { openNumber } from './read-number.ts';
import { matchAt, skipSpaces, sticky } from './scan.ts';
import type { System } from './system.ts';

/** Grams of one ounce, exactly: a sixteenth of a pound of 453.59237 g (agreement of 1 July 1959). */
export const GRAMS_PER_OUNCE = new Fraction('28.349523125');

const MASS_TAKES = 'a mass as a kitchen scale shows it, such as `3 g` or `1/8 oz`';

/** Heavier than anything that goes into a card, a whole card included. */
const HEAVIEST_GRAMS = 2000;

const UNITS: readonly { readonly pattern: RegExp; readonly grams: Fraction }[] = [
  { pattern: sticky(`(?:mg|milligram(?:me)?s?)\\.?${SPACE}*$`, 'i'), grams: new Fraction(1, 1000) },
  { pattern: sticky(`(?:g|gr?ms?|gram(?:me)?s?)\\.?${SPACE}*$`, 'i'), grams: new Fraction(1) },
  { pattern: sticky(`(?:kg|kilo(?:gram(?:me)?)?s?)\\.?${SPACE}*$`, 'i'), grams: new Fraction(1000) },
  { pattern: sticky(`(?:oz|ounces?)\\.?${SPACE}*$`, 'i'), grams: GRAMS_PER_OUNCE },
];

/** Grams, exactly: `3 g`, `250 mg`, `1/8 oz`. A bare number is refused, for it says nothing; so is nothing at all. */
export function readMass(text: string): Reading<Fraction> {
  const opening = openNumber(text, MASS_TAKES, {});
  if ('fault' in opening) return { value: undefined, faults: [{ ...opening.fault, takes: MASS_TAKES }] };
  const { numeral, start } = opening;
  const faults: Fault[] = [...numeral.faults];
  const at = skipSpaces(text, numeral.end);
  const unit = UNITS.find(({ pattern }) => matchAt(pattern, text, at));
  const grams = unit && numeral.value.mul(unit.grams);
  const refuse = (code: string, remedy: string): void => {
    faults.push(faultAt(text, start, text.trimEnd().length, { code, takes: MASS_TAKES, remedy }));
  };
  if (grams === undefined) refuse('mass-unit', sayUnit(text.slice(start, numeral.end), text.slice(at).trim()));
  else if (grams.lte(0)) refuse('mass-zero', 'Write what the scale shows. If it shows nothing, weigh ten and divide.');
  else if (grams.gt(HEAVIEST_GRAMS)) {
    refuse('mass-range', `This comes to ${decimalNumber(grams, 0)} g, more than any card weighs. Check the unit.`);
  }
  return reading(grams, faults);
}

function sayUnit(number: string, rest: string): string {
  if (rest === '') return `Write \`${number} g\` or \`${number} oz\`.`;
  if (/^(?:gsm|g\s*\/|lbs?\b|pounds?\b|#)/i.test(rest)) {
    return 'This is the weight of a paper by its area, which stands under `weight`. Write the mass in `g` or `oz`.';
  }
  return 'Write the mass in `g` or `oz`.';
}

/** Decimals of a printed mass: a letter scale shows a tenth of a gram or a hundredth of an ounce at best. */
const DECIMALS: Readonly<Record<System, number>> = { inch: 2, metric: 1 };

/** `0.35 oz`, `9.9 g`. What is less than the finest figure is told as less than that, never as nothing. */
export function formatMass(grams: Fraction, system: System): string {
  const { number, less } = massFigure(grams, system);
  return `${less ? 'under ' : ''}${number} ${system === 'inch' ? 'oz' : 'g'}`;
}

/** A mass as it is read aloud: `0.35 ounces`, `9.9 grams`. */
export function spokenMass(grams: Fraction, system: System): string {
  const { number, less } = massFigure(grams, system);
  const noun = system === 'inch' ? 'ounce' : 'gram';
  return `${less ? 'under ' : ''}${number} ${number === '1' ? noun : `${noun}s`}`;
}

function massFigure(grams: Fraction, system: System): { readonly number: string; readonly less: boolean } {
  const value = system === 'inch' ? grams.div(GRAMS_PER_OUNCE) : grams;
  const number = decimalNumber(value, DECIMALS[system]);
  if (number !== '0' || value.equals(0)) return { number, less: false };
  return { number: decimalNumber(new Fraction(1, 10 ** DECIMALS[system]), DECIMALS[system]), less: true };
}
