import type { Joint } from '../assembly/index.ts';

/** A joint that closes a loop and the joints of the tree that it closes it with. */
export function ringOf(joint: Joint, ground: string, tree: readonly Joint[]): Joint[] {
  // Each panel but the ground is placed by one joint, from the panel at its other end.
  const placedBy = new Map<string, { joint: Joint; from: string }>();
  for (const one of tree) {
    const fromB = one.b === ground || placedBy.has(one.b);
    placedBy.set(fromB ? one.a : one.b, { joint: one, from: fromB ? one.b : one.a });
  }
  const way = (start: string): Joint[] => {
    const joints: Joint[] = [];
    for (let step = placedBy.get(start); step !== undefined; step = placedBy.get(step.from)) joints.push(step.joint);
    return joints;
  };
  const [one, other] = [way(joint.a), way(joint.b)];
  return [joint, ...one.filter((step) => !other.includes(step)), ...other.filter((step) => !one.includes(step))];
}
