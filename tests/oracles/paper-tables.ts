/** Published facts about paper. Each list names its source as sources.md cites it. */

/** Cited as "basis sheets": basic sheets in inches, and factors in g/m² a pound, rounded as they are printed. */
export const FACTORS = [
  { grade: 'bond', sheet: [17, 22], printed: ['3.76'] },
  { grade: 'cover', sheet: [20, 26], printed: ['2.70', '2.704'] },
  { grade: 'bristol', sheet: [22.5, 28.5], printed: ['2.19'] },
  { grade: 'index', sheet: [25.5, 30.5], printed: ['1.81'] },
  { grade: 'tag', sheet: [24, 36], printed: ['1.63', '1.627'] },
  { grade: 'text', sheet: [25, 38], printed: ['1.48'] },
] as const;

/** Printed by some trade sites for cover: why 110 lb cover is often quoted as 298 g/m². */
export const WRONG_COVER_FACTOR = 2.708;

/** Cited as "media guide": worked with factors of five figures, 1.4802 and 2.7042. */
export const WORKED_EXAMPLES = [
  { pounds: 90, grade: 'text', gsm: 133.218 },
  { pounds: 100, grade: 'cover', gsm: 270.42 },
] as const;

/** g/m² and the pounds of each grade that go with it. */
export interface WeightRow {
  readonly gsm: number;
  readonly bond: number;
  readonly text: number;
  readonly cover: number;
  readonly index?: number;
  readonly bristol?: number;
  readonly tag?: number;
}

/** Cited as "printer manual 1". */
export const PRINTER_MANUAL_1: readonly WeightRow[] = [
  { gsm: 75, bond: 20, text: 50, cover: 28, index: 42 },
  { gsm: 90, bond: 24, text: 60, cover: 33, index: 50 },
  { gsm: 105, bond: 28, text: 70, cover: 39, index: 58 },
  { gsm: 135, bond: 36, text: 90, cover: 50, index: 75 },
  { gsm: 148, bond: 39, text: 100, cover: 55, index: 82 },
  { gsm: 176, bond: 47, text: 120, cover: 65, index: 97 },
  { gsm: 199, bond: 53, text: 135, cover: 74, index: 110 },
  { gsm: 216, bond: 58, text: 146, cover: 80, index: 120 },
  { gsm: 244, bond: 65, text: 165, cover: 90, index: 135 },
  { gsm: 253, bond: 67, text: 171, cover: 94, index: 140 },
];

/** Cited as "printer manual 2". */
export const PRINTER_MANUAL_2: readonly WeightRow[] = [
  { gsm: 216, bond: 58, text: 146, cover: 80, index: 120, bristol: 98, tag: 133 },
  { gsm: 271, bond: 72, text: 183, cover: 100 },
];

/** Cited as "JCP K10": index stock, with the tolerance on its caliper. */
export const INDEX_CALIPERS = [
  { pounds: 90, gsm: 165, mm: 0.19, inches: 0.0075, toleranceMm: 0.013 },
  { pounds: 110, gsm: 200, mm: 0.23, inches: 0.0091, toleranceMm: 0.013 },
  { pounds: 140, gsm: 255, mm: 0.29, inches: 0.0114, toleranceMm: 0.013 },
  { pounds: 170, gsm: 305, mm: 0.35, inches: 0.0138, toleranceMm: 0.02 },
] as const;

/** Cited as "cover guide": pounds of cover, and points of 0.001 in. */
export const COVER_POINTS = [
  [65, 8],
  [80, 9.5],
  [90, 10],
  [100, 11],
  [105, 13],
  [114, 14],
  [120, 15],
] as const;
