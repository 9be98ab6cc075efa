import Fraction from 'fraction.js';
import { formatLength, Length, type System, systemOf, toMarks } from '../units/index.ts';
import { Angle } from './angle.ts';
import type { Amount } from './evaluate.ts';
import { type Expression, namesIn, termsOf } from './expression.ts';
import type { Given } from './given-parameters.ts';
import { localSizeFor } from './local-sizes.ts';
import { limitsOf } from './parameter-range.ts';
import { readText } from './parse.ts';
import { Report } from './report.ts';
import type { CardRequest, Fold, LocalUse, Parameter } from './types.ts';

type Sources = ReadonlyMap<string, Expression | undefined>;

/** What is wanted of a fold, before any size is local: where each parameter comes from, and what it amounts to. */
interface Asked {
  readonly given: ReadonlyMap<string, Given>;
  readonly sources: Sources;
  readonly written: ReadonlyMap<string, Amount>;
  /** Amounts with other sources. */
  readonly rework: (sources: Sources) => ReadonlyMap<string, Amount>;
}

/**
 * The sizes of this edition that the table of local sizes gives: for the lengths called `width` and `height`, or without
 * those for a `side` that is both.
 *
 * Only a size that is written wholly in the other system is looked up, and only when neither of the pair is given for this
 * edition alone, by the post or by the kind. A size that is within its range beside the size as written, and beside the
 * local one no longer, goes as far as its range does.
 */
export function localGiven(fold: Fold, asked: Asked, request: CardRequest): Map<string, Given> {
  const { system } = request;
  const pair = localPair(fold, asked, system);
  if (pair === undefined) return new Map();
  const given = new Map<string, Given>();
  for (const [name, size] of pair.sizes) {
    const source = asked.sources.get(name)?.written;
    if (source === undefined) continue;
    const node = { ...source.node, text: formatLength(size, system) };
    const expression = readText(node, source.path, undefined, new Report());
    given.set(name, { expression, word: undefined, node, path: source.path, local: pair.use });
  }
  for (const parameter of fold.parameters) {
    if (given.has(parameter.name) || asked.given.get(parameter.name)?.edition === true) continue;
    const refitted = refit(parameter, asked, withGiven(asked.sources, given), pair.use, request);
    if (refitted) given.set(parameter.name, refitted);
  }
  return given;
}

interface Pair {
  readonly sizes: readonly (readonly [name: string, size: Length])[];
  readonly use: LocalUse;
}

function localPair(fold: Fold, asked: Asked, system: System): Pair | undefined {
  const lengths = fold.parameters.filter(({ type }) => type === 'length').map(({ name }) => name);
  const [across, down] = ['width', 'height'].every((name) => lengths.includes(name))
    ? (['width', 'height'] as const)
    : (['side', 'side'] as const);
  const [width, height] = [asked.written.get(across), asked.written.get(down)];
  if (!lengths.includes(across) || !(width instanceof Length) || !(height instanceof Length)) return undefined;
  const own = [across, down].some((name) => asked.given.get(name)?.edition === true);
  if (own || ![across, down].every((name) => isForeign(name, asked.sources, system))) return undefined;
  const local = localSizeFor(width, height, system);
  if (local === undefined) return undefined;
  const use = { name: local.size[system].name, for: local.size[system === 'inch' ? 'metric' : 'inch'].name };
  const sizes =
    across === down
      ? [[across, local.width] as const]
      : ([
          [across, local.width],
          [down, local.height],
        ] as const);
  return { sizes, use };
}

/** The end of its range, for a size that the local size has left outside: the last mark that lies within. */
function refit(
  parameter: Parameter,
  asked: Asked,
  sources: Sources,
  use: LocalUse,
  request: CardRequest,
): Given | undefined {
  const source = sources.get(parameter.name);
  if (source === undefined || parameter.type === 'choice') return undefined;
  if (sideOfRange(parameter, asked.written) !== 0) return undefined;
  const amounts = asked.rework(sources);
  const side = sideOfRange(parameter, amounts);
  const { from, to } = limitsOf(parameter, amounts);
  const limit = side < 0 ? from : to;
  if (side === 0 || limit === undefined) return undefined;
  const { node, path } = asked.given.get(parameter.name) ?? source.written;
  const text =
    limit instanceof Length
      ? formatLength(toMarks(limit, request.mark, side < 0 ? 'up' : 'down'), request.system)
      : limit instanceof Angle
        ? `${limit.degrees.toFraction(true)} deg`
        : (side < 0 ? limit.ceil() : limit.floor()).toFraction();
  const expression = readText({ ...node, text }, path, undefined, new Report());
  return { expression, word: undefined, node, path, local: { ...use, limit: side < 0 ? 'least' : 'most' } };
}

/** -1 below its range, 1 above, 0 within; within as well when it has no amount. */
function sideOfRange(parameter: Parameter, amounts: ReadonlyMap<string, Amount>): -1 | 0 | 1 {
  const amount = amounts.get(parameter.name);
  const { from, to } = limitsOf(parameter, amounts);
  if (isLess(amount, from)) return -1;
  return isLess(to, amount) ? 1 : 0;
}

function isLess(a: Amount | undefined, b: Amount | undefined): boolean {
  if (a instanceof Length && b instanceof Length) return a.lessThan(b);
  return a instanceof Fraction && b instanceof Fraction && a.lt(b);
}

/** Where each parameter and value comes from once these are given. */
export function withGiven(sources: Sources, given: ReadonlyMap<string, Given>): Sources {
  return new Map([...sources, ...[...given].map(([name, { expression }]) => [name, expression] as const)]);
}

/** Whether all numbers behind a parameter are written in the other system, and there is at least one. */
function isForeign(name: string, sources: Sources, system: System): boolean {
  const seen = new Set<string>();
  const waiting = [name];
  let found = false;
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    const source = seen.has(next) ? undefined : sources.get(next);
    seen.add(next);
    if (source === undefined) continue;
    for (const { term, expression } of termsOf(source)) {
      const unit = term.is === 'number' ? (term.unit ?? expression.units) : undefined;
      if (unit === undefined) continue;
      if (systemOf(unit) === system) return false;
      found = true;
    }
    waiting.push(...namesIn(source));
  }
  return found;
}
