import type { Panelling } from '../../panels/index.ts';
import type { Piece } from '../../spec/index.ts';
import type { System } from '../../units/index.ts';
import {
  creaseOnTemplate,
  cuttingWords,
  foldLabel,
  type PieceStrokes,
  piecePageHeading,
  piecePageWords,
  sayMeasure,
  sayName,
  strokesOf,
  type TileFacts,
  type WorkLine,
} from '../../wording/index.ts';
import { Board } from '../board.ts';
import type { Box } from '../box.ts';
import { type DrawnLine, type DrawnPiece, drawnAt, drawnLines, edgeItems } from '../drawn-piece.ts';
import { drawGrainArrow } from '../grain-arrow.ts';
import { labelledLines, type NamedLine } from '../labelled-lines.ts';
import { drawLineLabels } from '../line-labels.ts';
import { drawPanelNames, type NamedPanel, namedPanel } from '../panel-names.ts';
import { centreCrosses } from '../round-marks.ts';
import { drawRegionNames, wasteHatching } from '../waste.ts';
import { clipBox, clipLine, clipped } from './clip.ts';
import { boxOf, type Division, divide, joinsIn, type StrokedPiece } from './division.ts';
import { type Cell, drawJoins, type Join } from './join-marks.ts';
import type { DraftPage } from './page-scene.ts';
import { pageHead } from './page-text.ts';
import type { PageFormat, SheetFormat } from './sheet-format.ts';

/** Between strokes of hatching at true size, in mm. */
const HATCH_MM = 4;

export interface PiecePagesInput {
  readonly piece: Piece;
  readonly panelling: Panelling;
  readonly sheet: SheetFormat;
  readonly system: System;
  /** Stands at the head of each page, before the piece's name. */
  readonly title: string;
}

/** The pages of a piece, and how many it takes: there are none when that is more than were allowed. */
export interface PiecePages {
  readonly drafts: readonly DraftPage[];
  readonly takes: number;
}

/** A piece at true size, page by page, on at most so many. A page on which there would be nothing but waste is left out. */
export function piecePages(input: PiecePagesInput, most: number): PiecePages {
  const { piece, panelling } = input;
  const stroked: StrokedPiece = { piece, panelling, strokes: strokesOf(piece, panelling) };
  const division = divide(stroked, input.sheet);
  const takes = division.cells.length;
  if (takes > most) return { drafts: [], takes };
  const joins = joinsIn(division, stroked);
  return { drafts: division.cells.map((cell) => piecePage(input, stroked.strokes, division, joins, cell)), takes };
}

function piecePage(
  input: PiecePagesInput,
  strokes: PieceStrokes,
  division: Division,
  joins: readonly Join[],
  cell: Cell,
): DraftPage {
  const { piece, panelling, system } = input;
  const { format, columns, rows } = division;
  const shown = boxOf(division, cell);
  const window = windowOn(format, shown);
  const drawn = drawnAt(piece, window.left - shown.left, window.top - shown.top, 1);
  const whole = columns.length * rows.length === 1;
  const tile: TileFacts | undefined = whole
    ? undefined
    : { row: cell.row + 1, rows: rows.length, column: cell.column + 1, columns: columns.length };
  const heading = piecePageHeading(input.title, sayName(piece.name), tile);

  const board = new Board(window);
  const lines = drawnLines(drawn, strokes).flatMap(({ line, drawn: all }) =>
    clipLine(all, window).map((visible): DrawnLine => ({ line, drawn: visible })),
  );
  board.add(
    ...edgeItems(drawn, strokes).flatMap((item) => clipped(item, window)),
    ...lines.map((line) => line.drawn),
    ...centreCrosses(drawn, strokes).flatMap((line) => clipLine(line, window)),
  );
  const here = joins.filter(({ cells }) => cells.some((end) => end.row === cell.row && end.column === cell.column));
  drawJoins(board, here, (x, y) => ({ x: drawn.left + x, y: drawn.top + y }));
  const panels = visiblePanels(input, drawn, window);
  drawPanelNames(board, panels);
  if (piece.grain !== undefined) drawGrainArrow(board, piece.grain, panels);
  drawLineLabels(board, textsAt(lines, system), { beyond: false, firstKey: undefined });
  drawRegionNames(board, drawn);
  board.add(...wasteHatching(board, drawn, HATCH_MM).flatMap((line) => clipLine(line, window)));
  const words = [piecePageWords(sayName(piece.name), tile), ...cuttingWords(piece, panelling, { system })];
  return {
    width: format.width,
    height: format.height,
    title: heading,
    words,
    figure: words.join(' '),
    items: [...pageHead(format, heading), ...board.items],
  };
}

/** Lines with what may stand at them, the longest first: with the position, without it, the fold alone. */
function textsAt(lines: readonly DrawnLine[], system: System): readonly NamedLine[] {
  return labelledLines(lines).map((named) => {
    const [label = ''] = named.texts;
    const first = lines.find(({ line }) => line.name === named.line.name)?.line;
    const { fold } = named.line;
    const texts = [
      ...(first === undefined || first.runs === 'angled' ? [] : [withPosition(label, first, system)]),
      label,
      ...(fold === undefined ? [] : [foldLabel(fold)]),
    ];
    return { ...named, texts, named: true, keyed: false };
  });
}

function withPosition(label: string, { runs, from }: WorkLine, system: System): string {
  const down = runs === 'down';
  const at = sayMeasure(down ? from.x : from.y, from.rounded === true, system);
  return creaseOnTemplate(label, at, down ? 'left' : 'top');
}

/** The parts of panels that a page shows. */
function visiblePanels({ piece, panelling }: PiecePagesInput, drawn: DrawnPiece, window: Box): readonly NamedPanel[] {
  return panelling.panels
    .filter((panel) => panel.piece === piece.name)
    .map((panel) => namedPanel(drawn, panel))
    .flatMap((panel) => clipBox(panel.box, window).map((visible) => ({ ...panel, box: visible })));
}

/** Where a part of a piece lies on its page: in the middle of the room for it. */
function windowOn(format: PageFormat, shown: Box): Box {
  const { left, right, top, bottom } = format.clear;
  const [width, height] = [shown.right - shown.left, shown.bottom - shown.top];
  const x = left + (right - left - width) / 2;
  const y = top + (bottom - top - height) / 2;
  return { left: x, right: x + width, top: y, bottom: y + height };
}
