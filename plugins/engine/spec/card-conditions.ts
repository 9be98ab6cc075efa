import Fraction from 'fraction.js';
import { Length } from '../units/index.ts';
import { Angle } from './angle.ts';
import { plain } from './card-parameters.ts';
import type { MadePieces } from './card-pieces.ts';
import { type Amount, evaluate, evaluateLength, type Scope } from './evaluate.ts';
import { termsOf } from './expression.ts';
import type { Report } from './report.ts';
import type { CheckedEquality, CheckedRequirement, EqualitySpec, Requirement } from './types.ts';

/** `require`, with the sizes that will be printed: what is cut is what must hold. */
export function checkRequirements(
  requirements: readonly Requirement[],
  printed: Scope,
  report: Report,
): CheckedRequirement[] {
  return requirements.flatMap((requirement) => {
    const { left, relation, right, that, otherwise, place } = requirement;
    const sides = alike(
      (want) => evaluate(left, want, printed, report),
      (want) => evaluate(right, want, printed, report),
    );
    if (sides === undefined) return [];
    const [a, b] = sides;
    return [{ that, otherwise, holds: holds(order(a, b), relation), left: plain(a), right: plain(b), place }];
  });
}

type Evaluate = (want: 'any' | 'number' | 'angle') => Amount | undefined;

/** Both sides as lengths, as angles, or as plain numbers: a bare number takes after the other side. */
function alike(left: Evaluate, right: Evaluate): [Amount, Amount] | undefined {
  const [a, b] = [left('any'), right('any')];
  if (a instanceof Angle || b instanceof Angle) {
    const [c, d] = [left('angle'), right('angle')];
    return c instanceof Angle && d instanceof Angle ? [c, d] : undefined;
  }
  if (a instanceof Length === b instanceof Length) return a !== undefined && b !== undefined ? [a, b] : undefined;
  const [c, d] = [left('number'), right('number')];
  return c instanceof Fraction && d instanceof Fraction ? [c, d] : undefined;
}

function order(a: Amount, b: Amount): number {
  if (a instanceof Length && b instanceof Length) return a.compare(b);
  if (a instanceof Angle && b instanceof Angle) return a.degrees.compare(b.degrees);
  return a instanceof Fraction && b instanceof Fraction ? a.compare(b) : Number.NaN;
}

function holds(sign: number, relation: Requirement['relation']): boolean {
  switch (relation) {
    case '<':
      return sign < 0;
    case '<=':
      return sign <= 0;
    case '=':
      return sign === 0;
    case '>=':
      return sign >= 0;
    case '>':
      return sign > 0;
  }
}

/** `same`, with each measure as it was written and as it will be printed. */
export function checkEqualities(
  equalities: readonly EqualitySpec[],
  made: MadePieces,
  report: Report,
): CheckedEquality[] {
  return equalities.map(({ measures, place }) => ({
    place,
    measures: measures.flatMap(({ expression, text, place: here }) => {
      const exact = evaluateLength(expression, made.written, report);
      const edition = evaluateLength(expression, made.printed, report);
      if (exact === undefined || edition === undefined) return [];
      // A measure of a piece is printed as it stands there; a size by another name as the paper that has it.
      const measured = [...termsOf(expression)].some(({ term }) => term.is === 'measure');
      const printed = measured ? edition : made.ledger.look({ written: exact, edition });
      return [{ text, exact, printed, place: here }];
    }),
  }));
}
