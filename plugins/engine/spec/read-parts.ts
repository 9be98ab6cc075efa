import { describeNode, type ListNode, type MapNode, type SourceNode, type TextNode } from '../diagnostics/index.ts';
import { type Complaint, isSplitByComma, notYet, type Report, splitByComma } from './report.ts';
import { isName, isReserved } from './words.ts';

/** Names one fold may have in one map. Keeps every walk over them short. */
export const MOST_NAMES = 500;

/** A text that is not empty; anything else is reported. */
export function textOr(
  node: SourceNode | undefined,
  path: string,
  takes: string,
  report: Report,
): TextNode | undefined {
  if (node === undefined) return undefined;
  if (node.kind === 'text' && node.text.trim() !== '') return node;
  report.at(node.place, path, wrongShape(node, takes));
  return undefined;
}

export function mapOr(node: SourceNode | undefined, path: string, takes: string, report: Report): MapNode | undefined {
  if (node === undefined || node.kind === 'map') return node;
  report.at(node.place, path, wrongShape(node, takes));
  return undefined;
}

export function listOr(
  node: SourceNode | undefined,
  path: string,
  takes: string,
  report: Report,
): ListNode | undefined {
  if (node === undefined || node.kind === 'list') return node;
  report.at(node.place, path, wrongShape(node, takes));
  return undefined;
}

export function wrongShape(node: SourceNode, takes: string): Complaint {
  const wrote = describeNode(node);
  return { code: 'wrong-shape', wrote, takes, remedy: `Write ${takes} here.` };
}

/** Checks a name that the maker gives to something. `sizes`: it names a size, so that `width` and `height` may be used. */
export function checkName(key: TextNode, path: string, what: string, sizes: boolean, report: Report): boolean {
  const name = key.text;
  const takes = `${what}: letters, digits and hyphens, a letter first`;
  if (isName(name)) {
    if (!isReserved(name, sizes)) return true;
    const remedy = `\`${name}\` is a word of the fold language. Choose another name, as \`${name}-1\`.`;
    report.at(key.place, path, { code: 'reserved-name', wrote: name, takes, remedy });
    return false;
  }
  if (isSplitByComma(name)) report.at(key.place, path, splitByComma(name, takes));
  else if (/^\p{L}[\p{L}\p{N}-]*\(/u.test(name)) report.at(key.place, path, notYet(name, takes));
  else {
    const better = name.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-+|-+$/gu, '');
    const remedy =
      isName(better) && !isReserved(better, sizes)
        ? `Write \`${better}\`.`
        : /^\p{N}/u.test(better)
          ? 'Begin the name with a letter.'
          : 'Choose a name such as `front`.';
    report.at(key.place, path, { code: 'bad-name', wrote: name === '' ? 'nothing' : name, takes, remedy });
  }
  return false;
}

/** Entries of a map of named things, as many as a fold may have. */
export function namedEntries(map: MapNode, path: string, report: Report): MapNode['entries'] {
  if (map.entries.length <= MOST_NAMES) return map.entries;
  report.at(map.place, path, {
    code: 'too-many',
    wrote: `${map.entries.length} entries`,
    takes: `at most ${MOST_NAMES}`,
    remedy: 'Split this into several folds.',
  });
  return map.entries.slice(0, MOST_NAMES);
}
