import type { Joint } from './types.ts';

export interface SpanningTree {
  /** In the order in which they place panels: one end of each is placed when its turn comes. */
  readonly tree: readonly Joint[];
  /** What closes a loop, in the order given. */
  readonly loops: readonly Joint[];
  /** Every panel that the ground reaches, itself first, in the order in which it does. */
  readonly reached: readonly string[];
}

/**
 * Breadth first from a panel, over creases and joins in the order given.
 *
 * What rests moves nothing and is left out. A thread is the last resort: it places what nothing else holds, after all else.
 */
export function spanningTree(ground: string, joints: readonly Joint[]): SpanningTree {
  const holding = joints.filter(({ is }) => is !== 'rest' && is !== 'hang');
  const threads = joints.filter(({ is }) => is === 'hang');
  const at = jointsByPanel(holding);
  const reached = [ground];
  const seen = new Set(reached);
  const tree: Joint[] = [];
  const used = new Set<Joint>();
  const step = (joint: Joint, panel: string): void => {
    used.add(joint);
    tree.push(joint);
    seen.add(panel);
    reached.push(panel);
  };
  for (let next = 0; next < reached.length; next++) {
    const name = reached[next] ?? '';
    for (const joint of at.get(name) ?? []) {
      const other = joint.a === name ? joint.b : joint.a;
      if (!seen.has(other)) step(joint, other);
    }
    if (next + 1 < reached.length) continue;
    const thread = threads.find(({ a, b }) => seen.has(a) !== seen.has(b));
    if (thread) step(thread, seen.has(thread.a) ? thread.b : thread.a);
  }
  const loops = holding.filter((joint) => !used.has(joint) && seen.has(joint.a) && seen.has(joint.b));
  return { tree, loops, reached };
}

function jointsByPanel(joints: readonly Joint[]): ReadonlyMap<string, readonly Joint[]> {
  const at = new Map<string, Joint[]>();
  for (const joint of joints) {
    for (const name of [joint.a, joint.b]) {
      const list = at.get(name);
      if (list) list.push(joint);
      else at.set(name, [joint]);
    }
  }
  return at;
}
