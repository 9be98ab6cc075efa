import { addHeld } from './held.ts';
import { MOST_RULES } from './limits.ts';
import { addOrders } from './orders-of-spots.ts';
import { addPassings } from './passings.ts';
import type { Piled } from './piled.ts';
import { Rules } from './rules.ts';
import type { Crossing } from './survey.ts';

/** Everything that a pose says about which paper lies above which; undefined where that is far too much. */
export function gatherRules(piled: Piled, crossings: readonly Crossing[]): Rules | undefined {
  const rules = new Rules();
  rules.variables = piled.overlaps.pairs.length;
  addPassings(rules, piled, crossings);
  addHeld(rules, piled);
  return addOrders(rules, piled, MOST_RULES) ? rules : undefined;
}
