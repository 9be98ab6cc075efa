import { type Problem, type SourceNode, valueAt } from '../../engine/index.ts';
import { idOfPath } from '../ids.ts';
import { measureProblems } from '../measures.ts';
import { readYaml } from '../reader.ts';
import { supplySchema } from '../schemas/supply.ts';
import type { SourceFile } from '../source-file.ts';
import { editionsWritten } from './editions-written.ts';
import { emptyFile } from './empty-file.ts';
import { finish, readMap } from './read-map.ts';
import type { ReadEntry, Supply } from './types.ts';
import { unitsOf } from './units-of.ts';

export function readSupply(file: SourceFile): ReadEntry<Supply> {
  const { tree, problems } = readYaml(file.text, file.path);
  const { value, problems: shape } = readMap(supplySchema, tree, file.path);
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
    grain: value.grain,
    notes: value.notes,
    invented: value.invented,
  };
  const all = [...problems, ...emptyFile(tree, problems, file), ...shape, ...measuresOf(tree)];
  return finish(entry, tree, all);
}

function measuresOf(tree: SourceNode | undefined): readonly Problem[] {
  if (tree?.kind !== 'map') return [];
  const units = unitsOf(tree);
  return [
    ...measureProblems(valueAt(tree, 'sheet'), 'sheet', 'sheet', units),
    ...measureProblems(valueAt(tree, 'weight'), 'weight', 'weight', units),
    ...measureProblems(valueAt(tree, 'caliper'), 'caliper', 'length above zero', units),
  ];
}
