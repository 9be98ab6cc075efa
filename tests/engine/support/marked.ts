import type { Place, Problem } from '../../../plugins/engine/index.ts';

/** Takes the `»` out of a text; it stands where a problem is expected. */
export function marked(text: string, file: string): { text: string; place: Place } {
  const at = text.indexOf('»');
  if (at < 0 || text.indexOf('»', at + 1) >= 0) throw new Error(`one » is needed: ${text}`);
  const before = text.slice(0, at).split('\n');
  const place = { file, line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
  return { text: text.replace('»', ''), place };
}

/** The only problem there is. */
export function only(problems: readonly Problem[]): Problem {
  const [problem] = problems;
  if (problem === undefined || problems.length > 1) {
    throw new Error(
      `${problems.length} problems: ${problems.map(({ code, remedy }) => `${code}: ${remedy}`).join('; ')}`,
    );
  }
  return problem;
}
