import type Fraction from 'fraction.js';
import { nearestName } from '../diagnostics/index.ts';
import { DOUBLE_MARK, SINGLE_MARK } from './characters.ts';
import { decimalNumber } from './format.ts';
import { Length } from './length.ts';
import { matchAt, sticky } from './scan.ts';
import type { Unit } from './system.ts';

/** What stands after a number: a unit that is read, one that is known but not read, or a word that is neither. */
export type WrittenUnit =
  | { readonly kind: 'unit'; readonly unit: Unit; readonly mark: boolean; readonly end: number }
  | {
      readonly kind: 'other';
      readonly word: string;
      readonly remedy: (value: Fraction) => string;
      readonly end: number;
    };

/** What a unit looks like, for every fault about one. */
export const UNIT_TAKES = 'a unit after the number: `in`, `mm` or `cm`';

export const INCH_MARK = sticky(`${DOUBLE_MARK}|${SINGLE_MARK}{2}`);
const FOOT_MARK = sticky(SINGLE_MARK);
const WORD = sticky('\\p{L}+', 'u');

const WORDS: ReadonlyMap<string, Unit> = new Map([
  ['in', 'in'],
  ['inches', 'in'],
  ['inch', 'in'],
  ['mm', 'mm'],
  ['millimetre', 'mm'],
  ['millimetres', 'mm'],
  ['millimeter', 'mm'],
  ['millimeters', 'mm'],
  ['cm', 'cm'],
  ['centimetre', 'cm'],
  ['centimetres', 'cm'],
  ['centimeter', 'cm'],
  ['centimeters', 'cm'],
]);

/** Units of length that people write and that are not read: what one of them is in a unit that is. */
const OTHER_UNITS: ReadonlyMap<string, readonly [Length, Unit]> = new Map(
  (
    [
      [['ft', 'foot', 'feet'], Length.fromInches(12), 'in'],
      [['yd', 'yard', 'yards'], Length.fromInches(36), 'in'],
      [['pt', 'pts', 'point', 'points'], Length.fromInches('1/1000'), 'in'],
      [['m', 'metre', 'metres', 'meter', 'meters'], Length.fromMm(1000), 'mm'],
      [['dm', 'decimetre', 'decimeter'], Length.fromMm(100), 'mm'],
      [['um', 'µm', 'μm', 'micron', 'microns'], Length.fromMm('1/1000'), 'mm'],
    ] as const
  ).flatMap(([words, length, unit]) => words.map((word) => [word, [length, unit]] as const)),
);

/** Units as words, for sentences. */
export const UNIT_NAMES: Readonly<Record<Unit, string>> = { in: 'inches', mm: 'millimetres', cm: 'centimetres' };

/** The unit that starts exactly at `at`; undefined when neither a word nor a mark stands there. */
export function readUnit(text: string, at: number): WrittenUnit | undefined {
  const doubled = matchAt(INCH_MARK, text, at);
  if (doubled) return { kind: 'unit', unit: 'in', mark: true, end: at + doubled[0].length };
  if (matchAt(FOOT_MARK, text, at)) return otherUnit(text.slice(at, at + 1), 'feet', at + 1);
  const word = matchAt(WORD, text, at)?.[0];
  if (word === undefined) return undefined;
  const end = at + word.length + (text[at + word.length] === '.' ? 1 : 0);
  const unit = WORDS.get(word.toLowerCase());
  if (unit) return { kind: 'unit', unit, mark: false, end };
  return otherUnit(word, word.toLowerCase(), end);
}

/** How many millimetres or inches the number of units is, exactly. */
export function lengthOf(value: Fraction, unit: Unit): Length {
  if (unit === 'in') return Length.fromInches(value);
  return Length.fromMm(unit === 'cm' ? value.mul(10) : value);
}

function otherUnit(word: string, name: string, end: number): WrittenUnit {
  const other = OTHER_UNITS.get(name);
  if (other) {
    const [one, unit] = other;
    const count = unit === 'in' ? one.inches : one.mm;
    const also = name === 'feet' && word !== name ? `, or two marks (") after the number if you meant inches` : '';
    return {
      kind: 'other',
      word,
      end,
      remedy: (value) => `Write \`${decimalNumber(value.mul(count), 4)} ${unit}\`${also}.`,
    };
  }
  const near = nearestName(word, WORDS.keys());
  const remedy = near === undefined ? 'Write the unit as `in`, `mm` or `cm`.' : `Did you mean \`${near}\`?`;
  return { kind: 'other', word, end, remedy: () => remedy };
}
