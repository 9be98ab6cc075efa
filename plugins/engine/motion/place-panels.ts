import type { Assembly, Joint } from '../assembly/index.ts';
import { compose, IDENTITY, inverse, type Placement } from '../geometry/index.ts';
import { frameOf } from './joint-frame.ts';
import type { PoseSettings } from './pose-settings.ts';

/** Where every panel of a tree lies, in the space of the ground, by name. */
export function placePanels(
  ground: string,
  tree: readonly Joint[],
  assembly: Assembly,
  settings: PoseSettings,
  pressed: ReadonlySet<Joint>,
): ReadonlyMap<string, Placement> {
  const placed = new Map<string, Placement>([[ground, IDENTITY]]);
  for (const joint of tree) {
    const frame = frameOf(joint, assembly, settings, pressed.has(joint));
    const [a, b] = [placed.get(joint.a), placed.get(joint.b)];
    if (b) placed.set(joint.a, compose(b, frame));
    else if (a) placed.set(joint.b, compose(a, inverse(frame)));
  }
  return placed;
}
