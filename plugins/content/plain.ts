import type { SourceNode } from '../engine/index.ts';

/** Plain values as the schemas take them: texts, lists and records of texts. */
export type Plain = string | Plain[] | { [key: string]: Plain };

/**
 * The tree as plain values, without places.
 *
 * A name with nothing after it (`maker:`) counts as not written, so that a blank form can be filled in bit by bit. Records
 * have no prototype: no name a maker can write means anything else.
 */
export function plainOf(node: SourceNode): Plain {
  if (node.kind === 'text') return node.text;
  if (node.kind === 'list') return node.items.map(plainOf);
  const record: { [key: string]: Plain } = Object.create(null);
  for (const { key, value } of node.entries) {
    if (value.kind === 'text' && value.text === '' && !value.quoted) continue;
    record[key.text] = plainOf(value);
  }
  return record;
}
