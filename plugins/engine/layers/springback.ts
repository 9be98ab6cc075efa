import type { ClosedPose } from '../motion/index.ts';
import { Length } from '../units/index.ts';
import { paperOf } from './paper.ts';
import { heightOf, type Plies } from './plies.ts';
import { materialOf } from './usual-materials.ts';

/** Paper that is creased before it is folded, and that springs back when it is: 150 g/m2 and above (mill guides). */
export const CREASED_FROM_GSM = 150;

/**
 * How far a shut fold of cardstock springs open again, in calipers of its paper, after it has been pressed with a bone folder
 * (common practice, no source).
 */
export const SPRINGBACK_CALIPERS = 1;

/** What shut folds add to a stack that they go round. */
export interface Springback {
  readonly high: Length;
  /** Each crease once, as `piece.crease`. */
  readonly creases: readonly string[];
}

/** Shut creases between the plates that panels of a stack belong to. Thin paper lies where it is pressed. */
export function springbackOf(pose: ClosedPose, panels: readonly string[], plies: Plies): Springback {
  const { card } = plies.assembly;
  let high = Length.zero;
  const creases: string[] = [];
  const { hinges, facetOf, indexOf } = paperOf(pose);
  const plates = new Set(panels.map((panel) => facetOf[indexOf.get(panel) ?? 0]));
  for (const { joint, is, a, b } of hinges) {
    const { piece, crease } = joint.hinge;
    const name = `${piece}.${crease}`;
    if (is !== 'shut' || creases.includes(name) || ![a, b].every((panel) => plates.has(facetOf[panel]))) continue;
    const stock = card.pieces.find((one) => one.name === piece)?.stock ?? '';
    if (materialOf(stock, plies.materials).grammage?.lt(CREASED_FROM_GSM)) continue;
    const own = plies.layersOf(joint.a).filter((layer) => layer.is === 'ply');
    high = high.plus(heightOf(own).times(SPRINGBACK_CALIPERS));
    creases.push(name);
  }
  return { high, creases };
}
