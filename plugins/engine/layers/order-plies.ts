import type { ClosedPose } from '../motion/index.ts';
import { explain } from './explain.ts';
import { gatherRules } from './gather-rules.ts';
import { paperOf } from './paper.ts';
import { solve } from './solve.ts';
import { stuckStrip } from './strips.ts';
import { survey } from './survey.ts';
import type { Obstruction, PlyOrders } from './types.ts';
import { brokenVertex } from './vertices.ts';
import { orderWriter } from './written-order.ts';

/**
 * Every way in which the panels of a pose can lie on each other, up to `limit` (64), or why there is none.
 *
 * Paper has no thickness here, so equal panels pass. Joints that do not meet (`pose.gaps`) hold nothing. Two panels have one order
 * wherever they overlap, but for what is slid or slotted: that is parted at its slits, so both orders may stand in
 * `pairs`. In a pose that is not flat the panels of each plane are ordered among themselves, and a crease that leaves the
 * plane says what passes above or below it. When there are neither orders nor an obstruction the question took too much work.
 *
 * Throws RangeError for a pose that places panels unknown to its assembly.
 */
export function orderPlies(pose: ClosedPose, { limit = 64 }: { limit?: number } = {}): PlyOrders {
  const paper = paperOf(pose);
  const surveyed = survey(paper);
  if (surveyed === undefined) return { pose, orders: [], count: undefined, obstruction: undefined, deepest: 0 };
  const { piled, crossings } = surveyed;
  const deepest = piled.spots.list.reduce((most, { panels }) => Math.max(most, panels.length), 0);
  const none = (obstruction: Obstruction | undefined, count: 0n | undefined): PlyOrders => ({
    pose,
    orders: [],
    count,
    obstruction,
    deepest,
  });
  const plain = brokenVertex(paper) ?? stuckStrip(paper);
  if (plain) return none(plain, 0n);
  const rules = gatherRules(piled, crossings);
  if (rules === undefined) return none(undefined, undefined);
  const solved = solve(rules, limit);
  if (solved.none) return none(explain(rules, piled), 0n);
  if (solved.answers.length === 0) return none(undefined, undefined);
  return {
    pose,
    orders: solved.answers.map(orderWriter(piled)),
    count: solved.count,
    obstruction: undefined,
    deepest,
  };
}
