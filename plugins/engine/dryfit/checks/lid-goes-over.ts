import type { SlipJoint } from '../../assembly/index.ts';
import { boundsOf } from '../../geometry/index.ts';
import type { ClosedPose } from '../../motion/index.ts';
import { Length } from '../../units/index.ts';
import { finding } from '../finding.ts';
import type { Finding, FoldedCard } from '../types.ts';

/** Whether what is slipped over a folded piece, as a lid over a box, is wider than that by the play it is to have. */
export function lidGoesOver({ closed, assembly }: FoldedCard): Finding[] {
  const slips = assembly.joints.flatMap((joint) => (joint.is === 'slip' ? [joint] : []));
  return closed.flatMap(({ pose }) =>
    pose === undefined ? [] : slips.flatMap((joint) => overIn(joint, pose, assembly.card.mark)),
  );
}

function overIn({ a, b, join }: SlipJoint, { panels, assembly }: ClosedPose, mark: Length): Finding[] {
  const piece = assembly.panels.get(b)?.piece;
  const lid = panels.find(({ panel }) => panel === a);
  const under = panels.filter((panel) => panel.piece === piece);
  if (lid === undefined || under.length === 0) return [];
  const [outer, inner] = [boundsOf(lid.outline), boundsOf(under.flatMap(({ outline }) => outline))];
  const across = outer.right.sub(outer.left).sub(inner.right.sub(inner.left));
  const down = outer.bottom.sub(outer.top).sub(inner.bottom.sub(inner.top));
  const room = Length.fromMm(across.lte(down) ? across : down);
  const facts = { lid: join.part.text, over: join.onto.text, room, play: join.play };
  const shown = { facts, at: join, figure: room, limit: join.play, witness: join.part.text };
  if (!room.isPositive) return [finding('lid-goes-over', 'too-small', shown)];
  // Less than a mark is what rounding to the ruler takes.
  const tight = !join.play.minus(room).lessThan(mark);
  return [finding('lid-goes-over', tight ? 'tight' : 'goes-over', shown)];
}
