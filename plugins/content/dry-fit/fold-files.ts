import { hasErrors, type Problem, type SourceNode } from '../../engine/index.ts';
import { cardProblems } from '../card-problems.ts';
import { readDocument } from '../document.ts';
import { readFoldFile } from '../entries/fold.ts';
import type { KindTrees } from '../entries/kinds.ts';
import { looksLikeFold, readPost } from '../entries/post.ts';
import type { Post } from '../entries/types.ts';
import { idOfPath } from '../ids.ts';
import type { Library, ReadLibrary } from '../library.ts';
import { type CardEdition, computeKind, computeProject } from '../project.ts';
import { fileOfId, type KnownIds, referenceProblems, referencesOf } from '../references.ts';
import type { SourceFile } from '../source-file.ts';

/** A post or fold file with its cards folded. */
export interface FoldedFile {
  readonly file: string;
  readonly type: 'post' | 'fold';
  readonly id: string;
  readonly title: string;
  readonly cards: readonly FoldedFileCard[];
}

export interface FoldedFileCard {
  readonly key: string;
  readonly name: string;
  readonly editions: { readonly inch: CardEdition; readonly metric: CardEdition };
}

/** `folded` is undefined when the file has an error. */
interface FileFit {
  readonly folded: FoldedFile | undefined;
  readonly problems: readonly Problem[];
}

/**
 * Folds posts and fold files, wherever they lie, with the kinds and supplies of a library. A file that cannot be folded
 * because of another one tells the problems of that other as well.
 */
export function foldFiles(
  files: readonly SourceFile[],
  { library, known, problems }: ReadLibrary,
): { readonly folded: readonly FoldedFile[]; readonly problems: readonly Problem[] } {
  if (library === undefined) return { folded: [], problems };
  const fits = files.map((file) => {
    const { tree } = readDocument(file);
    if (tree?.kind === 'map' && looksLikeFold(tree)) return foldKindFile(file, library);
    const fit = foldPostFile(file, library, known);
    return { ...fit, problems: [...fit.problems, ...problemsOfNeeded(tree, problems)] };
  });
  return {
    folded: fits.flatMap(({ folded }) => folded ?? []),
    problems: fits.flatMap((fit) => fit.problems),
  };
}

/** Problems of the folds, supplies and techniques that a post names. */
function problemsOfNeeded(tree: SourceNode | undefined, problems: readonly Problem[]): readonly Problem[] {
  if (tree === undefined) return [];
  const needed = referencesOf('post', tree).map(({ what, node }) => fileOfId(what, node.text.trim()));
  return problems.filter(({ place }) => needed.includes(place.file));
}

function foldKindFile(file: SourceFile, library: Library): FileFit {
  const { entry, problems } = readFoldFile(file, treesIn(library));
  if (entry === undefined) return { folded: undefined, problems };
  const { project, problems: ofCard } = computeKind(library, entry);
  const all = [...problems, ...ofCard];
  if (project === undefined || hasErrors(all)) return { folded: undefined, problems: all };
  const cards = [{ key: 'card', name: entry.name, editions: project.editions }];
  return { folded: { file: file.path, type: 'fold', id: entry.id, title: entry.name, cards }, problems: all };
}

/** The kinds of a library, for a fold file that is made of them. */
function treesIn({ folds }: Library): KindTrees {
  return new Map([...folds].map(([id, { tree }]) => [id, tree]));
}

function foldPostFile(file: SourceFile, library: Library, known: KnownIds): FileFit {
  const { entry, tree, problems } = readPost(file);
  const all =
    tree === undefined
      ? problems
      : [...problems, ...referenceProblems('post', tree, known), ...cardProblems(tree, library.blog, library.folds)];
  if (entry === undefined || hasErrors(all)) return { folded: undefined, problems: all };
  return { folded: foldPost(entry, library), problems: all };
}

/** Undefined when a card cannot be made, because its kind could not be read. */
function foldPost(post: Post, library: Library): FoldedFile | undefined {
  const { project } = computeProject(library, post);
  if (project.cards.length < post.cards.length) return undefined;
  const cards = project.cards.map(({ key, name, editions }) => ({ key, name, editions }));
  return { file: post.file, type: 'post', id: idOfPath(post.file), title: post.title, cards };
}
