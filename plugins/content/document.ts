import type { Problem, SourceNode } from '../engine/index.ts';
import { shorten, tidyText } from './lines.ts';
import { readYaml } from './reader.ts';
import type { SourceFile } from './source-file.ts';

/** A Markdown file taken apart: its frontmatter as a tree, and its text. */
export interface ReadDocument {
  readonly tree: SourceNode | undefined;
  /** The text below the frontmatter, with `\n` line endings. */
  readonly body: string;
  /** Line of the file on which `body` begins, counted from 1. */
  readonly bodyLine: number;
  readonly problems: readonly Problem[];
}

/**
 * Splits a Markdown file at its frontmatter: the lines between a first line `---` and the next line `---`.
 *
 * Places count in the whole file. A file without frontmatter, or whose frontmatter is not closed, is a problem.
 */
export function readDocument(file: SourceFile): ReadDocument {
  const lines = tidyText(file.text).split('\n');
  const opening = lines.findIndex((line) => line.trim() !== '');
  if (opening === -1 || !isFence(lines[opening])) return withoutFrontmatter(file, lines, Math.max(0, opening));
  const closing = lines.findIndex((line, index) => index > opening && line.startsWith('---'));
  if (closing === -1) return unclosed(file, lines, opening);
  const frontmatter = lines.slice(opening + 1, closing).join('\n');
  const { tree, problems } = readYaml(frontmatter, file.path, opening + 2);
  const found = isFence(lines[closing]) ? [] : [oddFence(file, lines[closing] ?? '', closing)];
  const empty = tree === undefined && problems.length === 0 ? [emptyFrontmatter(file, opening)] : [];
  return {
    tree,
    body: lines.slice(closing + 1).join('\n'),
    bodyLine: closing + 2,
    problems: [...problems, ...empty, ...found],
  };
}

function isFence(line: string | undefined): boolean {
  return line !== undefined && /^---[ \t]*$/.test(line);
}

function withoutFrontmatter(file: SourceFile, lines: readonly string[], line: number): ReadDocument {
  const problem: Problem = {
    code: 'frontmatter-missing',
    severity: 'error',
    place: { file: file.path, line: line + 1, column: 1 },
    path: '',
    wrote: shorten(lines[line] ?? ''),
    takes: 'a first line of three hyphens `---`, then `name: value` lines, then `---` again, then the text',
    remedy: 'Begin the file with its frontmatter.',
  };
  return { tree: undefined, body: lines.join('\n'), bodyLine: 1, problems: [problem] };
}

function unclosed(file: SourceFile, lines: readonly string[], opening: number): ReadDocument {
  const blank = lines.findIndex((line, index) => index > opening && line.trim() === '');
  const near = blank === -1 ? '' : ` The first empty line is line ${blank + 1}.`;
  const problem: Problem = {
    code: 'frontmatter-not-closed',
    severity: 'error',
    place: { file: file.path, line: opening + 1, column: 1 },
    path: '',
    wrote: '--- with no second line --- after it',
    takes: 'a line of three hyphens where the frontmatter ends',
    remedy: `Put a line --- between the frontmatter and the text.${near}`,
  };
  return { tree: undefined, body: '', bodyLine: lines.length, problems: [problem] };
}

function oddFence(file: SourceFile, line: string, index: number): Problem {
  return {
    code: 'frontmatter-fence',
    severity: 'error',
    place: { file: file.path, line: index + 1, column: 1 },
    path: '',
    wrote: shorten(line),
    takes: 'three hyphens alone on the line that closes the frontmatter',
    remedy: 'Write --- and nothing else on this line.',
  };
}

function emptyFrontmatter(file: SourceFile, opening: number): Problem {
  return {
    code: 'frontmatter-empty',
    severity: 'error',
    place: { file: file.path, line: opening + 1, column: 1 },
    path: '',
    wrote: 'nothing between the two lines ---',
    takes: '`name: value` lines',
    remedy: 'Write the frontmatter there, beginning with the title.',
  };
}
