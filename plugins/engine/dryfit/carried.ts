import { compose, IDENTITY, inverse, laidOn, type Placement } from '../geometry/index.ts';
import { materialOf } from '../layers/index.ts';
import type { FoldedCard } from './types.ts';

/** What a moving panel takes with it, itself included. */
export interface Carried {
  /** Panels glued to it and to each other, with how each lies: from its drawing into the moving panel's. */
  readonly panels: readonly { readonly panel: string; readonly placement: Placement }[];
  /** Those that are foam or stand on foam. */
  readonly foam: readonly { readonly panel: string; readonly placement: Placement }[];
  /** Panels from the moving one to the furthest glued upon it. */
  readonly deepest: number;
}

/** All that is glued to a panel, and to that in turn, but for some panels that it moves on. */
export function carriedBy(
  panel: string,
  { assembly, materials, card }: FoldedCard,
  without: readonly string[],
): Carried {
  const found = new Map([[panel, { panel, placement: IDENTITY, depth: 1, onFoam: false }]]);
  const isThick = (name: string): boolean => {
    const piece = card.pieces.find((one) => one.name === assembly.panels.get(name)?.piece);
    return piece !== undefined && (piece.thick !== undefined || materialOf(piece.stock, materials).sort === 'foam');
  };
  for (const one of found.values()) {
    for (const joint of assembly.joints) {
      if (joint.is !== 'glue' || joint.join.is !== 'glue' || (joint.a !== one.panel && joint.b !== one.panel)) continue;
      const [name, isPart] = joint.a === one.panel ? [joint.b, false] : [joint.a, true];
      if (found.has(name) || without.includes(name)) continue;
      const laid = laidOn(joint.join);
      const placement = compose(one.placement, isPart ? laid : inverse(laid));
      const onFoam = joint.join.tape !== undefined;
      found.set(name, { panel: name, placement, depth: one.depth + 1, onFoam });
    }
  }
  const panels = [...found.values()];
  return {
    panels,
    foam: panels.filter((one) => one.onFoam || isThick(one.panel)),
    deepest: Math.max(...panels.map(({ depth }) => depth)),
  };
}
