import { entryAt, type MapEntry, type MapNode, type SourceNode, type TextNode, valueAt } from '../diagnostics/index.ts';
import type { Counting } from './each-header.ts';
import { type Header, headerOf, type Members, membersOf } from './each-header.ts';
import { expandStrip } from './each-strip.ts';
import { filledIn } from './fill-in.ts';
import { join, type Report } from './report.ts';

/** Members that one `each` may have, and all of a file together. Far more than a card has. */
export const MOST_OF_ONE = 200;
export const MOST_OF_ALL = 2000;

/** Keys of a fold that settle the counts, and so cannot be repeated by them. */
const BEFORE: ReadonlySet<string> = new Set([
  'name',
  'family',
  'units',
  'parameters',
  'values',
  'recipe',
  'inch',
  'metric',
]);

/** Texts that are for reading: a letter in them is no name. */
const PROSE: ReadonlySet<string> = new Set(['else', 'stock', 'label']);

/** Whether anything in a tree is repeated. */
export function hasEach(node: SourceNode): boolean {
  if (node.kind === 'text') return false;
  if (node.kind === 'list') return node.items.some(hasEach);
  return node.entries.some(({ key, value }) => key.text === 'each' || hasEach(value));
}

/** Every word in the `each` of a tree: the names of counts are among these. */
export function namesInHeaders(node: SourceNode): Set<string> {
  if (node.kind === 'text') return new Set();
  if (node.kind === 'list') return new Set(node.items.flatMap((item) => [...namesInHeaders(item)]));
  return new Set(
    node.entries.flatMap(({ key, value }) =>
      key.text === 'each' && value.kind === 'text'
        ? (value.text.match(/\p{L}[\p{L}\p{N}-]*/gu) ?? [])
        : [...namesInHeaders(value)],
    ),
  );
}

/**
 * A fold's tree with every entry that has `each` written out: once for each member, the letter of `each` replaced by the member's
 * number or word in names, references and expressions. So `disc(k)` becomes `disc(1)`, and `line-(s)` becomes `line-left`.
 *
 * Every text keeps its place. At most `MOST_OF_ONE` members an `each` and `MOST_OF_ALL` a file.
 */
export function expandEach(tree: MapNode, counting: Counting, report: Report): MapNode {
  const expander = new Expander(counting, report);
  return {
    ...tree,
    entries: tree.entries.map((entry) => (BEFORE.has(entry.key.text) ? entry : expander.entry(entry, ''))),
  };
}

class Expander {
  private readonly counting: Counting;
  private readonly report: Report;
  private left = MOST_OF_ALL;

  constructor(counting: Counting, report: Report) {
    this.counting = counting;
    this.report = report;
  }

  entry(entry: MapEntry, path: string): MapEntry {
    return { ...entry, value: this.walk(entry.value, join(path, entry.key.text)) };
  }

  private walk(node: SourceNode, path: string): SourceNode {
    if (node.kind === 'text') return node;
    if (node.kind === 'list') {
      return { ...node, items: node.items.flatMap((item, index) => this.item(item, join(path, index))) };
    }
    return { ...node, entries: node.entries.flatMap((entry) => this.named(entry, path)) };
  }

  /** An item of a list: repeated, or as it is. */
  private item(node: SourceNode, path: string): SourceNode[] {
    const each = eachOf(node);
    if (node.kind !== 'map' || each === undefined) return [this.walk(node, path)];
    const header = headerOf(each, join(path, 'each'), this.counting, this.report);
    const members = header && this.members(header, each, join(path, 'each'));
    if (header === undefined || members === undefined) return [];
    if (valueAt(node, 'panel') !== undefined) {
      return expandStrip(node, path, members, (text, value) => this.fill(text, path, header, value), this.report);
    }
    const body = without(node);
    return members.map((value) => this.walk(this.filled(body, path, header, value), path));
  }

  /** An entry of a map: repeated under the members' names, or as it is. */
  private named(entry: MapEntry, path: string): MapEntry[] {
    const { key, value: node } = entry;
    const each = eachOf(node);
    const here = join(path, key.text);
    if (node.kind !== 'map' || each === undefined) return [this.entry(entry, path)];
    const header = headerOf(each, join(here, 'each'), this.counting, this.report);
    const members = header && this.members(header, each, join(here, 'each'));
    if (header === undefined || members === undefined) return [];
    const names = members.map((value) => this.fill(key, here, header, value));
    if (names.some((name) => name.text === key.text)) {
      const better = header.counts ? `${key.text}(${header.variable})` : `${key.text}-(${header.variable})`;
      const takes = `a name with \`(${header.variable})\` in it, so that every member has its own`;
      this.report.at(key.place, here, {
        code: 'each-without-name',
        wrote: key.text,
        takes,
        remedy: `Write \`${better}\`.`,
      });
      return [];
    }
    const body = without(node);
    return members.map((value, index) => {
      const name = names[index] ?? key;
      return { key: name, value: this.walk(this.filled(body, here, header, value), join(path, name.text)) };
    });
  }

  /** The members of an `each`, as long as there is room for them. */
  private members(header: Header, each: SourceNode, path: string): Members | undefined {
    const members = membersOf(header, MOST_OF_ONE + 1);
    const tooMany = members.length > MOST_OF_ONE ? MOST_OF_ONE : this.left < members.length ? MOST_OF_ALL : undefined;
    if (tooMany === undefined) {
      this.left -= members.length;
      return members;
    }
    const takes =
      tooMany === MOST_OF_ONE ? `at most ${MOST_OF_ONE} members` : `at most ${MOST_OF_ALL} members in one file`;
    const wrote = each.kind === 'text' ? each.text : 'each';
    this.report.at(each.place, path, { code: 'too-many', wrote, takes, remedy: 'Ask for fewer: no card has so many.' });
    return undefined;
  }

  private fill(node: TextNode, path: string, header: Header, value: string): TextNode {
    return filledIn(node, path, header.variable, value, this.report);
  }

  /** A tree with a member's number or word in the place of the letter. */
  private filled(node: SourceNode, path: string, header: Header, value: string): SourceNode {
    if (node.kind === 'text') return this.fill(node, path, header, value);
    if (node.kind === 'list') {
      return { ...node, items: node.items.map((item, index) => this.filled(item, join(path, index), header, value)) };
    }
    const entries = node.entries.map((entry) => {
      const key = this.fill(entry.key, path, header, value);
      if (PROSE.has(entry.key.text) && entry.value.kind === 'text') return { ...entry, key };
      return { key, value: this.filled(entry.value, join(path, key.text), header, value) };
    });
    return { ...node, entries };
  }
}

function eachOf(node: SourceNode): SourceNode | undefined {
  return node.kind === 'map' ? entryAt(node, 'each')?.value : undefined;
}

function without(node: MapNode): MapNode {
  return { ...node, entries: node.entries.filter(({ key }) => key.text !== 'each') };
}
