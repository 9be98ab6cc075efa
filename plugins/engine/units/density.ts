import Fraction from 'fraction.js';
import { SPACE } from './characters.ts';
import { type Fault, faultAt, type Reading, reading } from './fault.ts';
import { decimalNumber } from './format.ts';
import { openNumber } from './read-number.ts';
import { matchAt, skipSpaces, sticky } from './scan.ts';

const DENSITY_TAKES = 'what a cubic centimetre of it weighs, such as `1.5 g/cm³`';

const PER_CUBIC_CENTIMETRE = sticky(`g${SPACE}*(?:/|per)${SPACE}*(?:cm\\^?3|cm³|cc|ml)${SPACE}*$`, 'i');
const PER_CUBIC_METRE = sticky(`kg${SPACE}*(?:/|per)${SPACE}*(?:m\\^?3|m³)${SPACE}*$`, 'i');

/** Denser than steel, which nothing in a card is. */
const DENSEST = 8;

/** Grams per cubic centimetre, exactly: `1.5 g/cm³`, `1.5 g/ml`, `30 kg/m³`. */
export function readDensity(text: string): Reading<Fraction> {
  const opening = openNumber(text, DENSITY_TAKES, {});
  if ('fault' in opening) return { value: undefined, faults: [{ ...opening.fault, takes: DENSITY_TAKES }] };
  const { numeral, start } = opening;
  const faults: Fault[] = [...numeral.faults];
  const at = skipSpaces(text, numeral.end);
  const refuse = (code: string, remedy: string): void => {
    faults.push(faultAt(text, start, text.trimEnd().length, { code, takes: DENSITY_TAKES, remedy }));
  };
  const density = matchAt(PER_CUBIC_CENTIMETRE, text, at)
    ? numeral.value
    : matchAt(PER_CUBIC_METRE, text, at)
      ? numeral.value.div(1000)
      : undefined;
  if (density === undefined) {
    refuse('density-unit', 'Weigh a level 5 ml teaspoon of it in grams, divide by five, and write that with `g/cm³`.');
  } else if (density.lte(new Fraction(0)) || density.gt(DENSEST)) {
    refuse('density-range', `This comes to ${decimalNumber(density, 3)} g/cm³. Glass beads come to about 1.5.`);
  }
  return reading(density, faults);
}
