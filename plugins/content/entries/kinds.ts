import { type Fold, type Kinds, type MapNode, readFold } from '../../engine/index.ts';
import { FOLD_PAGE_KEYS } from '../schemas/fold.ts';

/** Trees of fold kinds by their ids. */
export type KindTrees = ReadonlyMap<string, MapNode>;

/**
 * Where the kind `id` looks up the kinds that it uses. Each is read once, when it is first asked for; a kind that comes back to one that is
 * being read goes in a circle.
 */
export function kindsFor(id: string, trees: KindTrees): Kinds {
  const read = new Map<string, Fold | 'faulty'>();
  const reading = [id];
  const circular = new Set<string>();
  const kinds: Kinds = {
    known: [...trees.keys()].filter((known) => known !== id),
    find(wanted) {
      const ready = read.get(wanted);
      if (ready !== undefined) return ready;
      const start = reading.indexOf(wanted);
      if (start >= 0) {
        for (const name of reading.slice(start)) circular.add(name);
        return 'circle';
      }
      const tree = trees.get(wanted);
      if (tree === undefined) return 'unknown';
      reading.push(wanted);
      const { fold = 'faulty' } = readFold(tree, { alsoAllowed: FOLD_PAGE_KEYS, kinds });
      reading.pop();
      if (circular.has(wanted) && circular.has(id)) return 'circle';
      read.set(wanted, fold);
      return fold;
    },
  };
  return kinds;
}

/** The trees of all kinds that a fold is made of. */
export function treesOfUsed(fold: Fold, trees: KindTrees): Record<string, MapNode> {
  const used: Record<string, MapNode> = {};
  const waiting = [fold];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    for (const { id, fold: kind } of next.uses ?? []) {
      const tree = trees.get(id);
      if (tree === undefined || Object.hasOwn(used, id)) continue;
      used[id] = tree;
      waiting.push(kind);
    }
  }
  return used;
}
