import Fraction from 'fraction.js';
import type { Assembly } from '../assembly/index.ts';
import { laidOn, onDrawing, place } from '../geometry/index.ts';
import { commonTo, type Shape } from '../motion/index.ts';
import type { Panel } from '../panels/index.ts';
import type { GlueJoin, Piece } from '../spec/index.ts';
import { centroidOfAreas } from './centroid.ts';
import { gramsOf, type MassPart } from './mass-part.ts';
import type { Materials } from './material.ts';
import { GLUE_ROLE, materialOf } from './usual-materials.ts';

/** Overlaps are measured on a grid: their areas are put on whole thousandths of a square millimetre. */
const PER_MM2 = 1000;

/** What the glue and the foam of joins weigh. A piece of foam tape brings its own glue. */
export function bondMasses(
  { joints, panels }: Assembly,
  pieces: ReadonlyMap<string, Piece>,
  materials: Materials,
): MassPart[] {
  const isFoam = (piece: string): boolean => materialOf(pieces.get(piece)?.stock ?? '', materials).sort === 'foam';
  return joints.flatMap((joint): MassPart[] => {
    if (joint.is !== 'glue' || joint.join.is !== 'glue') return [];
    const { join } = joint;
    if (join.tape === undefined && (isFoam(join.part.piece) || isFoam(join.onto.piece))) return [];
    const [part, onto] = [panels.get(joint.a), panels.get(joint.b)];
    const overlap = part && onto && overlapOf(part, onto, join);
    if (overlap === undefined) return [];
    const role = join.tape?.stock ?? GLUE_ROLE;
    const material = materialOf(role, materials);
    const high = join.tape?.layer.times(join.tape.layers);
    const area = new Fraction(Math.round(overlap.area * PER_MM2), PER_MM2);
    const z = ((high?.toMm() ?? 0) / 2) * (join.ontoSide === 'face' ? 1 : -1);
    const at = { x: overlap.x, y: overlap.y, z };
    const is = join.tape ? 'foam' : 'glue';
    return [{ is, name: join.text, role, material, grams: gramsOf(area, material, high?.mm), panel: joint.b, at }];
  });
}

/** Where the part lies on what receives it, on the receiver's drawing. */
function overlapOf(part: Panel, onto: Panel, join: GlueJoin) {
  const laid = laidOn(join);
  const upon = (ring: Panel['outline']) => ring.map((corner) => onDrawing(place(laid, corner)));
  const shape: Shape = { outline: upon(part.outline), holes: part.holes.map(upon) };
  return centroidOfAreas(commonTo([shape, onto]));
}
