import type { SourceNode, TextNode } from '../diagnostics/index.ts';
import { mapOr, namedEntries, textOr, wrongShape } from './read-parts.ts';
import { trimmed } from './read-references.ts';
import { join, type Report, suggest } from './report.ts';
import type { Fold, ReplaceSpec, UseSpec } from './types.ts';

/** Where kinds are looked up by their ids. `faulty`: it is there but could not be read, which was said elsewhere. */
export interface Kinds {
  find(id: string): Fold | 'unknown' | 'faulty' | 'circle';
  readonly known: readonly string[];
}

const TAKES_USE = 'a group of kinds, each with its parameters: `easel: { width: width }`';

/** `use`: the kinds that a kind is made of. The first is the host; the others come into it. */
export function readUses(
  node: SourceNode | undefined,
  path: string,
  kinds: Kinds | undefined,
  report: Report,
): UseSpec[] {
  const map = mapOr(node, path, TAKES_USE, report);
  if (map === undefined) return [];
  return namedEntries(map, path, report).flatMap(({ key, value }): UseSpec[] => {
    const here = join(path, key.text);
    const fold = foldFor(key, here, kinds, report);
    if (value.kind === 'list' || (value.kind === 'text' && value.text.trim() !== '')) {
      report.at(value.place, here, wrongShape(value, TAKES_USE));
      return [];
    }
    const given = value.kind === 'map' ? value : undefined;
    return fold ? [{ id: key.text, fold, given, place: key.place, path: here }] : [];
  });
}

function foldFor(key: TextNode, path: string, kinds: Kinds | undefined, report: Report): Fold | undefined {
  const found = kinds?.find(key.text) ?? 'unknown';
  if (typeof found !== 'string' || found === 'faulty') return found === 'faulty' ? undefined : found;
  const known = kinds?.known ?? [];
  if (found === 'unknown') {
    const takes = known.length === 0 ? 'a kind; there are none' : `a kind: ${known.join(', ')}`;
    const remedy = suggest(key.text, known, `Write the id of a kind: its file name without the ending.`);
    report.at(key.place, path, { code: 'unknown-kind', wrote: key.text, takes, remedy });
  } else {
    report.at(key.place, path, {
      code: 'kind-uses-itself',
      wrote: key.text,
      takes: 'a kind that is not made of this one',
      remedy: `\`${key.text}\` is itself made of this kind. Take one of the two uses out.`,
    });
  }
  return undefined;
}

/** Whether a kind is made of one that could not be read: then nothing can be said of it either. */
export function usesFaulty(node: SourceNode | undefined, kinds: Kinds | undefined): boolean {
  return node?.kind === 'map' && node.entries.some(({ key }) => kinds?.find(key.text) === 'faulty');
}

/** `replace`: a piece of one used kind to the id of another. `used`: what stands under `use`. */
export function readReplaces(
  node: SourceNode | undefined,
  path: string,
  used: SourceNode | undefined,
  report: Report,
): ReplaceSpec[] {
  const map = mapOr(node, path, 'a group: a piece, and the kind that takes its place: `{ front: shaker }`', report);
  if (map === undefined) return [];
  return namedEntries(map, path, report).flatMap(({ key, value }): ReplaceSpec[] => {
    const here = join(path, key.text);
    const known = used?.kind === 'map' ? used.entries.map((entry) => entry.key.text) : [];
    const takes = `a kind named under \`use\`: ${known.join(', ') || 'there is none'}`;
    const text = textOr(value, here, takes, report);
    if (text === undefined) return [];
    const by = trimmed(text);
    if (known.includes(by.text)) return [{ name: key, by, place: key.place, path: here }];
    const remedy = suggest(by.text, known, `Add \`${by.text}\` under \`use\`.`);
    report.at(by.place, here, { code: 'unknown-kind', wrote: by.text, takes, remedy });
    return [];
  });
}
