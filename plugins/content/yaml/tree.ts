import { isAlias, isMap, isPair, isScalar, isSeq, type Pair, type Scalar, type YAMLMap, type YAMLSeq } from 'yaml';
import type { MapEntry, Place, Problem, SourceNode, TextNode } from '../../engine/index.ts';
import type { Lines } from '../lines.ts';
import {
  aliasInsideItself,
  aliasTooMuch,
  aliasUnknown,
  colonGlued,
  keyNotText,
  keyTwice,
  noteOrText,
} from './slips.ts';

/** Most parts that one file may have once every alias is written out, so that a few lines cannot unfold into millions. */
const MOST_PARTS = 20_000;

interface Anchored {
  readonly node: SourceNode;
  readonly parts: number;
}

interface Reading {
  readonly text: string;
  readonly lines: Lines;
  readonly problems: Problem[];
  /** What each anchor names, in the order of the file; undefined while it is being read. */
  readonly anchors: Map<string, Anchored | undefined>;
  parts: number;
  tooMany: boolean;
}

/** The parsed YAML as texts with their places, and what is wrong with it beyond its syntax. */
export function treeOf(
  contents: unknown,
  text: string,
  lines: Lines,
): { tree: SourceNode | undefined; problems: readonly Problem[] } {
  if (contents === null || contents === undefined) return { tree: undefined, problems: [] };
  const reading: Reading = { text, lines, problems: [], anchors: new Map(), parts: 0, tooMany: false };
  const tree = nodeOf(contents, 0, reading);
  const nothing = tree.kind === 'text' && tree.text === '' && !tree.quoted;
  return { tree: nothing || reading.tooMany ? undefined : tree, problems: reading.problems };
}

/** `fallback` is the offset to point at when YAML made up the node out of nothing. */
function nodeOf(yaml: unknown, fallback: number, reading: Reading): SourceNode {
  reading.parts += 1;
  if (isAlias(yaml)) return aliasedNode(yaml.source, yaml.range?.[0] ?? fallback, reading);
  const anchor = anchorOf(yaml);
  const before = reading.parts;
  if (anchor !== undefined) reading.anchors.set(anchor, undefined);
  const node = plainNodeOf(yaml, fallback, reading);
  if (anchor !== undefined) reading.anchors.set(anchor, { node, parts: reading.parts - before + 1 });
  return node;
}

function plainNodeOf(yaml: unknown, fallback: number, reading: Reading): SourceNode {
  if (isMap(yaml)) return mapOf(yaml, fallback, reading);
  if (isSeq(yaml)) return listOf(yaml, fallback, reading);
  if (isPair(yaml)) {
    // `[ a: b ]` is a list holding a group of one.
    const entries = entriesOf([yaml], fallback, reading);
    return { kind: 'map', entries, place: entries[0]?.key.place ?? reading.lines.placeOf(fallback) };
  }
  if (isScalar(yaml)) return textOf(yaml, fallback, reading);
  return { kind: 'text', text: '', place: reading.lines.placeOf(fallback), quoted: false };
}

function mapOf(map: YAMLMap, fallback: number, reading: Reading): SourceNode {
  const start = map.range?.[0] ?? fallback;
  return { kind: 'map', entries: entriesOf(map.items, start, reading), place: reading.lines.placeOf(start) };
}

function listOf(list: YAMLSeq, fallback: number, reading: Reading): SourceNode {
  const start = list.range?.[0] ?? fallback;
  const items = list.items.map((item) => nodeOf(item, start, reading));
  return { kind: 'list', items, place: reading.lines.placeOf(start) };
}

function entriesOf(pairs: readonly Pair[], fallback: number, reading: Reading): MapEntry[] {
  const entries: MapEntry[] = [];
  const first = new Map<string, Place>();
  for (const pair of pairs) {
    const key = keyOf(pair.key, fallback, reading);
    if (key === undefined) continue;
    const value = nodeOf(pair.value, endOf(pair.key) ?? fallback, reading);
    const earlier = first.get(key.text);
    if (earlier !== undefined) {
      reading.problems.push(keyTwice(key.text, key.place, earlier));
      continue;
    }
    first.set(key.text, key.place);
    entries.push({ key, value });
  }
  return entries;
}

function keyOf(yaml: unknown, fallback: number, reading: Reading): TextNode | undefined {
  const node = nodeOf(yaml, fallback, reading);
  const { problems } = reading;
  if (node.kind === 'text' && node.text.trim() !== '') {
    // An address has a colon within it as well.
    const glued = node.quoted ? null : /^([^\s:]+):(?!\/\/)(\S.*)$/.exec(node.text);
    if (glued === null) return node;
    problems.push(colonGlued(glued[1] ?? '', glued[2] ?? '', node.place));
    return undefined;
  }
  problems.push(keyNotText(node.kind === 'text' ? 'nothing' : node.kind === 'list' ? 'a list' : 'a group', node.place));
  return undefined;
}

function textOf(scalar: Scalar, fallback: number, reading: Reading): TextNode {
  const start = scalar.range?.[0] ?? fallback;
  const value = typeof scalar.value === 'string' ? scalar.value : (scalar.source ?? '');
  const block = scalar.type === 'BLOCK_LITERAL' || scalar.type === 'BLOCK_FOLDED';
  checkComment(scalar, value, block, reading);
  return {
    kind: 'text',
    text: block ? value.replace(/\n+$/, '') : value,
    place: reading.lines.placeOf(block ? blockStart(start, reading.text) : start),
    quoted: scalar.type === 'QUOTE_DOUBLE' || scalar.type === 'QUOTE_SINGLE',
  };
}

/** The text of a block begins on the lines below its `|` or `>`: offset of its first character. */
function blockStart(header: number, text: string): number {
  const line = text.indexOf('\n', header);
  if (line === -1) return header;
  const spaces = matchAt(/[ \t\n]*/y, text, line);
  const start = line + (spaces?.length ?? 0);
  return start < text.length ? start : header;
}

function checkComment(scalar: Scalar, value: string, block: boolean, { text, lines, problems }: Reading): void {
  const end = scalar.range?.[1];
  if (block || value === '' || end === undefined) return;
  const lost = matchAt(/[ \t]+#[^\s#][^\n]*/y, text, end);
  if (lost !== undefined) problems.push(noteOrText(`${value}${lost}`, lines.placeOf(end + lost.indexOf('#'))));
}

/** What a sticky pattern finds at an offset. */
function matchAt(pattern: RegExp, text: string, offset: number): string | undefined {
  pattern.lastIndex = offset;
  return pattern.exec(text)?.[0];
}

function aliasedNode(name: string, offset: number, reading: Reading): SourceNode {
  const { anchors, problems } = reading;
  const place = reading.lines.placeOf(offset);
  const anchored = anchors.get(name);
  if (anchored === undefined) {
    problems.push(anchors.has(name) ? aliasInsideItself(name, place) : aliasUnknown(name, anchors.keys(), place));
  } else {
    reading.parts += anchored.parts;
    if (reading.parts <= MOST_PARTS) return anchored.node;
    if (!reading.tooMany) problems.push(aliasTooMuch(name, MOST_PARTS, place));
    reading.tooMany = true;
  }
  return { kind: 'text', text: '', place, quoted: false };
}

function anchorOf(yaml: unknown): string | undefined {
  return isMap(yaml) || isSeq(yaml) || isScalar(yaml) ? yaml.anchor : undefined;
}

function endOf(yaml: unknown): number | undefined {
  return isMap(yaml) || isSeq(yaml) || isScalar(yaml) || isAlias(yaml) ? yaml.range?.[1] : undefined;
}
