import { formatProblems, type Problem } from '../engine/index.ts';

/** Everything that is wrong with the maker's files, as one error: the build ends with it, the browser shows it. */
export class ContentError extends Error {
  override readonly name = 'ContentError';
  readonly problems: readonly Problem[];

  constructor(problems: readonly Problem[]) {
    const count = problems.filter((problem) => problem.severity === 'error').length;
    super(`${count === 1 ? 'One thing needs' : `${count} things need`} your attention.\n\n${formatProblems(problems)}`);
    this.problems = problems;
    // The maker's files are at fault: a stack would lead her to ours.
    this.stack = '';
  }
}

/** What a development server sends to the browser so that the problems are shown over the page. */
export function overlayOf(error: unknown): {
  message: string;
  stack: string;
  loc?: { file: string; line: number; column: number };
} {
  const { message } = error instanceof Error ? error : new Error(String(error));
  const first = error instanceof ContentError ? error.problems.find(({ severity }) => severity === 'error') : undefined;
  const stack = error instanceof ContentError ? '' : ((error as Error).stack ?? '');
  return first === undefined ? { message, stack } : { message, stack, loc: { ...first.place } };
}

/** A Markdown plugin, or the renderer itself, threw while it worked on a file. */
export function renderingProblem(file: string, line: number, error: unknown): Problem {
  const message = error instanceof Error ? error.message : String(error);
  // The renderer names the file by its address before the message proper.
  const [, plain = message] = /^Failed to parse Markdown file "[^"]*":\n([\s\S]*)$/.exec(message) ?? [];
  const at = (error as { line?: unknown } | null)?.line;
  return {
    code: 'text-not-rendered',
    severity: 'error',
    place: { file, line: typeof at === 'number' ? at : line, column: 1 },
    path: '',
    wrote: 'a text that a Markdown plugin stopped at',
    takes: `a text that every Markdown plugin can work on; this one said: ${plain.split('\n', 1)[0]}`,
    remedy: 'Change the text, or mend the plugin. The place may be anywhere below.',
  };
}
