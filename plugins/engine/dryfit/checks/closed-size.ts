import type { LaidJoint } from '../../assembly/index.ts';
import { type ClosedPose, type Overhang, overhangs } from '../../motion/index.ts';
import type { Piece } from '../../spec/index.ts';
import { Length } from '../../units/index.ts';
import { type Cover, closedSizeOf, closingPose, coverOf } from '../closed-shape.ts';
import { finding } from '../finding.ts';
import { measured } from '../lengths.ts';
import type { Side } from '../outcomes.ts';
import { gluedByOtherSide, poseOf } from '../remake.ts';
import type { Finding, FoldedBody, FoldedCard } from '../types.ts';

/**
 * The size of each closed body, what sticks out past its cover, and whether the first body closes to the size that was
 * promised. Sides are those of the closed card, seen from the face of its ground panel.
 */
export function closedSize(folded: FoldedCard): Finding[] {
  return folded.closed.flatMap((body, index) => {
    const { piece } = body;
    const pose = closingPose(body);
    if (pose === undefined)
      return [finding('closed-size', 'does-not-close', { facts: { piece: piece.name }, at: piece })];
    const promise = index === 0 ? againstPromise(piece, pose, folded) : [];
    return [...(pose.flat ? outline(body, pose, folded) : boxed(piece, pose)), ...promise];
  });
}

/** What stands up is seen from above: a lid is wider than its box, and that is no fault. */
function boxed(piece: Piece, pose: ClosedPose): Finding[] {
  const deep = Length.fromMm(pose.deep);
  const facts = { piece: piece.name, ...closedSizeOf(pose), deep };
  return [finding('closed-size', 'box', { facts, at: piece, figure: deep })];
}

function outline(body: FoldedBody, pose: ClosedPose, folded: FoldedCard): Finding[] {
  const { piece } = body;
  const cover = coverOf(pose, body, folded);
  const size = closedSizeOf(pose);
  const out = worstBySide(overhangs(pose, cover.panels));
  if (out.length === 0) {
    const facts = { piece: piece.name, ...size, cover: cover.name };
    const shown = { figure: Length.zero, limit: Length.zero, witness: cover.name };
    return [finding('closed-size', 'within', { facts, at: piece, ...shown })];
  }
  const turned = turnedOverIn(body, folded, cover);
  const sameAsCover = (name: string): boolean =>
    pose.panels.some(({ panel, piece: of }) => panel === name && of === cover.name);
  return out.map(({ panel, side, mm }) => {
    const by = measured(mm);
    const past = sameAsCover(panel) ? cover.panels.join(' and ') : cover.name;
    const facts = { piece: piece.name, ...size, cover: past, panel, side, by };
    const shown = { at: turned?.join ?? piece, figure: by, limit: Length.zero, witness: panel };
    if (turned === undefined) return finding('closed-size', 'sticks-out', { facts, ...shown });
    const like = 'partSide' in turned.join ? turned.join.partSide : 'back';
    const more = { part: turned.join.part.text, like };
    return finding('closed-size', 'turned-over', { facts: { ...facts, ...more }, ...shown });
  });
}

const SIDES: readonly Side[] = ['left', 'right', 'top', 'bottom'];

/** A micrometre is nothing to a ruler: of overhangs alike the first in the file is named. */
const ALIKE_MM = 1e-3;

function worstBySide(found: readonly Overhang[]): Overhang[] {
  return SIDES.flatMap((side) => {
    const here = found.filter((one) => one.side === side);
    const most = here.reduce((mm, one) => Math.max(mm, one.mm), 0);
    return here.filter(({ mm }) => mm > most - ALIKE_MM).slice(0, 1);
  });
}

/** A join of like sides that turns its part over, when nothing would stick out if it did not. */
function turnedOverIn({ body }: FoldedBody, { assembly, posted }: FoldedCard, cover: Cover): LaidJoint | undefined {
  if (body === undefined) return undefined;
  for (const joint of body.tree) {
    if (joint.is !== 'glue' || joint.join.is !== 'glue' || joint.join.partSide !== joint.join.ontoSide) continue;
    const other = gluedByOtherSide(assembly, body, joint);
    const pose = other && poseOf(other.assembly, other.body, posted);
    if (pose?.gaps.length === 0 && overhangs(pose, cover.panels).length === 0) return joint;
  }
  return undefined;
}

/** A difference of less than a mark cannot be seen on the edition's ruler: a promise in the other system is kept so. */
function againstPromise(piece: Piece, pose: ClosedPose, { card, promised }: FoldedCard): Finding[] {
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
