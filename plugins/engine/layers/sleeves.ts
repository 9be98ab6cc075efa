import type { Piled } from './piled.ts';
import { facesUp, type Pile } from './piles.ts';
import type { Rules, Why } from './rules.ts';

/**
 * What is slipped over a piece has that piece inside: on the face side of its panels when it is folded by valleys, on their
 * back side when by mountains. One folded both ways is left free.
 */
export function addSleeves(rules: Rules, { paper, leaves, overlaps }: Piled, pileOf: ReadonlyMap<number, Pile>): void {
  for (const joint of paper.slipped) {
    const sleeve = paper.panels[paper.indexOf.get(joint.a) ?? 0]?.piece;
    const inner = paper.panels[paper.indexOf.get(joint.b) ?? 0]?.piece;
    const meets = new Set(
      paper.hinges.flatMap((hinge) => (hinge.is !== 'flat' && hinge.joint.hinge.piece === sleeve ? [hinge.meets] : [])),
    );
    const [side] = meets;
    if (meets.size !== 1 || side === undefined) continue;
    for (const [i, panel] of paper.panels.entries()) {
      const pile = pileOf.get(i);
      if (panel.piece !== sleeve || pile === undefined) continue;
      const innerAbove = facesUp(pile, panel) === (side === 'face');
      for (const [j, other] of paper.panels.entries()) {
        if (other.piece !== inner) continue;
        for (const { leaf } of leaves.leavesOf(paper.facetOf[j] ?? 0)) {
          for (const outer of leaves.leavesOf(paper.facetOf[i] ?? 0)) {
            const literal = overlaps.above(leaf, outer.leaf);
            if (literal >= 0) rules.holds(innerAbove ? literal : literal ^ 1, (): Why => ({ is: 'laid', joint }));
          }
        }
      }
    }
  }
}
