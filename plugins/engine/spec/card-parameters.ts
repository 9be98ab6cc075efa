import Fraction from 'fraction.js';
import type { MapNode, Place, TextNode } from '../diagnostics/index.ts';
import { formatLength, Length, type System, systemOf, toMarks } from '../units/index.ts';
import { type Known, kindsOfNames, NO_PIECES_HERE, namesFor } from './check-kinds.ts';
import { sourcesOf } from './check-names.ts';
import { dependencyOrder } from './dependency-order.ts';
import { type Amount, evaluate, type Scope } from './evaluate.ts';
import { type Expression, namesIn, termsOf } from './expression.ts';
import { checkKind } from './kinds.ts';
import { readText } from './parse.ts';
import { textOr } from './read-parts.ts';
import { join, Report, suggest } from './report.ts';
import type { CardParameter, CardRequest, DerivedValue, Fold, Parameter } from './types.ts';

/** The amounts of a fold's parameters and values in one edition. */
export interface Settled {
  readonly parameters: readonly CardParameter[];
  /** As they were written, whatever the edition: what ranges are checked against. */
  readonly written: ReadonlyMap<string, Amount>;
  /** With every length parameter, and every length written in the fold, on the edition's marks. */
  readonly printed: ReadonlyMap<string, Amount>;
}

/** Panels a count may ask for where the kind states no range: far more than a card has. */
const LARGEST_COUNT = 200;

/** Sizes for every parameter and value, and all that is wrong with those that the post gives. */
export function settleParameters(fold: Fold, request: CardRequest, report: Report): Settled {
  const given = readGiven(fold, request, report);
  const items = [...fold.parameters, ...fold.values];
  const sources = new Map(items.map((item) => [item.name, given.get(item.name)?.expression ?? defaultOf(item, given)]));
  const needs = new Map([...sources].map(([name, source]) => [name, source ? namesIn(source) : []]));
  const { order, circle } = dependencyOrder(needs);
  reportCircle(circle, given, report);
  const marks = (length: Length): Length => onMarks(length, request.mark);
  const written = amountsOf(
    items,
    order,
    sources,
    (length) => length,
    (length) => length,
    report,
  );
  const printed = amountsOf(items, order, sources, marks, marks, new Report());
  const parameters = fold.parameters.flatMap((parameter) => {
    const value = printed.get(parameter.name);
    if (value === undefined) return [];
    checkRange(parameter, written, given.get(parameter.name), request, report);
    return [cardParameter(parameter, value, written, given.get(parameter.name), request)];
  });
  return { parameters, written, printed };
}

/**
 * The nearest mark, as `toMarks`; but what has a size keeps one: a tenth of a millimetre of play does not vanish.
 */
export function onMarks(length: Length, mark: Length): Length {
  const nearest = toMarks(length, mark, 'nearest');
  if (!nearest.isZero || length.isZero) return nearest;
  return length.isPositive ? mark : mark.negated();
}

interface Given {
  readonly expression: Expression | undefined;
  readonly word: string | undefined;
  readonly node: TextNode;
  readonly path: string;
}

/** What the post gives, for all editions and then for this one. */
function readGiven(fold: Fold, request: CardRequest, report: Report): Map<string, Given> {
  const given = new Map<string, Given>();
  const kinds = kindsOfNames(fold, allNames(fold), new Set(), new Report());
  for (const [map, path] of [
    [request.parameters, request.parametersPath ?? ''],
    [request.own, request.ownPath ?? request.system],
  ] as const) {
    for (const [parameter, value] of readMap(fold, map, path, request, kinds, report)) given.set(parameter, value);
  }
  return given;
}

function* readMap(
  fold: Fold,
  map: MapNode | undefined,
  path: string,
  request: CardRequest,
  kinds: ReadonlyMap<string, Known>,
  report: Report,
): Generator<[string, Given]> {
  const known = fold.parameters.map(({ name }) => name);
  for (const { key, value } of map?.entries ?? []) {
    const here = join(path, key.text);
    const parameter = fold.parameters.find(({ name }) => name === key.text);
    if (parameter === undefined) {
      const takes =
        known.length === 0 ? `nothing: ${fold.name} has no parameters` : `for ${fold.name}: ${known.join(', ')}`;
      const remedy = suggest(
        key.text,
        known,
        known.length === 0 ? `Take \`${key.text}\` out.` : `Use one of ${known.join(', ')}.`,
      );
      report.at(key.place, here, { code: 'unknown-parameter', wrote: key.text, takes, remedy });
      continue;
    }
    const node = textOr(value, here, parameter.type === 'choice' ? wordsOf(parameter) : 'one size, as `4 1/4`', report);
    if (node === undefined) continue;
    if (parameter.type === 'choice') {
      const word = node.text.trim();
      const words = parameter.choices.map((choice) => choice.word);
      if (words.includes(word)) yield [key.text, { word, expression: undefined, node, path: here }];
      else {
        const remedy = suggest(word, words, `Write ${wordsOf(parameter)}.`);
        report.at(node.place, here, { code: 'unknown-word', wrote: word, takes: wordsOf(parameter), remedy });
      }
      continue;
    }
    const expression = readText(node, here, request.units, report);
    const names = { ...namesFor(fold, [], kinds, new Set()), measure: () => NO_PIECES_HERE };
    const want = parameter.type === 'count' ? 'number' : 'length';
    if (expression && checkKind(expression, want, names, report)) {
      yield [key.text, { expression, word: undefined, node, path: here }];
    }
  }
}

