import { type Fold, type MapNode, readFold, valueAt } from '../../engine/index.ts';
import { readDocument } from '../document.ts';
import { idOfPath } from '../ids.ts';
import { measureProblems } from '../measures.ts';
import { FOLD_PAGE_KEYS, foldSchema } from '../schemas/fold.ts';
import type { SourceFile } from '../source-file.ts';
import { editionsOf } from './editions-of.ts';
import { type KindTrees, kindsFor, treesOfUsed } from './kinds.ts';
import { finish, readMap } from './read-map.ts';
import type { FoldKind, ReadEntry } from './types.ts';

/** A fold kind. `trees`: the kinds that it may be made of, itself among them or not. */
export function readFoldFile(file: SourceFile, trees: KindTrees = new Map()): ReadEntry<FoldKind> {
  const { tree, problems } = readDocument(file);
  if (tree?.kind !== 'map') {
    const { problems: shape } = readMap(foldSchema, tree, file.path);
    return finish<FoldKind>(undefined, tree, [...problems, ...shape]);
  }
  const { value, problems: shape } = readMap(foldSchema, pageKeysOf(tree), file.path);
  const { fold, problems: language } = readFold(tree, {
    alsoAllowed: FOLD_PAGE_KEYS,
    kinds: kindsFor(idOfPath(file.path), trees),
  });
  const entry: FoldKind | undefined = value &&
    fold && {
      id: idOfPath(file.path),
      file: file.path,
      name: fold.name,
      family: fold.family,
      summary: value.summary,
      difficulty: value.difficulty,
      units: fold.units,
      sheet: editionsOf(valueAt(tree, 'sheet'), 'sheet'),
      tree,
      uses: treesOfUsed(fold, trees),
      invented: value.invented,
    };
  const sheet = measureProblems(valueAt(tree, 'sheet'), 'sheet', 'sheet', fold?.units);
  return finish(entry, tree, [...problems, ...shape, ...sheet, ...language]);
}

/** The rule of a kind, read from its tree. Throws when the kind was never checked. */
export function foldOf(kind: FoldKind): Fold {
  const kinds = kindsFor(kind.id, new Map(Object.entries(kind.uses)));
  const { fold } = readFold(kind.tree, { alsoAllowed: FOLD_PAGE_KEYS, kinds });
  if (fold === undefined) throw new Error(`${kind.file} was not checked before its fold was used`);
  return fold;
}

/** Only the keys for readers: the schema has no business with the others. */
function pageKeysOf(tree: MapNode): MapNode {
  return { ...tree, entries: tree.entries.filter(({ key }) => FOLD_PAGE_KEYS.includes(key.text)) };
}

/** The trees of fold files by their ids, as far as they can be read; of two with one id the first. */
export function treesOf(files: readonly SourceFile[]): KindTrees {
  const trees = new Map<string, MapNode>();
  for (const file of files) {
    const { tree } = readDocument(file);
    const id = idOfPath(file.path);
    if (tree?.kind === 'map' && !trees.has(id)) trees.set(id, tree);
  }
  return trees;
}
