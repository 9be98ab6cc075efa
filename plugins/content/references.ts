import {
  entryAt,
  type MapNode,
  nearestName,
  type Problem,
  type SourceNode,
  type TextNode,
  valueAt,
} from '../engine/index.ts';
import { joinPath } from './paths.ts';

/** Ids that exist, by what they are. */
export interface KnownIds {
  readonly fold: readonly string[];
  readonly supply: readonly string[];
  readonly technique: readonly string[];
}

type What = keyof KnownIds;

const FOLDERS: Readonly<Record<What, string>> = {
  fold: 'content/folds/%.md',
  supply: 'content/supplies/%.yaml',
  technique: 'content/techniques/%.md',
};

/** Path of the file that an id stands for. */
export function fileOfId(what: What, id: string): string {
  return FOLDERS[what].replace('%', () => id);
}

/** Most known ids that are listed when none is near. */
const LISTED = 12;

/** A place where a file names another by its id. */
export interface Reference {
  readonly what: What;
  readonly node: TextNode;
  readonly path: string;
}

/** Names of other files, in the tree of a post or a supply, that no file answers to. */
export function referenceProblems(from: 'post' | 'supply', tree: SourceNode, known: KnownIds): readonly Problem[] {
  return referencesOf(from, tree).flatMap(({ what, node, path }): Problem[] => {
    const id = node.text.trim();
    if (id === '' || known[what].includes(id)) return [];
    return [unknown(what, node, path, known[what])];
  });
}

/** Every name of another file in the tree of a post or a supply. */
export function referencesOf(from: 'post' | 'supply', tree: SourceNode): readonly Reference[] {
  return from === 'post' ? referencesOfPost(tree) : referencesOfSupply(tree);
}

function referencesOfSupply(tree: SourceNode): readonly Reference[] {
  return tree.kind === 'map' ? listed(valueAt(tree, 'substitutes'), 'substitutes', 'supply') : [];
}

function referencesOfPost(tree: SourceNode): readonly Reference[] {
  if (tree.kind !== 'map') return [];
  const cards = valueAt(tree, 'cards');
  return [
    ...listed(valueAt(tree, 'techniques'), 'techniques', 'technique'),
    ...listed(valueAt(tree, 'supplies'), 'supplies', 'supply'),
    ...referencesOfCard(tree, ''),
    ...(cards?.kind === 'list' ? cards.items.flatMap((card, index) => referencesOfCard(card, `cards[${index}]`)) : []),
  ];
}

function referencesOfCard(card: SourceNode, path: string): readonly Reference[] {
  if (card.kind !== 'map') return [];
  const fold = valueAt(card, 'fold');
  const stock = valueAt(card, 'stock');
  const kind =
    fold?.kind === 'text' ? fold : fold?.kind === 'map' && fold.entries.length === 1 ? fold.entries[0]?.key : undefined;
  const papers = stock?.kind === 'map' ? stock.entries : [];
  return [
    ...(kind === undefined ? [] : [{ what: 'fold' as const, node: kind, path: joinPath(path, 'fold') }]),
    ...papers.flatMap(({ key, value }) =>
      value.kind === 'text'
        ? [{ what: 'supply' as const, node: value, path: joinPath(path, `stock.${key.text}`) }]
        : [],
    ),
    ...referencesOfLayers(
      valueAt(card, 'layers'),
      joinPath(path, 'layers'),
      papers.map(({ key }) => key.text),
    ),
  ];
}

/** What is laid on is a supply, or a role that the card's `stock` binds to one. */
function referencesOfLayers(
  layers: SourceNode | undefined,
  path: string,
  roles: readonly string[],
): readonly Reference[] {
  if (layers?.kind !== 'list') return [];
  return layers.items.flatMap((layer, index) => {
    const lay = layer.kind === 'map' ? valueAt(layer, 'lay') : undefined;
    if (lay?.kind !== 'list') return [];
    return lay.items.flatMap((coat, at) =>
      coat.kind === 'map' ? suppliesOfCoat(coat, `${path}[${index}].lay[${at}]`, roles) : [],
    );
  });
}

function suppliesOfCoat(coat: MapNode, path: string, roles: readonly string[]): readonly Reference[] {
  return ['with', 'and'].flatMap((name): Reference[] => {
    const node = valueAt(coat, name);
    if (node?.kind !== 'text' || roles.includes(node.text.trim())) return [];
    return [{ what: 'supply', node, path: `${path}.${name}` }];
  });
}

/** Items of a list that are ids, or groups with the id under `use`. */
function listed(list: SourceNode | undefined, path: string, what: What): readonly Reference[] {
  if (list?.kind !== 'list') return [];
  return list.items.flatMap((item, index): Reference[] => {
    const own = `${path}[${index}]`;
    if (item.kind === 'text') return [{ what, node: item, path: own }];
    const use = item.kind === 'map' ? entryAt(item, 'use')?.value : undefined;
    return use?.kind === 'text' ? [{ what, node: use, path: `${own}.use` }] : [];
  });
}

function unknown(what: What, node: TextNode, path: string, known: readonly string[]): Problem {
  const id = node.text.trim();
  const near = nearestName(id, known);
  const file = fileOfId(what, id);
  const list = known.length === 0 ? 'there is none yet' : `there are ${sayList(known)}`;
  return {
    code: `${what}-unknown`,
    severity: 'error',
    place: node.place,
    path,
    wrote: id,
    takes: `the id of a ${what}: its file name without the ending; ${list}`,
    remedy:
      near === undefined ? `Use one of these, or add ${file}.` : `Did you mean \`${near}\`? If it is new, add ${file}.`,
  };
}

function sayList(names: readonly string[]): string {
  const shown = names.slice(0, LISTED).join(', ');
  return names.length > LISTED ? `${shown} and ${names.length - LISTED} more` : shown;
}
