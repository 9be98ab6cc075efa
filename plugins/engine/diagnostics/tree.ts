import type { Place } from './place.ts';

/**
 * What a maker wrote, as texts with their places.
 *
 * The engine never sees a number that a YAML reader has made: `2.54` would arrive as a float and `010` as 10.
 * Every value is the text as written, and every part knows where it stands, so that each error can point at it.
 */
export type SourceNode = TextNode | ListNode | MapNode;

export interface TextNode {
  readonly kind: 'text';
  /** The value without its quotes; empty when nothing was written. */
  readonly text: string;
  readonly place: Place;
  /** Written in quotes, so its first character stands one column after `place`. */
  readonly quoted: boolean;
  /** Present where parts of a text have been filled in: from character `at` on it was written from character `from` of another. */
  readonly filled?: {
    readonly from: TextNode;
    readonly parts: readonly { readonly at: number; readonly from: number }[];
  };
}

export interface ListNode {
  readonly kind: 'list';
  readonly items: readonly SourceNode[];
  readonly place: Place;
}

export interface MapNode {
  readonly kind: 'map';
  /** In the order they were written; keys are unique (the reader reports duplicates). */
  readonly entries: readonly MapEntry[];
  readonly place: Place;
}

export interface MapEntry {
  readonly key: TextNode;
  readonly value: SourceNode;
}

/** The value under a key, or undefined. */
export function valueAt(map: MapNode, key: string): SourceNode | undefined {
  return entryAt(map, key)?.value;
}

/** The entry under a key (for the key's own place), or undefined. */
export function entryAt(map: MapNode, key: string): MapEntry | undefined {
  return map.entries.find((entry) => entry.key.text === key);
}

/** Place of the character at `offset` of a text that was written on one line. */
export function placeWithin(node: TextNode, offset: number): Place {
  if (node.filled) {
    const { from, parts } = node.filled;
    const part = parts.findLast(({ at }) => at <= offset);
    const before = parts.find(({ at }) => at > offset);
    const reach = before?.from ?? from.text.length;
    return placeWithin(from, Math.min(part ? part.from + offset - part.at : offset, reach));
  }
  return { ...node.place, column: node.place.column + (node.quoted ? 1 : 0) + offset };
}

/** A list or map for which a text was expected, said in the maker's words. */
export function describeNode(node: SourceNode): string {
  if (node.kind === 'text') return node.text === '' ? 'nothing' : node.text;
  if (node.kind === 'list') return `a list of ${node.items.length}`;
  return `a group with ${node.entries.map((entry) => entry.key.text).join(', ') || 'nothing in it'}`;
}
