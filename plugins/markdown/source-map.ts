import { decodeNamedCharacterReference } from 'decode-named-character-reference';

/** How the characters of a text stand in the Markdown they were read from. */
export interface SourceMap {
  /** Offset in the source of each character of the text, and of its end: one more than the text is long. */
  readonly offsets: readonly number[];
  /** For each character of the text: it was written with a backslash before it, which Markdown took away. */
  readonly escaped: readonly boolean[];
}

const PUNCTUATION = /[!-/:-@[-`{-~]/;
const REFERENCE = /&(?:#(\d{1,7})|#[xX]([\da-fA-F]{1,6})|([\da-zA-Z]+));/y;

/**
 * Walks a text node and its source side by side: Markdown takes away backslashes before punctuation, turns `&frac12;`
 * into a character, and takes spaces and block quote marks from the ends and beginnings of lines.
 *
 * Line endings are `\n`. Undefined when the two do not belong together, as for a text that another plugin has changed.
 */
export function sourceMap(text: string, source: string): SourceMap | undefined {
  const offsets: number[] = [];
  const escaped: boolean[] = [];
  let at = 0;
  let i = 0;
  while (i < text.length) {
    const step = stepAt(text, i, source, at);
    if (step === undefined) return undefined;
    for (let k = 0; k < step.characters; k++) {
      offsets.push(step.from);
      escaped.push(step.escaped);
    }
    i += step.characters;
    at = step.to;
  }
  return { offsets: [...offsets, at], escaped };
}

interface Step {
  /** How many characters of the text. */
  readonly characters: number;
  /** Where they stand in the source. */
  readonly from: number;
  readonly to: number;
  readonly escaped: boolean;
}

function stepAt(text: string, i: number, source: string, at: number): Step | undefined {
  const wanted = text[i];
  if (wanted === '\n') return lineEndAt(source, at);
  const written = source[at];
  if (written === '\\' && source[at + 1] === wanted && PUNCTUATION.test(wanted ?? '')) {
    return { characters: 1, from: at, to: at + 2, escaped: true };
  }
  if (written === '&') {
    REFERENCE.lastIndex = at;
    const reference = REFERENCE.exec(source);
    const decoded = reference === null ? undefined : decode(reference);
    if (reference !== null && decoded !== undefined && text.startsWith(decoded, i)) {
      return { characters: decoded.length, from: at, to: at + reference[0].length, escaped: false };
    }
  }
  return written === wanted ? { characters: 1, from: at, to: at + 1, escaped: false } : undefined;
}

function lineEndAt(source: string, at: number): Step | undefined {
  const end = /[ \t]*\n[ \t>]*/y;
  end.lastIndex = at;
  const found = end.exec(source);
  return found === null ? undefined : { characters: 1, from: at, to: at + found[0].length, escaped: false };
}

function decode([, decimal, hexadecimal, name]: RegExpExecArray): string | undefined {
  if (name !== undefined) return decodeNamedCharacterReference(name) || undefined;
  const code = decimal === undefined ? Number.parseInt(hexadecimal ?? '', 16) : Number.parseInt(decimal, 10);
  return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : undefined;
}
