import type { LaidJoint } from '../assembly/index.ts';
import type { Piled, Spot } from './piled.ts';
import type { Pile } from './piles.ts';
import type { Rules, Why } from './rules.ts';

/** A joint of two panels in one pile. */
export interface Held {
  readonly joint: LaidJoint;
  readonly a: number;
  readonly b: number;
  readonly pile: Pile;
  /** Whether `a` lies above `b`: it does on a face that looks up, and on a back whose face looks down. */
  readonly above: boolean;
}

/** That the one lies on the other at a spot. */
export function addLaid(rules: Rules, { overlaps }: Piled, { joint, a, b, above }: Held, spot: Spot): void {
  const literal = overlaps.above(leafBy(spot, a), leafBy(spot, b));
  if (literal >= 0) rules.holds(above ? literal : literal ^ 1, (): Why => ({ is: 'laid', joint }));
}

/** That no panel at a spot lies between the two, except for some. */
export function addNothingBetween(
  rules: Rules,
  { overlaps }: Piled,
  { joint, a, b }: Held,
  spot: Spot,
  beside: ReadonlySet<number>,
): void {
  const [under, over] = [leafBy(spot, a), leafBy(spot, b)];
  for (const [i, panel] of spot.panels.entries()) {
    const leaf = spot.leaves[i] ?? -1;
    if (leaf === under || leaf === over || beside.has(panel)) continue;
    const [one, other] = [overlaps.above(leaf, under), overlaps.above(leaf, over)];
    if (one >= 0 && other >= 0) rules.alike(one, other, (): Why => ({ is: 'between', joint, panel }));
  }
}

/** The leaf by which a panel is at a spot; -1 for none. */
export function leafBy(spot: Spot, panel: number): number {
  return spot.leaves[spot.panels.indexOf(panel)] ?? -1;
}
