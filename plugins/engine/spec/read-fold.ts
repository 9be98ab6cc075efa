import { type MapNode, type Problem, type SourceNode, valueAt } from '../diagnostics/index.ts';
import { DEFAULT_MARKS, systemOf, type Unit } from '../units/index.ts';
import { checkPoses } from './card-poses.ts';
import { checkKinds } from './check-kinds.ts';
import { checkCircles, checkNames } from './check-names.ts';
import { makeCard } from './make-card.ts';
import { readEqualities, readRequirements } from './read-conditions.ts';
import { readParameters, readValues } from './read-parameters.ts';
import { mapOr, textOr } from './read-parts.ts';
import { readPieces } from './read-pieces.ts';
import { readPoses } from './read-poses.ts';
import { readRecipe } from './read-recipe.ts';
import { recipePieces } from './recipe-fold.ts';
import { checkKeys, Report, suggest } from './report.ts';
import type { Fold } from './types.ts';
import { unitOfWord } from './words.ts';

const KNOWN = ['name', 'family', 'units', 'parameters', 'values', 'require', 'same', 'pieces', 'poses', 'recipe'];
const LATER = ['stack', 'joins', 'fill', 'motion', 'use', 'replace', 'acts-as', 'posts', 'add'];

/**
 * A fold kind from its frontmatter.
 *
 * Every problem of the file is reported at once, those that show only at the default sizes included; with an error
 * among them there is no fold. `alsoAllowed` are keys of the file that belong to somebody else.
 */
export function readFold(
  tree: MapNode,
  options: { readonly alsoAllowed?: readonly string[] } = {},
): { fold: Fold | undefined; problems: Problem[] } {
  const report = new Report();
  checkKeys(tree, '', { known: KNOWN, later: LATER, others: options.alsoAllowed ?? [] }, report);
  const fold = readDraft(tree, report);
  checkNames(fold, report);
  const order = checkCircles(fold, report);
  checkKinds(fold, order, faultyNames(tree, fold), report);
  checkPoses(fold, report);
  if (!report.failed) report.add(problemsAtDefaults(fold));
  return { fold: report.failed ? undefined : fold, problems: report.problems };
}

function readDraft(tree: MapNode, report: Report): Fold {
  const at = (key: string): SourceNode | undefined => valueAt(tree, key);
  const units = readUnits(at('units'), report);
  const name = textOr(at('name'), 'name', 'the name of the fold', report)?.text.trim();
  if (at('name') === undefined) missing(tree, 'name', 'Add `name:` with what makers call this fold.', report);
  const recipe = at('recipe');
  const { steps, problems } = recipe ? readRecipe(recipe, units) : { steps: [], problems: [] };
  report.add(problems);
  const pieces = readPieces(at('pieces'), 'pieces', units, report);
  const none =
    at('pieces') === undefined ||
    (at('pieces')?.kind === 'map' && mapOr(at('pieces'), 'pieces', '', report)?.entries.length === 0);
  if (none && recipe === undefined) {
    missing(tree, 'pieces', 'Add `pieces:` with the sheets of the card, or a `recipe:`.', report);
  }
  return {
    name: name ?? '',
    family: textOr(at('family'), 'family', 'a few words', report)?.text.trim(),
    units,
    parameters: readParameters(at('parameters'), 'parameters', units, report),
    values: readValues(at('values'), 'values', units, report),
    require: readRequirements(at('require'), 'require', units, report),
    same: readEqualities(at('same'), 'same', units, report),
    pieces: none ? recipePieces(steps) : pieces,
    poses: readPoses(at('poses'), 'poses', report),
    recipe: steps,
    place: tree.place,
  };
}

function missing(tree: MapNode, key: string, remedy: string, report: Report): void {
  const takes = 'a fold with `name` and `pieces`';
  report.at(tree.place, '', { code: 'key-missing', wrote: `no \`${key}\``, takes, remedy });
}

export function readUnits(node: SourceNode | undefined, report: Report): Unit | undefined {
  const text = textOr(node, 'units', 'in, mm or cm', report);
  const unit = text && unitOfWord(text.text.trim().toLowerCase());
  if (text && unit === undefined) {
    const remedy = suggest(text.text, ['in', 'mm', 'cm', 'inches', 'millimetres'], 'Write `units: in` or `units: mm`.');
    report.at(text.place, 'units', { code: 'unknown-unit', wrote: text.text, takes: 'in, mm or cm', remedy });
  }
  return unit;
}

/** Names that were given but whose text could not be read: what uses them is not to blame. */
function faultyNames(tree: MapNode, fold: Fold): Set<string> {
  const read = new Set([...fold.parameters, ...fold.values, ...fold.pieces].map(({ name }) => name));
  const given = ['parameters', 'values', 'pieces'].flatMap((key) => {
    const node = valueAt(tree, key);
    return node?.kind === 'map' ? node.entries.map((entry) => entry.key.text) : [];
  });
  return new Set(given.filter((name) => !read.has(name)));
}

/** What goes wrong when a post takes the fold as it is, in the system it was written in. */
function problemsAtDefaults(fold: Fold): Problem[] {
  const system = fold.units === undefined ? 'inch' : systemOf(fold.units);
  const request = {
    system,
    mark: DEFAULT_MARKS[system],
    units: fold.units,
    parameters: undefined,
    own: undefined,
    recipe: [],
  };
  return makeCard(fold, request).problems;
}
