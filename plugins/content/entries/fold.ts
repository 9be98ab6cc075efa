import { type Fold, type MapNode, readFold } from '../../engine/index.ts';
import { readDocument } from '../document.ts';
import { idOfPath } from '../ids.ts';
import { FOLD_PAGE_KEYS, foldSchema } from '../schemas/fold.ts';
import type { SourceFile } from '../source-file.ts';
import { finish, readMap } from './read-map.ts';
import type { FoldKind, ReadEntry } from './types.ts';

export function readFoldFile(file: SourceFile): ReadEntry<FoldKind> {
  const { tree, problems } = readDocument(file);
  if (tree?.kind !== 'map') {
    const { problems: shape } = readMap(foldSchema, tree, file.path);
    return finish<FoldKind>(undefined, tree, [...problems, ...shape]);
  }
  const { value, problems: shape } = readMap(foldSchema, pageKeysOf(tree), file.path);
  const { fold, problems: language } = readFold(tree, { alsoAllowed: FOLD_PAGE_KEYS });
  const entry: FoldKind | undefined = value &&
    fold && {
      id: idOfPath(file.path),
      file: file.path,
      name: fold.name,
      family: fold.family,
      summary: value.summary,
      difficulty: value.difficulty,
      units: fold.units,
      tree,
      invented: value.invented,
    };
  return finish(entry, tree, [...problems, ...shape, ...language]);
}

/** The rule of a kind, read from its tree. Throws when the kind was never checked. */
export function foldOf(kind: FoldKind): Fold {
  const { fold } = readFold(kind.tree, { alsoAllowed: FOLD_PAGE_KEYS });
  if (fold === undefined) throw new Error(`${kind.file} was not checked before its fold was used`);
  return fold;
}

/** Only the keys for readers: the schema has no business with the others. */
function pageKeysOf(tree: MapNode): MapNode {
  return { ...tree, entries: tree.entries.filter(({ key }) => FOLD_PAGE_KEYS.includes(key.text)) };
}
