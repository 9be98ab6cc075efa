import Fraction from 'fraction.js';
import { type Length, lengthOf, type Unit } from '../units/index.ts';
import type { NumberToken, Stretch } from './read-lesson-tokens.ts';
import type { FoldDirection } from './types.ts';

/** A length of a lesson: as written, with the unit that it has or was given. */
export interface LessonAmount extends Stretch {
  readonly value: Fraction;
  readonly shape: NumberToken['shape'];
  readonly unit: Unit;
}

export interface LessonScore {
  readonly at: LessonAmount;
  /** Undefined while the lesson has not said. */
  fold: FoldDirection | undefined;
}

/** The side that scores are measured along: by a word, by its length, or not said. */
export type LessonSide = 'across' | 'down' | 'long' | 'short' | LessonAmount | undefined;

export interface Scoring {
  side: LessonSide;
  readonly scores: LessonScore[];
}

/** A sheet that a lesson cuts, with what is scored on it so far. */
export interface LessonSheet extends Stretch {
  name: string | undefined;
  readonly count: number;
  width: LessonAmount;
  height: LessonAmount;
  readonly scorings: Scoring[];
  /** Set when its creases are pleated in turn: the first of them. */
  pleated: FoldDirection | undefined;
  /** A number of its size is in question, so that nothing can be said of it. */
  readonly refused: boolean;
}

export function lengthOfAmount({ value, unit }: LessonAmount): Length {
  return lengthOf(value, unit);
}

/** The side of the drawing that a scoring is measured along, by the rule of recipes. */
export function sideOfScoring(sheet: LessonSheet, { side }: Scoring): 'across' | 'down' {
  const [width, height] = [lengthOfAmount(sheet.width), lengthOfAmount(sheet.height)];
  const long = width.compare(height) >= 0 ? 'across' : 'down';
  if (side === 'across' || side === 'down') return side;
  if (side === 'short') return long === 'across' ? 'down' : 'across';
  if (side === undefined || side === 'long') return long;
  const named = lengthOfAmount(side);
  return named.equals(width) ? 'across' : named.equals(height) ? 'down' : long;
}

/** The length of the side that a scoring is measured along. */
export function reachOf(sheet: LessonSheet, scoring: Scoring): LessonAmount {
  return sideOfScoring(sheet, scoring) === 'across' ? sheet.width : sheet.height;
}

/** An amount of the same unit, worked out from another one. */
export function workedOut(from: LessonAmount, value: Fraction): LessonAmount {
  const shape = from.shape === 'decimal' ? 'decimal' : 'mixed';
  return { start: from.start, end: from.end, unit: from.unit, value, shape };
}

export function halfOf(amount: LessonAmount): LessonAmount {
  return workedOut(amount, amount.value.div(2));
}

/** `5 1/2`, `10.5`: as a recipe takes it, exact. */
export function sayAmount({ value, shape, unit }: LessonAmount): string {
  const decimal = shape === 'decimal' || unit !== 'in';
  const finite = TENTHS.some((power) => power % value.d === 0n);
  return decimal && finite ? value.toString() : value.toFraction(true);
}

const TENTHS: readonly bigint[] = [1n, 10n, 100n, 1_000n, 10_000n, 100_000n, 1_000_000n];

/** Whether two lengths are the same but for the rounding of a conversion. */
export function isConversion(one: LessonAmount, other: LessonAmount): boolean {
  const [a, b] = [lengthOfAmount(one).mm, lengthOfAmount(other).mm];
  return a.sub(b).abs().lte(a.mul(CONVERSION));
}

const CONVERSION = new Fraction(2, 100);
