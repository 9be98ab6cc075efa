import type { Hinge, Panel } from '../panels/index.ts';
import { compose, IDENTITY, reflectionIn, samePlacement } from './placement.ts';
import type { Placement } from './types.ts';

/** Which way a hinge is in a flat pose. */
export type Turn = 'flat' | 'shut';

export interface Spread {
  /** By panel name, for every panel that hinges connect with the ground. */
  readonly placements: ReadonlyMap<string, Placement>;
  /** Hinges over which two ways round lay a panel in two places: the paper would tear there. */
  readonly gaps: readonly Hinge[];
}

/**
 * Places the panels of one piece around its ground panel, breadth first over the hinges, in the order given.
 *
 * A flat hinge changes nothing; a shut one reflects in its line. Every hinge that closes a loop is compared exactly.
 */
export function spreadFrom(ground: Panel, hinges: readonly Hinge[], turnOf: (hinge: Hinge) => Turn): Spread {
  const placements = new Map<string, Placement>([[ground.name, IDENTITY]]);
  const gaps = new Set<Hinge>();
  const queue = [ground.name];
  for (let name = queue.shift(); name !== undefined; name = queue.shift()) {
    const from = placements.get(name) ?? IDENTITY;
    for (const hinge of hinges) {
      const other = beyond(hinge, name);
      if (other === undefined) continue;
      const there = turnOf(hinge) === 'flat' ? from : compose(from, reflectionIn(hinge.from, hinge.to));
      const already = placements.get(other);
      if (already === undefined) {
        placements.set(other, there);
        queue.push(other);
      } else if (!samePlacement(already, there)) gaps.add(hinge);
    }
  }
  return { placements, gaps: hinges.filter((hinge) => gaps.has(hinge)) };
}

function beyond(hinge: Hinge, panel: string): string | undefined {
  if (hinge.before === panel) return hinge.after;
  return hinge.after === panel ? hinge.before : undefined;
}
