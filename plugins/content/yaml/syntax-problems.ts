import type { YAMLError } from 'yaml';
import type { Problem } from '../../engine/index.ts';
import type { Lines } from '../lines.ts';
import { answerTo, TOO_DEEP } from './syntax-answers.ts';

/** Most brackets that may stand open at once; parsing takes time by the square of them. */
const MOST_OPEN_BRACKETS = 64;

/** Most characters that are parsed: parsing takes time by the square of what stands on a line. */
export const MOST_CHARACTERS = 100_000;

/** Text beyond any use, in its length or in brackets within brackets. Looked for before parsing. */
export function tooMuch(text: string, lines: Lines): Problem | undefined {
  return tooLong(text, lines) ?? tooDeep(text, lines);
}

function tooLong({ length }: string, lines: Lines): Problem | undefined {
  if (length <= MOST_CHARACTERS) return undefined;
  return {
    code: 'too-long',
    severity: 'error',
    place: lines.placeOf(MOST_CHARACTERS),
    path: '',
    wrote: `${length} characters`,
    takes: `at most ${MOST_CHARACTERS}`,
    remedy: 'Divide this into several files, or move what is for reading below the frontmatter.',
  };
}

function tooDeep(text: string, lines: Lines): Problem | undefined {
  let open = 0;
  for (const { index, 0: bracket } of text.matchAll(/[[\]{}]/g)) {
    open = bracket === '[' || bracket === '{' ? open + 1 : Math.max(0, open - 1);
    if (open <= MOST_OPEN_BRACKETS) continue;
    const { takes, remedy, code } = TOO_DEEP;
    return {
      code,
      severity: 'error',
      place: lines.placeOf(index),
      path: '',
      wrote: lines.lineOf(index),
      takes,
      remedy,
    };
  }
  return undefined;
}

/**
 * Errors of YAML's syntax in the house form.
 *
 * One slip makes YAML stumble several times on a line; only the first of each line is told.
 */
export function syntaxProblems(
  errors: readonly YAMLError[],
  contents: unknown,
  text: string,
  lines: Lines,
): readonly Problem[] {
  const told = new Set<number>();
  const problems: Problem[] = [];
  for (const error of [...errors].sort((a, b) => a.pos[0] - b.pos[0])) {
    const stumbled = lines.placeOf(error.pos[0]).line;
    if (told.has(stumbled)) continue;
    const answer = answerTo({ error, contents, text, lines });
    const at = answer.at ?? error.pos[0];
    const place = lines.placeOf(at);
    if (told.has(place.line)) continue;
    told.add(place.line).add(stumbled);
    problems.push({
      code: answer.code,
      severity: 'error',
      place,
      path: '',
      wrote: answer.wrote ?? lines.lineOf(at),
      takes: answer.takes,
      remedy: answer.remedy,
    });
  }
  return problems;
}
