import type { Assembly, Joint } from '../assembly/index.ts';
import type { Placement } from '../geometry/index.ts';
import { gapAt } from './gaps.ts';
import { placePanels } from './place-panels.ts';
import type { PosePart } from './pose-parts.ts';
import type { PoseSettings } from './pose-settings.ts';
import { ringOf } from './rings.ts';
import type { Gap } from './types.ts';

/** Panels where they lie, and what does not meet. */
export interface PlacedLoops {
  readonly placed: ReadonlyMap<string, Placement>;
  /** Worst first. */
  readonly gaps: readonly Gap[];
  /** Joins whose foam was left out. */
  readonly pressed: readonly Joint[];
}

/**
 * Foam lifts what is glued on it, unless that keeps a loop from meeting: then paper bends over it, and the loop is looked at
 * without.
 */
export function placeWithLoops(
  assembly: Assembly,
  settings: PoseSettings,
  { ground, tree, loops }: PosePart,
): PlacedLoops {
  const attempt = (pressed: ReadonlySet<Joint>) => {
    const placed = placePanels(ground, tree, assembly, settings, pressed);
    const gaps = loops.flatMap((joint) => gapAt(joint, placed, assembly, settings, pressed.has(joint)) ?? []);
    return { placed, gaps: gaps.toSorted((one, other) => other.mm - one.mm) };
  };
  const raised = attempt(new Set());
  const pressed = raised.gaps.flatMap(({ joint }) => ringOf(joint, ground, tree).filter(hasFoam));
  if (pressed.length === 0) return { ...raised, pressed };
  return { ...attempt(new Set(pressed)), pressed: [...new Set(pressed)] };
}

function hasFoam(joint: Joint): boolean {
  return joint.is === 'glue' && joint.join.is === 'glue' && joint.join.foam !== undefined;
}
