import { nearestName, type Problem, type SourceNode } from '../engine/index.ts';
import { distinctSlips } from './distinct.ts';
import { blogOfDefaults } from './entries/blog.ts';
import { cardsOf } from './entries/cards.ts';
import type { Blog, CardSpec, FoldKind } from './entries/types.ts';
import { unitsOf } from './entries/units-of.ts';
import { editionsFrom, makeEdition, readLesson, ruleOf } from './make-edition.ts';
import { pathOfPlace } from './paths.ts';

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
    const pieces = editions[0]?.card?.pieces ?? rule.fold?.pieces;
    const problems = [
      ...rule.problems,
      ...(pieces === undefined ? [] : roleProblems(spec, pieces)),
      ...distinctSlips(editions.flatMap((edition) => edition.problems)),
    ];
    return problems.map((problem) => ({ ...problem, path: pathOfPlace(tree, problem.place) || problem.path }));
  });
}

/** Papers and fillings are bound to supplies by their roles. */
function roleProblems(spec: CardSpec, pieces: readonly { readonly stock: string }[]): readonly Problem[] {
  const roles = [...new Set(pieces.map((piece) => piece.stock))].sort();
  return Object.entries(spec.stock).flatMap(([role, supply]): Problem[] => {
    if (roles.includes(role)) return [];
    const near = nearestName(role, roles) ?? (roles.length === 1 ? roles[0] : undefined);
    return [
      {
        code: 'stock-role-unknown',
        severity: 'error',
        place: supply.place,
        path: supply.path,
        wrote: `${role}: ${supply.text}`,
        takes: `a supply for each paper of the fold: ${roles.join(', ')}`,
        remedy: near === undefined ? 'Use one of these names.' : `Did you mean \`${near}: ${supply.text}\`?`,
      },
    ];
  });
}
