import { Length, toMarks } from '../units/index.ts';
import { Angle } from './angle.ts';
import { dependencyOrder } from './dependency-order.ts';
import { type Amount, evaluate, type Scope } from './evaluate.ts';
import { type Expression, namesIn } from './expression.ts';
import { type Given, readGiven } from './given-parameters.ts';
import { localGiven, withGiven } from './local-given.ts';
import { checkRange, type Limits, limitsOf } from './parameter-range.ts';
import { Report } from './report.ts';
import type { CardParameter, CardRequest, DerivedValue, Fold, Parameter } from './types.ts';

/** The amounts of a fold's parameters and values in one edition. */
export interface Settled {
  readonly parameters: readonly CardParameter[];
  /** As they were written, whatever the edition: what ranges are checked against. */
  readonly written: ReadonlyMap<string, Amount>;
  /** With every length parameter, and every length written in the fold, on the edition's marks. */
  readonly printed: ReadonlyMap<string, Amount>;
}

/**
 * Sizes for every parameter and value, and all that is wrong with those that the post gives. `byUse`: what a kind gives that uses this
 * one, which wins.
 */
export function settleParameters(
  fold: Fold,
  request: CardRequest,
  report: Report,
  byUse: ReadonlyMap<string, Given> = new Map(),
): Settled {
  const asked = new Map([...readGiven(fold, request, report), ...byUse]);
  const items = [...fold.parameters, ...fold.values];
  const wanted = new Map(items.map((item) => [item.name, asked.get(item.name)?.expression ?? defaultOf(item, asked)]));
  const needs = new Map([...wanted].map(([name, source]) => [name, source ? namesIn(source) : []]));
  const { order, circle } = dependencyOrder(needs);
  reportCircle(circle, asked, report);
  const rework = (from: ReadonlyMap<string, Expression | undefined>): Map<string, Amount> =>
    amountsOf(items, order, from, (length) => length, new Report());
  const local = localGiven(fold, { given: asked, sources: wanted, written: rework(wanted), rework }, request);
  const given = new Map([...asked, ...local]);
  const sources = withGiven(wanted, local);
  const written = amountsOf(items, order, sources, (length) => length, report);
  const printed = amountsOf(items, order, sources, (length) => onMarks(length, request.mark), report);
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

/** Amounts in the order in which they can be worked out. `settle` puts written lengths and length parameters on marks. */
function amountsOf(
  items: readonly (Parameter | DerivedValue)[],
  order: readonly string[],
  sources: ReadonlyMap<string, Expression | undefined>,
  settle: (length: Length) => Length,
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
    const want = type === 'count' ? 'number' : type === 'angle' ? 'angle' : 'any';
    const amount = evaluate(source, want, scope, report);
    if (amount === undefined) continue;
    amounts.set(name, type === 'length' && amount instanceof Length ? settle(amount) : amount);
  }
  return amounts;
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
  const { from, to } = limitsOnMarks(limitsOf(parameter, written), request.mark);
  const place = given?.node.place ?? parameter.fallback?.written.node.place ?? parameter.place;
  const local = given?.local && { local: given.local };
  const angle = value instanceof Angle && { angle: true as const };
  return {
    name,
    label,
    value: plain(value),
    ...angle,
    word,
    from: from && plain(from),
    to: to && plain(to),
    place,
    ...local,
  };
}

/** The ends of a range on marks within it, so that what is shown may be taken; in one narrower than a mark the nearest ones. */
function limitsOnMarks({ from, to }: Limits, mark: Length): Limits {
  const [least, most] = [from, to].map((end) => (end instanceof Length ? end : undefined));
  const [up, down] = [least && toMarks(least, mark, 'up'), most && toMarks(most, mark, 'down')];
  const has = up === undefined || down === undefined || !down.lessThan(up);
  const [first, last] = has ? [up, down] : [least && onMarks(least, mark), most && onMarks(most, mark)];
  return { from: first ?? from, to: last ?? to };
}

/** An amount as a card shows it: an angle is a number of degrees. */
export function plain(amount: Amount): Length | number {
  if (amount instanceof Angle) return amount.degrees.valueOf();
  return amount instanceof Length ? amount : amount.valueOf();
}
