import type { Piled } from './piled.ts';
import type { Rules } from './rules.ts';

/**
 * What lies above another lies above all that is below that: for each three leaves over one spot. Spots whose leaves all lie
 * over another spot too say nothing new. False when there would be more rules than `most`.
 */
export function addOrders(rules: Rules, { leaves, spots, overlaps }: Piled, most: number): boolean {
  const deepest = spots.list.map((spot) => spot.leaves.toSorted((a, b) => a - b)).sort((a, b) => b.length - a.length);
  const kept: number[][] = [];
  for (const spot of deepest) {
    if (spot.length < 3) break;
    if (rules.count + (spot.length * (spot.length - 1) * (spot.length - 2)) / 6 > most) return false;
    if (!kept.some((larger) => spot.every((leaf) => larger.includes(leaf)))) kept.push(spot);
  }
  const several = kept.length > 1;
  const seen = new Set<number>();
  for (const spot of kept) {
    if (rules.count > most) return false;
    for (const [i, c] of spot.entries()) {
      for (let j = 0; j < i; j++) {
        const b = spot[j] as number;
        const bc = overlaps.above(b, c);
        for (let k = 0; k < j; k++) {
          const a = spot[k] as number;
          const key = (a * leaves.count + b) * leaves.count + c;
          if (several && (seen.has(key) || !seen.add(key))) continue;
          rules.notAlike(overlaps.above(a, b), bc, overlaps.above(c, a));
        }
      }
    }
  }
  return true;
}
