import type Fraction from 'fraction.js';
import { nearestName } from '../diagnostics/index.ts';
import { SPACE } from './characters.ts';
import { type Fault, faultAt, type Reading, reading } from './fault.ts';
import { decimalNumber } from './format.ts';
import { GRADES, type Grade, type GradeId, gramsPerSquareMetre } from './grades.ts';
import { openNumber } from './read-number.ts';
import { matchAt, skipSpaces, sticky } from './scan.ts';

/** A paper's weight as its packet gives it. */
export interface PaperWeight {
  /** Grams per square metre, exactly. */
  readonly gsm: Fraction;
  /** Undefined when the packet gives grams. */
  readonly pounds: Fraction | undefined;
  readonly grade: GradeId | undefined;
}

const WEIGHT_TAKES = 'a weight, as `216 gsm` or `80 lb cover`';

const SQUARE_METRE = `m(?:\\^?2|²)|sq(?:uare)?\\.?${SPACE}*m(?:et(?:re|er))?`;
const GRAMS = sticky(`(?:g(?:rams?)?${SPACE}*(?:/|per)${SPACE}*(?:${SQUARE_METRE})|g\\.?s\\.?m\\.?)(?![\\w²])`, 'i');
const POUNDS = sticky('-?(?:(?:lbs?|pounds?)\\.?|#)(?![a-z0-9])', 'i');

/** Words on a packet that say nothing of the grade. */
const FILLERS: ReadonlySet<string> = new Set(['weight', 'stock', 'paper', 'board', 'smooth', 'vellum']);

/** Heavier than any board a card is made from. */
const HEAVIEST_GSM = 2000;

/** `80 lb cover`, `80# text`, `216 gsm`, `216 g/m²`, exactly. Pounds without a grade are refused: they mean six weights. */
export function readWeight(text: string): Reading<PaperWeight> {
  const opening = openNumber(text, WEIGHT_TAKES, {});
  if ('fault' in opening) return { value: undefined, faults: [opening.fault] };
  const { numeral, start } = opening;
  const faults: Fault[] = [...numeral.faults];
  const end = text.trimEnd().length;
  const at = skipSpaces(text, numeral.end);
  const warn = (code: string, remedy: string): void => {
    faults.push(faultAt(text, start, end, { code, takes: WEIGHT_TAKES, remedy }));
  };
  const grams = matchAt(GRAMS, text, at);
  const pounds = matchAt(POUNDS, text, at);
  let weight: PaperWeight | undefined;
  if (grams && skipSpaces(text, at + grams[0].length) === text.length) {
    weight = { gsm: numeral.value, pounds: undefined, grade: undefined };
  } else if (pounds) {
    const words = text.slice(at + pounds[0].length).trim();
    const grade = gradeNamed(words);
    if (grade) weight = { gsm: gramsPerSquareMetre(numeral.value, grade.id), pounds: numeral.value, grade: grade.id };
    else warn(words === '' ? 'weight-grade-missing' : 'weight-grade-unknown', sayGrade(numeral.value, words));
  } else {
    warn('weight-unit', sayUnit(text.slice(start, numeral.end), text.slice(at).trim()));
  }
  if (weight && (weight.gsm.equals(0) || weight.gsm.gt(HEAVIEST_GSM))) {
    warn(
      'weight-range',
      `Paper for cards weighs between 40 and 600 gsm. This comes to ${decimalNumber(weight.gsm, 0)} gsm.`,
    );
  }
  return reading(weight, faults);
}

function gradeNamed(words: string): Grade | undefined {
  const [first = '', ...others] = words
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => !FILLERS.has(word));
  return others.length > 0 ? undefined : GRADES.find((grade) => grade.words.includes(first));
}

/** A pound means little without its grade: the likeliest two are shown in grams. */
function sayGrade(pounds: Fraction, words: string): string {
  const known = GRADES.flatMap((grade) => grade.words);
  const near = words === '' ? undefined : nearestName(words.slice(0, 40), known);
  if (near !== undefined) return `Did you mean \`${pounds.toFraction(true)} lb ${near}\`?`;
  const grams = (id: GradeId): string =>
    `${pounds.toFraction(true)} lb ${id} is ${decimalNumber(gramsPerSquareMetre(pounds, id), 0)} gsm`;
  return `Say which grade of paper: ${grams('cover')}, ${grams('text')}. The grades are ${GRADES.map((grade) => grade.id).join(', ')}.`;
}

function sayUnit(number: string, rest: string): string {
  if (/^(?:pt|pts|points?|mil|mils|µm|microns?|mm|in)\b/i.test(rest)) {
    return 'This is a thickness, not a weight. Write it under `caliper`.';
  }
  if (rest === '' || /^g\b/i.test(rest))
    return `Write \`${number} gsm\`, or pounds and the grade, as \`${number} lb cover\`.`;
  return 'Write the weight in `gsm`, or in `lb` with the grade of the paper.';
}
