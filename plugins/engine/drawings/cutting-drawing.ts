import type { Panelling } from '../panels/index.ts';
import type { Crease, Piece } from '../spec/index.ts';
import { formatNumber, type System } from '../units/index.ts';
import {
  creaseLabel,
  cuttingWords,
  drawingNotes,
  drawingTitle,
  isNamed,
  measuredAt,
  measuredCreases,
  sayKey,
  sayName,
} from '../wording/index.ts';
import { Board } from './board.ts';
import { drawCreaseLabels } from './crease-labels.ts';
import { FIRST_LINE_MM, OVERRUN_MM } from './dimension-line.ts';
import { acrossTo, creaseLine, downTo, drawnAt, edgeLines } from './drawn-piece.ts';
import { FIGURE_SIZES, planAcross, planDown } from './figure-plan.ts';
import { drawGrainArrow } from './grain-arrow.ts';
import { legendOf } from './legend.ts';
import { drawOverallSizes } from './overall-sizes.ts';
import { drawPanelNames, namedBox } from './panel-names.ts';
import { drawRunningDimension } from './running-dimension.ts';
import type { Scene } from './scene.ts';
import { legendRows, paragraph } from './text-column.ts';
import { textWidth } from './text-metrics.ts';

export interface CuttingDrawingOptions {
  readonly system: System;
  /** A left-handed maker measures from the right edge. Right by default. */
  readonly hand?: 'left' | 'right' | undefined;
  /** Width of the drawing sheet in mm, 110 by default: letters of 2.5 mm then read on a phone. */
  readonly widthMm?: number | undefined;
}

const DEFAULT_WIDTH_MM = 110;
const MARGIN_MM = 2;
/** Beside the piece, for the half of a zero that stands over its corner. */
const ZERO_ROOM_MM = 4;
const NOTE_SIZE = 2.5;
const TITLE_SIZE = 3.5;
/** A piece is drawn no higher than this part of the sheet's width. */
const HIGHEST = 1;

/**
 * The cutting drawing of one piece, drawn smaller than life: edges, creases by line style, positions from one zero
 * edge, overall sizes, names, grain and a legend in words. Every size stands in it once, and no two labels touch.
 */
export function cuttingDrawing(piece: Piece, panelling: Panelling, options: CuttingDrawingOptions): Scene {
  const { system, hand = 'right', widthMm = DEFAULT_WIDTH_MM } = options;
  const panels = panelling.panels.filter((panel) => panel.piece === piece.name);
  const say = (crease: Crease): string => formatNumber(measuredAt(crease, piece, hand), system);
  const down = measuredCreases(piece, 'down', hand);
  const across = measuredCreases(piece, 'across', hand);

  // Room beside the piece, then its scale.
  const reach = FIRST_LINE_MM + OVERRUN_MM;
  const longest = Math.max(0, ...across.map((crease) => textWidth(say(crease), FIGURE_SIZES[0])));
  const leftRoom = across.length === 0 ? ZERO_ROOM_MM : MARGIN_MM + reach + 5 + longest;
  const rightRoom = MARGIN_MM + reach;
  const clear = widthMm - leftRoom - rightRoom;
  const scale = Math.min(clear / piece.width.toMm(), (HIGHEST * widthMm) / piece.height.toMm());
  const left = leftRoom + (clear - piece.width.toMm() * scale) / 2;

  // Room above the piece.
  const title = drawingTitle(sayName(piece.name));
  const heading = paragraph(
    title,
    { left: MARGIN_MM, top: MARGIN_MM, width: widthMm - 2 * MARGIN_MM },
    { size: TITLE_SIZE, role: 'title' },
  );
  const inPlace = drawnAt(piece, left, 0, scale);
  const zeroX = hand === 'left' ? inPlace.right : inPlace.left;
  const columns = down.map((crease) => ({ at: acrossTo(inPlace, crease.at), text: say(crease) }));
  const risingX = [{ at: zeroX, text: '0' }, ...columns].sort((a, b) => a.at - b.at);
  const planX =
    down.length === 0
      ? undefined
      : planAcross(
          risingX.map((place) => place.at),
          risingX.map((place) => place.text),
          MARGIN_MM,
          widthMm - MARGIN_MM,
        );
  const top = heading.bottom + (down.length === 0 ? 4 : reach + (planX?.to ?? 0) + 1);

  const drawn = drawnAt(piece, left, top, scale);
  const boxes = panels.map((panel) => namedBox(drawn, panel));
  const board = new Board({
    left: MARGIN_MM / 2,
    right: widthMm - MARGIN_MM / 2,
    top: heading.bottom,
    bottom: Number.POSITIVE_INFINITY,
  });
  board.add(...heading.items, ...edgeLines(drawn), ...piece.creases.map((crease) => creaseLine(drawn, crease)));
  if (down.length > 0) {
    drawRunningDimension(board, { axis: 'across', edge: drawn.top, zero: zeroX, places: columns, plan: planX });
  }
  if (across.length > 0) {
    const rows = across.map((crease) => ({ at: downTo(drawn, crease.at), text: say(crease) }));
    const places = [drawn.top, ...rows.map((row) => row.at)];
    const texts = ['0', ...rows.map((row) => row.text)];
    const plan = planDown(places, texts, drawn.top - 4, drawn.bottom + FIRST_LINE_MM);
    drawRunningDimension(board, { axis: 'down', edge: drawn.left, zero: drawn.top, places: rows, plan });
  }
  drawOverallSizes(board, drawn, formatNumber(piece.width, system), formatNumber(piece.height, system));
  drawPanelNames(board, boxes);
  const labelled = piece.creases.map((crease) => ({
    crease,
    line: creaseLine(drawn, crease),
    text: creaseLabel(crease),
    named: isNamed(crease),
  }));
  const keyed = drawCreaseLabels(board, labelled, true);
  if (piece.grain !== undefined)
    drawGrainArrow(
      board,
      piece.grain,
      boxes.map((panel) => panel.box),
    );

  // Legend and notes under the piece.
  const column = { left: MARGIN_MM, width: widthMm - 2 * MARGIN_MM };
  const legend = legendRows(legendOf(board), { ...column, top: drawn.bottom + reach + 5 }, NOTE_SIZE);
  board.add(...legend.items);
  let bottom = legend.bottom + 1;
  const zeroEdges = [
    ...(down.length > 0 ? [hand === 'left' ? 'right' : 'left'] : []),
    ...(across.length > 0 ? ['top'] : []),
  ];
  const notes = [...keyed.map(({ crease }, i) => sayKey(i + 1, crease)), ...drawingNotes(system, zeroEdges)];
  for (const note of notes) {
    const lines = paragraph(note, { ...column, top: bottom }, { size: NOTE_SIZE, role: 'note' });
    board.add(...lines.items);
    bottom = lines.bottom;
  }
  return {
    width: widthMm,
    height: bottom + MARGIN_MM,
    title,
    words: cuttingWords(piece, { system, hand }),
    items: board.items,
  };
}
