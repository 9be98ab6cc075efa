import type { LineRole } from './scene.ts';

/** Widths of wide and narrow lines, 2:1 (ISO 128-2), in mm. */
export const WIDE_MM = 0.5;
export const NARROW_MM = 0.25;

/** Arrowheads are 3:1 (ISO 129-1), in mm. */
export const ARROW_LENGTH_MM = 2.4;
export const ARROW_WIDTH_MM = 0.8;

export interface LineType {
  /** In mm. */
  readonly width: number;
  /** Lengths of dash, gap, dash ... in mm; empty for an unbroken line. */
  readonly dash: readonly number[];
}

/** Parts of broken lines, in mm: ISO 128-2 gives them in line widths (dash 12, long dash 24, gap 3). */
const DASH = 12 * NARROW_MM;
const LONG = 24 * NARROW_MM;
const GAP = 3 * NARROW_MM;
const SHORT = 6 * NARROW_MM;
/** Of dashes far apart: the standard's 18 for a dash of 12, here for a short one. */
const WIDE_GAP = 9 * NARROW_MM;
/** One line width, not the standard's half: half of a narrow line does not survive a screen. */
const DOT = NARROW_MM;

const UNBROKEN: LineType = { width: NARROW_MM, dash: [] };

/**
 * Edges wide and unbroken; valleys dashed and mountains dash-dot-dot, as folders write them (Yoshizawa-Randlett), all
 * narrow; helping lines narrow and unbroken. Told apart by form alone, never by colour.
 */
export const LINE_TYPES: Readonly<Record<LineRole, LineType>> = {
  outline: { width: WIDE_MM, dash: [] },
  cut: { width: WIDE_MM, dash: [] },
  valley: { width: NARROW_MM, dash: [DASH, GAP] },
  mountain: { width: NARROW_MM, dash: [LONG, GAP, DOT, GAP, DOT, GAP] },
  both: { width: NARROW_MM, dash: [LONG, GAP, SHORT, GAP] },
  perforation: { width: WIDE_MM, dash: [DOT * 2, DOT * 4] },
  mark: { width: NARROW_MM, dash: [SHORT, WIDE_GAP] },
  hidden: { width: NARROW_MM, dash: [SHORT, GAP] },
  join: { width: NARROW_MM, dash: [LONG, GAP, DOT, GAP] },
  dimension: UNBROKEN,
  extension: UNBROKEN,
  grain: UNBROKEN,
  frame: UNBROKEN,
  hatch: UNBROKEN,
};
