import type { Crease, Piece } from '../spec/index.ts';
import { formatNumber, type System } from '../units/index.ts';
import { measuredAt, measuredCreases } from '../wording/index.ts';
import { FIRST_LINE_MM, OVERRUN_MM } from './dimension-line.ts';
import { acrossTo, type DrawnPiece, downTo, drawnAt } from './drawn-piece.ts';
import { FIGURE_SIZES, planAcross, planDown } from './figure-plan.ts';
import type { RunningDimension } from './running-dimension.ts';
import { textWidth } from './text-metrics.ts';

/** Kept white round the sheet, in mm. */
export const SHEET_MARGIN_MM = 2;
/** From the outline to the end of what its dimension lines need, in mm. */
export const REACH_MM = FIRST_LINE_MM + OVERRUN_MM;

/** Beside a piece, for the half of a zero that stands over its corner, in mm. */
const ZERO_ROOM_MM = 4;
/** Between an extension line and the figures at its left end, with room to spare, in mm. */
const FIGURE_ROOM_MM = 5;
/** Above a piece without positions along its top, and above figures, in mm. */
const BARE_ROOM_MM = 4;
const OVER_FIGURES_MM = 1;
/** A piece is drawn no higher than this part of the sheet's width. */
const HIGHEST = 1;

export interface LayoutInput {
  readonly piece: Piece;
  readonly system: System;
  readonly hand: 'left' | 'right';
  readonly widthMm: number;
  /** Where the room for the drawing begins, in mm from the top. */
  readonly top: number;
}

/** Where a piece and its running dimensions lie on the sheet. */
export interface CuttingLayout {
  readonly drawn: DrawnPiece;
  /** None, one or two: along the top, along the left. */
  readonly dimensions: readonly RunningDimension[];
}

/** Fits a piece, as large as may be, between its dimensions. */
export function layOut({ piece, system, hand, widthMm, top }: LayoutInput): CuttingLayout {
  const down = measuredCreases(piece, 'down', hand);
  const across = measuredCreases(piece, 'across', hand);
  const say = (crease: Crease): string => formatNumber(measuredAt(crease, piece, hand), system);

  const longest = Math.max(0, ...across.map((crease) => textWidth(say(crease), FIGURE_SIZES[0])));
  const leftRoom = across.length === 0 ? ZERO_ROOM_MM : SHEET_MARGIN_MM + REACH_MM + FIGURE_ROOM_MM + longest;
  const clear = widthMm - leftRoom - SHEET_MARGIN_MM - REACH_MM;
  const scale = Math.min(clear / piece.width.toMm(), (HIGHEST * widthMm) / piece.height.toMm());
  const left = leftRoom + (clear - piece.width.toMm() * scale) / 2;

  // Across first: how its figures stand says how far down the piece begins.
  const flat = drawnAt(piece, left, top, scale);
  const columns = down.map((crease) => ({ at: acrossTo(flat, crease.at), text: say(crease) }));
  const zero = { at: hand === 'left' ? flat.right : flat.left, text: '0' };
  const rising = [zero, ...columns].sort((a, b) => a.at - b.at);
  const plan = planAcross(rising, SHEET_MARGIN_MM, widthMm - SHEET_MARGIN_MM);
  const room = down.length === 0 ? BARE_ROOM_MM : REACH_MM + (plan?.to ?? 0) + OVER_FIGURES_MM;

  const drawn = drawnAt(piece, left, top + room, scale);
  const rows = across.map((crease) => ({ at: downTo(drawn, crease.at), text: say(crease) }));
  const falling = [{ at: drawn.top, text: '0' }, ...rows];
  const dimensions: RunningDimension[] = [];
  if (down.length > 0) dimensions.push({ axis: 'across', edge: drawn.top, zero: zero.at, places: columns, plan });
  if (across.length > 0) {
    const beside = planDown(falling, drawn.top - BARE_ROOM_MM, drawn.bottom + FIRST_LINE_MM);
    dimensions.push({ axis: 'down', edge: drawn.left, zero: drawn.top, places: rows, plan: beside });
  }
  return { drawn, dimensions };
}
