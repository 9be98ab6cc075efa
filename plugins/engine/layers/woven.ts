import type { Held } from './held-pair.ts';
import type { Piled } from './piled.ts';
import type { Rules, Why } from './rules.ts';

/** A slider lies on the side it shows between its slits or outside of them, and on the other side elsewhere. */
export function addSlide(rules: Rules, { paper, leaves, overlaps }: Piled, { joint, a, b, above }: Held): void {
  const { join } = joint;
  if (join.is !== 'slide') return;
  const own = leaves.partingsOf(paper.facetOf[a] ?? 0).map((parting) => parting.joint === joint);
  for (const { leaf, left } of leaves.leavesOf(paper.facetOf[a] ?? 0)) {
    const passed = left.filter((isLeft, i) => own[i] && isLeft).length;
    const shown = (passed % 2 === 1) === (join.shows === 'between');
    for (const receiver of leaves.leavesOf(paper.facetOf[b] ?? 0)) {
      const literal = overlaps.above(leaf, receiver.leaf);
      if (literal < 0) continue;
      rules.holds(shown === above ? literal : literal ^ 1, (): Why => ({ is: 'laid', joint }));
    }
  }
}

/** Two half-slits pushed into each other: what lies above on one side of the line lies below on the other. */
export function addSlot(rules: Rules, { paper, leaves, overlaps }: Piled, { joint, a, b }: Held): void {
  const literals = { left: -1, right: -1 };
  const sides = (panel: number): { leaf: number; left: boolean }[] => {
    const facet = paper.facetOf[panel] ?? 0;
    const own = leaves.partingsOf(facet).findIndex((parting) => parting.joint === joint);
    return leaves.leavesOf(facet).map(({ leaf, left }) => ({ leaf, left: left[own] ?? false }));
  };
  for (const one of sides(a)) {
    for (const other of sides(b)) {
      const literal = overlaps.above(one.leaf, other.leaf);
      if (literal < 0 || one.left !== other.left) continue;
      const side = one.left ? 'left' : 'right';
      if (literals[side] >= 0) rules.alike(literals[side], literal, (): Why => ({ is: 'laid', joint }));
      else literals[side] = literal;
    }
  }
  const { left, right } = literals;
  if (left >= 0 && right >= 0) rules.alike(left, right ^ 1, (): Why => ({ is: 'laid', joint }));
}
