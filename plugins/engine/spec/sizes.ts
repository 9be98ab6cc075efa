import Fraction from 'fraction.js';
import type { Length } from '../units/index.ts';
import { Angle } from './angle.ts';
import { evaluate, evaluateLength, type Scope } from './evaluate.ts';
import type { Expression } from './expression.ts';
import type { Worked } from './ledger.ts';
import type { Sizes } from './point-on.ts';
import type { Report } from './report.ts';

/** Names and measures as they were written, and as they stand in one edition. */
export interface Both {
  readonly written: Scope;
  readonly edition: Scope;
}

/** A length worked out twice: as written, and by the edition's rule. */
export function workedOf(expression: Expression, scopes: Both, report: Report): Worked | undefined {
  const written = evaluateLength(expression, scopes.written, report);
  const edition = written && evaluateLength(expression, scopes.edition, report);
  return written && edition && { written, edition };
}

/** How lengths, angles and numbers are worked out; `put` gives a length the value that is printed for it. */
export function sizesOf(scopes: Both, put: (worked: Worked) => Length, report: Report): Sizes {
  return {
    length(expression) {
      const worked = workedOf(expression, scopes, report);
      return worked && put(worked);
    },
    height(expression) {
      const { edition } = scopes;
      const bought: Scope = {
        amount: (name) => edition.amount(name),
        measure: (path, side) => edition.measure(path, side),
        settle: (length) => length,
      };
      return evaluateLength(expression, bought, report);
    },
    angle(expression) {
      const amount = evaluate(expression, 'angle', scopes.edition, report);
      return amount instanceof Angle ? amount.degrees : undefined;
    },
    number(expression) {
      const amount = evaluate(expression, 'number', scopes.edition, report);
      return amount instanceof Fraction ? amount : undefined;
    },
  };
}
