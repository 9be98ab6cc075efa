import {
  type Card,
  type Fold,
  hasErrors,
  makeCard,
  type Problem,
  type RecipeStepSpec,
  readRecipe,
  recipeFold,
  type System,
  systemOf,
  type Unit,
  withAdditions,
} from '../engine/index.ts';
import { foldOf } from './entries/fold.ts';
import type { Blog, CardSpec, FoldKind } from './entries/types.ts';
import { checkedLength } from './measures.ts';
import { joinPath } from './paths.ts';

export interface MadeEdition {
  readonly card: Card | undefined;
  readonly problems: readonly Problem[];
}

/** A card as asked for, with the rule of its fold and the lesson's steps read: the same for both editions. */
export interface CardRule {
  readonly spec: CardSpec;
  /** The kind's fold, or the one that the recipe makes; undefined when the recipe cannot be read. */
  readonly fold: Fold | undefined;
  /** The lesson's recipe beside a kind. */
  readonly lesson: readonly RecipeStepSpec[];
  readonly units: Unit | undefined;
  readonly problems: readonly Problem[];
}

/** Reads the rule of a post's card: that of its kind, or its recipe alone. */
export function ruleOf(spec: CardSpec, kind: FoldKind | undefined, units: Unit | undefined): CardRule {
  const { steps, problems } = readLesson(spec, units);
  if (kind !== undefined) return { spec, fold: withAdded(foldOf(kind), spec, units), lesson: steps, units, problems };
  const fold =
    steps.length === 0 || hasErrors(problems) ? undefined : recipeFold(spec.name ?? 'Card', steps, spec.place);
  return { spec, fold: fold && withAdded(fold, spec, units), lesson: [], units, problems };
}

/** What a post adds is part of its card's rule; its problems come with the card. */
function withAdded(fold: Fold, { add, path }: CardSpec, units: Unit | undefined): Fold {
  return add === undefined ? fold : withAdditions(fold, { node: add, units, path: joinPath(path, 'add') });
}

/** The recipe of a card, when it has one. */
export function readLesson(spec: CardSpec, units: Unit | undefined): ReturnType<typeof readRecipe> {
  return spec.recipe === undefined
    ? { steps: [], problems: [] }
    : readRecipe(spec.recipe, units, joinPath(spec.path, 'recipe'));
}

/** The card of a rule in one edition. */
export function makeEdition(rule: CardRule, system: System, blog: Blog): MadeEdition {
  if (rule.fold === undefined) return { card: undefined, problems: [] };
  const { layers } = rule.spec;
  return makeCard(rule.fold, {
    system,
    mark: markOf(blog, system),
    units: rule.units,
    parameters: rule.spec.parameters,
    own: rule.spec.own[system],
    recipe: rule.lesson,
    layers: layers && { node: layers, path: joinPath(rule.spec.path, 'layers') },
  });
}

/** Both editions, that of the given unit first: its problems are told in the maker's own units. */
export function editionsFrom(units: Unit | undefined): readonly System[] {
  return units !== undefined && systemOf(units) === 'metric' ? ['metric', 'inch'] : ['inch', 'metric'];
}

/** The kind at its defaults, compared in its home edition with the recipe that stands beside it. */
export function makeKind(fold: Fold, system: System, blog: Blog): MadeEdition {
  return makeCard(fold, {
    system,
    mark: markOf(blog, system),
    units: fold.units,
    parameters: undefined,
    own: undefined,
    recipe: fold.recipe,
  });
}

function markOf(blog: Blog, system: System) {
  return checkedLength(blog.marks[system], blog.units);
}
