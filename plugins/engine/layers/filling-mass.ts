import type { Assembly } from '../assembly/index.ts';
import { paperArea } from '../geometry/index.ts';
import { centroidOf } from './centroid.ts';
import { chamberOf } from './chamber.ts';
import type { MassPart } from './mass-part.ts';
import type { Materials } from './material.ts';
import { materialOf } from './usual-materials.ts';

const MM3_PER_CM3 = 1000;

/** What is filled into chambers: as weighed, else its share of the chamber's room, as it is poured. */
export function fillingMasses(assembly: Assembly, materials: Materials): MassPart[] {
  return assembly.card.fillings.flatMap((filling): MassPart[] => {
    const chamber = chamberOf(filling, assembly, materials);
    if (chamber === undefined) return [];
    const material = materialOf(filling.stock, materials);
    const { density } = material;
    const { mm: deep } = chamber.depth;
    const room = paperArea(chamber.window, []).mul(deep).mul(filling.full);
    const grams = filling.mass ?? (density && room.mul(density).div(MM3_PER_CM3));
    const middle = centroidOf([chamber.window.map(({ x, y }) => ({ x: x.valueOf(), y: y.valueOf() }))]);
    const at = { x: middle?.x ?? 0, y: middle?.y ?? 0, z: -chamber.depth.toMm() / 2 };
    const { name, stock: role } = filling;
    return [{ is: 'filling', name, role, material, grams, panel: chamber.ring, at }];
  });
}
