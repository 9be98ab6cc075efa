import { boundsOf, type FlatPose, type PlacedPanel, samePlacement } from '../assembly/index.ts';
import { Length } from '../units/index.ts';

/** Overall size of a closed piece, square to its ground panel. */
export function closedSizeOf(pose: FlatPose): { width: Length; height: Length } {
  return {
    width: Length.fromMm(pose.box.right.sub(pose.box.left)),
    height: Length.fromMm(pose.box.bottom.sub(pose.box.top)),
  };
}

/** The piece that a pose folds. */
export function pieceOf(pose: FlatPose): string {
  return pose.panels[0]?.piece ?? '';
}

/**
 * The panels that lie flat in one with each other: a flat crease between two panels parts nothing.
 * Panels that move alike without touching count as one too; in one piece of paper there are none such.
 */
export function leavesOf(pose: FlatPose): readonly (readonly PlacedPanel[])[] {
  const leaves: PlacedPanel[][] = [];
  for (const panel of pose.panels) {
    const leaf = leaves.find(([first]) => first && samePlacement(first.placement, panel.placement));
    if (leaf) leaf.push(panel);
    else leaves.push([panel]);
  }
  return leaves;
}

/** The leaf against which the others are held: the one with the largest outline, the ground panel's among equals. */
export function coverOf(pose: FlatPose): readonly PlacedPanel[] {
  const size = (leaf: readonly PlacedPanel[]): number => {
    const box = boundsOf(leaf.flatMap((panel) => panel.outline));
    return box.right.sub(box.left).mul(box.bottom.sub(box.top)).valueOf();
  };
  const hasGround = (leaf: readonly PlacedPanel[]): number =>
    leaf.some((panel) => panel.panel === pose.ground) ? 1 : 0;
  return [...leavesOf(pose)].sort((a, b) => size(b) - size(a) || hasGround(b) - hasGround(a))[0] ?? [];
}

/**
 * The most panels that lie over one spot of the closed piece. Panels are taken as rectangles square to the ground
 * panel, which they are while every crease is square to the paper's edges.
 */
export function thickestPile(pose: FlatPose): number {
  const boxes = pose.panels.map((panel) => boundsOf(panel.outline));
  const counts = boxes.flatMap((one) =>
    boxes.map(
      (other) =>
        boxes.filter(
          (box) =>
            box.left.lte(one.left) && box.right.gt(one.left) && box.top.lte(other.top) && box.bottom.gt(other.top),
        ).length,
    ),
  );
  return Math.max(0, ...counts);
}
