import { comparePlaces, formatPlace, type Place } from './place.ts';

/**
 * Something in the maker's files that cannot be read or understood.
 *
 * A card that can be understood but cannot work is not a problem but a finding (see `dryfit`).
 */
export interface Problem {
  /** Stable and kebab-case, for tests and for looking up the cure. */
  readonly code: string;
  /** A warning is shown and the build goes on; an error stops it. */
  readonly severity: 'error' | 'warning';
  readonly place: Place;
  /** Where in the frontmatter, as `cards[1].stock.cover`; empty in the body of a post. */
  readonly path: string;
  /** What the maker wrote, verbatim. */
  readonly wrote: string;
  /** What is understood in this place. */
  readonly takes: string;
  /** What to do now, as an instruction. */
  readonly remedy: string;
}

/** The problem as shown in a terminal: place and path, then the three answers. Ends without a newline. */
export function formatProblem(problem: Problem): string {
  const where = problem.path === '' ? formatPlace(problem.place) : `${formatPlace(problem.place)}  ${problem.path}`;
  const mark = problem.severity === 'warning' ? ' (warning)' : '';
  return [
    `${where}${mark}`,
    `  You wrote  ${problem.wrote}`,
    `  It takes   ${problem.takes}`,
    `  Do this    ${problem.remedy}`,
  ].join('\n');
}

/** All problems in reading order, a blank line between. */
export function formatProblems(problems: readonly Problem[]): string {
  return [...problems]
    .sort((a, b) => comparePlaces(a.place, b.place))
    .map(formatProblem)
    .join('\n\n');
}

export function hasErrors(problems: readonly Problem[]): boolean {
  return problems.some((problem) => problem.severity === 'error');
}
