import type { Box } from '../box.ts';

export type SheetFormat = 'letter' | 'a4';

/** Sizes upright, in mm: ANSI/ASME Y14.1 (8 1/2 x 11 in) and ISO 216. */
export const SHEET_FORMATS: Readonly<
  Record<SheetFormat, { readonly name: string; readonly width: number; readonly height: number }>
> = {
  letter: { name: 'US Letter', width: 215.9, height: 279.4 },
  a4: { name: 'ISO A4', width: 210, height: 297 },
};

/** What home printers leave white: a quarter inch, and half an inch where the sheet leaves the rollers, in mm. */
const MARGIN_MM = 6.35;
const FOOT_MARGIN_MM = 12.7;

/** Room for the line of text at the head and foot of each page, in mm. */
export const TEXT_BAND_MM = 6;

export interface PageFormat {
  readonly width: number;
  readonly height: number;
  /** Where ink may lie. */
  readonly printable: Box;
  /** Where the drawing may lie: printable without the bands of text. */
  readonly clear: Box;
}

/** A page upright or lying. A lying page keeps the wide margin left and right too: either may be the printer's foot. */
export function pageFormat(format: SheetFormat, landscape: boolean): PageFormat {
  const sheet = SHEET_FORMATS[format];
  const [width, height] = landscape ? [sheet.height, sheet.width] : [sheet.width, sheet.height];
  const side = landscape ? FOOT_MARGIN_MM : MARGIN_MM;
  const printable = { left: side, right: width - side, top: MARGIN_MM, bottom: height - FOOT_MARGIN_MM };
  const clear = { ...printable, top: printable.top + TEXT_BAND_MM, bottom: printable.bottom - TEXT_BAND_MM };
  return { width, height, printable, clear };
}
