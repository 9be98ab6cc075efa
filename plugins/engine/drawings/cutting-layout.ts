import type { Panelling } from '../panels/index.ts';
import type { Piece } from '../spec/index.ts';
import type { System } from '../units/index.ts';
import { acrossFrom, formOf, type Hand, measureOf, type PieceStrokes, strokesOf } from '../wording/index.ts';
import { FIRST_LINE_MM, OVERRUN_MM } from './dimension-line.ts';
import { type DrawnPiece, drawnAt } from './drawn-piece.ts';
import { FIGURE_SIZES, planAcross, planDown } from './figure-plan.ts';
import { type Place, placesOf, stretchesTo } from './places.ts';
import { reachOfPiece } from './reach.ts';
import type { RunningDimension, RunningPlace } from './running-dimension.ts';
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
/** Between what is measured and the extension line that leads to it over the piece, in mm. */
const GAP_MM = 0.75;

export interface LayoutInput {
  readonly piece: Piece;
  readonly panelling: Panelling;
  readonly system: System;
  readonly hand: Hand;
  readonly widthMm: number;
  /** Where the room for the drawing begins, in mm from the top. */
  readonly top: number;
}

/** Where a piece and its running dimensions lie on the sheet. */
export interface CuttingLayout {
  readonly drawn: DrawnPiece;
  readonly strokes: PieceStrokes;
  /** None, one or two: along the top, along the left. */
  readonly dimensions: readonly RunningDimension[];
}

/** Fits a piece, as large as may be, between its dimensions. */
export function layOut({ piece, panelling, system, hand, widthMm, top }: LayoutInput): CuttingLayout {
  const strokes = strokesOf(piece, panelling);
  const down = byDistance(placesOf(piece, strokes, 'across'), hand);
  const across = placesOf(piece, strokes, 'down');
  const sayDown = ({ at, rounded }: Place): string => measureOf(at, rounded, system).text;
  const sayAcross = ({ at, rounded }: Place): string => measureOf(acrossFrom(at, piece, hand), rounded, system).text;

  const longest = Math.max(0, ...across.map((place) => textWidth(sayDown(place), FIGURE_SIZES[0])));
  const leftRoom = across.length === 0 ? ZERO_ROOM_MM : SHEET_MARGIN_MM + REACH_MM + FIGURE_ROOM_MM + longest;
  // A circle has its diameter under it, and no height beside it.
  const rightRoom = formOf(piece.outline).is === 'circle' ? ZERO_ROOM_MM : SHEET_MARGIN_MM + REACH_MM;
  const clear = widthMm - leftRoom - rightRoom;
  const scale = Math.min(clear / piece.width.toMm(), (HIGHEST * widthMm) / piece.height.toMm());
  const left = leftRoom + (clear - piece.width.toMm() * scale) / 2;
  const running = (place: Place, from: number, text: string): RunningPlace => ({
    at: from + place.at.valueOf() * scale,
    text,
    over: stretchesTo(scaled(place, scale), GAP_MM),
  });

  // Across first: how its figures stand says how far down the piece begins.
  const flat = drawnAt(piece, left, top, scale);
  const reach = reachOfPiece(strokes);
  const columns = down.map((place) => running(place, left, sayAcross(place)));
  const zero = {
    at: hand === 'left' ? flat.right : flat.left,
    text: '0',
    over: stretchesTo([[(hand === 'left' ? reach.right : reach.left)[0] * scale, flat.bottom]], 0),
  };
  const rising = [zero, ...columns].sort((a, b) => a.at - b.at);
  const plan = planAcross(rising, SHEET_MARGIN_MM, widthMm - SHEET_MARGIN_MM);
  const room = down.length === 0 ? BARE_ROOM_MM : REACH_MM + (plan?.to ?? 0) + OVER_FIGURES_MM;

  const drawn = drawnAt(piece, left, top + room, scale);
  const rows = across.map((place) => running(place, drawn.top, sayDown(place)));
  const origin = { at: drawn.top, text: '0', over: stretchesTo([[reach.top[0] * scale, drawn.right]], 0) };
  const dimensions: RunningDimension[] = [];
  if (down.length > 0) dimensions.push({ axis: 'across', edge: drawn.top, zero, places: columns, plan });
  if (across.length > 0) {
    const beside = planDown([origin, ...rows], drawn.top - BARE_ROOM_MM, drawn.bottom + FIRST_LINE_MM);
    dimensions.push({ axis: 'down', edge: drawn.left, zero: origin, places: rows, plan: beside });
  }
  return { drawn, strokes, dimensions };
}

/** In the order in which they are measured. */
function byDistance(places: readonly Place[], hand: Hand): readonly Place[] {
  return hand === 'left' ? [...places].reverse() : places;
}

function scaled({ spans }: Place, scale: number): Place['spans'] {
  return spans.map(([from, to]) => [from * scale, to * scale]);
}
