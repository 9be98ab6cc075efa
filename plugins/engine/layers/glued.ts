import type { PaperSide } from '../spec/index.ts';
import { addLaid, addNothingBetween, type Held, leafBy } from './held-pair.ts';
import type { Piled, Spot } from './piled.ts';
import type { Rules } from './rules.ts';

/** Stuck over the whole of where the two overlap, foam as well: one lies on the other, and nothing lies between. */
export function addGlue(rules: Rules, piled: Piled, one: Held, held: readonly Held[]): void {
  const glued = piled.spots.list.filter(({ panels }) => panels.includes(one.a) && panels.includes(one.b));
  const beside = new Set(
    [...stuckBeside(one, held)].filter((panel) => glued.some(({ panels }) => !panels.includes(panel))),
  );
  for (const spot of glued) {
    addLaid(rules, piled, one, spot);
    addNothingBetween(rules, piled, one, spot, beside);
    preferLater(rules, piled, one, spot, held);
  }
}

/** Of two that are stuck to one side of a panel and overlap, the one that comes later in the file lies further out, if it can. */
function preferLater(rules: Rules, { overlaps }: Piled, one: Held, spot: Spot, held: readonly Held[]): void {
  const later = held.slice(held.indexOf(one) + 1);
  for (const { joint, a, b, above } of later) {
    if (joint.is !== 'glue' || b !== one.b || above !== one.above || !spot.panels.includes(a)) continue;
    const literal = overlaps.above(leafBy(spot, a), leafBy(spot, one.a));
    if (literal >= 0) rules.preferred.push(above ? literal : literal ^ 1);
  }
}

/**
 * Panels stuck to the same side of the receiver, or of what is stuck to it, and all that is stuck to those in turn. Where such a
 * one overlaps in part, as a banner glued over the edge of a mat does, it may lie between: there the glue holds it.
 */
function stuckBeside(one: Held, held: readonly Held[]): ReadonlySet<number> {
  const glued = held.filter((other) => other.joint.is === 'glue' && other !== one);
  const onSide = (panel: number, side: PaperSide): number[] =>
    glued.flatMap(({ a, b, joint: { join } }) => {
      if (b === panel && join.is === 'glue' && join.ontoSide === side) return [a];
      return a === panel && join.is === 'glue' && join.partSide === side ? [b] : [];
    });
  const { join } = one.joint;
  if (join.is !== 'glue') return new Set();
  const found = new Set([...onSide(one.b, join.ontoSide), ...onSide(one.a, join.partSide)]);
  for (const panel of found) {
    for (const { a, b } of glued) {
      const next = a === panel ? b : b === panel ? a : undefined;
      if (next !== undefined && next !== one.a && next !== one.b) found.add(next);
    }
  }
  return found;
}
