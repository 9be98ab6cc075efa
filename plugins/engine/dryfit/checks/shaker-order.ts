import { type Chamber, closingJoin } from '../../layers/index.ts';
import type { CoatItem } from '../../spec/index.ts';
import { finding } from '../finding.ts';
import type { Finding, FoldedCard } from '../types.ts';

/**
 * Whether a chamber is powdered, filled and closed in this order. Anti-static powder keeps the filling off film and foam, and does
 * so only when it is there first; what is filled in after the film is on is not in.
 */
export function shakerOrder(chamber: Chamber, { card, work }: FoldedCard): Finding[] {
  const { filling } = chamber;
  const last = card.joins[closingJoin(chamber, card.joins)];
  const closing = last?.part.text ?? '';
  const filled = work.steps.findIndex((step) => step.is === 'fill' && step.filling === filling);
  const closed = work.steps.findIndex((step) => step.is === 'join' && step.join === last);
  const written = card.work.find((step) => step.is === 'fill' && step.filling === filling.name);
  const facts = { filling: filling.name, closing };
  if (last !== undefined && filled > closed) {
    const at = written?.is === 'fill' ? written : filling;
    return [finding('shaker', 'filled-late', { facts, at, witness: closing })];
  }
  const inside = chamberPieces(chamber);
  const powders = work.steps.flatMap((step, at) =>
    step.is === 'coat' && inside.includes(step.coat.on.piece)
      ? step.coat.items.filter(isPowder).map((item) => ({ item, at }))
      : [],
  );
  const [first] = powders;
  if (first === undefined) return [finding('shaker', 'no-powder', { facts, at: filling, witness: filling.name })];
  const powder = first.item.with;
  if (first.at > filled) {
    const shown = { at: first.item, witness: powder };
    return [finding('shaker', 'powder-late', { facts: { filling: filling.name, powder }, ...shown })];
  }
  return [finding('shaker', 'in-order', { facts: { ...facts, powder }, at: filling, witness: powder })];
}

function isPowder({ as }: CoatItem): boolean {
  return as === 'anti-static';
}

function chamberPieces({ joints, filling }: Chamber): string[] {
  return [filling.piece, ...joints.flatMap(({ join }) => [join.part.piece, join.onto.piece])];
}
