import type { Point } from '../geometry/index.ts';
import type { Panel, Panelling } from '../panels/index.ts';
import type { Card, Join, PanelRef } from '../spec/index.ts';
import { groundOf } from './ground.ts';
import { touches } from './touches.ts';
import type { JoinSlip, Joint } from './types.ts';

/** Joins with the panels they mean, and those whose panels cannot be told. Both in file order. */
export interface ResolvedJoins {
  readonly joints: readonly Joint[];
  readonly slips: readonly JoinSlip[];
}

export function resolveJoins(card: Card, panelling: Panelling): ResolvedJoins {
  const joints: Joint[] = [];
  const slips: JoinSlip[] = [];
  for (const join of card.joins) {
    const a = resolve(join, join.part, panelling);
    const b = resolve(join, join.onto, panelling);
    if ('slip' in a) slips.push(a.slip);
    if ('slip' in b) slips.push(b.slip);
    if ('slip' in a || 'slip' in b) continue;
    if (a.panel.name === b.panel.name) slips.push({ is: 'to-itself', join });
    else joints.push(jointOf(join, a.panel.name, b.panel.name));
  }
  return { joints, slips };
}

function resolve(join: Join, ref: PanelRef, panelling: Panelling): { panel: Panel } | { slip: JoinSlip } {
  const found = panelling.find(ref.piece, ref.part);
  const panels = found.length > 1 ? narrowed(join, ref, found, panelling) : found;
  const [panel] = panels;
  if (panel === undefined) return { slip: { is: 'no-panel', join, ref } };
  if (panels.length === 1) return { panel };
  return { slip: { is: 'which-panel', join, ref, choices: panels.map(({ name }) => name) } };
}

/**
 * A lid goes over a whole piece; the panel about which most others fold, the bottom of a box, then speaks for it. A thread and a foot are at a point of an edge, and
 * the point says which panel.
 */
function narrowed(join: Join, ref: PanelRef, found: readonly Panel[], { hinges }: Panelling): readonly Panel[] {
  if (join.is === 'slip') {
    const folds = ({ name }: Panel): number =>
      hinges.filter(({ left, right }) => left === name || right === name).length;
    const most = Math.max(...found.map(folds));
    return [groundOf(found.filter((panel) => folds(panel) === most))];
  }
  const at = pointOf(join, ref);
  const there = at === undefined ? [] : found.filter((panel) => touches(panel.outline, at));
  return there.length > 0 ? there.slice(0, 1) : found;
}

function pointOf(join: Join, ref: PanelRef): Point | undefined {
  if (join.is === 'hang') return ref === join.part ? join.p : join.q;
  return join.is === 'rest' && ref === join.part ? join.touches[0] : undefined;
}

function jointOf(join: Join, a: string, b: string): Joint {
  switch (join.is) {
    case 'slip':
      return { is: 'slip', a, b, join };
    case 'rest':
      return { is: 'rest', a, b, join };
    case 'hang':
      return { is: 'hang', a, b, join };
    default:
      return { is: join.is, a, b, join };
  }
}
