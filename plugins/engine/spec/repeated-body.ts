import Fraction from 'fraction.js';
import { checkKinds, kindsOfNames, NO_PIECES_HERE, namesFor } from './check-kinds.ts';
import { checkCircles, checkNames } from './check-names.ts';
import type { Counting } from './each-header.ts';
import type { Amount } from './evaluate.ts';
import { expandEach } from './expand-each.ts';
import { type FoldBody, readBody } from './read-body.ts';
import { Report } from './report.ts';
import type { Fold, Repeats } from './types.ts';

/** What the counts of a fold come to, for writing out what `each` repeats. */
export function countingOf(fold: Fold, amounts: ReadonlyMap<string, Amount>, faulty: ReadonlySet<string>): Counting {
  const kinds = kindsOfNames(fold, checkCircles(fold, new Report()), faulty, new Report());
  const names = { ...namesFor(fold, [], kinds, faulty), measure: () => NO_PIECES_HERE };
  return { names, amount: (name) => amounts.get(name) };
}

/** The pieces of a fold and all that is made from them, as the counts of one card have it. */
export function bodyFor(fold: Fold, amounts: ReadonlyMap<string, Amount>, report: Report): FoldBody {
  if (fold.repeats === undefined || asByDefault(fold.repeats, amounts)) return fold;
  const faulty = new Set<string>();
  const again = new Report();
  const tree = expandEach(fold.repeats.tree, countingOf(fold, amounts, faulty), again);
  const body = readBody(tree, fold.units, fold.recipe, again);
  const whole = { ...fold, ...body };
  checkNames(whole, again);
  checkKinds(whole, checkCircles(whole, new Report()), faulty, again);
  // What is no error was said when the fold was read.
  report.add(again.problems.filter(({ severity }) => severity === 'error'));
  return body;
}

/** Whether the counts are those that the fold was read with. */
function asByDefault({ counts }: Repeats, amounts: ReadonlyMap<string, Amount>): boolean {
  return [...counts].every(([name, count]) => {
    const amount = amounts.get(name);
    return count instanceof Fraction && amount instanceof Fraction && count.equals(amount);
  });
}
