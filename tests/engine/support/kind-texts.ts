import { readdirSync, readFileSync } from 'node:fs';
import type { Kinds } from '../../../plugins/engine/index.ts';
import { foldOf } from './folds.ts';
import { EASEL, SHAKER } from './ten-folds.ts';

const FOLDER = 'content/folds';

/** The frontmatter of every kind of the demo content, as written, in the order of the file names. */
export function kindTexts(): string[] {
  return readdirSync(FOLDER)
    .filter((name) => name.endsWith('.md'))
    .sort()
    .map((name) => {
      const [, frontmatter] = /^---\n(.*?)^---$/msu.exec(readFileSync(`${FOLDER}/${name}`, 'utf8')) ?? [];
      if (frontmatter === undefined) throw new Error(`no frontmatter in ${name}`);
      return frontmatter;
    });
}

const [easel, shaker] = [foldOf(EASEL), foldOf(SHAKER)];

/** Two kinds that others are made of. */
export const KINDS: Kinds = {
  find: (id) => (id === 'easel' ? easel : id === 'shaker' ? shaker : 'unknown'),
  known: ['easel', 'shaker'],
};
