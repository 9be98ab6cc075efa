import { type Card, type Fold, nearestName, type Problem } from '../engine/index.ts';
import type { CardSpec } from './entries/types.ts';

/** Papers and fillings of a card or of the fold it is made from, foams and glue of its joins, and what its layers name. */
function rolesOf(made: Card | Fold): { readonly shown: readonly string[]; readonly taken: readonly string[] } {
  const fillings = 'parts' in made ? made.parts.fillings : made.fillings;
  const joins = 'parts' in made ? [] : made.joins;
  const coats = 'parts' in made ? [] : made.coats;
  const shown = [
    ...[...made.pieces, ...fillings].map(({ stock }) => stock),
    ...joins.flatMap((join) => (join.is === 'glue' && join.tape !== undefined ? [join.tape.stock] : [])),
  ];
  const laid = coats.flatMap(({ items }) => items.flatMap((item) => [item.with, item.through ?? item.with]));
  return { shown: [...new Set(shown)].sort(), taken: [...shown, ...laid, GLUE_ROLE] };
}

/** Role of whatever sticks a card together. */
const GLUE_ROLE = 'glue';

/** Supplies that a card's `stock` binds to roles which it does not have. */
export function roleProblems(spec: CardSpec, made: Card | Fold): readonly Problem[] {
  const { shown, taken } = rolesOf(made);
  return Object.entries(spec.stock).flatMap(([role, supply]): Problem[] => {
    if (taken.includes(role)) return [];
    const near = nearestName(role, shown) ?? (shown.length === 1 ? shown[0] : undefined);
    return [
      {
        code: 'stock-role-unknown',
        severity: 'error',
        place: supply.place,
        path: supply.path,
        wrote: `${role}: ${supply.text}`,
        takes: `a supply for each paper, foam and filling of the fold: ${shown.join(', ')}`,
        remedy: near === undefined ? 'Use one of these names.' : `Did you mean \`${near}: ${supply.text}\`?`,
      },
    ];
  });
}
