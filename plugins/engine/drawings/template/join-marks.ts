import type { Board } from '../board.ts';
import { type Box, grown } from '../box.ts';
import { meets } from '../meetings.ts';
import type { SceneArc, SceneLabel, SceneLine, ScenePoint } from '../scene.ts';
import { joinOf, type Stretch } from './tiling.ts';

const MARK_RADIUS_MM = 2.5;
const MARK_CIRCLE = { rx: MARK_RADIUS_MM, ry: MARK_RADIUS_MM, from: 0, to: 360 };
const CROSS_MM = 4.5;
/** Marks keep this far from creases, edges and other joins, so that they and their letters can be seen, in mm. */
const MARK_CLEAR_MM = 7;
const LABEL_SIZE = 2.5;
const LABEL_OFF_MM = 1.2;

/** A join between two neighbouring pages, in mm of the piece: a straight line with two marks on it. */
export interface Join {
  readonly letter: string;
  /** `down`: an upright line at x = `at`. `across`: a level line at y = `at`. */
  readonly runs: 'down' | 'across';
  readonly at: number;
  /** Along the line. */
  readonly from: number;
  readonly to: number;
  /** Where along the line its two marks are. */
  readonly marks: readonly number[];
  /** The pages it joins: row and column, counted from 0. */
  readonly cells: readonly [Cell, Cell];
}

export interface Cell {
  readonly row: number;
  readonly column: number;
}

/** Where no mark should lie, in mm of the piece: positions along each way, and lines that are neither upright nor level. */
export interface Avoid {
  readonly across: readonly number[];
  readonly down: readonly number[];
  readonly lines: readonly (SceneLine | SceneArc)[];
}

/** All joins of a piece cut into columns and rows, between two cells that are `used`. */
export function joinsOf(
  columns: readonly Stretch[],
  rows: readonly Stretch[],
  avoid: Avoid,
  used: readonly Cell[],
): readonly Join[] {
  const joins: Omit<Join, 'letter'>[] = [];
  rows.forEach((rowStretch, row) => {
    columns.slice(1).forEach((after, column) => {
      const before = columns[column] ?? after;
      const cells = [
        { row, column },
        { row, column: column + 1 },
      ] as const;
      joins.push({
        runs: 'down',
        at: joinOf(before, after),
        ...rowStretch,
        marks: marksOn('down', joinOf(before, after), rowStretch, avoid),
        cells,
      });
    });
  });
  columns.forEach((columnStretch, column) => {
    rows.slice(1).forEach((after, row) => {
      const before = rows[row] ?? after;
      const cells = [
        { row, column },
        { row: row + 1, column },
      ] as const;
      joins.push({
        runs: 'across',
        at: joinOf(before, after),
        ...columnStretch,
        marks: marksOn('across', joinOf(before, after), columnStretch, avoid),
        cells,
      });
    });
  });
  const isUsed = ({ row, column }: Cell): boolean => used.some((cell) => cell.row === row && cell.column === column);
  return joins.filter(({ cells }) => cells.every(isUsed)).map((join, i) => ({ ...join, letter: letterOf(i) }));
}

/** Near a quarter and three quarters of the stretch, moved inwards off what is to be avoided where that can be. */
function marksOn(runs: Join['runs'], at: number, { from, to }: Stretch, avoid: Avoid): readonly number[] {
  const length = to - from;
  const clear = (along: number): boolean =>
    avoid[runs].every((other) => Math.abs(other - along) >= MARK_CLEAR_MM) &&
    !avoid.lines.some((line) => meets(line, about(runs, at, along)));
  const near = (start: number, step: number): number => {
    for (let i = 0; i * Math.abs(step) < length * 0.2; i++) if (clear(start + i * step)) return start + i * step;
    return start;
  };
  return [near(from + length / 4, 1), near(to - length / 4, -1)];
}

/** The room that a mark wants for itself. */
function about(runs: Join['runs'], at: number, along: number): Box {
  const [x, y] = runs === 'down' ? [at, along] : [along, at];
  return grown({ left: x, right: x, top: y, bottom: y }, MARK_CLEAR_MM);
}

function letterOf(index: number): string {
  const letter = String.fromCharCode(65 + (index % 26));
  return index < 26 ? letter : `${letterOf(Math.floor(index / 26) - 1)}${letter}`;
}

/** Draws joins on one of their pages, then the letters of their marks; `place` turns a point of the piece into one of the page. */
export function drawJoins(board: Board, joins: readonly Join[], place: (x: number, y: number) => ScenePoint): void {
  const point = ({ runs, at }: Join, along: number, off = 0): ScenePoint =>
    runs === 'down' ? place(at + off, along) : place(along, at + off);
  for (const join of joins) {
    board.add({ kind: 'line', role: 'join', from: point(join, join.from), to: point(join, join.to) });
    for (const mark of join.marks)
      board.add(
        { kind: 'arc', role: 'frame', centre: point(join, mark), ...MARK_CIRCLE },
        { kind: 'line', role: 'frame', from: point(join, mark, -CROSS_MM), to: point(join, mark, CROSS_MM) },
      );
  }
  for (const join of joins)
    for (const [i, mark] of join.marks.entries()) board.place(markLabels(`${join.letter}${i + 1}`, point(join, mark)));
}

/** Places for a mark's letter: at one of its four corners. */
function markLabels(text: string, { x, y }: ScenePoint): readonly SceneLabel[] {
  const off = MARK_RADIUS_MM + LABEL_OFF_MM;
  return [1, -1].flatMap((right) =>
    [-1, 1].map((below): SceneLabel => {
      const at = { x: x + right * off, y: y + below * LABEL_OFF_MM + (below > 0 ? LABEL_SIZE : 0) };
      const anchor = right > 0 ? 'start' : 'end';
      return { kind: 'label', text, at, size: LABEL_SIZE, anchor, turn: 0, role: 'figure' };
    }),
  );
}
