import type { ClosedPose } from '../../motion/index.ts';
import { Length, systemOf, toMarks } from '../../units/index.ts';
import { closedSizeOf, closingPose } from '../closed-shape.ts';
import { finding } from '../finding.ts';
import { nextSize, roomIn, type Sides, sidesOf } from '../sizes.ts';
import type { Finding, FoldedCard } from '../types.ts';

/**
 * Whether the closed card goes into its envelope, either way round, with the room that the maker wants left in all
 * along each side. The figure is the lesser room. Where several bodies fold, the one with least room decides.
 *
 * The room wanted is a habit, not a rule: it is put on the edition's marks, 1/8 in as 3 mm, so that the same card does not
 * pass in one edition and look tight in the other for a twentieth of a millimetre.
 */
export function fitsEnvelope(folded: FoldedCard): Finding[] {
  const { card, envelope } = folded;
  const clearance = toMarks(folded.clearance, card.mark, 'nearest');
  const unclosed = folded.closed.find((body) => closingPose(body) === undefined)?.piece;
  if (unclosed) return [finding('fits-envelope', 'does-not-close', { facts: { piece: unclosed.name }, at: unclosed })];
  const closed = folded.closed.flatMap(({ piece, pose }) => (pose ? [{ piece, pose }] : []));
  const box = closed.find(({ pose }) => !pose.flat);
  if (box) {
    const facts = { piece: box.piece.name, deep: Length.fromMm(box.pose.deep) };
    return [finding('fits-envelope', 'box', { facts, at: box.piece })];
  }
  const whole = outermost(closed.map(({ pose }) => pose));
  if (envelope === undefined) {
    const next = nextSize('envelope', card.system, whole, clearance);
    return [
      finding('fits-envelope', 'no-envelope', { facts: { next }, at: folded.asked ?? { place: card.place, path: '' } }),
    ];
  }
  const outer = sidesOf(envelope.size);
  const room = roomIn(outer, whole);
  const tightest = closed.find(({ pose }) => roomIn(outer, sidesOf(closedSizeOf(pose))).least.equals(room.least));
  const piece = tightest?.piece.name ?? '';
  const facts = { piece, envelope: envelope.size.name, along: room.along, across: room.across };
  const shown = { at: envelope, figure: room.least, limit: clearance, witness: piece };
  if (!room.least.lessThan(clearance)) {
    return [finding('fits-envelope', 'fits', { facts: { ...facts, clearance }, ...shown })];
  }
  const next = nextSize('envelope', systemOf(envelope.size.unit), whole, clearance);
  return [
    room.least.isPositive
      ? finding('fits-envelope', 'tight', { facts: { ...facts, clearance, next }, ...shown })
      : finding('fits-envelope', 'too-big', { facts: { ...facts, next }, ...shown }),
  ];
}

/** The longest and the widest that any closed body reaches. */
function outermost(closed: readonly ClosedPose[]): Sides {
  return closed
    .map((pose) => sidesOf(closedSizeOf(pose)))
    .reduce((a, b) => ({ long: Length.larger(a.long, b.long), short: Length.larger(a.short, b.short) }), {
      long: Length.zero,
      short: Length.zero,
    });
}
