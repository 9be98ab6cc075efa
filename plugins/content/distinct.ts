import { comparePlaces, type Problem } from '../engine/index.ts';

/** Each problem once: the two editions of a card find the same slip. */
export function distinct(problems: readonly Problem[]): readonly Problem[] {
  const seen = new Set<string>();
  return problems.filter((problem) => {
    const { place, code, wrote, remedy } = problem;
    const mark = JSON.stringify([place.file, place.line, place.column, code, wrote, remedy]);
    if (seen.has(mark)) return false;
    seen.add(mark);
    return true;
  });
}

/**
 * Of problems that differ only in the units they are told in, the first: a value out of its range is out of it in both
 * editions.
 */
export function distinctSlips(problems: readonly Problem[]): readonly Problem[] {
  const seen = new Set<string>();
  return problems.filter(({ place, code }) => {
    const mark = JSON.stringify([place.file, place.line, place.column, code]);
    if (seen.has(mark)) return false;
    seen.add(mark);
    return true;
  });
}

/** Each problem once, in reading order. */
export function sortedProblems(problems: readonly Problem[]): readonly Problem[] {
  return [...distinct(problems)].sort((a, b) => comparePlaces(a.place, b.place));
}
