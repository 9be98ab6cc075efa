import { isAlias, isMap, isPair, isScalar, isSeq, type Pair, type Scalar, type YAMLMap, type YAMLSeq } from 'yaml';
import {
  formatPlace,
  type MapEntry,
  nearestName,
  type Place,
  type Problem,
  type SourceNode,
  type TextNode,
} from '../engine/index.ts';
import { type Lines, shorten } from './lines.ts';

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
      reading.problems.push({
        code: 'key-twice',
        severity: 'error',
        place: key.place,
        path: '',
        wrote: `${key.text}:  again; it stands first at ${formatPlace(earlier)}`,
        takes: 'each name once',
        remedy: `Keep one \`${key.text}\` and take the other out.`,
      });
      continue;
    }
    first.set(key.text, key.place);
    entries.push({ key, value });
  }
  return entries;
}

function keyOf(yaml: unknown, fallback: number, reading: Reading): TextNode | undefined {
  const node = nodeOf(yaml, fallback, reading);
  if (node.kind === 'text') {
    const glued = node.quoted ? null : /^([^\s:]+):(\S.*)$/.exec(node.text);
    if (glued === null) return node;
    reading.problems.push({
      code: 'colon-without-space',
      severity: 'error',
      place: node.place,
      path: '',
      wrote: shorten(node.text),
      takes: 'a name, a colon, a space and the value',
      remedy: `Put a space after the colon: \`${glued[1]}: ${glued[2]}\`.`,
    });
    return undefined;
  }
  reading.problems.push({
    code: 'key-not-text',
    severity: 'error',
    place: node.place,
    path: '',
    wrote: node.kind === 'list' ? 'a list before a colon' : 'a group before a colon',
    takes: 'a plain name before the colon',
    remedy:
      'Give the value a name made of letters and hyphens, such as `width`. A text that begins with [ or { needs quotes.',
  });
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
  const body = /\n[ \t\n]*/.exec(text.slice(header));
  if (body === null) return header;
  const start = header + body.index + body[0].length;
  return start < text.length ? start : header;
}

/** `Card #5` loses its number: YAML takes ` #` for the start of a note. */
function checkComment(scalar: Scalar, value: string, block: boolean, reading: Reading): void {
  const end = scalar.range?.[1];
  if (block || value === '' || end === undefined) return;
  const lost = /^[ \t]+#[^\s#][^\n]*/.exec(reading.text.slice(end));
  if (lost === null) return;
  const whole = `${value}${lost[0]}`;
  reading.problems.push({
    code: 'note-or-text',
    severity: 'warning',
    place: reading.lines.placeOf(end + lost[0].indexOf('#')),
    path: '',
    wrote: shorten(whole),
    takes: 'a note after ` # `; it is left out of the value',
    remedy: `If it belongs to the text, put quotes round the whole: "${shorten(whole).replaceAll('"', "'")}". If it is a note, put a space after the #.`,
  });
}

function aliasedNode(name: string, offset: number, reading: Reading): SourceNode {
  const place = reading.lines.placeOf(offset);
  const nothing: TextNode = { kind: 'text', text: '', place, quoted: false };
  const anchored = reading.anchors.get(name);
  if (anchored !== undefined) {
    reading.parts += anchored.parts;
    if (reading.parts <= MOST_PARTS) return anchored.node;
    if (!reading.tooMany) reading.problems.push(tooManyParts(name, place));
    reading.tooMany = true;
    return nothing;
  }
  const inside = reading.anchors.has(name);
  const near = nearestName(name, [...reading.anchors.keys()]);
  reading.problems.push({
    code: inside ? 'alias-inside-itself' : 'alias-unknown',
    severity: 'error',
    place,
    path: '',
    wrote: `*${name}`,
    takes: inside ? 'a value that does not contain itself' : `a value marked \`&${name}\` further up in the file`,
    remedy: inside
      ? 'Write the value out in full.'
      : near === undefined
        ? `If the star belongs to the text, put it in quotes: "*${name}".`
        : `Did you mean *${near}? If the star belongs to the text, put it in quotes: "*${name}".`,
  });
  return nothing;
}

function tooManyParts(name: string, place: Place): Problem {
  return {
    code: 'alias-too-much',
    severity: 'error',
    place,
    path: '',
    wrote: `*${name}, which unfolds into more than ${MOST_PARTS} parts`,
    takes: 'aliases that repeat a short value',
    remedy: 'Write the values out, or repeat fewer of them.',
  };
}

function anchorOf(yaml: unknown): string | undefined {
  return isMap(yaml) || isSeq(yaml) || isScalar(yaml) ? yaml.anchor : undefined;
}

function endOf(yaml: unknown): number | undefined {
  return isMap(yaml) || isSeq(yaml) || isScalar(yaml) || isAlias(yaml) ? yaml.range?.[1] : undefined;
}
