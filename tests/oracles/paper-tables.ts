/** Published facts about paper, each list with its source. Grades are those of the trade. */

/** Basic sheets in inches and factors in g/m² a pound, rounded as printed: Roberts and Etherington; makers' media guides. */
export const FACTORS = [
  { grade: 'bond', sheet: [17, 22], area: 374, printed: [3.76] },
  { grade: 'cover', sheet: [20, 26], area: 520, printed: [2.7, 2.704] },
  { grade: 'bristol', sheet: [22.5, 28.5], area: 641.25, printed: [2.19] },
  { grade: 'index', sheet: [25.5, 30.5], area: 777.75, printed: [1.81] },
  { grade: 'tag', sheet: [24, 36], area: 864, printed: [1.63, 1.627] },
  { grade: 'text', sheet: [25, 38], area: 950, printed: [1.48] },
] as const;

/** Printed by some trade sites for cover, and the reason why 110 lb cover is often quoted as 298 g/m². */
export const WRONG_COVER_FACTOR = 2.708;

/** Worked examples of the Xerox media guide, which multiplies by its rounded factors 1.4802 and 2.7042. */
export const WORKED_EXAMPLES = [
  { pounds: 90, grade: 'text', gsm: 133.218 },
  { pounds: 100, grade: 'cover', gsm: 270.42 },
] as const;

/** g/m² against pounds of bond, text, cover and index: Ricoh Pro C5300s manual, page 40. Whole pounds. */
export const RICOH_ROWS = [
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
] as const;

/** HP LaserJet 4300 media guide. */
export const HP_ROWS = [
  { gsm: 216, bond: 58, text: 146, cover: 80, index: 120, bristol: 98, tag: 133 },
  { gsm: 271, bond: 72, text: 183, cover: 100 },
] as const;

/** Grams per square metre as packets print them: whole numbers of the exact products, common practice. */
export const PACKETS = [
  {
    grade: 'cover',
    rows: [
      [50, 135],
      [65, 176],
      [80, 216],
      [90, 243],
      [100, 270],
      [110, 297],
      [120, 324],
      [130, 352],
    ],
  },
  {
    grade: 'text',
    rows: [
      [60, 89],
      [70, 104],
      [80, 118],
      [100, 148],
    ],
  },
  {
    grade: 'index',
    rows: [
      [90, 163],
      [110, 199],
      [140, 253],
    ],
  },
  {
    grade: 'bond',
    rows: [
      [20, 75],
      [24, 90],
      [28, 105],
      [32, 120],
    ],
  },
  { grade: 'bristol', rows: [[67, 147]] },
] as const;

/** US GPO Government Paper Specification Standards No. 11 (1 Feb 1999), JCP K10: index stock. */
export const GPO_INDEX = [
  { pounds: 90, gsm: 165, mm: 0.19, inches: 0.0075 },
  { pounds: 110, gsm: 200, mm: 0.23, inches: 0.0091 },
  { pounds: 140, gsm: 255, mm: 0.29, inches: 0.0114 },
  { pounds: 170, gsm: 305, mm: 0.35, inches: 0.0138 },
] as const;

/** JCP K10 allows ±0.013 mm, and ±0.020 mm at 305 g/m². */
export const GPO_TOLERANCE_MM = 0.013;

/** Micro Format weight guide: pounds of cover to thousandths of an inch. */
export const COVER_POINTS = [
  [65, 8],
  [80, 9.5],
  [90, 10],
  [100, 11],
  [105, 13],
  [114, 14],
  [120, 15],
] as const;
