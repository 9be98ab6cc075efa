export type { Expression, Operator, Term } from './expression.ts';
export { makeCard } from './make-card.ts';
export { readFold, readUnits } from './read-fold.ts';
export { readRecipe } from './read-recipe.ts';
export { recipeFold } from './recipe-fold.ts';
export { type RecipeLine, recipeOf } from './recipe-of.ts';
export * from './types.ts';
