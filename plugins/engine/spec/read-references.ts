import { placeWithin, type SourceNode, type TextNode } from '../diagnostics/index.ts';
import type { LaySpec, LineWord, RefSpec } from './assembly-specs.ts';
import type { PaperSide } from './card-types.ts';
import { textOr, wrongShape } from './read-parts.ts';
import { join, type Report, suggest } from './report.ts';

const SIDES: ReadonlyMap<string, PaperSide> = new Map([
  ['face', 'face'],
  ['back', 'back'],
  ['inside', 'face'],
  ['outside', 'back'],
]);

/** More references than one list of a card has. */
const MOST_REFERENCES = 100;

/** A stretch of a text as a text of its own, at its own place. */
export function stretch(node: TextNode, start: number, end: number): TextNode {
  return { kind: 'text', text: node.text.slice(start, end), place: placeWithin(node, start), quoted: false };
}

/** `base.front`, `back of base.front`, `outside of card`. Inside and outside of a folded base are its face and its back. */
export function readReference(
  node: SourceNode | undefined,
  path: string,
  takes: string,
  report: Report,
): RefSpec | undefined {
  const text = textOr(node, path, takes, report);
  if (text === undefined) return undefined;
  const of = /^(\s*)(\S+)\s+of\s+(\S.*)$/u.exec(text.text);
  const word = of?.[2] ?? '';
  const side = SIDES.get(word);
  if (of && side === undefined) {
    const remedy = suggest(word, SIDES.keys(), 'Write `back of`, `face of`, `inside of` or `outside of`.');
    report.at(text.place, path, {
      code: 'unknown-word',
      wrote: text.text,
      takes: '`back of` or `face of` a panel',
      remedy,
    });
    return undefined;
  }
  const start = of ? text.text.length - (of[3] ?? '').length : text.text.length - text.text.trimStart().length;
  const name = stretch(text, start, text.text.trimEnd().length);
  if (!/\s/u.test(name.text)) return { node: name, side, path };
  report.at(name.place, path, {
    code: 'bad-reference',
    wrote: text.text,
    takes,
    remedy: 'Write one name: the piece, then a dot and its band, as `base.front`.',
  });
  return undefined;
}

/** One reference, several with spaces between, or a list. */
export function readReferences(node: SourceNode | undefined, path: string, takes: string, report: Report): RefSpec[] {
  return wordsOf(node, path, takes, report).flatMap((word) => readReference(word.node, word.path, takes, report) ?? []);
}

/** Words with spaces between them, or a list of texts of one word each. */
export function wordsOf(node: SourceNode | undefined, path: string, takes: string, report: Report): LineWord[] {
  if (node === undefined) return [];
  if (node.kind === 'list') {
    if (node.items.length === 0 || node.items.length > MOST_REFERENCES) {
      const many = node.items.length === 0 ? takes : `at most ${MOST_REFERENCES} names`;
      report.at(node.place, path, wrongShape(node, many));
      return [];
    }
    return node.items.flatMap((item, index) => {
      const text = textOr(item, join(path, index), takes, report);
      return text ? [{ node: trimmed(text), path: join(path, index) }] : [];
    });
  }
  const text = textOr(node, path, takes, report);
  if (text === undefined) return [];
  return [...text.text.matchAll(/\S+/gu)]
    .slice(0, MOST_REFERENCES)
    .map((match) => ({ node: stretch(text, match.index, match.index + match[0].length), path }));
}

export function trimmed(node: TextNode): TextNode {
  const start = node.text.length - node.text.trimStart().length;
  return stretch(node, start, node.text.trimEnd().length);
}

const TAKES_LAY = '`LINE along LINE`: a line of what is laid, then one of what receives it, as `fold along spine`';

/** `lay: LINE along LINE`. */
export function readLay(node: SourceNode | undefined, path: string, report: Report): LaySpec | undefined {
  const text = textOr(node, path, TAKES_LAY, report);
  if (text === undefined) return undefined;
  const parts = /^(\s*)(\S+)(\s+along\s+)(\S+)\s*$/u.exec(text.text);
  if (parts === null) {
    const remedy = 'Write the line of the part, `along`, and the line it comes to lie on: `fold along spine`.';
    report.at(text.place, path, { code: 'bad-lay', wrote: text.text, takes: TAKES_LAY, remedy });
    return undefined;
  }
  const [lead, line, word, along] = [parts[1] ?? '', parts[2] ?? '', parts[3] ?? '', parts[4] ?? ''];
  const second = lead.length + line.length + word.length;
  return {
    line: { node: stretch(text, lead.length, lead.length + line.length), path },
    along: { node: stretch(text, second, second + along.length), path },
  };
}
