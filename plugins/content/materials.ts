import {
  type Card,
  caliperFor,
  type Material,
  type MaterialSort,
  type Materials,
  readCaliper,
  readDensity,
  readLength,
  readMass,
  readWeight,
  type SheetInUse,
} from '../engine/index.ts';
import type { Supply } from './entries/types.ts';

/** Categories whose word says what becomes of the thing in a card. All others neither add height nor weight. */
const SORT_OF_CATEGORY: Readonly<Record<string, MaterialSort>> = {
  adhesive: 'adhesive',
  board: 'board',
  cardstock: 'paper',
  embellishment: 'ornament',
  filler: 'filler',
  film: 'film',
  foam: 'foam',
  ink: 'ink',
  ornament: 'ornament',
  'pattern paper': 'paper',
  vellum: 'paper',
};

/**
 * What a supply is to thickness and weight. A category of the maker's own goes by the figures that stand with it: what has
 * a bead size is loose, what is weighed one by one is an ornament, what has a weight by its area is paper.
 */
export function sortOf(supply: Pick<Supply, 'category' | 'bead' | 'mass' | 'weight'>): MaterialSort {
  const known = Object.hasOwn(SORT_OF_CATEGORY, supply.category) ? SORT_OF_CATEGORY[supply.category] : undefined;
  if (known !== undefined) return known;
  if (supply.bead !== undefined) return 'filler';
  if (supply.mass !== undefined) return 'ornament';
  return supply.weight === undefined ? 'other' : 'paper';
}

/**
 * A supply as the engine takes it: figures alone. Its texts were checked when its file was read.
 *
 * @param sheet the sheet it is cut from in this edition: it says which way the grain runs on a piece
 */
export function materialOfSupply(supply: Supply, sheet: SheetInUse | undefined): Material {
  const { units, grain } = supply;
  const sort = sortOf(supply);
  const weight = supply.weight === undefined ? undefined : readWeight(supply.weight).value;
  const measured = supply.caliper === undefined ? undefined : readCaliper(supply.caliper, { units }).value;
  const length = (text: string | undefined) =>
    text === undefined ? undefined : readLength(text, { units }).value?.length;
  return {
    name: supply.name,
    sort,
    caliper: caliperFor({ measured, weight: sort === 'paper' ? weight : undefined }),
    grammage: weight?.gsm,
    density: supply.density === undefined ? undefined : readDensity(supply.density).value,
    bead: length(supply.bead),
    height: length(supply.height),
    mass: supply.mass === undefined ? undefined : readMass(supply.mass).value,
    compressible: supply.gives,
    grain,
    sheet: sheet && { width: sheet.width, height: sheet.height },
  };
}

/**
 * The materials of a card by the roles of its stock, and by the names that its layers give: a role, or a supply by its id.
 * Foam that says nothing of a sheet is tape.
 *
 * @param sheets by role, the usual one under the empty role
 */
export function materialsOf(
  card: Card,
  stock: Readonly<Record<string, Supply>>,
  sheets: Readonly<Record<string, SheetInUse>>,
  supplies: ReadonlyMap<string, Supply>,
): Materials {
  const laid = card.coats.flatMap(({ items }) => items.flatMap((item) => [item.with, item.through ?? item.with]));
  const materials: Record<string, Material> = {};
  for (const role of [...new Set([...Object.keys(stock), ...laid])].sort()) {
    const supply = Object.hasOwn(stock, role) ? stock[role] : supplies.get(role);
    if (supply === undefined) continue;
    const isTape = sortOf(supply) === 'foam' && Object.keys(supply.sheet).length === 0;
    materials[role] = materialOfSupply(supply, isTape ? undefined : sheets[role]);
  }
  return materials;
}
