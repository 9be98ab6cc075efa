import { finding } from '../finding.ts';
import type { Finding, FoldedCard } from '../types.ts';

/** The conditions that the fold states for its own sizes. */
export function requirements({ card }: FoldedCard): Finding[] {
  return card.requirements.map(({ that, otherwise, holds, left, right, place }) => {
    const at = { place, path: 'require' };
    const shown = { at, figure: left, limit: right, witness: that };
    return holds
      ? finding('requirements', 'holds', { facts: { that, left, right }, ...shown })
      : finding('requirements', 'broken', { facts: { that, otherwise, left, right }, ...shown });
  });
}
