import { readdirSync } from 'node:fs';
import { join, relative, sep } from 'node:path';

/** Paths of all pages of a built site, as a reader's address bar shows them, in alphabetical order. */
export function builtPages(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.html'))
    .map((entry) => `/${relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/')}`)
    .map((path) => path.replace(/index\.html$/, ''))
    .sort();
}

/** One page of each kind. */
export const KINDS_OF_PAGE: Readonly<Record<string, string>> = {
  home: '/',
  'list of projects': '/projects/',
  'project without a card': '/projects/kelp-background-papers/',
  'project with one card': '/projects/curlew-at-low-water/',
  'project with two cards': '/projects/two-cards-from-the-harbour/',
  'project with layers': '/projects/rock-pool-shaker/',
  'list of folds': '/folds/',
  fold: '/folds/gate/',
  'list of supplies': '/supplies/',
  supply: '/supplies/tide-paper/',
  'supply that is no longer made': '/supplies/oyster-envelope/',
  'list of techniques': '/techniques/',
  technique: '/techniques/scoring/',
  'fold language': '/fold-language/',
  'errors of the fold language': '/fold-language/problems/',
  'no such page': '/404.html',
};