function allNames(fold: Fold): string[] {
  const items = [...fold.parameters, ...fold.values];
  return dependencyOrder(new Map(items.map((item) => [item.name, sourcesOf(item).flatMap(namesIn)]))).order;
}

function wordsOf(parameter: Parameter): string {
  return `one of ${parameter.choices.map(({ word }) => word).join(', ')}`;
}

function defaultOf(item: Parameter | DerivedValue, given: ReadonlyMap<string, Given>): Expression | undefined {
  if ('value' in item) return item.value;
  if (item.type !== 'choice') return item.fallback;
  const word = given.get(item.name)?.word ?? item.fallbackWord;
  return item.choices.find((choice) => choice.word === word)?.value;
}

/** A post may give a size in terms of another, and so close a circle that the kind does not have. */
function reportCircle(circle: readonly string[], given: ReadonlyMap<string, Given>, report: Report): void {
  const culprit = circle.map((name) => given.get(name)).find((value) => value !== undefined);
  if (culprit === undefined) return;
  const chain = [...circle, circle[0]].map((name) => `\`${name}\``).join(' needs ');
  const takes = 'sizes that do not need each other';
  report.at(culprit.node.place, culprit.path, {
    code: 'circle',
    wrote: chain,
    takes,
    remedy: 'Give one of them a size of its own.',
  });
}

function amountsOf(
  items: readonly (Parameter | DerivedValue)[],
  order: readonly string[],
  sources: ReadonlyMap<string, Expression | undefined>,
  settle: (length: Length) => Length,
  settleParameter: (length: Length) => Length,
  report: Report,
): Map<string, Amount> {
  const amounts = new Map<string, Amount>();
  const scope: Scope = { amount: (name) => amounts.get(name), measure: () => undefined, settle };
  const byName = new Map(items.map((item) => [item.name, item]));
  for (const name of order) {
    const source = sources.get(name);
    const item = byName.get(name);
    if (source === undefined || item === undefined) continue;
    const type = 'value' in item ? 'value' : item.type;
    const amount = evaluate(source, type === 'count' ? 'number' : 'any', scope, report);
    if (amount === undefined) continue;
    amounts.set(name, type === 'length' && amount instanceof Length ? settleParameter(amount) : amount);
  }
  return amounts;
}

interface Limits {
  readonly from: Amount | undefined;
  readonly to: Amount | undefined;
}

function limitsOf(parameter: Parameter, written: ReadonlyMap<string, Amount>): Limits {
  const scope: Scope = { amount: (name) => written.get(name), measure: () => undefined, settle: (length) => length };
  const want = parameter.type === 'count' ? 'number' : 'length';
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
function checkRange(
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
  const place: Place = source?.place ?? parameter.place;
  const path = given?.path ?? parameter.fallback?.written.path ?? join('parameters', parameter.name);
  const shown = `${parameter.name}: ${source?.text ?? say(value, request.system)}`;
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
    complain('below-range', adviceFor(parameter, given, `at least ${say(from, request.system)}`));
  } else if (to !== undefined && compare(value, to, slack) > 0) {
    complain('above-range', adviceFor(parameter, given, `at most ${say(to, request.system)}`));
  }
}

function adviceFor(parameter: Parameter, given: Given | undefined, limit: string): string {
  return given
    ? `Make \`${parameter.name}\` ${limit}.`
    : `Give \`${parameter.name}\` in the post: ${limit}. Or change its default.`;
}

/** True when the size was written in the other system than the kind's own. */
function isForeign(parameter: Parameter, given: Given | undefined): boolean {
  const home = parameter.fallback && systemsIn(parameter.fallback);
  const own = given?.expression && systemsIn(given.expression);
  return home !== undefined && own !== undefined && home.size > 0 && [...own].some((system) => !home.has(system));
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
  return a instanceof Fraction && b instanceof Fraction ? a.compare(b) : 0;
}

function rangeText(parameter: Parameter, { from, to }: Limits, system: System): string {
  const range = [from && `from ${say(from, system)}`, to && `to ${say(to, system)}`].filter(Boolean).join(' ');
  return `\`${parameter.name}\` (${parameter.label})${range === '' ? '' : ` ${range}`}`;
}

function say(amount: Amount, system: System): string {
  return amount instanceof Length ? formatLength(amount, system) : amount.toFraction(true);
}

function cardParameter(
  parameter: Parameter,
  value: Amount,
  written: ReadonlyMap<string, Amount>,
  given: Given | undefined,
  request: CardRequest,
): CardParameter {
  const { name, label } = parameter;
  const word = parameter.type === 'choice' ? (given?.word ?? parameter.fallbackWord) : undefined;
  const { from, to } = limitsOf(parameter, written);
  const limit = (amount: Amount | undefined): Length | number | undefined =>
    amount instanceof Length ? onMarks(amount, request.mark) : amount?.valueOf();
  const place = given?.node.place ?? parameter.fallback?.written.node.place ?? parameter.place;
  return { name, label, value: plain(value), word, from: limit(from), to: limit(to), place };
}

export function plain(amount: Amount): Length | number {
  return amount instanceof Length ? amount : amount.valueOf();
}
