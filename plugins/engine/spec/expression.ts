import type Fraction from 'fraction.js';
import type { Unit } from '../units/index.ts';
import type { Written } from './report.ts';

/**
 * A size as a rule: read, placed, not yet worked out.
 *
 * Carries the unit of its bare numbers, so that a post in millimetres can use a kind that is written in inches.
 */
export interface Expression {
  readonly written: Written;
  /** As written, for showing. */
  readonly text: string;
  /** Of bare numbers; undefined when the file states none. */
  readonly units: Unit | undefined;
  readonly root: Term;
}

export type Operator = '+' | '-' | '*' | '/' | 'smaller' | 'larger';

/** A node of an expression. Offsets count characters from the start of the expression's text. */
export type Term = TermKind & { readonly start: number; readonly end: number };

type TermKind =
  /** Without a unit it is a scalar or a length, as its neighbours have it. */
  | { readonly is: 'number'; readonly value: Fraction; readonly unit: Unit | undefined }
  | { readonly is: 'angle'; readonly degrees: Fraction }
  | { readonly is: 'name'; readonly name: string }
  /** A measure of an earlier piece, as `base.front.width`: piece, then its column or row or both, then the side. */
  | { readonly is: 'measure'; readonly path: readonly string[]; readonly side: 'width' | 'height' }
  | { readonly is: 'negative'; readonly of: Term }
  | { readonly is: 'operation'; readonly operator: Operator; readonly left: Term; readonly right: Term }
  /** Another expression, with its own place and unit: recipes and `less` are put together from these. */
  | { readonly is: 'embedded'; readonly expression: Expression };

/** A difference of two expressions. Faults in a part are reported where the part stands. */
export function difference(left: Expression, right: Expression): Expression {
  const [minuend, subtrahend] = [embedded(left), embedded(right)];
  const { start, end } = minuend;
  const root: Term = { is: 'operation', operator: '-', left: minuend, right: subtrahend, start, end };
  return { ...left, text: `${left.text} - ${right.text}`, root };
}

function embedded(expression: Expression): Term {
  return { is: 'embedded', expression, start: 0, end: expression.text.length };
}

/** Every part of an expression, with the expression that it was written in. */
export function* termsOf(expression: Expression): Generator<{ term: Term; expression: Expression }> {
  const waiting = [{ term: expression.root, expression }];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    yield next;
    const { term, expression: within } = next;
    if (term.is === 'embedded') waiting.push({ term: term.expression.root, expression: term.expression });
    if (term.is === 'negative') waiting.push({ term: term.of, expression: within });
    if (term.is === 'operation') {
      waiting.push({ term: term.right, expression: within }, { term: term.left, expression: within });
    }
  }
}

/** Names of the parameters and values that an expression uses. */
export function namesIn(expression: Expression): string[] {
  return [...termsOf(expression)].flatMap(({ term }) => (term.is === 'name' ? [term.name] : []));
}
