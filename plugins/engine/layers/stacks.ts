import type { LaidJoint } from '../assembly/index.ts';
import { type ClosedPose, commonTo, type Shape, squareMm } from '../motion/index.ts';
import type { Length } from '../units/index.ts';
import { paperOf } from './paper.ts';
import { heightOf, type Layer, type Plies } from './plies.ts';
import { survey } from './survey.ts';
import type { PlyOrder } from './types.ts';

/** What lies over each other in one region of a flat pose. */
export interface Stack {
  /** From the bottom to the top, seen with the ground's face up. */
  readonly panels: readonly string[];
  readonly layers: readonly Layer[];
  /** All layers together, pressed to touch: what a caliper would measure if the panels were soft. */
  readonly local: Length;
}

/** Where a stack is: how many square millimetres of the closed card, and the corners of its largest part, as the pose has them. */
export interface StackRegion {
  readonly area: number;
  readonly outline: readonly { readonly x: number; readonly y: number }[];
}

/** For an order of plies of a flat pose, the stack of every region; each set of panels once. */
export function stackerOf(pose: ClosedPose, plies: Plies): (order: PlyOrder) => Stack[] {
  const paper = paperOf(pose);
  const glued = paper.laid.filter(({ is }) => is === 'glue');
  const sets = new Map<string, readonly string[]>();
  for (const { panels } of survey(paper)?.piled.spots.list ?? []) {
    const names = panels.map((panel) => paper.panels[panel]?.name ?? '');
    if (names.length > 0) sets.set(names.join('\n'), names);
  }
  return ({ plies: all, pairs }) => {
    const rank = rankIn(all, pairs);
    return [...sets.values()].map((names) => stackOf(rank(names), glued, plies, pose));
  };
}

/** One set of panels in their order: after the order of all plies, else by how many of the set each lies above. */
function rankIn(
  all: readonly string[] | undefined,
  pairs: readonly { readonly over: string; readonly under: string }[],
): (names: readonly string[]) => string[] {
  if (all) {
    const place = new Map(all.map((name, i) => [name, i]));
    return (names) => names.toSorted((a, b) => (place.get(a) ?? 0) - (place.get(b) ?? 0));
  }
  const above = new Map<string, Set<string>>();
  for (const { over, under } of pairs) above.set(over, (above.get(over) ?? new Set()).add(under));
  return (names) => {
    const count = (name: string): number => names.filter((other) => above.get(name)?.has(other)).length;
    return names.toSorted((a, b) => count(a) - count(b));
  };
}

/** Glue holds over the whole of where two panels overlap, so it is in every stack that has both. */
function stackOf(names: readonly string[], glued: readonly LaidJoint[], plies: Plies, pose: ClosedPose): Stack {
  const turned = new Set(pose.panels.filter(({ faces }) => faces === 'down').map(({ panel }) => panel));
  const place = new Map(names.map((name, i) => [name, i]));
  const layers = names.flatMap((name, i): Layer[] => {
    const own = plies.layersOf(name);
    const above = glued.filter(
      ({ a, b }) => Math.min(place.get(a) ?? -1, place.get(b) ?? -1) === i && (a === name || b === name),
    );
    return [...(turned.has(name) ? own.toReversed() : own), ...above.flatMap((joint) => plies.between(joint))];
  });
  return { panels: names, layers, local: heightOf(layers) };
}

/** Where a stack's own panels lie over each other and no other does. */
export function regionOf({ panels }: Stack, pose: ClosedPose): StackRegion {
  const here = (inside: boolean): Shape[] => pose.panels.filter(({ panel }) => panels.includes(panel) === inside);
  const areas = commonTo(here(true), here(false));
  const [largest] = areas.toSorted((a, b) => squareMm([b]) - squareMm([a]));
  return { area: squareMm(areas), outline: largest?.[0] ?? [] };
}
