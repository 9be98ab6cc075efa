import { parseDocument } from 'yaml';
import { hasErrors, type Problem, type SourceNode } from '../engine/index.ts';
import { linesOf, tidyText } from './lines.ts';
import { syntaxProblems, tooMuch } from './yaml/syntax-problems.ts';
import { treeOf } from './yaml/tree.ts';

/** What was read; `tree` is undefined when the file is empty or its syntax is broken. */
export interface ReadYaml {
  readonly tree: SourceNode | undefined;
  readonly problems: readonly Problem[];
}

/**
 * The one YAML reader, for values and for places.
 *
 * Every scalar stays the text that was written: `2.54`, `010`, `no` and `2026-10-03` are not turned into numbers,
 * truth values or dates. Line endings and a byte order mark do not matter. Never throws.
 *
 * @param file as shown in problems
 * @param firstLine line of the file on which `text` begins, counted from 1
 */
export function readYaml(text: string, file: string, firstLine = 1): ReadYaml {
  const tidy = tidyText(text);
  const lines = linesOf(tidy, file, firstLine);
  const much = tooMuch(tidy, lines);
  if (much !== undefined) return { tree: undefined, problems: [much] };
  const document = parseDocument(tidy, {
    schema: 'failsafe',
    version: '1.2',
    // The tree reports a key that stands twice, together with the line of the first.
    uniqueKeys: false,
    prettyErrors: false,
    keepSourceTokens: false,
    logLevel: 'error',
  });
  const broken = syntaxProblems([...document.errors, ...document.warnings], document.contents, tidy, lines);
  if (hasErrors(broken)) return { tree: undefined, problems: broken };
  const { tree, problems } = treeOf(document.contents, tidy, lines);
  return { tree, problems: [...broken, ...problems] };
}
