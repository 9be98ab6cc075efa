import { LineCounter } from 'yaml';
import type { Place } from '../engine/index.ts';

/** Turns offsets of a text into places of the file that the text is part of. */
export interface Lines {
  placeOf(offset: number): Place;
  /** The whole line an offset stands on, without the spaces round it; shortened when very long. */
  lineOf(offset: number): string;
}

/** Longest piece of a line that is repeated in a message. */
const SHOWN_CHARACTERS = 100;

/** `firstLine` is the line of the file on which the text begins, counted from 1. */
export function linesOf(text: string, file: string, firstLine: number): Lines {
  const counter = new LineCounter();
  counter.addNewLine(0);
  for (let at = text.indexOf('\n'); at !== -1; at = text.indexOf('\n', at + 1)) counter.addNewLine(at + 1);
  return {
    placeOf(offset) {
      const { line, col } = counter.linePos(Math.min(offset, text.length));
      return { file, line: Math.max(1, line) + firstLine - 1, column: Math.max(1, col) };
    },
    lineOf(offset) {
      const start = text.lastIndexOf('\n', Math.max(0, offset - 1)) + 1;
      const end = text.indexOf('\n', Math.max(offset, start));
      return shorten(text.slice(start, end === -1 ? undefined : end).trim());
    },
  };
}

/** One line of what was written, fit to be shown in a message; `nothing` when it is empty. */
export function shorten(text: string): string {
  const line = text.replace(/\s+/g, ' ').trim();
  if (line === '') return 'nothing';
  const characters = [...line];
  return characters.length <= SHOWN_CHARACTERS ? line : `${characters.slice(0, SHOWN_CHARACTERS - 1).join('')}…`;
}

/** The same text with every line ending as `\n` and without a byte order mark, so that lines count as an editor shows them. */
export function tidyText(text: string): string {
  return text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n');
}
