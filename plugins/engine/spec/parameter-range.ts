import Fraction from 'fraction.js';
import { formatLength, Length, type System, systemOf } from '../units/index.ts';
import { Angle } from './angle.ts';
import { type Amount, evaluate, type Scope } from './evaluate.ts';
import { type Expression, termsOf } from './expression.ts';
import type { Given } from './given-parameters.ts';
import { wantOf } from './parameter-want.ts';
import { join, Report } from './report.ts';
import type { CardRequest, Parameter } from './types.ts';

/** Panels a count may ask for where the kind states no range: far more than a card has. */
const LARGEST_COUNT = 200;

export interface Limits {
  readonly from: Amount | undefined;
  readonly to: Amount | undefined;
}

export function limitsOf(parameter: Parameter, written: ReadonlyMap<string, Amount>): Limits {
  const scope: Scope = { amount: (name) => written.get(name), measure: () => undefined, settle: (length) => length };
  const want = wantOf(parameter);
  const limit = (expression: Expression | undefined): Amount | undefined =>
    expression && evaluate(expression, want, scope, new Report());
  const [from, to] = [limit(parameter.from), limit(parameter.to)];
  if (parameter.type !== 'count') return { from, to };
  return { from: from ?? new Fraction(1), to: to ?? new Fraction(LARGEST_COUNT) };
}

/**
 * Checks the size as it was written, before it is put on marks: rounding neither lets a size in nor throws one out.
 *
 * A size written in the other system than the kind may pass a limit by one mark, since its author reads the limit off
 * a ruler that does not have it: 51 mm for 2 in.
 */
export function checkRange(
  parameter: Parameter,
  written: ReadonlyMap<string, Amount>,
  given: Given | undefined,
  request: CardRequest,
  report: Report,
): void {
  const value = written.get(parameter.name);
  if (value === undefined || parameter.type === 'choice') return;
  const { from, to } = limitsOf(parameter, written);
  const source = given?.node ?? parameter.fallback?.written.node;
  const place = source?.place ?? parameter.place;
  const path = given?.path ?? parameter.fallback?.written.path ?? join('parameters', parameter.name);
  const local = given?.local;
  const plainly = `${parameter.name}: ${source?.text ?? say(value, request.system)}`;
  const shown = local ? `${plainly}, the local size ${local.name} for ${local.for}` : plainly;
  const takes = rangeText(parameter, { from, to }, request.system);
  const complain = (code: string, remedy: string): void =>
    report.at(place, path, { code, wrote: shown, takes, remedy });
  if (value instanceof Fraction && value.d !== 1n) {
    complain('not-whole', 'Write a whole number.');
    return;
  }
  const slack = isForeign(parameter, given) ? request.mark : Length.zero;
  if (from !== undefined && to !== undefined && compare(from, to, slack) > 0) {
    const remedy = `With the other sizes as they are, \`${parameter.name}\` has no room at all. Change one of those.`;
    complain('empty-range', remedy);
  } else if (from !== undefined && compare(from, value, slack) > 0) {
    complain('below-range', adviceFor(parameter, given, `at least ${say(from, request.system)}`, request.system));
  } else if (to !== undefined && compare(value, to, slack) > 0) {
    complain('above-range', adviceFor(parameter, given, `at most ${say(to, request.system)}`, request.system));
  }
}

function adviceFor(parameter: Parameter, given: Given | undefined, limit: string, system: System): string {
  if (given?.local)
    return `Give this edition sizes of its own under \`${system}:\`, with \`${parameter.name}\` ${limit}.`;
  return given
    ? `Make \`${parameter.name}\` ${limit}.`
    : `Give \`${parameter.name}\` in the post: ${limit}. Or change its default.`;
}

/** True when the size was written in the other system than the kind's own. */
function isForeign(parameter: Parameter, given: Given | undefined): boolean {
  const { fallback } = parameter;
  const own = given?.expression && systemsIn(given.expression);
  if (fallback === undefined || own === undefined) return false;
  const home = systemsIn(fallback);
  // A default that is made of other sizes alone is in the units of its file.
  if (home.size === 0 && fallback.units !== undefined) home.add(systemOf(fallback.units));
  return home.size > 0 && [...own].some((system) => !home.has(system));
}

/** The systems that an expression's numbers are written in. */
function systemsIn(expression: Expression): Set<System> {
  const units = [...termsOf(expression)].map(({ term, expression: within }) =>
    term.is === 'number' ? (term.unit ?? within.units) : undefined,
  );
  return new Set(units.flatMap((unit) => (unit ? [systemOf(unit)] : [])));
}

/** How `a` lies to `b`: positive when it is larger by more than `slack`. */
function compare(a: Amount, b: Amount, slack: Length): number {
  if (a instanceof Length && b instanceof Length) return a.minus(b).compare(slack);
  if (a instanceof Angle && b instanceof Angle) return a.degrees.compare(b.degrees);
  return a instanceof Fraction && b instanceof Fraction ? a.compare(b) : 0;
}

function rangeText(parameter: Parameter, { from, to }: Limits, system: System): string {
  const range = [from && `from ${say(from, system)}`, to && `to ${say(to, system)}`].filter(Boolean).join(' ');
  return `\`${parameter.name}\` (${parameter.label})${range === '' ? '' : ` ${range}`}`;
}

function say(amount: Amount, system: System): string {
  if (amount instanceof Angle) return `${amount.degrees.toFraction(true)} deg`;
  return amount instanceof Length ? formatLength(amount, system) : amount.toFraction(true);
}
