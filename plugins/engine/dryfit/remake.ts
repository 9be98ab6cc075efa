import { type Assembly, type Body, type Joint, type LaidJoint, spanningTree } from '../assembly/index.ts';
import { minus, negated, plus, same, type Turn, times, ZERO } from '../geometry/index.ts';
import { type ClosedPose, closedPoses, type Gap, isKnown, ringOf } from '../motion/index.ts';
import type { GlueJoin, Piece, Pose } from '../spec/index.ts';

/** A body in a pose, when all its angles are known and it stays in one. */
export function poseOf(assembly: Assembly, body: Body, pose: Pose): ClosedPose | undefined {
  const [only, ...others] = closedPoses({ ...assembly, bodies: [body] }, pose);
  return only !== undefined && others.length === 0 && isKnown(only) ? only : undefined;
}

/**
 * The gaps of a pose, each laid to a join where there is one in its ring: paper holds, and what misses is what is glued. A
 * ring of creases alone stays as it is.
 */
export function gapsAtJoins(pose: ClosedPose, body: Body, written: Pose): readonly Gap[] {
  const { assembly, ground } = pose;
  if (ground !== body.ground) return pose.gaps;
  const inside = assembly.joints.filter(({ a }) => body.panels.includes(a));
  const blamed: Joint[] = [];
  let [gaps, tree] = [pose.gaps, body.tree];
  for (;;) {
    const rings = gaps.filter(({ joint }) => joint.is === 'hinge').map(({ joint }) => ringOf(joint, ground, tree));
    const join = inside.findLast((one) => one.is !== 'hinge' && rings.some((ring) => ring.includes(one)));
    if (join === undefined) return gaps;
    blamed.push(join);
    // A joint of a ring can go without parting what it holds.
    const without = spanningTree(
      ground,
      inside.filter((joint) => !blamed.includes(joint)),
    );
    tree = without.tree;
    gaps = poseOf(assembly, { ...body, tree, loops: [...without.loops, ...blamed] }, written)?.gaps ?? [];
  }
}

/** The same body with one join glued by the other side of its part, where the same line still lies along the same line. */
export function gluedByOtherSide(
  assembly: Assembly,
  body: Body,
  joint: LaidJoint,
): { assembly: Assembly; body: Body; join: GlueJoin } | undefined {
  const { join } = joint;
  if (join.is !== 'glue') return undefined;
  const partSide = join.partSide === 'face' ? 'back' : 'face';
  const piece = assembly.card.pieces.find(({ name }) => name === join.part.piece);
  const turn = join.laid && piece ? turnedOver(join, directionOf(join.laid.line, piece)) : join.turn;
  const other: GlueJoin = { ...join, partSide, turn };
  const swap = (one: Joint): Joint => (one === joint ? { ...joint, join: other } : one);
  return {
    assembly: { ...assembly, joints: assembly.joints.map(swap) },
    body: { ...body, tree: body.tree.map(swap), loops: body.loops.map(swap) },
    join: other,
  };
}

interface Direction {
  readonly x: Turn['cos'];
  readonly y: Turn['cos'];
}

/** Direction of a line, band crease or edge on a piece's drawing; down the page for what has no direction of its own. */
function directionOf(name: string, piece: Piece): Direction | undefined {
  const line = piece.lines.find((one) => one.name === name);
  if (line) return { x: minus(line.to.x, line.from.x), y: minus(line.to.y, line.from.y) };
  const lies =
    piece.creases.find((crease) => crease.name === name)?.runs === 'across' || name === 'top' || name === 'bottom';
  return lies ? { x: piece.width.mm, y: ZERO } : { x: ZERO, y: piece.height.mm };
}

/**
 * The turn that keeps the direction of a line when its piece is turned over, left for right, or back: that turning takes the
 * line's direction `d` to `e`, so a turn from one to the other goes before the old one.
 */
function turnedOver({ turn, partSide, ontoSide }: GlueJoin, direction: Direction | undefined): Turn {
  if (direction === undefined) return turn;
  const { x, y } = direction;
  const square = plus(times(x, x), times(y, y));
  if (same(square, ZERO)) return turn;
  const cos = minus(times(y, y), times(x, x)).div(square);
  const fromLine = times(x, y).mul(2).div(square);
  // Like sides have it turned over already: it goes from `d` to `e`, else from `e` to `d`.
  const sin = partSide === ontoSide ? fromLine : negated(fromLine);
  const both = {
    cos: minus(times(turn.cos, cos), times(turn.sin, sin)),
    sin: plus(times(turn.sin, cos), times(turn.cos, sin)),
  };
  return turn.rounded ? { ...both, rounded: true } : both;
}
