import type { Panelling } from '../panels/index.ts';
import type { Card } from '../spec/index.ts';
import { bodiesOf } from './bodies.ts';
import { resolveJoins } from './resolve-joins.ts';
import type { Assembly, HingeJoint } from './types.ts';

/**
 * The panels of a card and what holds them: creases in the order of the panelling, then joins in file order.
 *
 * A join whose panels cannot be told is left out and stands in `slips.joins`; what the panels stage could not do stands in
 * `slips.panels`.
 */
export function assemble(card: Card, panelling: Panelling): Assembly {
  const panels = new Map(panelling.panels.map((panel) => [panel.name, panel]));
  const hinges = panelling.hinges.map((hinge): HingeJoint => ({ is: 'hinge', a: hinge.right, b: hinge.left, hinge }));
  const joins = resolveJoins(card, panelling);
  const joints = [...hinges, ...joins.joints];
  return {
    card,
    panels,
    strokes: panelling.strokes,
    joints,
    bodies: bodiesOf(panelling.panels, joints),
    slips: { panels: panelling.slips, joins: joins.slips },
    find: (piece, part) => panelling.find(piece, part),
  };
}
