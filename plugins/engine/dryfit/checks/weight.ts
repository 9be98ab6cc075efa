import { finding } from '../finding.ts';
import type { Finding, FoldedCard } from '../types.ts';

/** Grams are told in hundredths. */
const STEPS = 100;

/** What the whole card weighs, and which part most of it. */
export function weight(folded: FoldedCard): Finding[] {
  const { card, asked, mass } = folded;
  const at = asked ?? card.pieces[0] ?? { place: card.place, path: '' };
  const grams = rounded(mass.grams.valueOf());
  if (mass.unknown.length > 0) {
    const facts = { grams, stocks: mass.unknown.join(', ') };
    return [finding('weight', 'unknown', { facts, at, witness: mass.unknown[0] ?? '' })];
  }
  const [heaviest] = weighed(folded).toSorted((a, b) => b.grams - a.grams);
  const facts = {
    grams,
    heaviest: heaviest?.name ?? '',
    most: rounded(heaviest?.grams ?? 0),
    assumed: mass.assumed.map(({ role }) => role).join(', '),
  };
  return [finding('weight', 'weighs', { facts, at, figure: grams, witness: facts.heaviest })];
}

/** Pieces and fillings with what each weighs. */
function weighed({ card, mass, assembly }: FoldedCard): { name: string; grams: number }[] {
  const sum = (parts: FoldedCard['mass']['parts']): number =>
    parts.reduce((grams, part) => grams + (part.grams?.valueOf() ?? 0), 0);
  const isOf = (panel: string, piece: string): boolean => assembly.panels.get(panel)?.piece === piece;
  return [
    ...card.pieces.map(({ name }) => ({
      name,
      grams: sum(mass.parts.filter((part) => part.is === 'panel' && isOf(part.panel, name))),
    })),
    ...card.fillings.map(({ name }) => ({
      name,
      grams: sum(mass.parts.filter((part) => part.is === 'filling' && part.name === name)),
    })),
  ];
}

function rounded(grams: number): number {
  return Math.round(grams * STEPS) / STEPS;
}
