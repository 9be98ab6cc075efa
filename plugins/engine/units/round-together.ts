import Fraction from 'fraction.js';
import { Length } from './length.ts';
import { roundHalfEven, toMarks } from './marks.ts';

/** A length that has been put on a mark already. */
export interface Printed {
  readonly exact: Length;
  readonly printed: Length;
}

/** Lengths with one value, counted in marks: `below` is the mark under it and `rest` how far above that it lies. */
interface Group {
  readonly below: Fraction;
  readonly rest: Fraction;
  readonly count: number;
}

/**
 * The bands of a strip on marks, in the order given. Throws RangeError unless `mark` is positive.
 *
 * Each goes to one of its two neighbouring marks and stays put when it lies on one. Equal lengths stay equal. Among
 * the ways to do this the sum lies nearest to the exact sum, and then each band nearest to its own exact length: a strip
 * that fills a sheet still fills it, where equal bands allow. The printed total is the sum of the result.
 *
 * `settled` are lengths that other strips of the same card have fixed, so that equal measures of two pieces agree.
 */
export function roundTogether(lengths: readonly Length[], mark: Length, settled: readonly Printed[] = []): Length[] {
  if (!mark.isPositive) throw new RangeError('marks must be a positive length apart');
  const fixed = new Map(settled.map(({ exact, printed }) => [keyOf(exact), printed]));
  const groups = new Map<string, Group>();
  let start = new Fraction(0);
  for (const length of lengths) {
    const key = keyOf(length);
    const marks = length.per(mark);
    const below = marks.floor();
    const rest = marks.sub(below);
    const printed = fixed.get(key);
    start = start.add(printed?.per(mark) ?? below);
    if (!printed && !rest.equals(0)) groups.set(key, { below, rest, count: (groups.get(key)?.count ?? 0) + 1 });
  }
  const total = roundHalfEven(Length.sum(lengths).per(mark));
  const raised = chooseRaised([...groups], total.sub(start));
  return lengths.map((length) => {
    const key = keyOf(length);
    return fixed.get(key) ?? toMarks(length, mark, raised.has(key) ? 'up' : 'down');
  });
}

/** One way to raise some groups: how many marks it adds, and how far the bands end from their exact lengths. */
interface Choice {
  readonly error: Fraction;
  readonly raised: readonly string[];
}

/**
 * The groups to raise so that the added marks come nearest to the `missing` ones.
 *
 * A table from added marks to the best choice: at most one entry a mark, so its size is the number of bands.
 */
function chooseRaised(groups: readonly (readonly [string, Group])[], missing: Fraction): Set<string> {
  let table = new Map<number, Choice>([[0, { error: new Fraction(0), raised: [] }]]);
  for (const [key, group] of groups) {
    const next = new Map<number, Choice>();
    for (const [added, choice] of table) {
      const down = { error: choice.error.add(errorOf(group, false)), raised: choice.raised };
      const up = { error: choice.error.add(errorOf(group, true)), raised: [...choice.raised, key] };
      keepBetter(next, added, down);
      keepBetter(next, added + group.count, up);
    }
    table = next;
  }
  let best: { gap: Fraction; choice: Choice } | undefined;
  for (const [added, choice] of table) {
    const gap = missing.sub(added).abs();
    const order = best ? gap.compare(best.gap) || choice.error.compare(best.choice.error) : -1;
    if (order < 0) best = { gap, choice };
  }
  return new Set(best?.choice.raised);
}

function keepBetter(table: Map<number, Choice>, added: number, choice: Choice): void {
  const other = table.get(added);
  if (!other || choice.error.compare(other.error) < 0) table.set(added, choice);
}

/** Distance from the exact length over all bands of the group; a hair more off the even mark, which breaks ties. */
function errorOf({ below, rest, count }: Group, up: boolean): Fraction {
  const even = below.mod(2).equals(up ? 1 : 0);
  const distance = up ? new Fraction(1).sub(rest) : rest;
  return distance.add(even ? 0 : ODD_MARK).mul(count);
}

/** In marks. Far below any distance that matters, above zero. */
const ODD_MARK = new Fraction(1n, 10n ** 12n);

function keyOf(length: Length): string {
  return length.mm.toFraction();
}
