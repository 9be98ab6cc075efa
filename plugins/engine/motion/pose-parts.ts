import { type Assembly, type Body, groundOf, type Joint, spanningTree } from '../assembly/index.ts';
import type { Pose } from '../spec/index.ts';

/** What of a body is held together in a pose, with the panel that stays put. */
export interface PosePart {
  readonly ground: string;
  readonly tree: readonly Joint[];
  readonly loops: readonly Joint[];
  /** In the order of the panelling. */
  readonly panels: readonly string[];
}

/**
 * A body as a pose has it: the whole, from the ground that the pose or the body gives; or what pieces laid aside leave of it,
 * which may be several parts, each with a ground of its own, or none.
 */
export function partsIn(assembly: Assembly, body: Body, pose: Pose): PosePart[] {
  const pieceOf = (panel: string): string => assembly.panels.get(panel)?.piece ?? '';
  const left = new Set(body.panels.filter((panel) => !pose.aside.includes(pieceOf(panel))));
  const stated = groundIn(assembly, left, pose);
  const whole = left.size === body.panels.length;
  if (whole && (stated ?? body.ground) === body.ground) return [{ ...body }];
  const joints = assembly.joints.filter(({ a, b }) => left.has(a) && left.has(b));
  const parts: PosePart[] = [];
  for (const preferred of [stated, body.ground, ...left]) {
    if (preferred === undefined || !left.has(preferred)) continue;
    const named = preferred === stated || preferred === body.ground;
    const ground = named ? preferred : usualGround(assembly, left, pieceOf(preferred));
    const { tree, loops, reached } = spanningTree(ground, joints);
    const held = new Set(reached);
    for (const panel of reached) left.delete(panel);
    parts.push({ ground, tree, loops, panels: body.panels.filter((panel) => held.has(panel)) });
  }
  return parts;
}

function groundIn(assembly: Assembly, left: ReadonlySet<string>, pose: Pose): string | undefined {
  if (pose.ground === undefined) return undefined;
  const found = assembly.find(pose.ground.piece, pose.ground.part).filter(({ name }) => left.has(name));
  return found.length === 0 ? undefined : groundOf(found).name;
}

function usualGround(assembly: Assembly, left: ReadonlySet<string>, piece: string): string {
  return groundOf([...assembly.panels.values()].filter((panel) => panel.piece === piece && left.has(panel.name))).name;
}
