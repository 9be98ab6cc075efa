import { hasErrors, type Problem, type SourceNode } from '../engine/index.ts';
import { cardProblems } from './card-problems.ts';
import { sortedProblems } from './distinct.ts';
import { readBlog } from './entries/blog.ts';
import { readFoldFile, treesOf } from './entries/fold.ts';
import { readPost } from './entries/post.ts';
import { readSupply } from './entries/supply.ts';
import { readTechnique } from './entries/technique.ts';
import type { Blog, FoldKind, Post, ReadEntry, Supply, Technique } from './entries/types.ts';
import { idOfPath, idProblems } from './ids.ts';
import { type KnownIds, referenceProblems } from './references.ts';
import type { ContentFiles, SourceFile } from './source-file.ts';

/** Everything in `content/`, by id, in the order of the ids. */
export interface Library {
  readonly blog: Blog;
  readonly posts: ReadonlyMap<string, Post>;
  readonly folds: ReadonlyMap<string, FoldKind>;
  readonly supplies: ReadonlyMap<string, Supply>;
  readonly techniques: ReadonlyMap<string, Technique>;
}

/** A library of what could be read, and every problem of every file. */
export interface ReadLibrary {
  /** Undefined when the blog itself could not be read. Entries with an error are left out. */
  readonly library: Library | undefined;
  /** Ids of all files, also of those that could not be read. */
  readonly known: KnownIds;
  readonly problems: readonly Problem[];
}

/**
 * The library, or undefined when there is any error; and all problems of all files, in reading order. Warnings alone do
 * not stop it. Never throws on anything that a maker can write.
 */
export function buildLibrary(files: ContentFiles): ReadLibrary {
  const read = readLibrary(files);
  return { ...read, library: hasErrors(read.problems) ? undefined : read.library };
}

/** As `buildLibrary`, but with all that could be read, whatever else is wrong. */
export function readLibrary(files: ContentFiles): ReadLibrary {
  const blog = files.blog === undefined ? undefined : readBlog(files.blog);
  const kinds = treesOf(files.folds);
  const folds = readShelf(files.folds, (file) => readFoldFile(file, kinds));
  const supplies = readShelf(files.supplies, readSupply);
  const techniques = readShelf(files.techniques, readTechnique);
  const posts = readShelf(files.posts, readPost);
  const library: Library | undefined = blog?.entry && {
    blog: blog.entry,
    posts: posts.entries,
    folds: folds.entries,
    supplies: supplies.entries,
    techniques: techniques.entries,
  };
  const known: KnownIds = { fold: folds.ids, supply: supplies.ids, technique: techniques.ids };
  const problems = [
    ...(blog === undefined ? [blogMissing] : blog.problems),
    ...[folds, supplies, techniques, posts].flatMap((shelf) => shelf.problems),
    ...supplies.trees.flatMap((tree) => referenceProblems('supply', tree, known)),
    ...posts.trees.flatMap((tree) => referenceProblems('post', tree, known)),
    ...posts.trees.flatMap((tree) => cardProblems(tree, blog?.entry, folds.entries)),
  ];
  return { library, known, problems: sortedProblems(problems) };
}

interface Shelf<T> {
  readonly entries: ReadonlyMap<string, T>;
  /** Also of files that could not be read, so that one slip is not told again wherever the file is named. */
  readonly ids: readonly string[];
  readonly trees: readonly SourceNode[];
  readonly problems: readonly Problem[];
}

function readShelf<T>(files: readonly SourceFile[], read: (file: SourceFile) => ReadEntry<T>): Shelf<T> {
  const paths = new Map<string, string>();
  const entries: [string, T][] = [];
  const trees: SourceNode[] = [];
  const problems: Problem[] = [];
  for (const file of files) {
    const id = idOfPath(file.path);
    const earlier = paths.get(id);
    if (earlier === undefined) paths.set(id, file.path);
    else problems.push(idTwice(id, file.path, earlier));
    const { entry, tree, problems: own } = read(file);
    problems.push(...idProblems(file.path), ...own);
    if (tree !== undefined) trees.push(tree);
    if (entry !== undefined && earlier === undefined) entries.push([id, entry]);
  }
  entries.sort(([a], [b]) => (a < b ? -1 : 1));
  return { entries: new Map(entries), ids: [...paths.keys()].sort(), trees, problems };
}

function idTwice(id: string, path: string, earlier: string): Problem {
  return {
    code: 'id-twice',
    severity: 'error',
    place: { file: path, line: 1, column: 1 },
    path: '',
    wrote: `a second \`${id}\`; the first is ${earlier}`,
    takes: 'a different name for each file of a kind',
    remedy: 'Rename or remove one of the two.',
  };
}

const blogMissing: Problem = {
  code: 'blog-missing',
  severity: 'error',
  place: { file: 'content/blog.yaml', line: 1, column: 1 },
  path: '',
  wrote: 'nothing: the file is not there',
  takes: 'a file `content/blog.yaml` with the title, the address and the home units of the blog',
  remedy: 'Add the file.',
};
