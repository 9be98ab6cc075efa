import { HYPHEN, SPACE } from '../characters.ts';
import type { Numeral } from '../numeral.ts';
import { matchAt, sticky } from '../scan.ts';
import type { Unit } from '../system.ts';
import { INCH_MARK, readUnit } from '../unit.ts';
import { isUnitIn } from './preposition.ts';
import type { Quotes } from './quotes.ts';

/** A number whose unit is sought. */
export interface Candidate {
  readonly numeral: Numeral;
  readonly start: number;
  /** Part of `5 x 7`, which makes a doubtful `in` a unit. */
  readonly inSize: boolean;
}

/** A unit after a number in running text. */
export interface ProseUnit {
  readonly unit: Unit;
  readonly end: number;
}

/** Abbreviations are taken in lower case or all capitals, so that `Top 5 In Winter` stays; whole words in any case. */
const WORD = sticky(
  "(in|mm|cm|MM|CM|[Ii]nch(?:es)?|INCH(?:ES)?|[Mm]illimet(?:re|er)s?|[Cc]entimet(?:re|er)s?)(?![\\p{L}\\p{N}_²³^\u2032']|/\\p{L}|:\\S)",
  'u',
);

const GAP = sticky(`${HYPHEN}|${SPACE}{0,3}`);
const WORD_START = sticky('\\p{L}(?!\\d)', 'u');
const STOP_INSIDE = sticky(`\\.(?:${SPACE}+[\\p{Ll}\\p{N}(]|[,;:])`, 'u');

/** The unit of a number that ends at `candidate.numeral.end`, or undefined when what follows is not one. */
export function readProseUnit(text: string, candidate: Candidate, quotes: Quotes): ProseUnit | undefined {
  const at = candidate.numeral.end;
  return readMark(text, candidate, quotes) ?? readWord(text, at, candidate);
}

function readMark(text: string, { numeral, inSize }: Candidate, quotes: Quotes): ProseUnit | undefined {
  const at = numeral.end;
  const mark = matchAt(INCH_MARK, text, at);
  if (!mark) return undefined;
  const end = at + mark[0].length;
  if (mark[0] === '“' && matchAt(WORD_START, text, end)) return undefined;
  if (!quotes.isInchMark(at, numeral.shape === 'whole' && !inSize)) return undefined;
  quotes.passOver(end);
  return { unit: 'in', end };
}

function readWord(text: string, at: number, candidate: Candidate): ProseUnit | undefined {
  const gap = matchAt(GAP, text, at)?.[0] ?? '';
  const start = at + gap.length;
  const word = matchAt(WORD, text, start)?.[0];
  const read = word === undefined ? undefined : readUnit(text, start);
  if (word === undefined || read?.kind !== 'unit') return undefined;
  const end = start + word.length + (abbreviates(text, start + word.length, word) ? 1 : 0);
  if (word === 'in' && !isUnitIn(text, { ...candidate, gap, end })) return undefined;
  return { unit: read.unit, end };
}

/** Whether the full stop at `at` belongs to the abbreviation and not to the sentence. */
function abbreviates(text: string, at: number, word: string): boolean {
  if (text[at] !== '.' || word.length > 2) return false;
  return matchAt(STOP_INSIDE, text, at) !== undefined;
}
