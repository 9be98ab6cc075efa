import { assemble } from '../../../plugins/engine/assembly/index.ts';
import {
  type Card,
  type ClosedPose,
  closedPoses,
  isKnown,
  type Length,
  type PlacedPanel,
  type Pose,
  panelsOf,
} from '../../../plugins/engine/index.ts';

/** All bodies of a card in one of its poses, which has to be known. */
export function posesOf(made: Card, name = 'closed'): readonly ClosedPose[] {
  return posesIn(made, poseCalled(made, name));
}

export function posesIn(made: Card, pose: Pose): readonly ClosedPose[] {
  return closedPoses(assemble(made, panelsOf(made)), pose).map((one) => {
    if (!isKnown(one)) throw new Error(`${one.pose} leaves ${one.creases.map(({ crease }) => crease).join(', ')}`);
    return one;
  });
}

/** The first body. */
export function poseIn(made: Card, name = 'closed'): ClosedPose {
  const [first] = posesOf(made, name);
  if (!first) throw new Error('a card has a body');
  return first;
}

export function poseCalled(made: Card, name: string): Pose {
  const pose = made.poses.find((one) => one.name === name);
  if (!pose) throw new Error(`no pose ${name}`);
  return pose;
}

export function panelIn(pose: ClosedPose, name: string): PlacedPanel {
  const panel = pose.panels.find((one) => one.panel === name);
  if (!panel) throw new Error(`no panel ${name} in ${pose.panels.map((one) => one.panel).join(', ')}`);
  return panel;
}

/** Left, top, right and bottom of a placed panel, counted in `unit`. */
export function boxOf({ outline }: Pick<PlacedPanel, 'outline'>, unit: Length): number[] {
  const xs = outline.map(({ x }) => x.div(unit.mm).valueOf());
  const ys = outline.map(({ y }) => y.div(unit.mm).valueOf());
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

/** The two sides of the closed body, the lesser first, counted in `unit`. */
export function sizeOf({ box }: ClosedPose, unit: Length): number[] {
  return [box.right.sub(box.left), box.bottom.sub(box.top)]
    .map((side) => side.div(unit.mm).valueOf())
    .sort((a, b) => a - b);
}
