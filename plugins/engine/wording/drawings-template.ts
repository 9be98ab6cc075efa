import type { System } from '../units/index.ts';

export interface TemplateFacts {
  readonly title: string;
  readonly system: System;
  readonly sheetName: string;
  /** Web address of the project, printed so that a loose sheet finds its way home; undefined when there is none. */
  readonly address: string | undefined;
}

export function templateEdition(facts: TemplateFacts): string {
  const units = facts.system === 'inch' ? 'Inch edition' : 'Metric edition';
  const from = facts.address === undefined ? '' : ` From ${facts.address}`;
  return `Template at true size. ${units}, on ${facts.sheetName} paper.${from}`;
}

/** What to do before cutting, one step a line. */
export const PRINT_STEPS: readonly string[] = [
  'Print at 100 %, with no fitting to the page. Print dialogs may call this “actual size” or “scale: none”.',
  'Measure both squares below before you cut anything.',
  'Lay the template on the cardstock, face up. Prick or lightly mark each end of every line, then cut and score.',
];

export const SQUARE_WORDS = {
  heading: 'Check the size',
  metric: '50 mm each way',
  inch: '2 in each way',
  wrong: [
    'Measure each side of a square with the ruler you cut by.',
    'If a side is not right, do not cut. Print again, and set the scale to 100 % by hand.',
    'If it is still wrong, the printer stretches. Use the figures in the list, not this template.',
  ],
} as const;

export const LEGEND_HEADING = 'The lines';
export const PIECES_HEADING = 'The pieces';

/** Ordinary care with blades (common practice, no source). */
export const BLADE_WORDS =
  'Blades: use a fresh one, a metal ruler and a cutting mat. Cut away from your fingers, in several light passes. ' +
  'Put the cap back on. Children cut with scissors, or with a grown-up.';

/** How the pages of a large piece become one. */
export const JOIN_WORDS: readonly string[] = [
  'A piece larger than a page is printed on several. Trim one page of each pair along its join line.',
  'Lay it on the other so that the circles with the same letter and number meet. Tape the pages together.',
];

export function continuedTitle(title: string): string {
  return `${title}, continued`;
}

export function pageFooter(page: number, pages: number): string {
  return `page ${page} of ${pages}`;
}

export const PRINT_REMINDER = 'Print at 100 %, no fitting to the page';

/** Head of a page with a piece, or with a part of one. */
export function piecePageHeading(title: string, piece: string, tile: TileFacts | undefined): string {
  const part = tile === undefined ? '' : `, ${tileName(tile)}`;
  return `${title}: ${piece}${part}`;
}

/** Row and column of a page, counted from 1, and how many there are. */
export interface TileFacts {
  readonly row: number;
  readonly rows: number;
  readonly column: number;
  readonly columns: number;
}

export function tileName(tile: TileFacts): string {
  const row = tile.rows > 1 ? [`row ${tile.row} of ${tile.rows}`] : [];
  const column = tile.columns > 1 ? [`column ${tile.column} of ${tile.columns}`] : [];
  return [...row, ...column].join(', ');
}

/** Where the template of a piece is found. None is printed of one that takes more pages than there are left. */
export function pieceOnPages(pages: readonly number[], takes: number): string {
  const [first] = pages;
  if (first === undefined) return `It would take ${takes} pages and is not printed here: draw it by its figures.`;
  return pages.length === 1
    ? `Its template is on page ${first}.`
    : `Its template is on pages ${first} to ${pages.at(-1)}.`;
}

/** What the drawing on a page shows, for those who do not see it. */
export function piecePageWords(piece: string, tile: TileFacts | undefined): string {
  if (tile === undefined) return `The ${piece} at true size.`;
  return `Part of the ${piece} at true size: ${tileName(tile)}.`;
}

export const FIRST_PAGE_FIGURE =
  'A square of 50 mm and a square of 2 in to measure, and a sample of each kind of line.';

/** Said along a crease of a template: its name and its distance from the zero edge. */
export function creaseOnTemplate(label: string, at: string, from: 'left' | 'top'): string {
  return `${label}, ${at} from the ${from}`;
}
