import type { Panel } from '../panels/index.ts';
import { groundOf } from './ground.ts';
import { spanningTree } from './spanning-tree.ts';
import type { Body, Joint } from './types.ts';

/** What hangs together, in the order of the panels: `panels` in the order of the file. */
export function bodiesOf(panels: readonly Panel[], joints: readonly Joint[]): Body[] {
  const bodies: Body[] = [];
  const taken = new Set<string>();
  for (const panel of panels) {
    if (taken.has(panel.name)) continue;
    const together = new Set(spanningTree(panel.name, joints).reached);
    for (const name of together) taken.add(name);
    const ground = groundOf(panels.filter(({ piece, name }) => piece === panel.piece && together.has(name))).name;
    const { tree, loops } = spanningTree(ground, joints);
    const inside = panels.filter(({ name }) => together.has(name));
    bodies.push({
      pieces: [...new Set(inside.map(({ piece }) => piece))],
      panels: inside.map(({ name }) => name),
      tree,
      loops,
      ground,
    });
  }
  return bodies;
}
