import type { Problem, SourceNode } from '../engine/index.ts';
import { distinctSlips } from './distinct.ts';
import { blogOfDefaults } from './entries/blog.ts';
import { cardsOf } from './entries/cards.ts';
import type { Blog, FoldKind } from './entries/types.ts';
import { unitsOf } from './entries/units-of.ts';
import { editionsFrom, makeEdition, readLesson, ruleOf } from './make-edition.ts';
import { pathOfPlace } from './paths.ts';
import { roleProblems } from './stock-roles.ts';

/**
 * What the engine has against the cards of a post: unknown parameters, values out of range, notation, recipes; and roles
 * of paper that the fold does not have. Of cards whose kind could not be read only
 * the recipe is looked at.
 */
export function cardProblems(
  tree: SourceNode,
  blog: Blog | undefined,
  folds: ReadonlyMap<string, FoldKind>,
): readonly Problem[] {
  if (tree.kind !== 'map') return [];
  const units = unitsOf(tree);
  return cardsOf(tree, units).cards.flatMap((spec) => {
    const kind = spec.kind === undefined ? undefined : folds.get(spec.kind.text);
    if (spec.kind !== undefined && kind === undefined) return readLesson(spec, units).problems;
    const rule = ruleOf(spec, kind, units);
    const editions = editionsFrom(units).map((system) => makeEdition(rule, system, blog ?? blogOfDefaults()));
    // What a post adds is known only once the card is made; until then its roles are not to be called unknown.
    const made = editions[0]?.card ?? (spec.add === undefined && spec.layers === undefined ? rule.fold : undefined);
    const problems = [
      ...rule.problems,
      ...(made === undefined ? [] : roleProblems(spec, made)),
      ...distinctSlips(editions.flatMap((edition) => edition.problems)),
    ];
    return problems.map((problem) => ({ ...problem, path: pathOfPlace(tree, problem.place) || problem.path }));
  });
}
