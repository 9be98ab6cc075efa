import { Length, type System } from '../units/index.ts';

/**
 * A finished size that makers of the two systems cut from their own usual sheets and call the same card, or sheet.
 *
 * `narrow` and `tall` are its sides upright; a card may lie on its side as well.
 */
export interface LocalSize {
  readonly inch: LocalSide;
  readonly metric: LocalSide;
}

export interface LocalSide {
  readonly narrow: Length;
  readonly tall: Length;
  /** What the trade or a standard calls it. */
  readonly name: string;
  /** The sheet that it is cut from without a conversion. */
  readonly from: string;
}

type Row = readonly [narrow: string, tall: string, name: string, from: string];

/**
 * The table of local sizes: common practice, no source; ISO sizes by ISO 216.
 *
 * A 5 x 7 in card has no brother among the ISO sizes: half an A4 sheet, 148 x 210 mm, does not hold it open. Where people
 * measure in millimetres it is sold under its own name as 127 x 178 mm, with envelopes to match, and is cut one to an A4
 * sheet as it is cut one to a Letter sheet. So it stays itself, in whole millimetres.
 */
const ROWS: readonly (readonly [inch: Row, metric: Row])[] = [
  [
    ['4 1/4', '5 1/2', 'US A2', 'US Letter'],
    ['105', '148', 'ISO A6', 'ISO A4'],
  ],
  [
    ['5 1/2', '8 1/2', 'half US Letter', 'US Letter'],
    ['148', '210', 'ISO A5', 'ISO A4'],
  ],
  [
    ['8 1/2', '11', 'US Letter', 'US Letter'],
    ['210', '297', 'ISO A4', 'ISO A4'],
  ],
  [
    ['5', '7', '5 x 7 in', 'US Letter'],
    ['127', '178', '127 x 178 mm', 'ISO A4'],
  ],
  [
    ['6', '6', '6 x 6 in', '12 x 12 in'],
    ['150', '150', '150 x 150 mm', '300 x 300 mm'],
  ],
  [
    ['12', '12', '12 x 12 in', '12 x 12 in'],
    ['300', '300', '300 x 300 mm', '300 x 300 mm'],
  ],
];

export const LOCAL_SIZES: readonly LocalSize[] = ROWS.map(([inch, metric]) => ({
  inch: sideOf(inch, Length.fromInches),
  metric: sideOf(metric, Length.fromMm),
}));

function sideOf([narrow, tall, name, from]: Row, unit: (value: string) => Length): LocalSide {
  return { narrow: unit(narrow), tall: unit(tall), name, from };
}

/** A size of one system with that of the other, lying the same way. */
export interface LocalPair {
  readonly width: Length;
  readonly height: Length;
  readonly size: LocalSize;
}

/**
 * The size that the table has in `system` for one of exactly `width` x `height` in the other system, upright or on its
 * side; undefined when it has none.
 */
export function localSizeFor(width: Length, height: Length, system: System): LocalPair | undefined {
  const other: System = system === 'inch' ? 'metric' : 'inch';
  for (const size of LOCAL_SIZES) {
    const [from, to] = [size[other], size[system]];
    if (from.narrow.equals(width) && from.tall.equals(height)) return { width: to.narrow, height: to.tall, size };
    if (from.tall.equals(width) && from.narrow.equals(height)) return { width: to.tall, height: to.narrow, size };
  }
  return undefined;
}
