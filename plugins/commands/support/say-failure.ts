/**
 * Prints why something failed, for a person: what was said, what helps, and the way through the code where the error
 * has one. Errors about the maker's files bring none, since it would lead her to ours.
 */
export function sayFailure(error: unknown): void {
  if (!(error instanceof Error)) {
    console.error(String(error));
    return;
  }
  console.error(`\n${error.message}`);
  const { hint } = error as { hint?: unknown };
  if (typeof hint === 'string') console.error(`\n${hint}`);
  const trace = error.stack?.split('\n').filter((line) => /^\s+at /.test(line)) ?? [];
  if (trace.length > 0) console.error(`\n${trace.join('\n')}`);
  if (error.cause !== undefined) sayFailure(error.cause);
}
