import { type Fault, faultAt, type ReadOptions } from '../fault.ts';
import type { Length } from '../length.ts';
import { NUMBER_TAKES } from '../numeral-slips.ts';
import { matchAt, sticky } from '../scan.ts';
import type { Unit } from '../system.ts';
import { lengthOf } from '../unit.ts';
import { type Group, type Joiner, readGroup, readJoiner } from './groups.ts';
import { followQuotes, type Quotes } from './quotes.ts';
import { nextStart, skipRun, standsFree } from './starts.ts';
import { MEASURED_BEFORE } from './words.ts';

/** A measurement found in running text. */
export interface Measure {
  /** The part of the text it takes: from `start` up to but not including `end`. */
  readonly start: number;
  readonly end: number;
  readonly kind: 'length' | 'size';
  /** One for a length, two or three for a size; none when the measurement was refused. */
  readonly lengths: readonly Length[];
  /** The unit it was written in; of a range or a list, the one written at its end. */
  readonly unit: Unit;
  /** Offsets count in the whole text. */
  readonly faults: readonly Fault[];
}

/**
 * The measurements in a piece of running text, in order.
 *
 * Only numbers with a unit: `5 1/2 in`, `5½"`, `4 1/4 x 5 1/2 in`, `3 mm`. Both ends of a range and each measure of a list
 * (`1/8 to 1/4 in`, `2 1/8, 4 1/4 and 6 3/8 in`) are a measurement of their own. Times, dates, ratios, fractions of a cup and
 * the preposition `in` are left alone. Never throws; time grows with the length of the text.
 */
export function findMeasures(text: string, options: ReadOptions = {}): Measure[] {
  const quotes = followQuotes(text);
  const found: Measure[] = [];
  let ended = -1;
  let from = 0;
  for (let at = nextStart(text, from); at !== undefined; at = nextStart(text, from)) {
    const { measures, looked } = standsFree(text, at, ended) ? readChain(text, at, options, quotes) : NOTHING;
    found.push(...measures);
    ended = measures.at(-1)?.end ?? ended;
    from = measures.at(-1)?.end ?? skipRun(text, looked ?? at);
  }
  return found;
}

/** What is found from one number on. Without a unit none is, and `looked` is the last number that was looked at. */
interface Chain {
  readonly measures: readonly Measure[];
  readonly looked?: number;
}

const NOTHING: Chain = { measures: [] };

/** Measures that share the unit at the end of the last. */
function readChain(text: string, at: number, options: ReadOptions, quotes: Quotes): Chain {
  const comma = readCommaMeasure(text, at, options, quotes);
  if (comma) return { measures: [comma] };
  const groups: Group[] = [];
  const joiners: Joiner[] = [];
  let start = at;
  while (groups.length < LONGEST_LIST) {
    const group = readGroup(text, start, options, quotes);
    if (!group) break;
    groups.push(group);
    if (group.units.some((unit) => unit !== undefined)) return { measures: measuresOf(text, groups, joiners) };
    const joiner = readJoiner(text, group.end);
    if (!joiner) break;
    joiners.push(joiner);
    start = joiner.end;
  }
  return { measures: [], looked: groups.at(-1)?.start ?? at };
}

/** Measures in a row that share a unit. */
const LONGEST_LIST = 12;

const COMMAS = sticky('\\d{1,9}(?:,\\d{1,9})+(?!\\d)');

function measuresOf(text: string, groups: readonly Group[], joiners: readonly Joiner[]): Measure[] {
  const last = groups.at(-1);
  const unit = last?.units.findLast((one) => one !== undefined);
  if (!last || !unit) return [];
  const split = dashBeforeFraction(text, groups, joiners, unit);
  if (split) return [split];
  const led = MEASURED_BEFORE.test(text.slice(Math.max(0, (groups[0]?.start ?? 0) - 16), groups[0]?.start));
  let first = groups.length - 1;
  while (first > 0 && shares(groups[first - 1], joiners[first - 1], led)) first--;
  return groups.slice(first).map((group) => measureOf(text, group, unit));
}

/** Whether a number shares the unit written after a later one. `2 and 3 in` alone may count two of something. */
function shares(group: Group | undefined, joiner: Joiner | undefined, led: boolean): boolean {
  if (!group || !joiner) return false;
  const bare = group.numerals.length === 1 && group.numerals[0]?.shape === 'whole';
  return joiner.kind !== 'and' || led || !bare;
}

function measureOf(text: string, group: Group, unit: Unit): Measure {
  const { start, end, numerals, units } = group;
  const faults: Fault[] = numerals.flatMap((numeral) => numeral.faults);
  const written = new Set(units.filter((one) => one !== undefined));
  if (written.size > 1) {
    const takes = 'a size in one unit';
    const remedy = 'The measures are in different units. Write them in one, unless you meant it so.';
    faults.push(faultAt(text, start, end, { code: 'size-mixed-units', severity: 'warning', takes, remedy }));
  }
  const refused = faults.some((fault) => fault.severity === 'error');
  const lengths = numerals.map((numeral, i) => lengthOf(numeral.value, units[i] ?? unit));
  return { start, end, kind: numerals.length > 1 ? 'size' : 'length', lengths: refused ? [] : lengths, unit, faults };
}

/** `5–1/2 in`: five to half an inch, or five and a half? */
function dashBeforeFraction(
  text: string,
  groups: readonly Group[],
  joiners: readonly Joiner[],
  unit: Unit,
): Measure | undefined {
  const whole = groups.at(-2)?.numerals[0];
  const fraction = groups.at(-1)?.numerals[0];
  const start = groups.at(-2)?.start;
  const end = groups.at(-1)?.end;
  if (!whole || !fraction || start === undefined || end === undefined || joiners.at(-1)?.kind !== 'dash')
    return undefined;
  if (whole.shape !== 'whole' || fraction.shape !== 'fraction' || fraction.value.gte(whole.value)) return undefined;
  const remedy =
    'A dash may mean a range. For a whole number and a fraction put a space between them; for a range write the smaller first.';
  const fault = faultAt(text, start, end, {
    code: 'number-dash',
    takes: 'a measurement, as `5 1/2 in`',
    remedy,
  });
  return { start, end, kind: 'length', lengths: [], unit, faults: [fault] };
}

/** `5,5 cm` where the language has no decimal comma: refused with a question, if a unit shows that it is a measurement. */
function readCommaMeasure(text: string, at: number, options: ReadOptions, quotes: Quotes): Measure | undefined {
  if (options.decimalComma) return undefined;
  const comma = matchAt(COMMAS, text, at)?.[0];
  if (comma === undefined) return undefined;
  const group = readGroup(text, at + comma.lastIndexOf(',') + 1, options, quotes);
  const unit = group?.units.findLast((one) => one !== undefined);
  if (!group || !unit || /^\s*in$/.test(text.slice(at + comma.length, group.end))) return undefined;
  const point = comma.replace(',', '.');
  const thousands = /^\d{1,3}(?:,\d{3})+$/.test(comma) ? ` For thousands write \`${comma.replace(/,/g, '')}\`.` : '';
  const remedy = `Write \`${point}\` with a point, or state a language that has decimal commas.${thousands}`;
  const fault = faultAt(text, at, group.end, { code: 'number-comma', takes: NUMBER_TAKES, remedy });
  return { start: at, end: group.end, kind: 'length', lengths: [], unit, faults: [fault] };
}
