import type Fraction from 'fraction.js';
import { placeWithin } from '../diagnostics/index.ts';
import { Length, lengthOf } from '../units/index.ts';
import { Angle } from './angle.ts';
import type { Expression, Operator, Term } from './expression.ts';
import { isSum, type Kind, kindOfOperation, textOf, type Want } from './kinds.ts';
import type { Report } from './report.ts';

/** A worked-out amount: a length, an angle, or a plain number (a count, or a ratio). */
export type Amount = Length | Angle | Fraction;

/** Where names get their amounts from. An undefined answer means that it was reported elsewhere. */
export interface Scope {
  amount(name: string): Amount | undefined;
  measure(path: readonly string[], side: 'width' | 'height'): Length | undefined;
  /** Puts a length that is written out in the expression on the edition's marks; or leaves it alone. */
  settle(length: Length): Length;
}

/** A number that may still become a length or an angle. */
class Bare {
  readonly value: Fraction;
  constructor(value: Fraction) {
    this.value = value;
  }
}

/** An amount with more digits than this, over or under its fraction line, is no measurement. */
const LARGEST = 10n ** 40n;

/**
 * Works an expression out, exactly.
 *
 * Expects its names and kinds to have been checked. What depends on the sizes of this card - a division by zero - is
 * reported at its place; then, and when a name has no amount, the answer is undefined.
 */
export function evaluate(expression: Expression, want: Want, scope: Scope, report: Report): Amount | undefined {
  const amount = amountOf(expression.root, expression, scope, report);
  if (!(amount instanceof Bare)) return amount;
  if (want === 'angle') return new Angle(amount.value);
  return want === 'number' ? amount.value : asLength(amount, expression.root, expression, scope);
}

export function evaluateLength(expression: Expression, scope: Scope, report: Report): Length | undefined {
  const amount = evaluate(expression, 'length', scope, report);
  return amount instanceof Length ? amount : undefined;
}

function amountOf(term: Term, expression: Expression, scope: Scope, report: Report): Amount | Bare | undefined {
  switch (term.is) {
    case 'number':
      return term.unit === undefined ? new Bare(term.value) : scope.settle(lengthOf(term.value, term.unit));
    case 'angle':
      return new Angle(term.degrees);
    case 'name':
      return scope.amount(term.name);
    case 'measure':
      return scope.measure(term.path, term.side);
    case 'embedded':
      return amountOf(term.expression.root, term.expression, scope, report);
    case 'negative':
      return negated(amountOf(term.of, expression, scope, report));
    case 'operation': {
      const left = amountOf(term.left, expression, scope, report);
      const right = amountOf(term.right, expression, scope, report);
      if (left === undefined || right === undefined) return undefined;
      return operate(term, left, right, expression, scope, report);
    }
  }
}

function operate(
  term: Term & { is: 'operation' },
  left: Amount | Bare,
  right: Amount | Bare,
  expression: Expression,
  scope: Scope,
  report: Report,
): Amount | Bare | undefined {
  const kind = kindOfOperation(term.operator, kindOf(left), kindOf(right));
  if (typeof kind === 'object') return undefined;
  const lengths = kind === 'length' && isSum(term.operator);
  const a = lengths ? asLength(left, term.left, expression, scope) : left;
  const b = lengths ? asLength(right, term.right, expression, scope) : right;
  if (a === undefined || b === undefined) return undefined;
  if (term.operator === '/' && fractionOf(b).equals(0)) {
    const { node, offset, path } = expression.written;
    report.at(placeWithin(node, offset + term.right.start), path, {
      code: 'divided-by-zero',
      wrote: textOf(term, expression),
      takes: 'a divisor other than zero',
      remedy: `\`${textOf(term.right, expression)}\` comes out as zero. Change it, or the sizes it is made from.`,
    });
    return undefined;
  }
  const value = calculate(term.operator, fractionOf(a), fractionOf(b));
  if (value.n > LARGEST || value.d > LARGEST) {
    const { node, offset, path } = expression.written;
    report.at(placeWithin(node, offset + term.start), path, {
      code: 'too-many-digits',
      wrote: textOf(term, expression),
      takes: 'sizes that can be cut from paper',
      remedy: 'This comes out with more than forty digits. Use smaller numbers.',
    });
    return undefined;
  }
  if (kind === 'length') return Length.fromMm(value);
  if (kind === 'angle') return new Angle(value);
  return kind === 'bare' ? new Bare(value) : value;
}

function calculate(operator: Operator, a: Fraction, b: Fraction): Fraction {
  switch (operator) {
    case '+':
      return a.add(b);
    case '-':
      return a.sub(b);
    case '*':
      return a.mul(b);
    case '/':
      return a.div(b);
    case 'smaller':
      return a.lte(b) ? a : b;
    case 'larger':
      return a.gte(b) ? a : b;
  }
}

function kindOf(amount: Amount | Bare): Kind {
  if (amount instanceof Angle) return 'angle';
  return amount instanceof Length ? 'length' : amount instanceof Bare ? 'bare' : 'number';
}

function fractionOf(amount: Amount | Bare): Fraction {
  if (amount instanceof Angle) return amount.degrees;
  return amount instanceof Length ? amount.mm : amount instanceof Bare ? amount.value : amount;
}

function negated(amount: Amount | Bare | undefined): Amount | Bare | undefined {
  if (amount instanceof Length) return amount.negated();
  if (amount instanceof Angle) return new Angle(amount.degrees.neg());
  return amount instanceof Bare ? new Bare(amount.value.neg()) : amount?.neg();
}

function asLength(amount: Amount | Bare, term: Term, expression: Expression, scope: Scope): Length | undefined {
  if (amount instanceof Length) return amount;
  const units = term.is === 'embedded' ? term.expression.units : expression.units;
  return amount instanceof Bare && units ? scope.settle(lengthOf(amount.value, units)) : undefined;
}
