import { type MapNode, type SourceNode, valueAt } from '../diagnostics/index.ts';
import type { Unit } from '../units/index.ts';
import { readAssemblyParts } from './read-assembly-parts.ts';
import { readEqualities, readRequirements } from './read-conditions.ts';
import { mapOr } from './read-parts.ts';
import { readPieces } from './read-pieces.ts';
import { recipePieces } from './recipe-fold.ts';
import type { Report } from './report.ts';
import type { Fold, RecipeStepSpec } from './types.ts';

/** The parts of a fold that `each` may repeat: all but its sizes and its recipe. */
export type FoldBody = Pick<Fold, 'require' | 'same' | 'pieces' | 'parts'>;

/** Pieces, conditions and joins of a fold, from its tree with every `each` already expanded. */
export function readBody(
  tree: MapNode,
  units: Unit | undefined,
  recipe: readonly RecipeStepSpec[],
  report: Report,
): FoldBody {
  const at = (key: string): SourceNode | undefined => valueAt(tree, key);
  const pieces = readPieces(at('pieces'), 'pieces', units, report);
  return {
    require: readRequirements(at('require'), 'require', units, report),
    same: readEqualities(at('same'), 'same', units, report),
    pieces: hasPieces(tree, report) ? pieces : recipePieces(recipe),
    parts: readAssemblyParts(tree, units, report),
  };
}

/** Whether a file has pieces of its own; a recipe stands in for them. */
export function hasPieces(tree: MapNode, report: Report): boolean {
  const node = valueAt(tree, 'pieces');
  return node !== undefined && !(node.kind === 'map' && mapOr(node, 'pieces', '', report)?.entries.length === 0);
}
