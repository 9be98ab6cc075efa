import type { JoinSlip } from '../../assembly/index.ts';
import type { PanelRef } from '../../spec/index.ts';
import { finding } from '../finding.ts';
import type { Finding, FoldedCard } from '../types.ts';

/** Whether every join, every pose and the cover name panels that are there, and one where one is meant. */
export function joinsFound({ card, assembly }: FoldedCard): Finding[] {
  const slips = [
    ...assembly.slips.joins.map(slipped),
    ...card.poses.flatMap(({ name, ground }) => (ground ? named(ground, name, assembly.find, 'one') : [])),
    ...card.closesWithin.flatMap((ref) => named(ref, 'closes-within', assembly.find, 'some')),
  ];
  if (slips.length > 0 || card.joins.length === 0) return slips;
  const joins = card.joins.length;
  return [
    finding('joins-found', 'found', {
      facts: { joins },
      at: card.joins[0] ?? { place: card.place, path: '' },
      figure: joins,
    }),
  ];
}

function slipped(slip: JoinSlip): Finding {
  const where = slip.join.text;
  if (slip.is === 'to-itself') {
    const facts = { where, panel: slip.join.part.text };
    return finding('joins-found', 'to-itself', { facts, at: slip.join, witness: slip.join.part.text });
  }
  const { ref } = slip;
  if (slip.is === 'no-panel')
    return finding('joins-found', 'no-panel', { facts: { where, panel: ref.text }, at: ref, witness: ref.text });
  const facts = { where, panel: ref.text, choices: slip.choices.join(', ') };
  return finding('joins-found', 'which-panel', { facts, at: ref, witness: ref.text });
}

function named(ref: PanelRef, where: string, find: FoldedCard['assembly']['find'], takes: 'one' | 'some'): Finding[] {
  const found = find(ref.piece, ref.part).map(({ name }) => name);
  const shown = { at: ref, witness: ref.text };
  if (found.length === 0) return [finding('joins-found', 'no-panel', { facts: { where, panel: ref.text }, ...shown })];
  if (found.length === 1 || takes === 'some') return [];
  const facts = { where, panel: ref.text, choices: found.join(', ') };
  return [finding('joins-found', 'which-panel', { facts, ...shown })];
}
