import { MOST_STEPS_TO_EXPLAIN, type Steps } from './limits.ts';
import type { Piled } from './piled.ts';
import type { Passes, Rules, Why } from './rules.ts';
import { smallestConflict } from './smallest-conflict.ts';
import type { Obstruction } from './types.ts';

/**
 * Plain facts from rules that have no answer: the first of the smallest conflict that a maker can see. What would have to lie
 * between glued panels is told first, then what would have to pass through paper, then which panels go in a circle. Where the
 * smallest conflict is too much work all panels in it go in a circle.
 */
export function explain(rules: Rules, piled: Piled): Obstruction {
  const steps: Steps = { left: MOST_STEPS_TO_EXPLAIN };
  const conflict = smallestConflict(rules, steps);
  if (steps.left < 0) return { is: 'circle', panels: panelsIn(rules, conflict, piled) };
  const facts = conflict.map((rule) => rules.why[rule]).filter((why) => why !== undefined);
  const between = facts.find((why) => why.is === 'between');
  if (between) return { is: 'between', panel: nameOf(piled, between.panel), joint: between.joint };
  const passing = facts.filter((why) => why.is === 'passing').at(-1);
  if (passing) return through(passing, piled);
  return { is: 'circle', panels: panelsIn(rules, conflict, piled) };
}

/** Of the two that are in each other's way, the one further from the ground is the one that would have to pass. */
function through({ one, other }: Extract<Why, { is: 'passing' }>, piled: Piled): Obstruction {
  const [moves, stays] = furthest(one, piled) >= furthest(other, piled) ? [one, other] : [other, one];
  const where = lineOf(one, piled) ?? lineOf(other, piled) ?? { piece: '', crease: '' };
  return { is: 'through', panel: furthestPanel(moves, piled), other: furthestPanel(stays, piled), ...where };
}

/** The crease, or the cut that a piece is slid or slotted through. */
function lineOf(passes: Passes, { paper }: Piled): { piece: string; crease: string } | undefined {
  if (passes.is === 'creased') return { piece: passes.joint.hinge.piece, crease: passes.joint.hinge.crease };
  const { joint } = passes;
  const piece = paper.panels[paper.indexOf.get(joint?.b ?? '') ?? -1]?.piece ?? '';
  if (joint?.join.is === 'slide') return { piece, crease: joint.join.through[0] ?? '' };
  return joint?.join.is === 'slot' ? { piece, crease: joint.join.along } : undefined;
}

function panelsOf(passes: Passes, piled: Piled): string[] {
  return passes.is === 'straight' ? [nameOf(piled, passes.panel)] : [passes.joint.a, passes.joint.b];
}

function furthest(passes: Passes, piled: Piled): number {
  return Math.max(...panelsOf(passes, piled).map((panel) => stepsTo(panel, piled)));
}

function furthestPanel(passes: Passes, piled: Piled): string {
  const panels = panelsOf(passes, piled);
  return panels.reduce((best, panel) => (stepsTo(panel, piled) > stepsTo(best, piled) ? panel : best), panels[0] ?? '');
}

/** Joints between the ground and a panel, by the shortest way. */
function stepsTo(panel: string, { paper: { pose } }: Piled): number {
  const steps = new Map([[pose.ground, 0]]);
  for (const [name, count] of steps) {
    if (name === panel) return count;
    for (const { a, b } of pose.assembly.joints) {
      const next = a === name ? b : b === name ? a : undefined;
      if (next !== undefined && !steps.has(next)) steps.set(next, count + 1);
    }
  }
  return Number.POSITIVE_INFINITY;
}

function panelsIn(rules: Rules, conflict: readonly number[], { paper, leaves, overlaps }: Piled): string[] {
  const inConflict = new Set<number>();
  for (const rule of conflict) {
    for (let i = rules.starts[rule] ?? 0; i < (rules.starts[rule + 1] ?? 0); i++) {
      for (const leaf of overlaps.pairs[(rules.literals[i] ?? 0) >> 1] ?? []) inConflict.add(leaf);
    }
  }
  return paper.panels.flatMap(({ name }, panel) =>
    leaves.leavesOf(paper.facetOf[panel] ?? 0).some(({ leaf }) => inConflict.has(leaf)) ? [name] : [],
  );
}

function nameOf({ paper }: Piled, panel: number): string {
  return paper.panels[panel]?.name ?? '';
}
