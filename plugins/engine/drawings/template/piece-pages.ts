import type { Panelling } from '../../panels/index.ts';
import type { Crease, Piece } from '../../spec/index.ts';
import { formatLength, type System } from '../../units/index.ts';
import {
  creaseLabel,
  creaseOnTemplate,
  cuttingWords,
  piecePageHeading,
  piecePageWords,
  sayName,
  type TileFacts,
} from '../../wording/index.ts';
import { Board } from '../board.ts';
import type { Box } from '../box.ts';
import { drawCreaseLabels } from '../crease-labels.ts';
import { creaseLine, type DrawnPiece, drawnAt, edgeLines } from '../drawn-piece.ts';
import { drawGrainArrow } from '../grain-arrow.ts';
import { drawPanelNames, namedBox } from '../panel-names.ts';
import type { SceneLine } from '../scene.ts';
import { clipBox, clipLine } from './clip.ts';
import { type Cell, drawJoin, type Join, joinsOf } from './join-marks.ts';
import type { DraftPage } from './page-scene.ts';
import { pageHead } from './page-text.ts';
import { type PageFormat, pageFormat, type SheetFormat } from './sheet-format.ts';
import { type Stretch, stretchesOf } from './tiling.ts';

export interface PiecePagesInput {
  readonly piece: Piece;
  readonly panelling: Panelling;
  readonly sheet: SheetFormat;
  readonly system: System;
  /** Stands at the head of each page, before the piece's name. */
  readonly title: string;
}

/** A piece divided over pages of one format. */
interface Division {
  readonly format: PageFormat;
  readonly columns: readonly Stretch[];
  readonly rows: readonly Stretch[];
}

/** A piece at true size on as few pages as will hold it, upright or lying; upright when that makes no difference. */
export function piecePages(input: PiecePagesInput): readonly DraftPage[] {
  const [upright, lying] = [divide(input, false), divide(input, true)];
  const division = pageCount(lying) < pageCount(upright) ? lying : upright;
  const { columns, rows } = division;
  const joins = joinsOf(columns, rows, {
    across: [...positions(input.piece, 'down'), ...ends(columns)],
    down: [...positions(input.piece, 'across'), ...ends(rows)],
  });
  return rows.flatMap((_, row) => columns.map((_, column) => piecePage(input, division, joins, { row, column })));
}

function divide({ piece, sheet }: PiecePagesInput, landscape: boolean): Division {
  const format = pageFormat(sheet, landscape);
  const { left, right, top, bottom } = format.clear;
  return {
    format,
    columns: stretchesOf(piece.width.toMm(), right - left, positions(piece, 'down')),
    rows: stretchesOf(piece.height.toMm(), bottom - top, positions(piece, 'across')),
  };
}

function pageCount({ columns, rows }: Division): number {
  return columns.length * rows.length;
}

function positions(piece: Piece, runs: Crease['runs']): readonly number[] {
  return piece.creases.filter((crease) => crease.runs === runs).map((crease) => crease.at.toMm());
}

function ends(stretches: readonly Stretch[]): readonly number[] {
  return stretches.flatMap(({ from, to }) => [from, to]);
}

function piecePage(input: PiecePagesInput, division: Division, joins: readonly Join[], cell: Cell): DraftPage {
  const { piece, system } = input;
  const { format, columns, rows } = division;
  const column = columns[cell.column] ?? { from: 0, to: 0 };
  const row = rows[cell.row] ?? { from: 0, to: 0 };
  const window = windowOn(format, column, row);
  const drawn = drawnAt(piece, window.left - column.from, window.top - row.from, 1);
  const whole = pageCount(division) === 1;
  const tile: TileFacts | undefined = whole
    ? undefined
    : { row: cell.row + 1, rows: rows.length, column: cell.column + 1, columns: columns.length };
  const heading = piecePageHeading(input.title, sayName(piece.name), tile);

  const board = new Board(window);
  board.add(...edgeLines(drawn).flatMap((line) => clipLine(line, window)));
  const creases = piece.creases.flatMap((crease) =>
    clipLine(creaseLine(drawn, crease), window).map((line) => ({ line, texts: textsAt(crease, system), named: true })),
  );
  board.add(...creases.map(({ line }): SceneLine => line));
  for (const join of joins.filter(({ cells }) =>
    cells.some((end) => end.row === cell.row && end.column === cell.column),
  )) {
    drawJoin(board, join, (x, y) => ({ x: drawn.left + x, y: drawn.top + y }));
  }
  drawInside(board, input, drawn, window);
  drawCreaseLabels(board, creases, { beyond: false, numbers: false });
  return {
    width: format.width,
    height: format.height,
    title: heading,
    words: [piecePageWords(sayName(piece.name), tile), ...cuttingWords(piece, { system })],
    figure: [piecePageWords(sayName(piece.name), tile), ...cuttingWords(piece, { system })].join(' '),
    items: [...pageHead(format, heading), ...board.items],
  };
}

/** What may stand at a crease, the longest first: with its position, without it, its fold alone. */
function textsAt(crease: Crease, system: System): readonly string[] {
  const label = creaseLabel(crease);
  const at = formatLength(crease.at, system);
  return [creaseOnTemplate(label, at, crease.runs === 'down' ? 'left' : 'top'), label, crease.fold];
}

function drawInside(board: Board, { piece, panelling }: PiecePagesInput, drawn: DrawnPiece, window: Box): void {
  const panels = panelling.panels
    .filter((panel) => panel.piece === piece.name)
    .map((panel) => namedBox(drawn, panel))
    .flatMap(({ box, text }) => clipBox(box, window).map((visible) => ({ box: visible, text })));
  drawPanelNames(board, panels);
  if (piece.grain !== undefined)
    drawGrainArrow(
      board,
      piece.grain,
      panels.map((panel) => panel.box),
    );
}

/** Where a part of a piece lies on its page: in the middle of the room for it. */
function windowOn(format: PageFormat, column: Stretch, row: Stretch): Box {
  const { left, right, top, bottom } = format.clear;
  const [width, height] = [column.to - column.from, row.to - row.from];
  const x = left + (right - left - width) / 2;
  const y = top + (bottom - top - height) / 2;
  return { left: x, right: x + width, top: y, bottom: y + height };
}
