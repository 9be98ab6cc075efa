import type Fraction from 'fraction.js';
import { between, minus, type Outline, type Point, same, ZERO } from '../geometry/index.ts';
import type { Corner, Crease, Edge, Piece } from '../spec/index.ts';
import type { Standing } from './names.ts';
import type { Unnamed } from './panel-shapes.ts';
import type { Stroke } from './types.ts';

/** Panels of a piece before they have names, hinges by panel number. */
export interface Drafted {
  readonly panels: readonly Unnamed[];
  readonly standings: readonly Standing[];
  readonly hinges: readonly DraftHinge[];
  readonly strokes: readonly Stroke[];
}

export interface DraftHinge {
  readonly crease: string;
  readonly fold: Crease['fold'] | 'both';
  readonly from: Point;
  readonly to: Point;
  readonly left: number;
  readonly right: number;
}

/**
 * Most pieces are strips, and all that lies on them is creases from edge to edge: their panels are the cells of columns and
 * rows. Undefined for any other piece.
 */
export function gridPanels(piece: Piece): Drafted | undefined {
  const { columns, rows, lines, windows, away, shapes, outline } = piece;
  if (lines.length > 0 || windows.length > 0 || away.length > 0 || shapes.length > 0) return undefined;
  const [width, height] = [piece.width.mm, piece.height.mm];
  const xs = [...columns.map(({ start }) => start.mm), width];
  const ys = [...rows.map(({ start }) => start.mm), height];
  if (!isRising(xs) || !isRising(ys) || !isRectangle(outline, width, height)) return undefined;
  const points = ys.map((y) => xs.map((x): Point => ({ x, y })));
  const point = (column: number, row: number): Point => points[row]?.[column] ?? { x: ZERO, y: ZERO };
  const number = (column: number, row: number): number => row * columns.length + column;
  const cells = rows.flatMap((_, row) => columns.map((__, column) => ({ column, row })));
  const panels = cells.map(({ column, row }): Unnamed => {
    const corners = [point(column, row), point(column + 1, row), point(column + 1, row + 1), point(column, row + 1)];
    return { outline: corners, holes: [], inside: middle(point(column, row), point(column + 1, row + 1)), faces: [] };
  });
  const [right, bottom] = [columns.length - 1, rows.length - 1];
  const standings = cells.map(
    ({ column, row }): Standing => ({
      cells: [{ column, row }],
      shape: undefined,
      rim: rimOf(column === 0, column === right, row === 0, row === bottom),
    }),
  );
  const [down, across] = [running(piece, 'down'), running(piece, 'across')];
  if (!matches(down, xs) || !matches(across, ys)) return undefined;
  const hinges = [
    ...down.flatMap(({ name, fold }, i) =>
      rows.map(
        (_, row): DraftHinge => ({
          ...{ crease: name, fold, from: point(i + 1, row), to: point(i + 1, row + 1) },
          ...{ left: number(i + 1, row), right: number(i, row) },
        }),
      ),
    ),
    ...across.flatMap(({ name, fold }, i) =>
      columns.map(
        (_, column): DraftHinge => ({
          ...{ crease: name, fold, from: point(column, i + 1), to: point(column + 1, i + 1) },
          ...{ left: number(column, i), right: number(column, i + 1) },
        }),
      ),
    ),
  ];
  const crease = ({ name, fold }: Crease, from: Point, to: Point): Stroke => ({
    ...{ piece: piece.name, does: 'crease', name, fold, edge: { is: 'line', from, to } },
  });
  const strokes: Stroke[] = [
    ...outline.map((edge): Stroke => ({ piece: piece.name, does: 'edge', name: '', fold: undefined, edge })),
    ...down.map((one, i) => crease(one, point(i + 1, 0), point(i + 1, rows.length))),
    ...across.map((one, i) => crease(one, point(0, i + 1), point(columns.length, i + 1))),
  ];
  return { panels, standings, hinges, strokes };
}

function running({ creases }: Piece, runs: Crease['runs']): Crease[] {
  return creases.filter((crease) => crease.runs === runs);
}

/** One crease between each two bands. */
function matches(creases: readonly Crease[], edges: readonly Fraction[]): boolean {
  return creases.length === edges.length - 2 && creases.every(({ at }, i) => same(at.mm, edges[i + 1] ?? ZERO));
}

/** By more than any tolerance: thinner bands are looked at more closely. */
function isRising(edges: readonly Fraction[]): boolean {
  return edges.every((edge, i) => i === 0 || minus(edge, edges[i - 1] ?? edge).valueOf() > 1e-3);
}

function isRectangle(outline: Outline, width: Fraction, height: Fraction): boolean {
  const corners = [
    [ZERO, ZERO],
    [width, ZERO],
    [width, height],
    [ZERO, height],
  ] as const;
  return (
    outline.length === 4 &&
    outline.every(({ is, from }, i) => {
      const corner = corners[i];
      return is === 'line' && corner !== undefined && same(from.x, corner[0]) && same(from.y, corner[1]);
    })
  );
}

function middle(a: Point, b: Point): Point {
  return { x: between(a.x, b.x), y: between(a.y, b.y) };
}

function rimOf(left: boolean, right: boolean, top: boolean, bottom: boolean): Standing['rim'] {
  const edges = new Set<Edge>();
  const corners = new Set<Corner>();
  for (const [has, edge] of [
    [left, 'left'],
    [right, 'right'],
    [top, 'top'],
    [bottom, 'bottom'],
  ] as const)
    if (has) edges.add(edge);
  if (top && left) corners.add('top-left');
  if (top && right) corners.add('top-right');
  if (bottom && left) corners.add('bottom-left');
  if (bottom && right) corners.add('bottom-right');
  return { edges, corners };
}
