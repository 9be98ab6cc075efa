import {
  type Line,
  type Outline,
  type Piece,
  type Point,
  type Problem,
  readFold,
  type System,
} from '../../../plugins/engine/index.ts';
import { cardOf, foldOf } from './folds.ts';
import { yamlMap } from './yaml-tree.ts';

/** Sizes that pieces of these tests are made from. */
export const SIZES = 'parameters: { wide: 4, tall: 6, lean: 50 deg, pages: { count: 4 } }';

/** The piece that its YAML gives, in a fold whose bare numbers are of one unit. */
export function pieceOf(
  yaml: string,
  unit: 'in' | 'mm' = 'in',
  system: System = unit === 'in' ? 'inch' : 'metric',
): Piece {
  const card = cardOf(foldOf(`name: Trial\nunits: ${unit}\n${SIZES}\npieces:\n  sheet: ${yaml}`), system);
  const [piece] = card.pieces;
  if (piece === undefined) throw new Error('no piece');
  return piece;
}

/** What is wrong with such a piece. */
export function problemsOf(yaml: string): readonly Problem[] {
  return readFold(yamlMap(`name: Trial\nunits: in\n${SIZES}\npieces:\n  sheet: ${yaml}`)).problems;
}

const PER_UNIT = { in: '127/5', mm: 1 } as const;

/** A point in inches or millimetres. */
export function shown({ x, y }: Point, unit: 'in' | 'mm' = 'in'): [number, number] {
  return [x.div(PER_UNIT[unit]).valueOf(), y.div(PER_UNIT[unit]).valueOf()];
}

/** `name: (x, y) (x, y)` for each line, in inches or millimetres, `~` where an end is rounded. */
export function courses(lines: readonly Line[], unit: 'in' | 'mm' = 'in'): string[] {
  return lines.map(({ name, from, to }) => {
    const ends = [from, to].map((end) => `(${shown(end, unit).map(round).join(', ')})${end.rounded ? '~' : ''}`);
    return `${name}: ${ends.join(' ')}`;
  });
}

/** Corners of an outline, in order, arcs with their centre. */
export function corners(outline: Outline, unit: 'in' | 'mm' = 'in'): string[] {
  return outline.map((edge) => {
    const start = `(${shown(edge.from, unit).map(round).join(', ')})`;
    if (edge.is === 'line') return start;
    return `${start} round (${shown(edge.centre, unit).map(round).join(', ')})${edge.clockwise ? '' : ' left'}`;
  });
}

function round(value: number): number {
  return Math.round(value * 1e6) / 1e6 + 0;
}
