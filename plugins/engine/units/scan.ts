import { SPACE } from './characters.ts';

/** A pattern for `matchAt`. Made once, as a constant beside its use: making one costs far more than using it. */
export function sticky(source: string, flags = ''): RegExp {
  return new RegExp(source, `y${flags}`);
}

/** The match of a sticky pattern that starts exactly at `at`, or undefined. */
export function matchAt(pattern: RegExp, text: string, at: number): RegExpExecArray | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text) ?? undefined;
}

const SPACES = sticky(`${SPACE}+`);

/** Where the spaces that start at `at` end. */
export function skipSpaces(text: string, at: number): number {
  return at + (matchAt(SPACES, text, at)?.[0].length ?? 0);
}
