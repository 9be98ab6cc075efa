import { UNIT_NAMES, type Unit } from '../units/index.ts';
import type { LessonAmount } from './read-lesson-sheets.ts';
import type { NumberToken, Token } from './read-lesson-tokens.ts';

/** Gives bare numbers of a lesson their unit, and remembers what had to be assumed for it. */
export class LessonUnits {
  /** The first number whose unit neither it nor its neighbours say. */
  assumedFor: { readonly number: NumberToken; readonly says: string } | undefined;
  private readonly usual: Unit;
  private readonly reason: string;

  constructor(tokens: readonly Token[]) {
    const numbers = tokens.filter((token) => token.kind === 'number');
    const written = [...new Set(numbers.flatMap(({ unit }) => unit ?? []))];
    const [first] = written;
    if (first === undefined) {
      const large = numbers.some(({ value }) => value.gte(LARGE)) && numbers.every(({ shape }) => isMetric(shape));
      this.usual = large ? 'mm' : 'in';
      const why = large ? 'numbers as large as this' : 'numbers as small as this';
      this.reason = `No unit is written. ${why[0]?.toUpperCase()}${why.slice(1)} are taken as ${UNIT_NAMES[this.usual]}.`;
    } else {
      this.usual = written.length === 1 ? first : (commonest(numbers) ?? first);
      this.reason = `A number without a unit is taken as ${UNIT_NAMES[this.usual]}, as ${written.length === 1 ? 'elsewhere' : 'most often'} in the lesson.`;
    }
  }

  /** The amount of a number. `near` is the unit of what it stands with: its partner in a size, its sheet. */
  amount(number: NumberToken, near: Unit | undefined): LessonAmount {
    const unit = number.unit ?? near ?? this.assume(number);
    return { start: number.start, end: number.end, value: number.value, shape: number.shape, unit };
  }

  private assume(number: NumberToken): Unit {
    const fraction = !isMetric(number.shape) && this.usual !== 'in';
    this.assumedFor ??= { number, says: fraction ? 'A fraction without a unit is taken as inches.' : this.reason };
    return fraction ? 'in' : this.usual;
  }
}

/** No card is so large in inches. */
const LARGE = 40;

function isMetric(shape: NumberToken['shape']): boolean {
  return shape === 'whole' || shape === 'decimal';
}

function commonest(numbers: readonly NumberToken[]): Unit | undefined {
  const units: readonly Unit[] = ['in', 'mm', 'cm'];
  const count = (unit: Unit): number => numbers.filter((number) => number.unit === unit).length;
  return [...units].sort((a, b) => count(b) - count(a))[0];
}
