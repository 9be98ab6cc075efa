import type { Card } from '../../spec/index.ts';
import { finding } from '../finding.ts';
import type { Finding, FoldedCard } from '../types.ts';

/** The conditions that the fold states for its own sizes. */
export function requirements({ card, asked }: FoldedCard): Finding[] {
  const local = localOf(card);
  return card.requirements.map(({ that, otherwise, holds, left, right, place }) => {
    const shown = { at: { place, path: 'require' }, figure: left, limit: right, witness: that };
    if (holds) return finding('requirements', 'holds', { facts: { that, left, right }, ...shown });
    const facts = { that, otherwise, left, right };
    if (local === undefined) return finding('requirements', 'broken', { facts, ...shown });
    // The cure is a size for this edition: it belongs where the card is asked for.
    const at = asked ?? { place: local.place, path: card.system };
    return finding('requirements', 'broken-locally', { ...shown, facts: { ...facts, ...local.facts }, at });
  });
}

/** The size that this edition has from the table of local sizes, when it has one. */
function localOf({ parameters }: Card) {
  const taken = parameters.filter(({ local }) => local !== undefined);
  const [first] = taken;
  if (first?.local === undefined) return undefined;
  const names = taken.map(({ name }) => `\`${name}\``).join(' and ');
  return { place: first.place, facts: { local: first.local.name, home: first.local.for, parameters: names } };
}
