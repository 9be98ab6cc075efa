import Fraction from 'fraction.js';
import type { RationalInput } from './length.ts';

export type GradeId = 'bond' | 'cover' | 'bristol' | 'index' | 'tag' | 'text';

/** A family of paper whose pounds are those of 500 sheets of one basic size. */
export interface Grade {
  readonly id: GradeId;
  readonly name: string;
  /** Inches, exactly. */
  readonly basicSheet: readonly [short: Fraction, long: Fraction];
  /** Grams per square metre of one pound, exactly. */
  readonly factor: Fraction;
  /** Words that name it on a packet, in lower case. */
  readonly words: readonly string[];
}

/** 1 lb = 453.59237 g exactly (international yard and pound agreement, 1 July 1959). */
const GRAMS_PER_POUND = new Fraction('453.59237');

const METRES_PER_INCH = new Fraction('0.0254');
const SHEETS_PER_REAM = 500;

/**
 * The six basis grades.
 *
 * Basic sheets after the handbook cited as "basis sheets" in tests/oracles/sources.md; paper makers' guides agree. A
 * factor comes to 1406.139 over the area of the basic sheet in square inches.
 */
export const GRADES: readonly Grade[] = [
  gradeFrom('bond', 'Bond or writing', '17', '22', ['bond', 'writing', 'ledger']),
  gradeFrom('cover', 'Cover', '20', '26', ['cover', 'card', 'cardstock']),
  gradeFrom('bristol', 'Bristol', '22.5', '28.5', ['bristol']),
  gradeFrom('index', 'Index', '25.5', '30.5', ['index']),
  gradeFrom('tag', 'Tag or news', '24', '36', ['tag', 'news', 'newsprint']),
  gradeFrom('text', 'Text, book or offset', '25', '38', ['text', 'book', 'offset']),
];

/** Exact grams per square metre of so many pounds of a grade. */
export function gramsPerSquareMetre(pounds: RationalInput, grade: GradeId): Fraction {
  return new Fraction(pounds).mul(gradeOf(grade).factor);
}

/** Exact pounds, on a grade's basis, of so many grams per square metre. */
export function poundsOf(gsm: RationalInput, grade: GradeId): Fraction {
  return new Fraction(gsm).div(gradeOf(grade).factor);
}

/** Throws RangeError for a name that is not a grade. */
export function gradeOf(id: GradeId): Grade {
  const found = GRADES.find((grade) => grade.id === id);
  if (!found) throw new RangeError(`no grade of paper is called ${id}`);
  return found;
}

function gradeFrom(id: GradeId, name: string, short: string, long: string, words: readonly string[]): Grade {
  const basicSheet = [new Fraction(short), new Fraction(long)] as const;
  const squareMetres = basicSheet[0].mul(METRES_PER_INCH).mul(basicSheet[1]).mul(METRES_PER_INCH);
  return { id, name, basicSheet, factor: GRAMS_PER_POUND.div(squareMetres.mul(SHEETS_PER_REAM)), words };
}
