import { type Dirent, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { ContentFiles, SourceFile } from './source-file.ts';

/** Where the content lies within a project, and what its files are called. */
const FOLDER = 'content';
const BLOG = `${FOLDER}/blog.yaml`;

/**
 * Reads every content file of a project, sorted by path. A folder that is not there holds no files.
 *
 * @param root folder of the project
 * @throws when a file that is there cannot be read (permissions, a broken disk)
 */
export function readContent(root: string): ContentFiles {
  const all = filesBelow(root, FOLDER);
  const read = (paths: readonly string[]): SourceFile[] => paths.map((path) => readSource(join(root, path), path));
  const within = (folder: string, ending: RegExp): string[] =>
    all.filter((path) => path.startsWith(`${FOLDER}/${folder}/`) && ending.test(path));
  return {
    blog: read(all.filter((path) => path === BLOG))[0],
    posts: read(within('posts', /\.md$/i)),
    folds: read(within('folds', /\.md$/i)),
    supplies: read(within('supplies', /\.ya?ml$/i)),
    techniques: read(within('techniques', /\.md$/i)),
  };
}

/** One file, under the path that problems shall show. Bytes that are no UTF-8 become U+FFFD. */
export function readSource(file: string, shown: string): SourceFile {
  return { path: shown, text: readFileSync(file, 'utf8') };
}

/** Paths with `/`, relative to the root, sorted by code unit. Hidden files and folders are left out. */
function filesBelow(root: string, folder: string): string[] {
  let entries: Dirent[];
  try {
    entries = readdirSync(join(root, folder), { withFileTypes: true });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return [];
    throw error;
  }
  return entries
    .filter((entry) => !entry.name.startsWith('.') && !entry.name.startsWith('_'))
    .flatMap((entry) => {
      const path = `${folder}/${entry.name}`;
      return entry.isDirectory() ? filesBelow(root, path) : [path];
    })
    .sort();
}
