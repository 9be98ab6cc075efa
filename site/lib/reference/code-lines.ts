import { linesOf } from './workshop.ts';

/** A line of a file as it is shown. */
export interface CodeLine {
  readonly text: string;
  /** How far it is set in, in characters: what does not fit on a narrow page goes on below, further in than this. */
  readonly indent: number;
  /** True for the line that a problem is about. */
  readonly slip: boolean;
}

/** Indents for which there is a style; deeper lines have the last. */
const DEEPEST = 12;

/** Longer lines are cut: they are examples of what is too long. */
const LONGEST = 240;

export function codeLines(text: string, slip?: number): readonly CodeLine[] {
  return linesOf(text).map((line, index) => ({
    text: line.length > LONGEST ? `${line.slice(0, LONGEST)} …` : line,
    indent: Math.min(DEEPEST, line.length - line.trimStart().length),
    slip: index === slip,
  }));
}
