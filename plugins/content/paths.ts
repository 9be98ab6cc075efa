import { comparePlaces, entryAt, type Place, type SourceNode, type TextNode } from '../engine/index.ts';

export type Step = string | number;

/** Where a path leads in a tree. */
export interface Found {
  /** The deepest node that the path reaches. */
  readonly node: SourceNode;
  /** The name it stands under, when it stands under one. */
  readonly key: TextNode | undefined;
  /** Steps that could not be taken, because nothing is written there. Empty when the whole path is there. */
  readonly missing: readonly Step[];
}

/** Follows a path from the root of a tree as far as it goes. */
export function follow(root: SourceNode, path: readonly Step[]): Found {
  let node = root;
  let key: TextNode | undefined;
  for (const [index, step] of path.entries()) {
    if (node.kind === 'map') {
      const entry = entryAt(node, String(step));
      if (entry === undefined) return { node, key, missing: path.slice(index) };
      node = entry.value;
      key = entry.key;
    } else if (node.kind === 'list' && typeof step === 'number') {
      const item = node.items[step];
      if (item === undefined) return { node, key, missing: path.slice(index) };
      node = item;
      key = undefined;
    } else {
      return { node, key, missing: path.slice(index) };
    }
  }
  return { node, key, missing: [] };
}

/** The path as makers see it: `cards[1].stock.cover`. */
export function formatPath(path: readonly PropertyKey[]): string {
  let written = '';
  for (const step of path) {
    if (typeof step === 'number') written += `[${step}]`;
    else written += written === '' ? String(step) : `.${String(step)}`;
  }
  return written;
}

/** The path of a part within something that has a path of its own. */
export function joinPath(base: string, rest: string): string {
  if (base === '' || rest === '') return base + rest;
  return rest.startsWith('[') ? `${base}${rest}` : `${base}.${rest}`;
}

/**
 * The path of the part of a tree that a place lies in: the last name or value, in reading order, that begins at or
 * before it. Empty when none does.
 */
export function pathOfPlace(root: SourceNode | undefined, place: Place): string {
  let found = { path: '', place: { file: place.file, line: 0, column: 0 } };
  const look = (path: string, at: Place): void => {
    if (comparePlaces(at, place) <= 0 && comparePlaces(at, found.place) >= 0) found = { path, place: at };
  };
  const walk = (node: SourceNode, path: string): void => {
    look(path, node.place);
    if (node.kind === 'map') {
      for (const { key, value } of node.entries) {
        look(joinPath(path, key.text), key.place);
        walk(value, joinPath(path, key.text));
      }
    } else if (node.kind === 'list') {
      for (const [index, item] of node.items.entries()) walk(item, `${path}[${index}]`);
    }
  };
  if (root !== undefined) walk(root, '');
  return found.path;
}
