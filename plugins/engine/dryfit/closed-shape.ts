import { boundsOf, samePlacement } from '../geometry/index.ts';
import type { ClosedPose, PlacedPanel } from '../motion/index.ts';
import type { PanelRef } from '../spec/index.ts';
import { Length } from '../units/index.ts';
import type { FoldedBody, FoldedCard } from './types.ts';

/** Overall size of a closed body, square to its ground panel. */
export function closedSizeOf(pose: ClosedPose): { width: Length; height: Length } {
  return {
    width: Length.fromMm(pose.box.right.sub(pose.box.left)),
    height: Length.fromMm(pose.box.bottom.sub(pose.box.top)),
  };
}

/** The pose of a body that closes: all angles known, joins meeting, plies in order. */
export function closingPose({ pose, plies }: FoldedBody): ClosedPose | undefined {
  return pose === undefined || pose.gaps.length > 0 || plies?.obstruction ? undefined : pose;
}

/** What everything should lie within when a body is closed. */
export interface Cover {
  /** As the maker knows it: of several pieces, that which covers the others. */
  readonly name: string;
  /** Panel names. */
  readonly panels: readonly string[];
}

/**
 * The panels that the card says it closes within. When it says nothing, the largest leaf of the first piece: a piece cannot
 * stick out past itself.
 */
export function coverOf(pose: ClosedPose, { piece, body }: FoldedBody, { card, assembly }: FoldedCard): Cover {
  const here = new Set(pose.panels.map(({ panel }) => panel));
  const panelsOfRef = (ref: PanelRef) => assembly.find(ref.piece, ref.part).filter(({ name }) => here.has(name));
  const stated = card.closesWithin.filter((ref) => panelsOfRef(ref).length > 0);
  if (stated.length > 0) {
    const panels = stated.flatMap(panelsOfRef).map(({ name }) => name);
    return { name: stated.map(({ text }) => text).join(' and '), panels };
  }
  const panels = largestLeaf(pose, piece.name).map(({ panel }) => panel);
  return { name: (body?.pieces.length ?? 0) > 1 ? piece.name : panels.join(' and '), panels };
}

/**
 * The panels that lie flat in one with each other: a flat crease between two panels parts nothing.
 * Panels that move alike without touching count as one too; in one piece of paper there are none such.
 */
function leavesOf({ panels }: Pick<ClosedPose, 'panels'>): readonly (readonly PlacedPanel[])[] {
  const leaves: PlacedPanel[][] = [];
  for (const panel of panels) {
    const leaf = leaves.find(([first]) => first && samePlacement(first.placement, panel.placement));
    if (leaf) leaf.push(panel);
    else leaves.push([panel]);
  }
  return leaves;
}

/** The leaf against which the others are held: the one with the largest outline, the ground panel's among equals. */
function largestLeaf(pose: ClosedPose, piece: string): readonly PlacedPanel[] {
  const size = (leaf: readonly PlacedPanel[]): number => {
    const box = boundsOf(leaf.flatMap((panel) => panel.outline));
    return box.right.sub(box.left).mul(box.bottom.sub(box.top)).valueOf();
  };
  const hasGround = (leaf: readonly PlacedPanel[]): number =>
    leaf.some((panel) => panel.panel === pose.ground) ? 1 : 0;
  const panels = pose.panels.filter((panel) => panel.piece === piece);
  return leavesOf({ panels }).toSorted((a, b) => size(b) - size(a) || hasGround(b) - hasGround(a))[0] ?? [];
}
