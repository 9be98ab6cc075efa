import { type MapNode, type Problem, type SourceNode, valueAt } from '../diagnostics/index.ts';
import { DEFAULT_MARKS, SYSTEMS, type System, systemOf, type Unit } from '../units/index.ts';
import { NO_PARTS } from './assembly-specs.ts';
import { settleParameters } from './card-parameters.ts';
import { checkKinds, type Known, kindsOfNames } from './check-kinds.ts';
import { checkCircles, checkNames } from './check-names.ts';
import { expandEach, hasEach, namesInHeaders } from './expand-each.ts';
import { makeCard } from './make-card.ts';
import { PART_KEYS } from './read-assembly-parts.ts';
import { type FoldBody, hasPieces, readBody } from './read-body.ts';
import { readParameters, readValues } from './read-parameters.ts';
import { mapOr, textOr } from './read-parts.ts';
import { readRecipe } from './read-recipe.ts';
import { type Kinds, readReplaces, readUses, usesFaulty } from './read-uses.ts';
import { countingOf } from './repeated-body.ts';
import { checkKeys, Report, suggest } from './report.ts';
import type { CardRequest, Fold, Parameter } from './types.ts';
import { unitOfWord } from './words.ts';

const KNOWN = [
  ...['name', 'family', 'units', 'parameters', 'values', 'require', 'same', 'pieces', 'recipe', 'inch', 'metric'],
  ...['use', 'replace', ...PART_KEYS],
];

/**
 * A fold kind from its frontmatter.
 *
 * Every problem of the file is reported at once, those that show only at the default sizes included; with an error
 * among them there is no fold. `alsoAllowed` are keys of the file that belong to somebody else; `kinds` is where the kinds are
 * looked up that it uses.
 */
export function readFold(
  tree: MapNode,
  options: { readonly alsoAllowed?: readonly string[]; readonly kinds?: Kinds } = {},
): { fold: Fold | undefined; problems: Problem[] } {
  const report = new Report();
  checkKeys(tree, '', { known: KNOWN, others: options.alsoAllowed ?? [] }, report);
  const head = readHead(tree, options.kinds, report);
  const order = checkCircles(head, report);
  const draft = withAngles(head, kindsOfNames(head, order, faultyNames(tree, head), new Report()));
  const fold = { ...draft, ...bodyAtDefaults(tree, draft, report) };
  checkNames(fold, report);
  if (usesFaulty(valueAt(tree, 'use'), options.kinds)) return { fold: undefined, problems: report.problems };
  checkKinds(fold, order, faultyNames(tree, fold), report);
  if (!report.failed) report.add(problemsAtDefaults(fold));
  return { fold: report.failed ? undefined : fold, problems: report.problems };
}

/** Sizes and recipe of a fold, as long as nothing is known of its pieces. */
function readHead(tree: MapNode, kinds: Kinds | undefined, report: Report): Fold {
  const at = (key: string): SourceNode | undefined => valueAt(tree, key);
  const units = readUnits(at('units'), report);
  const name = textOr(at('name'), 'name', 'the name of the fold', report)?.text.trim();
  if (at('name') === undefined) missing(tree, 'name', 'Add `name:` with what makers call this fold.', report);
  const recipe = at('recipe');
  const { steps, problems } = recipe ? readRecipe(recipe, units) : { steps: [], problems: [] };
  report.add(problems);
  const uses = readUses(at('use'), 'use', kinds, report);
  if (recipe === undefined && at('use') === undefined && !hasPieces(tree, new Report())) {
    missing(tree, 'pieces', 'Add `pieces:` with the sheets of the card, or a `recipe:`.', report);
  }
  return {
    name: name ?? '',
    family: textOr(at('family'), 'family', 'a few words', report)?.text.trim(),
    units,
    parameters: readParameters(at('parameters'), 'parameters', units, report),
    values: readValues(at('values'), 'values', units, report),
    ...{ require: [], same: [], pieces: [], parts: NO_PARTS },
    repeats: hasEach(tree) ? { tree, counts: new Map() } : undefined,
    recipe: steps,
    uses,
    replaces: readReplaces(at('replace'), 'replace', at('use'), report),
    own: readOwn(tree, report),
    place: tree.place,
  };
}

/** A parameter that comes out as an angle is one: `alpha: 50 deg`, `beta: 2*alpha`. */
function withAngles(fold: Fold, kinds: ReadonlyMap<string, Known>): Fold {
  const isAngle = ({ name, type }: Parameter): boolean => type === 'length' && kinds.get(name) === 'angle';
  const parameters = fold.parameters.map((one) => (isAngle(one) ? { ...one, type: 'angle' as const } : one));
  return { ...fold, parameters };
}

/** The pieces and all that is made from them, as the default counts have it. */
function bodyAtDefaults(tree: MapNode, fold: Fold, report: Report): FoldBody & Pick<Fold, 'repeats'> {
  const read = (expanded: MapNode): FoldBody => readBody(expanded, fold.units, fold.recipe, report);
  if (fold.repeats === undefined) return { ...read(tree), repeats: undefined };
  const system = fold.units === undefined ? 'inch' : systemOf(fold.units);
  const amounts = settleParameters(fold, requestAtDefaults(system, fold), new Report()).written;
  const counting = countingOf(fold, amounts, faultyNames(tree, fold));
  const used = namesInHeaders(tree);
  const counts = new Map([...amounts].filter(([name]) => used.has(name)));
  return { ...read(expandEach(tree, counting, report)), repeats: { tree, counts } };
}

/** `inch` and `metric`: what the kind gives for one edition alone. The texts are read with those that a post gives. */
function readOwn(tree: MapNode, report: Report): NonNullable<Fold['own']> {
  const takes = 'a group of parameters, each with its size in this edition: `{ width: 105 mm }`';
  const [inch, metric] = SYSTEMS.map((system) => mapOr(valueAt(tree, system), system, takes, report));
  return { ...(inch && { inch }), ...(metric && { metric }) };
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

/** What goes wrong when a post takes the fold as it is: in the system it was written in, or else in the other one. */
function problemsAtDefaults(fold: Fold): Problem[] {
  const home = fold.units === undefined ? 'inch' : systemOf(fold.units);
  const problems = problemsIn(home, fold);
  return problems.length > 0 ? problems : problemsIn(home === 'inch' ? 'metric' : 'inch', fold);
}

function problemsIn(system: System, fold: Fold): Problem[] {
  return makeCard(fold, requestAtDefaults(system, fold)).problems;
}

function requestAtDefaults(system: System, fold: Fold): CardRequest {
  return {
    system,
    mark: DEFAULT_MARKS[system],
    units: fold.units,
    parameters: undefined,
    own: undefined,
    recipe: [],
  };
}
