import { finding } from '../finding.ts';
import type { Finding, FoldedCard } from '../types.ts';

/** Whether measures declared the same are so, exactly and as the edition prints them. One finding a declaration. */
export function declaredEqualities({ card }: FoldedCard): Finding[] {
  return card.equalities.flatMap(({ measures, place }) => {
    const [first, ...others] = measures;
    if (first === undefined) return [];
    const at = { place, path: 'same' };
    const apart =
      others.map((other) => ({ other, outcome: 'differ' as const, a: first.exact, b: other.exact })).find(unequal) ??
      others
        .map((other) => ({ other, outcome: 'differ-in-print' as const, a: first.printed, b: other.printed }))
        .find(unequal);
    if (apart === undefined) {
      const facts = { measures: measures.map(({ text }) => text).join(', '), value: first.printed };
      return [finding('declared-equalities', 'equal', { facts, at, figure: first.printed, witness: first.text })];
    }
    const { other, outcome, a, b } = apart;
    const by = a.minus(b).abs();
    const facts = { first: first.text, second: other.text, firstValue: a, secondValue: b, by };
    const where = { place: other.place, path: 'same' };
    return [finding('declared-equalities', outcome, { facts, at: where, figure: b, limit: a, witness: other.text })];
  });
}

function unequal({ a, b }: { a: { equals(other: unknown): boolean }; b: unknown }): boolean {
  return !a.equals(b);
}
