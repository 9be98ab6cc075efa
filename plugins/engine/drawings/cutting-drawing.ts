import type { Panelling } from '../panels/index.ts';
import type { Piece } from '../spec/index.ts';
import { formatNumber, type System } from '../units/index.ts';
import { creaseLabel, cuttingWords, drawingNotes, drawingTitle, isNamed, sayKey, sayName } from '../wording/index.ts';
import { Board } from './board.ts';
import { drawCreaseLabels } from './crease-labels.ts';
import { type CuttingLayout, layOut, REACH_MM, SHEET_MARGIN_MM } from './cutting-layout.ts';
import { creaseLine, edgeLines } from './drawn-piece.ts';
import { drawGrainArrow } from './grain-arrow.ts';
import { legendOf } from './legend.ts';
import { drawOverallSizes } from './overall-sizes.ts';
import { drawPanelNames, namedBox } from './panel-names.ts';
import { drawRunningDimension } from './running-dimension.ts';
import type { Scene } from './scene.ts';
import { legendRows, paragraph } from './text-column.ts';

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

/**
 * The cutting drawing of one piece, drawn smaller than life: edges, creases by line style, positions from one zero
 * edge, overall sizes, names, grain and a legend in words. Every size stands in it once, and no two labels touch.
 */
export function cuttingDrawing(piece: Piece, panelling: Panelling, options: CuttingDrawingOptions): Scene {
  const { system, hand = 'right', widthMm = DEFAULT_WIDTH_MM } = options;
  const column = { left: SHEET_MARGIN_MM, width: widthMm - 2 * SHEET_MARGIN_MM };
  const title = drawingTitle(sayName(piece.name));
  const heading = paragraph(title, { ...column, top: SHEET_MARGIN_MM }, { size: TITLE_SIZE, role: 'title' });
  const layout = layOut({ piece, system, hand, widthMm, top: heading.bottom });
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
  for (const note of [...keys, ...drawingNotes(system, zeroEdges(layout, hand))]) {
    const lines = paragraph(note, { ...column, top: bottom }, { size: NOTE_SIZE, role: 'note' });
    board.add(...lines.items);
    bottom = lines.bottom;
  }
  return {
    width: widthMm,
    height: bottom + SHEET_MARGIN_MM,
    title,
    words: cuttingWords(piece, { system, hand }),
    items: board.items,
  };
}

/** Draws the piece and everything that stands at it. Returns, in words, what its numbers mean. */
function drawPiece(
  board: Board,
  { drawn, dimensions }: CuttingLayout,
  panelling: Panelling,
  system: System,
): readonly string[] {
  const { piece } = drawn;
  const creases = piece.creases.map((crease) => ({
    crease,
    line: creaseLine(drawn, crease),
    texts: [creaseLabel(crease)],
    named: isNamed(crease),
  }));
  board.add(...edgeLines(drawn), ...creases.map(({ line }) => line));
  for (const dimension of dimensions) drawRunningDimension(board, dimension);
  drawOverallSizes(board, drawn, formatNumber(piece.width, system), formatNumber(piece.height, system));
  const panels = panelling.panels.filter((panel) => panel.piece === piece.name).map((panel) => namedBox(drawn, panel));
  drawPanelNames(board, panels);
  const keyed = drawCreaseLabels(board, creases, { beyond: true, numbers: true });
  if (piece.grain !== undefined) {
    drawGrainArrow(
      board,
      piece.grain,
      panels.map(({ box }) => box),
    );
  }
  return keyed.map(({ crease }, i) => sayKey(i + 1, crease));
}

function zeroEdges({ dimensions }: CuttingLayout, hand: 'left' | 'right'): readonly string[] {
  const side = hand === 'left' ? 'right' : 'left';
  return dimensions.map(({ axis }) => (axis === 'across' ? side : 'top'));
}
