import { type Problem, type SourceNode, valueAt } from '../../engine/index.ts';
import { idOfPath } from '../ids.ts';
import { sortOf } from '../materials.ts';
import { measureProblems } from '../measures.ts';
import { readYaml } from '../reader.ts';
import { supplySchema } from '../schemas/supply.ts';
import type { SourceFile } from '../source-file.ts';
import { editionsWritten } from './editions-written.ts';
import { emptyFile } from './empty-file.ts';
import { finish, readMap } from './read-map.ts';
import { misplacedFigures } from './supply-slips.ts';
import type { ReadEntry, Supply } from './types.ts';
import { unitsOf } from './units-of.ts';

export function readSupply(file: SourceFile): ReadEntry<Supply> {
  const { tree, problems } = readYaml(file.text, file.path);
  const { map, value, problems: shape } = readMap(supplySchema, tree, file.path);
  const entry: Supply | undefined = value && {
    id: idOfPath(file.path),
    file: file.path,
    name: value.name,
    category: value.category,
    maker: value.maker,
    links: value.links,
    gifted: value.gifted,
    affiliate: value.affiliate,
    discontinued: value.discontinued,
    substitutes: value.substitutes,
    units: value.units,
    sheet: editionsWritten(value.sheet),
    weight: value.weight,
    caliper: value.caliper,
    height: value.height,
    bead: value.bead,
    density: value.density,
    mass: value.mass,
    gives: value.gives,
    grain: value.grain,
    notes: value.notes,
    caution: value.caution,
    invented: value.invented,
  };
  const misplaced =
    entry === undefined || map === undefined ? [] : misplacedFigures(map, sortOf(entry), entry.category);
  const all = [...problems, ...emptyFile(tree, problems, file), ...shape, ...measuresOf(tree), ...misplaced];
  return finish(entry, tree, all);
}

function measuresOf(tree: SourceNode | undefined): readonly Problem[] {
  if (tree?.kind !== 'map') return [];
  const units = unitsOf(tree);
  return [
    ...measureProblems(valueAt(tree, 'sheet'), 'sheet', 'sheet', units),
    ...measureProblems(valueAt(tree, 'weight'), 'weight', 'weight', units),
    ...measureProblems(valueAt(tree, 'caliper'), 'caliper', 'thickness', units),
    ...measureProblems(valueAt(tree, 'height'), 'height', 'length above zero', units),
    ...measureProblems(valueAt(tree, 'bead'), 'bead', 'length above zero', units),
    ...measureProblems(valueAt(tree, 'density'), 'density', 'density', units),
    ...measureProblems(valueAt(tree, 'mass'), 'mass', 'mass', units),
  ];
}
