import { DIGIT, FRACTION_CHARACTER } from '../characters.ts';
import { matchAt, sticky } from '../scan.ts';

/** Tells quotation marks from inch marks, reading a text once from left to right. */
export interface Quotes {
  /** Whether the mark at `at`, straight after a number, means inches rather than the end of a quotation. */
  isInchMark(at: number, afterWhole: boolean): boolean;
  /** Goes on behind a mark that was taken for inches. */
  passOver(end: number): void;
}

const NUMBER_END = sticky(`${DIGIT}|${FRACTION_CHARACTER}`);

const OPENERS = '"“„‟';
const CLOSERS = '"”“';

export function followQuotes(text: string): Quotes {
  let seen = 0;
  let open: '"' | '“' | undefined;

  const readTo = (end: number): void => {
    for (; seen < end; seen++) {
      const character = text[seen] ?? '';
      if (open !== undefined && closes(open, character)) open = undefined;
      else if (open === undefined && OPENERS.includes(character) && !afterNumber(text, seen)) {
        open = character === '"' ? '"' : '“';
      }
    }
  };

  return {
    isInchMark(at, afterWhole) {
      readTo(at);
      const character = text[at] ?? '';
      if (open === undefined || !closes(open, character)) return true;
      return !afterWhole && closedLater(text, at + 1, open);
    },
    passOver(end) {
      seen = Math.max(seen, end);
    },
  };
}

function closes(open: '"' | '“', character: string): boolean {
  return open === '"' ? character === '"' : character !== '"' && CLOSERS.includes(character);
}

function afterNumber(text: string, at: number): boolean {
  return at > 0 && matchAt(NUMBER_END, text, at - 1) !== undefined;
}

/** True when the next mark of the kind ends a quotation, so that the one before it need not. */
function closedLater(text: string, from: number, open: '"' | '“'): boolean {
  for (let at = from; at < text.length; at++) {
    if (closes(open, text[at] ?? '')) return /\S/.test(text[at - 1] ?? ' ');
    if (at - from > FAR) return false;
  }
  return false;
}

/** A quotation that has not ended after so many characters is not looked at further. */
const FAR = 400;
