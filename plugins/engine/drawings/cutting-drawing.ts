import type { Panelling } from '../panels/index.ts';
import type { Piece } from '../spec/index.ts';
import { formatNumber, type System } from '../units/index.ts';
import {
  cuttingWords,
  diameterLabel,
  drawingNotes,
  drawingTitle,
  formOf,
  type PieceStrokes,
  sayGrain,
  sayKey,
  sayName,
  sayNumbers,
} from '../wording/index.ts';
import { drawAngles } from './angle-marks.ts';
import { Board } from './board.ts';
import { type CuttingLayout, layOut, REACH_MM, SHEET_MARGIN_MM } from './cutting-layout.ts';
import { type DrawnLine, drawnLines, edgeItems } from './drawn-piece.ts';
import { drawGrainArrow } from './grain-arrow.ts';
import { labelledLines } from './labelled-lines.ts';
import { legendOf } from './legend.ts';
import { drawLineLabels } from './line-labels.ts';
import { drawOverallSizes, type OverallSizes } from './overall-sizes.ts';
import { drawPanelNames, namedPanel } from './panel-names.ts';
import { reachOfPiece } from './reach.ts';
import { drawRoundMarks } from './round-marks.ts';
import { drawRunningDimension } from './running-dimension.ts';
import type { Scene } from './scene.ts';
import { legendRows, paragraph } from './text-column.ts';
import { drawRegionNames, wasteHatching } from './waste.ts';

export interface CuttingDrawingOptions {
  readonly system: System;
  /** A left-handed maker measures from the right edge. Right by default. */
  readonly hand?: 'left' | 'right' | undefined;
  /** Width of the drawing sheet in mm, 110 by default: letters of 2.5 mm then read on a phone. */
  readonly widthMm?: number | undefined;
}

const DEFAULT_WIDTH_MM = 110;
const TITLE_SIZE = 3.5;
const NOTE_SIZE = 2.5;
/** From the last dimension line to the legend, and from the legend to the notes, in mm. */
const BEFORE_LEGEND_MM = 5;
const BEFORE_NOTES_MM = 1;
/** Between strokes of hatching, in mm. */
const HATCH_MM = 2.5;

/**
 * The cutting drawing of one piece, not at its true size: edges, windows, creases and other lines by line style, waste hatched,
 * positions from one zero edge, overall sizes, diameters and angles, names, grain and a legend in words. Every size stands in it
 * once, and no two labels touch.
 */
export function cuttingDrawing(piece: Piece, panelling: Panelling, options: CuttingDrawingOptions): Scene {
  const { system, hand = 'right', widthMm = DEFAULT_WIDTH_MM } = options;
  const column = { left: SHEET_MARGIN_MM, width: widthMm - 2 * SHEET_MARGIN_MM };
  const title = drawingTitle(sayName(piece.name));
  const heading = paragraph(title, { ...column, top: SHEET_MARGIN_MM }, { size: TITLE_SIZE, role: 'title' });
  const layout = layOut({ piece, panelling, system, hand, widthMm, top: heading.bottom });
  const board = new Board({
    left: SHEET_MARGIN_MM / 2,
    right: widthMm - SHEET_MARGIN_MM / 2,
    top: heading.bottom,
    bottom: Number.POSITIVE_INFINITY,
  });
  board.add(...heading.items);
  const keys = drawPiece(board, layout, panelling, system);

  const legendTop = layout.drawn.bottom + REACH_MM + BEFORE_LEGEND_MM;
  const legend = legendRows(legendOf(board), { ...column, top: legendTop }, NOTE_SIZE);
  board.add(...legend.items);
  let bottom = legend.bottom + BEFORE_NOTES_MM;
  for (const note of [...keys, ...drawingNotes(system, zeroEdges(layout, hand), layout.drawn.scale)]) {
    const lines = paragraph(note, { ...column, top: bottom }, { size: NOTE_SIZE, role: 'note' });
    board.add(...lines.items);
    bottom = lines.bottom;
  }
  return {
    width: widthMm,
    height: bottom + SHEET_MARGIN_MM,
    title,
    words: cuttingWords(piece, panelling, { system, hand }),
    items: board.items,
  };
}

/** Draws the piece and everything that stands at it. Returns, in words, what its numbers mean. */
function drawPiece(
  board: Board,
  { drawn, strokes, dimensions }: CuttingLayout,
  panelling: Panelling,
  system: System,
): readonly string[] {
  const { piece } = drawn;
  const lines = drawnLines(drawn, strokes);
  board.add(...edgeItems(drawn, strokes), ...lines.map((line) => line.drawn));
  for (const dimension of dimensions) drawRunningDimension(board, dimension);
  drawOverallSizes(board, drawn, overallOf(piece, strokes, system));
  drawAngles(board, drawn, strokes);
  drawRoundMarks(board, drawn, strokes, system);
  const panels = panelling.panels
    .filter((panel) => panel.piece === piece.name)
    .map((panel) => namedPanel(drawn, panel));
  drawPanelNames(board, panels);
  const keys = drawNames(board, lines);
  drawRegionNames(board, drawn);
  const arrow = piece.grain !== undefined && drawGrainArrow(board, piece.grain, panels);
  board.add(...wasteHatching(board, drawn, HATCH_MM));
  return arrow ? keys : [...keys, ...sayGrain(piece)];
}

/** The names of lines at the lines. Returns, in words, what numbers mean that stand for them. */
function drawNames(board: Board, lines: readonly DrawnLine[]): readonly string[] {
  const named = labelledLines(lines);
  const families = new Set(named.flatMap(({ member }) => member?.family ?? []));
  const [family] = families;
  const numbered = families.size === 1 ? family : undefined;
  const largest = Math.max(0, ...named.map(({ member }) => (numbered === undefined ? 0 : Number(member?.number ?? 0))));
  const placed = drawLineLabels(
    board,
    named.map((one) => ({ ...one, texts: [...one.texts, ...(numbered && one.member ? [one.member.number] : [])] })),
    {
      beyond: true,
      firstKey: largest + 1,
      thinned:
        numbered === undefined
          ? []
          : EVERY.map(
              (step) =>
                ({ member }) =>
                  isEvery(step, member?.number),
            ),
    },
  );
  const byNumber = placed.some(({ item, text }) => item.member !== undefined && text === item.member.number);
  return [
    ...(numbered !== undefined && byNumber ? [sayNumbers(numbered)] : []),
    ...placed.flatMap(({ item, key }) => (key === undefined ? [] : [sayKey(key, item.line)])),
  ];
}

/** Where not every line of a family has room for its number, every second or fifth has, as on a ruler. */
const EVERY = [2, 5, 10];

function isEvery(step: number, number: string | undefined): boolean {
  return number === undefined || Number(number) % step === 0;
}

function overallOf(piece: Piece, strokes: PieceStrokes, system: System): OverallSizes {
  const width = formatNumber(piece.width, system);
  const isCircle = formOf(piece.outline).is === 'circle';
  return {
    width: isCircle ? diameterLabel(width) : width,
    height: isCircle ? undefined : formatNumber(piece.height, system),
    reach: reachOfPiece(strokes),
  };
}

function zeroEdges({ dimensions }: CuttingLayout, hand: 'left' | 'right'): readonly string[] {
  const side = hand === 'left' ? 'right' : 'left';
  return dimensions.map(({ axis }) => (axis === 'across' ? side : 'top'));
}
