import type { Body, HingeJoint, Joint } from '../../assembly/index.ts';
import { type ClosedPose, type Gap, ringOf } from '../../motion/index.ts';
import type { Card, Pose } from '../../spec/index.ts';
import { type Cure, cureFor } from '../cure-for-gap.ts';
import { finding } from '../finding.ts';
import { measured } from '../lengths.ts';
import type { Way } from '../outcomes.ts';
import { gapsAtJoins, poseOf } from '../remake.ts';
import type { Finding, FoldedBody, FoldedCard } from '../types.ts';

/**
 * Angles that a maker gives in whole degrees meet to about this: the play that a fit is given where nothing is said, 1/32 in
 * (common practice, no source).
 */
const PLAY_MM = 25.4 / 32;

/**
 * Whether paper that is held in a ring comes together again: each loop of joins and creases, in the pose that is posted and in
 * the others that the maker gave every angle for.
 */
export function joinsAgree(folded: FoldedCard): Finding[] {
  const posted = folded.closed.flatMap((body) => (body.pose === undefined ? [] : asPosted(body, body.pose, folded)));
  const { assembly, closed, card } = folded;
  const others = card.poses.filter((pose) => pose !== folded.posted && pose.path !== GENERATED);
  const elsewhere = others.flatMap((pose) =>
    closed.flatMap(({ body, pose: known }) => {
      // What does not meet when posted is told once.
      if (body === undefined || body.loops.length === 0 || known?.gaps.length !== 0) return [];
      const found = poseOf(assembly, body, pose);
      const wide = found?.gaps.some(({ mm, at }) => mm > (at.a.rounded || at.b.rounded ? PLAY_MM : 0));
      return found && wide ? gapsIn(body, found, pose, folded) : [];
    }),
  );
  return [...posted, ...elsewhere];
}

/** Where poses stand that no maker wrote. */
const GENERATED = 'poses';

function asPosted({ body, piece }: FoldedBody, pose: ClosedPose, folded: FoldedCard): Finding[] {
  const pressed = pose.pressed.flatMap(pressedFlat);
  if (body === undefined) return pressed;
  if (pose.gaps.length > 0) return [...gapsIn(body, pose, folded.posted, folded), ...pressed];
  const held = (joint: Joint): boolean => ringOf(joint, body.ground, body.tree).some(({ is }) => is !== 'hinge');
  const loops = body.loops.filter(held).length;
  if (loops === 0) return pressed;
  const facts = { piece: piece.name, loops, pose: pose.pose };
  return [finding('joins-agree', 'agree', { facts, at: piece, figure: 0, limit: 0 }), ...pressed];
}

function gapsIn(body: Body, pose: ClosedPose, written: Pose, { assembly, card }: FoldedCard): Finding[] {
  const gaps = gapsAtJoins(pose, body, written);
  const cure = cureFor(assembly, body, written);
  const apart = gaps.filter(({ joint }) => joint.is !== 'hinge');
  if (apart.length > 0) return apart.map((gap) => misses(gap, pose, cure));
  return tornCreases(gaps).map((gap) => tears(gap.joint, gap, pose, card, cure));
}

function misses(gap: Gap, pose: ClosedPose, cure: Cure | undefined): Finding {
  const { joint } = gap;
  const written = 'join' in joint ? joint.join : undefined;
  const by = measured(gap.mm);
  const facts = { part: joint.a, onto: joint.b, pose: pose.pose, by, way: wayOf(gap) };
  const at = written ?? { place: pose.assembly.card.place, path: '' };
  const shown = { at, figure: by, limit: 0, witness: joint.a };
  if (cure?.is === 'settings') {
    return finding('joins-agree', 'wrong-setting', {
      facts: { ...facts, settings: cure.settings.join(', ') },
      ...shown,
    });
  }
  if (cure?.is === 'other-side')
    return finding('joins-agree', 'wrong-side', { facts: { ...facts, ...sideIn(cure) }, ...shown });
  return finding('joins-agree', 'misses', { facts, ...shown });
}

function sideIn({ joint }: Extract<Cure, { is: 'other-side' }>): { glued: string; side: string } {
  const side = 'partSide' in joint.join && joint.join.partSide === 'face' ? 'back' : 'face';
  return { glued: joint.join.part.text, side };
}

/** One gap a crease: a crease that is crossed tears in several stretches. */
function tornCreases(gaps: readonly Gap[]): (Gap & { joint: HingeJoint })[] {
  const torn = gaps.flatMap((gap) => (gap.joint.is === 'hinge' ? [{ ...gap, joint: gap.joint }] : []));
  const key = ({ hinge }: HingeJoint): string => `${hinge.piece}\n${hinge.crease}`;
  return torn.filter((gap, i) => torn.findIndex(({ joint }) => key(joint) === key(gap.joint)) === i);
}

function tears(joint: HingeJoint, gap: Gap, pose: ClosedPose, card: Card, cure: Cure | undefined): Finding {
  const { hinge, a, b } = joint;
  const piece = card.pieces.find(({ name }) => name === hinge.piece);
  const crease = [...(piece?.creases ?? []), ...(piece?.lines ?? [])].find(({ name }) => name === hinge.crease);
  const by = measured(gap.mm);
  const settings = cure?.is === 'settings' ? cure.settings.join(', ') : '';
  const facts = { piece: hinge.piece, crease: hinge.crease, panel: a, other: b, by, pose: pose.pose, settings };
  const at = crease ?? piece ?? { place: card.place, path: '' };
  return finding('joins-agree', 'tears', { facts, at, figure: by, limit: 0, witness: hinge.crease });
}

function pressedFlat(joint: Joint): Finding[] {
  if (joint.is !== 'glue' || joint.join.is !== 'glue' || joint.join.foam === undefined) return [];
  const { foam } = joint.join;
  const facts = { part: joint.a, onto: joint.b, foam };
  return [finding('joins-agree', 'foam-in-ring', { facts, at: joint.join, figure: foam, witness: joint.a })];
}

/** Where what is joined lands, from where it should: the longest part of the way, in the ground's drawing frame. */
function wayOf({ at: { a, b } }: Gap): Way {
  const [dx, dy, dz] = [a.x.sub(b.x).valueOf(), a.y.sub(b.y).valueOf(), a.z.sub(b.z).valueOf()];
  const most = Math.max(Math.abs(dx), Math.abs(dy), Math.abs(dz));
  if (Math.abs(dx) === most) return dx < 0 ? 'left' : 'right';
  if (Math.abs(dy) === most) return dy > 0 ? 'top' : 'bottom';
  return dz > 0 ? 'above' : 'below';
}
