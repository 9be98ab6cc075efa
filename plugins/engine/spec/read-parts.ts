import { describeNode, type ListNode, type MapNode, type SourceNode, type TextNode } from '../diagnostics/index.ts';
import { type Complaint, isSplitByComma, type Report, splitByComma } from './report.ts';
import { isMember, isName, isPlaceWord, isReserved } from './words.ts';

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
  if (isMember(name)) {
    if (!isReserved(name, sizes)) return true;
    const remedy = `\`${name}\` is a word of the fold language. Choose another name, as \`${name}-1\`.`;
    report.at(key.place, path, { code: 'reserved-name', wrote: name, takes, remedy });
    return false;
  }
  if (isSplitByComma(name)) report.at(key.place, path, splitByComma(name, takes));
  else if (/^\p{L}[\p{L}\p{N}-]*\(/u.test(name)) {
    const remedy = `Only a number may stand in the brackets of a name. Add \`each: k from 1 to 3\` beside it, with the letter that stands there.`;
    report.at(key.place, path, { code: 'number-missing', wrote: name, takes, remedy });
  } else {
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

/** As `checkName`, for what lies on a piece: a word for an edge, a corner or the centre would mean that place. */
export function checkPlaceName(key: TextNode, path: string, what: string, report: Report): boolean {
  if (!isPlaceWord(key.text)) return checkName(key, path, what, false, report);
  const takes = `${what} other than edges, corners and centre`;
  const remedy = `\`${key.text}\` is a place on every piece. Call it \`${key.text}-1\`, say.`;
  report.at(key.place, path, { code: 'edge-name', wrote: key.text, takes, remedy });
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
