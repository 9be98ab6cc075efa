import { findMeasures, spokenLengths, systemOf } from '../../plugins/engine/index.ts';

/** A stretch of a sentence: plain text, a figure with its spoken form, or a name as the maker wrote it. */
export type SentencePart =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'figure'; readonly shown: string; readonly spoken: string }
  | { readonly kind: 'name'; readonly text: string };

/** A sentence of the engine taken apart for the page. Names stand between backticks, lengths as `5 1/2 in`. */
export function sentenceParts(sentence: string): readonly SentencePart[] {
  return sentence.split(/`([^`]*)`/).flatMap((piece, index): readonly SentencePart[] => {
    if (index % 2 === 1) return [{ kind: 'name', text: piece }];
    return figuresIn(piece);
  });
}

function figuresIn(text: string): readonly SentencePart[] {
  const parts: SentencePart[] = [];
  let done = 0;
  const plain = (end: number): void => {
    if (end > done) parts.push({ kind: 'text', text: text.slice(done, end) });
  };
  for (const { start, end, lengths, unit } of findMeasures(text)) {
    if (lengths.length === 0) continue;
    plain(start);
    parts.push({
      kind: 'figure',
      shown: text.slice(start, end),
      spoken: spokenLengths(lengths, systemOf(unit)),
    });
    done = end;
  }
  plain(text.length);
  return parts;
}
