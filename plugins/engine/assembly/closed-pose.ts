import type { Panel, Panelling } from '../panels/index.ts';
import type { Crease, Piece, Pose } from '../spec/index.ts';
import { areaOf, boundsOf } from './measure.ts';
import { place } from './placement.ts';
import { orderOfPlies, type PlyOrder } from './plies.ts';
import { type Spread, spreadFrom, type Turn } from './spread.ts';
import type { FlatPose } from './types.ts';

/**
 * One piece of a card in a pose in which every crease is flat or shut, exact.
 *
 * Lengths are millimetres, seen from the face of the ground panel, which lies as it is drawn. The ground panel is the
 * largest; of several alike the last, so that in a half fold the back lies on the table and the front closes over it.
 * A crease that the pose does not mention is flat. Throws RangeError for a piece that has no panels.
 */
export function closedPose(piece: Piece, panelling: Panelling, pose: Pose): FlatPose {
  const panels = panelling.panels.filter((panel) => panel.piece === piece.name);
  const hinges = panelling.hinges.filter((hinge) => hinge.piece === piece.name);
  const ground = groundOf(panels);
  const turn = (crease: string): Turn =>
    pose.turns.find((entry) => entry.piece === piece.name && entry.crease === crease)?.turn ?? 'flat';
  const spread = spreadFrom(ground, hinges, (hinge) => turn(hinge.crease));
  const order = orderOrGap(piece, ground, spread, (crease) => turn(crease.name));
  const placed = panels.flatMap((panel) => {
    const placement = spread.placements.get(panel.name);
    if (placement === undefined) return [];
    const outline = panel.outline.map((corner) => place(placement, corner));
    return [{ panel: panel.name, piece: piece.name, placement, outline }];
  });
  return {
    pose: pose.name,
    ground: ground.name,
    panels: placed,
    plies: 'plies' in order ? order.plies : undefined,
    obstruction: 'plies' in order ? undefined : order.obstruction,
    box: boundsOf(placed.flatMap((panel) => panel.outline)),
  };
}

function groundOf(panels: readonly Panel[]): Panel {
  const ground = panels.reduce<Panel | undefined>(
    (best, panel) => (best && areaOf(best.outline).gt(areaOf(panel.outline)) ? best : panel),
    undefined,
  );
  if (ground === undefined) throw new RangeError('a piece without panels has no pose');
  return ground;
}

function orderOrGap(piece: Piece, ground: Panel, spread: Spread, turnOf: (crease: Crease) => Turn): PlyOrder {
  const gap = spread.gaps[0];
  if (gap) return { obstruction: { kind: 'gap', panel: gap.after, crease: gap.crease } };
  return orderOfPlies(piece, ground.name, turnOf);
}
