import type { Panelling } from '../../panels/index.ts';
import type { Piece } from '../../spec/index.ts';
import type { PieceStrokes } from '../../wording/index.ts';
import type { Box } from '../box.ts';
import { drawnAt, drawnLines, edgeItems } from '../drawn-piece.ts';
import { namedPanel } from '../panel-names.ts';
import { holds } from '../rings.ts';
import type { SceneArc, SceneLine } from '../scene.ts';
import { clipped } from './clip.ts';
import { type Avoid, type Cell, type Join, joinsOf } from './join-marks.ts';
import { type PageFormat, pageFormat, type SheetFormat } from './sheet-format.ts';
import { type Stretch, stretchesOf } from './tiling.ts';

/** A piece divided over pages of one format. */
export interface Division {
  readonly format: PageFormat;
  readonly columns: readonly Stretch[];
  readonly rows: readonly Stretch[];
  /** Those that show more than waste: one page each. */
  readonly cells: readonly Cell[];
}

/** A piece with what is drawn of it. */
export interface StrokedPiece {
  readonly piece: Piece;
  readonly panelling: Panelling;
  readonly strokes: PieceStrokes;
}

/** Pages of one piece, with and without paper on them: more are not looked at, since no template has so many. */
const MOST_CELLS = 400;

/** A piece on as few pages as will hold it, upright or lying; upright when that makes no difference. */
export function divide(stroked: StrokedPiece, sheet: SheetFormat): Division {
  const [upright, lying] = [
    divideOver(stroked, pageFormat(sheet, false)),
    divideOver(stroked, pageFormat(sheet, true)),
  ];
  return lying.cells.length < upright.cells.length ? lying : upright;
}

function divideOver(stroked: StrokedPiece, format: PageFormat): Division {
  const { piece, strokes } = stroked;
  const { left, right, top, bottom } = format.clear;
  const columns = stretchesOf(piece.width.toMm(), right - left, positions(strokes, 'down'));
  const rows = stretchesOf(piece.height.toMm(), bottom - top, positions(strokes, 'across'));
  const all = rows.flatMap((_, row) => columns.map((__, column): Cell => ({ row, column })));
  const looked = all.length > 1 && all.length <= MOST_CELLS;
  const cells = looked ? all.filter((cell) => hasPaper(stroked, boxIn(columns, rows, cell))) : all;
  return { format, columns, rows, cells };
}

/** The part of a piece that a page shows, in mm of the piece. */
export function boxOf({ columns, rows }: Division, cell: Cell): Box {
  return boxIn(columns, rows, cell);
}

function boxIn(columns: readonly Stretch[], rows: readonly Stretch[], cell: Cell): Box {
  const column = columns[cell.column] ?? { from: 0, to: 0 };
  const row = rows[cell.row] ?? { from: 0, to: 0 };
  return { left: column.from, right: column.to, top: row.from, bottom: row.to };
}

/** Whether a line of the piece, or the middle of the page within one of its panels, lies on a page. */
function hasPaper({ piece, panelling, strokes }: StrokedPiece, window: Box): boolean {
  if (itemsOf(piece, strokes).some((item) => clipped(item, window).length > 0)) return true;
  const drawn = drawnAt(piece, 0, 0, 1);
  const middle = { x: (window.left + window.right) / 2, y: (window.top + window.bottom) / 2 };
  return panelling.panels
    .filter((panel) => panel.piece === piece.name)
    .some((panel) => holds(namedPanel(drawn, panel).rings, middle));
}

/** Where the pages of a divided piece are joined. */
export function joinsIn({ columns, rows, cells }: Division, { piece, strokes }: StrokedPiece): readonly Join[] {
  const avoid: Avoid = {
    across: [...positions(strokes, 'down'), ...ends(columns)],
    down: [...positions(strokes, 'across'), ...ends(rows)],
    lines: itemsOf(piece, strokes).filter(isCrooked),
  };
  return joinsOf(columns, rows, avoid, cells);
}

function positions({ lines }: PieceStrokes, runs: 'down' | 'across'): readonly number[] {
  return lines.filter((line) => line.runs === runs).map(({ from }) => from[runs === 'down' ? 'x' : 'y'].valueOf());
}

function ends(stretches: readonly Stretch[]): readonly number[] {
  return stretches.flatMap(({ from, to }) => [from, to]);
}

/** Every line of a piece, in mm of the piece. */
function itemsOf(piece: Piece, strokes: PieceStrokes): readonly (SceneLine | SceneArc)[] {
  const drawn = drawnAt(piece, 0, 0, 1);
  return [...edgeItems(drawn, strokes), ...drawnLines(drawn, strokes).map((line) => line.drawn)];
}

/** Neither upright nor level. */
function isCrooked(item: SceneLine | SceneArc): boolean {
  return item.kind === 'arc' || (item.from.x !== item.to.x && item.from.y !== item.to.y);
}
