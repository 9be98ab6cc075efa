/** Every address of the site, as a path from its root. Pages end in a slash, files do not. */
export const HOME = '/';
export const PROJECTS = '/projects/';
export const FOLDS = '/folds/';
export const SUPPLIES = '/supplies/';
export const TECHNIQUES = '/techniques/';
export const FOLD_LANGUAGE = '/fold-language/';
export const FOLD_PROBLEMS = '/fold-language/problems/';

export const projectPath = (slug: string): string => `${PROJECTS}${slug}/`;
export const foldPath = (kind: string): string => `${FOLDS}${kind}/`;
export const supplyPath = (id: string): string => `${SUPPLIES}${id}/`;
export const techniquePath = (id: string): string => `${TECHNIQUES}${id}/`;
