import type { SourceNode, TextNode } from '../diagnostics/index.ts';
import type { LineName } from './piece-specs.ts';
import { isLineWord } from './point-spec.ts';
import { textOr } from './read-parts.ts';
import { type Report, suggest } from './report.ts';

/** The name of a line of the same piece. */
export function readLineName(node: SourceNode | undefined, path: string, report: Report): LineName | undefined {
  const text = textOr(node, path, 'the name of a line or edge', report);
  const line = text?.text.trim() ?? '';
  if (text === undefined || isLineWord(line)) return text && { line, place: text.place, path };
  const remedy = 'Write the name of one line, as `spine`, or an edge, as `left`.';
  report.at(text.place, path, { code: 'bad-name', wrote: text.text, takes: 'the name of a line or edge', remedy });
  return undefined;
}

/** One of some words; anything else is reported. */
export function oneOf<Word extends string>(
  node: TextNode,
  words: readonly Word[],
  path: string,
  report: Report,
): Word | undefined {
  const found = words.find((word) => word === node.text.trim());
  if (found !== undefined) return found;
  const takes = `one of ${words.join(', ')}`;
  const remedy = suggest(node.text, words, `Write ${takes}.`);
  report.at(node.place, path, { code: 'unknown-word', wrote: node.text, takes, remedy });
  return undefined;
}
