import { rectangle, ZERO } from '../../../plugins/engine/geometry/index.ts';
import type { Band, Card, Crease, FoldDirection, Piece, System } from '../../../plugins/engine/index.ts';
import { DEFAULT_MARKS, Length } from '../../../plugins/engine/index.ts';

const place = { file: 'invented.md', line: 1, column: 1 };

/** One side of an invented piece: band names and sizes with the folds between them, or one size. */
export type Side =
  | Length
  | readonly (readonly [name: string | undefined, size: Length, fold?: FoldDirection, crease?: string])[];

/** A piece made directly, for drawing tests that need no fold language. Each band's fold is the one before it. */
export function pieceOf(name: string, across: Side, down: Side, grain?: 'across' | 'down'): Piece {
  const columns = bandsOf(across);
  const rows = bandsOf(down);
  const width = Length.sum(columns.map((band) => band.size));
  const height = Length.sum(rows.map((band) => band.size));
  return {
    name,
    width,
    height,
    outline: rectangle(ZERO, ZERO, width.mm, height.mm),
    ...{ lines: [], windows: [], away: [], shapes: [], spots: [], thick: undefined },
    declared: undefined,
    columns,
    rows,
    creases: [...creasesOf(across, columns, 'down'), ...creasesOf(down, rows, 'across')],
    stock: 'cover',
    grain,
    place,
    path: `pieces.${name}`,
  };
}

function bandsOf(side: Side): Band[] {
  const list = side instanceof Length ? [[undefined, side] as const] : side;
  let start = Length.zero;
  return list.map(([name, size]) => {
    const band = { name, start, size, exact: size, place, path: '' };
    start = start.plus(size);
    return band;
  });
}

function creasesOf(side: Side, bands: readonly Band[], runs: Crease['runs']): Crease[] {
  if (side instanceof Length) return [];
  return side.slice(1).map(([name, , fold = 'valley', crease], i) => ({
    name: crease ?? `${side[i]?.[0]}|${name}`,
    runs,
    at: bands[i + 1]?.start ?? Length.zero,
    fold,
    place,
    path: '',
  }));
}

export const inches = (text: string): Length => Length.fromInches(text);
export const millimetres = (text: string): Length => Length.fromMm(text);

/** A card of pieces made directly. */
export function cardOf(system: System, ...pieces: readonly Piece[]): Card {
  const mark = DEFAULT_MARKS[system];
  const none = {
    parameters: [],
    poses: [],
    requirements: [],
    equalities: [],
    lesson: [],
    joins: [],
    fillings: [],
    coats: [],
    work: [],
  };
  const more = { motions: [], actsAs: undefined, posts: 'closed', closesWithin: [] };
  return { name: 'Invented card', system, mark, pieces, ...none, ...more, place };
}
