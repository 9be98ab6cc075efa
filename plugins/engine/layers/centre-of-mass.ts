import type { Placement } from '../geometry/index.ts';
import type { CardMass } from './mass.ts';

/** A point in space, in floating millimetres: X to the right, Y up the ground's drawing, Z out of its face. */
export interface MassPoint {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  /** What is there of the card. */
  readonly grams: number;
}

/**
 * Where the mass of panels that are placed has its middle, in the ground's space. Takes any pose whose placements are known, flat
 * or not; what is not placed does not count. Undefined when nothing that is placed weighs anything.
 *
 * Paper has no thickness here, as in the placements: a ply lies in its panel's plane, foam and board behind its face.
 */
export function centreOfMass(
  { parts }: CardMass,
  placed: readonly { readonly panel: string; readonly placement: Placement }[],
): MassPoint | undefined {
  const placements = new Map(placed.map(({ panel, placement }) => [panel, placement]));
  let [x, y, z, grams] = [0, 0, 0, 0];
  for (const part of parts) {
    const placement = placements.get(part.panel);
    const weight = part.grams?.valueOf() ?? 0;
    if (placement === undefined || weight === 0) continue;
    const at = inSpaceOf(placement, [part.at.x, -part.at.y, part.at.z]);
    x += weight * at[0];
    y += weight * at[1];
    z += weight * at[2];
    grams += weight;
  }
  return grams > 0 ? { x: x / grams, y: y / grams, z: z / grams, grams } : undefined;
}

function inSpaceOf({ m, t }: Placement, point: readonly [number, number, number]): [number, number, number] {
  const row = (i: number): number =>
    point.reduce((sum, value, k) => sum + (m[3 * i + k]?.valueOf() ?? 0) * value, t[i]?.valueOf() ?? 0);
  return [row(0), row(1), row(2)];
}
