import { cornersOf, insideOf } from '../../geometry/index.ts';
import type { Join } from '../../spec/index.ts';
import { type Carried, carriedBy } from '../carried.ts';
import { finding } from '../finding.ts';
import { foamAtSlit } from '../foam-at-slit.ts';
import type { Finding, FoldedCard } from '../types.ts';

/** More plies on each other than this are heavy and stiff for what slides, turns or swings (common practice, no source). */
const MOST_PLIES = 3;

/** Whether what slides, turns on a pin or swings in a part-cut shape carries too much: foam, or many plies. */
export function movingLayers(folded: FoldedCard): Finding[] {
  return [...joined(folded), ...swinging(folded)];
}

function joined(folded: FoldedCard): Finding[] {
  return folded.assembly.joints.flatMap((joint) => {
    if (joint.is !== 'slide' && joint.is !== 'pin') return [];
    const { join } = joint;
    const carried = carriedBy(joint.a, folded, [joint.b]);
    const caught = join.is === 'slide' ? foamAtSlit(join, joint.b, carried, folded) : undefined;
    if (caught) {
      const facts = { part: join.part.text, panel: caught.panel, slit: caught.slit };
      return [finding('moving-layers', 'foam-at-slit', { facts, at: join, witness: caught.panel })];
    }
    return weighed(join.part.text, carried, join);
  });
}

/** A part-cut shape swings with the panel that it stays with. */
function swinging(folded: FoldedCard): Finding[] {
  const { card, assembly } = folded;
  return card.pieces.flatMap((piece) =>
    piece.shapes.flatMap((shape) => {
      const at = insideOf(cornersOf(shape.outline));
      const [panel] = at ? assembly.find(piece.name, { is: 'spot', at }) : [];
      return panel ? weighed(`${piece.name}.${shape.name}`, carriedBy(panel.name, folded, []), shape) : [];
    }),
  );
}

function weighed(part: string, carried: Carried, at: Pick<Join, 'place' | 'path'>): Finding[] {
  const [foam] = carried.foam;
  if (foam !== undefined) {
    return [finding('moving-layers', 'foam', { facts: { part, panel: foam.panel }, at, witness: foam.panel })];
  }
  const plies = carried.deepest;
  const shown = { at, figure: plies, limit: MOST_PLIES, witness: part };
  if (plies > MOST_PLIES)
    return [finding('moving-layers', 'many', { facts: { part, plies, most: MOST_PLIES }, ...shown })];
  return [finding('moving-layers', 'light', { facts: { part, plies }, ...shown })];
}
