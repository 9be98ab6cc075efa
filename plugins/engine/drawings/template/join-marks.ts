import type { Board } from '../board.ts';
import type { SceneLabel, ScenePoint } from '../scene.ts';
import { joinOf, type Stretch } from './tiling.ts';

const MARK_RADIUS_MM = 2.5;
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

/** All joins of a piece cut into columns and rows; `avoid` are positions along each way where no mark should lie. */
export function joinsOf(
  columns: readonly Stretch[],
  rows: readonly Stretch[],
  avoid: { readonly across: readonly number[]; readonly down: readonly number[] },
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
        marks: marksOn(rowStretch, avoid.down),
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
        marks: marksOn(columnStretch, avoid.across),
        cells,
      });
    });
  });
  return joins.map((join, i) => ({ ...join, letter: letterOf(i) }));
}

/** Near a quarter and three quarters of the stretch, moved inwards off what is to be avoided where that can be. */
function marksOn({ from, to }: Stretch, avoid: readonly number[]): readonly number[] {
  const length = to - from;
  const clear = (at: number): boolean => avoid.every((other) => Math.abs(other - at) >= MARK_CLEAR_MM);
  const near = (start: number, step: number): number => {
    for (let i = 0; i * Math.abs(step) < length * 0.2; i++) if (clear(start + i * step)) return start + i * step;
    return start;
  };
  return [near(from + length / 4, 1), near(to - length / 4, -1)];
}

function letterOf(index: number): string {
  const letter = String.fromCharCode(65 + (index % 26));
  return index < 26 ? letter : `${letterOf(Math.floor(index / 26) - 1)}${letter}`;
}

/** Draws the join on one of its pages; `place` turns a point of the piece into one of the page. */
export function drawJoin(board: Board, join: Join, place: (x: number, y: number) => ScenePoint): void {
  const point = (along: number, off = 0): ScenePoint =>
    join.runs === 'down' ? place(join.at + off, along) : place(along, join.at + off);
  board.add({ kind: 'line', role: 'join', from: point(join.from), to: point(join.to) });
  join.marks.forEach((mark, i) => {
    const centre = point(mark);
    board.add(
      { kind: 'arc', role: 'frame', centre, radius: MARK_RADIUS_MM, from: 0, to: 360 },
      { kind: 'line', role: 'frame', from: point(mark, -CROSS_MM), to: point(mark, CROSS_MM) },
    );
    board.place(markLabels(`${join.letter}${i + 1}`, centre));
  });
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
