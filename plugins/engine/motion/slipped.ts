import { type Assembly, type HingeJoint, type SlipJoint, spanningTree } from '../assembly/index.ts';
import {
  type Bounds,
  between,
  boundsOf,
  compose,
  IDENTITY,
  inverse,
  laidOn,
  larger,
  minus,
  onDrawing,
  type Placement,
  type Point,
  place,
  turnBy,
  ZERO,
} from '../geometry/index.ts';

/**
 * Where a lid lies: its face on the face of what it goes over, squared and centred over the receiver's piece as the pose folds
 * it, as high as that piece reaches. A quarter turn is made when its sides agree better so.
 */
export function slippedOver(
  { a, b }: SlipJoint,
  assembly: Assembly,
  frameOfHinge: (joint: HingeJoint) => Placement,
): Placement {
  const receiver = foldedFrom(b, assembly, frameOfHinge);
  const lid = boundsOf(assembly.panels.get(a)?.outline ?? []);
  const top = receiver.heights.reduce(larger, ZERO);
  const [across, down] = sidesOf(receiver.box);
  const [width, height] = sidesOf(lid);
  const off = (w: number, h: number): number => Math.abs(w - across) + Math.abs(h - down);
  const turn = turnBy(off(height, width) < off(width, height) ? 90 : 0);
  const laying = { p: centreOf(lid), q: centreOf(receiver.box), turn, partSide: 'face', ontoSide: 'face' } as const;
  return laidOn(laying, top);
}

/** The piece that a panel belongs to, folded as the pose says, in the space of that panel. */
function foldedFrom(
  panel: string,
  assembly: Assembly,
  frameOfHinge: (joint: HingeJoint) => Placement,
): { box: Bounds; heights: Placement['t'][number][] } {
  const piece = assembly.panels.get(panel)?.piece;
  const hinges = assembly.joints.filter((joint) => joint.is === 'hinge' && joint.hinge.piece === piece);
  const at = new Map<string, Placement>([[panel, IDENTITY]]);
  for (const joint of spanningTree(panel, hinges).tree) {
    if (joint.is !== 'hinge') continue;
    const [a, b] = [at.get(joint.a), at.get(joint.b)];
    if (b) at.set(joint.a, compose(b, frameOfHinge(joint)));
    else if (a) at.set(joint.b, compose(a, inverse(frameOfHinge(joint))));
  }
  const corners = [...at].flatMap(([name, placement]) =>
    (assembly.panels.get(name)?.outline ?? []).map((corner) => place(placement, corner)),
  );
  return { box: boundsOf(corners.map(onDrawing)), heights: corners.map(({ z }) => z) };
}

function sidesOf({ left, right, top, bottom }: Bounds): [width: number, height: number] {
  return [minus(right, left).valueOf(), minus(bottom, top).valueOf()];
}

function centreOf({ left, right, top, bottom }: Bounds): Point {
  return { x: between(left, right), y: between(top, bottom) };
}
