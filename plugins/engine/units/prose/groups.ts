import { DASH, HYPHEN, SPACE, TIMES } from '../characters.ts';
import type { ReadOptions } from '../fault.ts';
import { type Numeral, scanNumeral } from '../numeral.ts';
import { matchAt, sticky } from '../scan.ts';
import type { Unit } from '../system.ts';
import { INCH_MARK } from '../unit.ts';
import { readProseUnit } from './prose-unit.ts';
import type { Quotes } from './quotes.ts';

/** One number, or several with an x between them, with the units that were written. */
export interface Group {
  readonly start: number;
  readonly end: number;
  readonly numerals: readonly Numeral[];
  /** One for each number; undefined where none is written. */
  readonly units: readonly (Unit | undefined)[];
}

const MOST_MEASURES = 3;

const BETWEEN = sticky(`${SPACE}{0,3}(?:[xX]|${TIMES})${SPACE}{0,3}|${SPACE}{1,3}by${SPACE}{1,3}|${HYPHEN}by${HYPHEN}`);

const GOES_ON = sticky('[:.,]\\p{N}|[/\u2044\u2215%°²³]', 'u');

const JOINER = sticky(
  `(${SPACE}{0,2}(?:${HYPHEN}|${DASH})${SPACE}{0,2})|${SPACE}{1,3}(to|or|and)${SPACE}{1,3}|,${SPACE}{1,3}(?:(and|or)${SPACE}{1,3})?`,
);

/** The number or size that starts exactly at `at`, or undefined when what stands there is a date, a ratio or the like. */
export function readGroup(text: string, at: number, options: ReadOptions, quotes: Quotes): Group | undefined {
  const numerals: Numeral[] = [];
  const units: (Unit | undefined)[] = [];
  let start = at;
  let end = at;
  while (numerals.length < MOST_MEASURES) {
    const numeral = scanNumeral(text, start, { hyphen: true, decimalComma: options.decimalComma });
    if (!numeral || goesOn(text, numeral.end)) break;
    const inSize = numerals.length > 0 || startsSecond(text, numeral.end);
    const unit = readProseUnit(text, { numeral, start, inSize }, quotes);
    numerals.push(numeral);
    units.push(unit?.unit);
    end = unit?.end ?? numeral.end;
    const times = matchAt(BETWEEN, text, end);
    if (!times) break;
    start = end + times[0].length;
  }
  return numerals.length === 0 ? undefined : { start: at, end, numerals, units };
}

/** True after `10` of `10:30`, `3/4` of `3/4/2026`, `1.2` of `1.2.3`, `5` of `5,5` or `50` of `50%`. */
function goesOn(text: string, at: number): boolean {
  return matchAt(GOES_ON, text, at) !== undefined;
}

/** Whether an x and another number follow, past an inch mark if there is one. */
function startsSecond(text: string, at: number): boolean {
  const behind = at + (matchAt(INCH_MARK, text, at)?.[0].length ?? 0);
  const times = matchAt(BETWEEN, text, behind);
  return times !== undefined && scanNumeral(text, behind + times[0].length) !== undefined;
}

/** What joins two measures that share the unit at the end. */
export interface Joiner {
  readonly kind: 'dash' | 'to' | 'or' | 'and';
  readonly end: number;
}

/** `to`, `or`, `and`, a dash or a comma between two numbers. */
export function readJoiner(text: string, at: number): Joiner | undefined {
  const match = matchAt(JOINER, text, at);
  if (!match) return undefined;
  const word = match[2] ?? match[3];
  const kind = match[1] !== undefined ? 'dash' : word === 'to' || word === 'or' ? word : 'and';
  return { kind, end: at + match[0].length };
}
