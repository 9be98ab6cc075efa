import { type Bounds, boundsOf, type FlatPose } from '../../assembly/index.ts';
import type { Piece } from '../../spec/index.ts';
import { Length } from '../../units/index.ts';
import { closedSizeOf, coverOf, pieceOf } from '../closed-shape.ts';
import { finding } from '../finding.ts';
import { closingPieces } from '../fold-card.ts';
import type { Side } from '../outcomes.ts';
import type { Finding, FoldedCard } from '../types.ts';

/**
 * The size of each closed piece, what sticks out past its cover, and whether the first piece closes to the size that
 * was promised. Sides are those of the closed card, seen from the face of its ground panel.
 */
export function closedSize(folded: FoldedCard): Finding[] {
  return closingPieces(folded.card).flatMap((piece, index) => {
    const pose = folded.closed.find((one) => pieceOf(one) === piece.name);
    if (pose === undefined || pose.obstruction) {
      return [finding('closed-size', 'does-not-close', { facts: { piece: piece.name }, at: piece })];
    }
    const promise = index === 0 ? againstPromise(piece, pose, folded) : [];
    return [...outline(piece, pose), ...promise];
  });
}

function outline(piece: Piece, pose: FlatPose): Finding[] {
  const cover = coverOf(pose);
  const coverBox = boundsOf(cover.flatMap((panel) => panel.outline));
  const name = cover.map((panel) => panel.panel).join(' and ');
  const size = closedSizeOf(pose);
  const out = sidesPast(pose.box, coverBox);
  if (out.length === 0) {
    const facts = { piece: piece.name, ...size, cover: name };
    return [
      finding('closed-size', 'within', { facts, at: piece, figure: Length.zero, limit: Length.zero, witness: name }),
    ];
  }
  return out.map(({ side, by }) => {
    const panel = pose.panels.find((one) => reaches(boundsOf(one.outline), pose.box, side))?.panel ?? '';
    const facts = { piece: piece.name, ...size, cover: name, panel, side, by };
    return finding('closed-size', 'sticks-out', { facts, at: piece, figure: by, limit: Length.zero, witness: panel });
  });
}

function sidesPast(box: Bounds, cover: Bounds): { side: Side; by: Length }[] {
  const past: { side: Side; by: Length }[] = [
    { side: 'left', by: Length.fromMm(cover.left.sub(box.left)) },
    { side: 'right', by: Length.fromMm(box.right.sub(cover.right)) },
    { side: 'top', by: Length.fromMm(cover.top.sub(box.top)) },
    { side: 'bottom', by: Length.fromMm(box.bottom.sub(cover.bottom)) },
  ];
  return past.filter(({ by }) => by.isPositive);
}

function reaches(panel: Bounds, whole: Bounds, side: Side): boolean {
  return panel[side].equals(whole[side]);
}

/** A difference of less than a mark cannot be seen on the edition's ruler: a promise in the other system is kept so. */
function againstPromise(piece: Piece, pose: FlatPose, { card, promised }: FoldedCard): Finding[] {
  if (promised === undefined) return [];
  const { width, height } = closedSizeOf(pose);
  const same = (a: Length, b: Length): boolean => a.minus(b).abs().lessThan(card.mark);
  const facts = { piece: piece.name, width, height };
  const both = { ...facts, promisedWidth: promised.width, promisedHeight: promised.height };
  if (same(width, promised.width) && same(height, promised.height)) {
    return [finding('closed-size', 'as-promised', { facts, at: promised, figure: width, limit: promised.width })];
  }
  if (same(width, promised.height) && same(height, promised.width)) {
    return [finding('closed-size', 'turned', { facts: both, at: promised, figure: width, limit: promised.width })];
  }
  const byWidth = !same(width, promised.width);
  return [
    finding('closed-size', 'not-as-promised', {
      facts: both,
      at: promised,
      figure: byWidth ? width : height,
      limit: byWidth ? promised.width : promised.height,
      witness: byWidth ? 'width' : 'height',
    }),
  ];
}
