import Fraction from 'fraction.js';
import { SPACE } from './characters.ts';
import { type Reading, type ReadOptions, reading } from './fault.ts';
import type { GradeId } from './grades.ts';
import { Length, type RationalInput } from './length.ts';
import { readLength } from './read-length.ts';
import { readNumber } from './read-number.ts';
import type { PaperWeight } from './weight.ts';

/** How thick a paper is, and how far that can be trusted. */
export interface Caliper {
  readonly length: Length;
  readonly origin: 'measured' | 'table' | 'estimate';
  readonly source: string;
}

interface CaliperRow {
  readonly grade: GradeId;
  readonly pounds: number;
  readonly length: Length;
  readonly source: string;
}

const GPO = 'US GPO Government Paper Specification Standards No. 11 (1 Feb 1999), JCP K10';
const COVER_GUIDE = 'a published cover weight guide';

/** A paper maker's point is 0.001 in; it has nothing to do with a printer's point. */
const POINT = Length.fromInches('1/1000');
const MICROMETRE = Length.fromMm('1/1000');

/** Published calipers. At one weight mills differ by a third and more, so a measured caliper always wins. */
const CALIPERS: readonly CaliperRow[] = [
  { grade: 'index', pounds: 90, length: Length.fromMm('0.190'), source: GPO },
  { grade: 'index', pounds: 110, length: Length.fromMm('0.230'), source: GPO },
  { grade: 'index', pounds: 140, length: Length.fromMm('0.290'), source: GPO },
  { grade: 'index', pounds: 170, length: Length.fromMm('0.350'), source: GPO },
  { grade: 'cover', pounds: 65, length: POINT.times(8), source: COVER_GUIDE },
  { grade: 'cover', pounds: 80, length: POINT.times('9.5'), source: COVER_GUIDE },
  { grade: 'cover', pounds: 90, length: POINT.times(10), source: COVER_GUIDE },
  { grade: 'cover', pounds: 100, length: POINT.times(11), source: COVER_GUIDE },
  { grade: 'cover', pounds: 105, length: POINT.times(13), source: COVER_GUIDE },
  { grade: 'cover', pounds: 114, length: POINT.times(14), source: COVER_GUIDE },
  { grade: 'cover', pounds: 120, length: POINT.times(15), source: COVER_GUIDE },
];

/** Cubic centimetres a gram, which is micrometres per g/m²: the middle of the 1.14 to 1.15 of the GPO stocks. */
const BULK = new Fraction('1.145');

/** What is known of a paper. `weight` says more than `gsm`, since it may name the grade. */
export interface PaperFacts {
  readonly gsm?: RationalInput | undefined;
  readonly weight?: PaperWeight | undefined;
  readonly measured?: Length | undefined;
}

/**
 * The caliper of one sheet: as measured, else as published for its grade and pounds, else estimated from its weight.
 * Undefined when nothing is known.
 */
export function caliperFor({ gsm, weight, measured }: PaperFacts): Caliper | undefined {
  if (measured) return { length: measured, origin: 'measured', source: 'measured by the maker' };
  const row = CALIPERS.find((one) => one.grade === weight?.grade && weight.pounds?.equals(one.pounds));
  if (row) return { length: row.length, origin: 'table', source: row.source };
  const grams = weight?.gsm ?? (gsm === undefined ? undefined : new Fraction(gsm));
  if (!grams) return undefined;
  const source = `weight times a bulk of 1.145 cm³/g, after ${GPO}`;
  return { length: MICROMETRE.times(grams.mul(BULK)), origin: 'estimate', source };
}

/** A measured thickness: `0.3 mm`, `0.012 in`, `12 pt` (paper points), `300 µm`. */
export function readCaliper(text: string, options: ReadOptions = {}): Reading<Length> {
  const unit = new RegExp(`(?:(pt|pts|points?|mils?)|(µm|μm|um|microns?))\\.?${SPACE}*$`, 'i').exec(text.slice(-20));
  if (!unit) {
    const { value, faults } = readLength(text, options);
    return { value: value?.length, faults };
  }
  const number = text.slice(0, text.length - unit[0].length);
  const { value, faults } = readNumber(number, options);
  return reading(value && (unit[1] === undefined ? MICROMETRE : POINT).times(value), faults);
}
