import Fraction from 'fraction.js';
import {
  circle,
  ellipse,
  type Outline,
  type Point,
  polygon,
  rectangle,
  roundedRectangle,
} from '../../../plugins/engine/geometry/index.ts';
import {
  type Card,
  Length,
  type Line,
  type LineWork,
  type PartCut,
  type Piece,
  type Place,
  type Region,
  type Spot,
} from '../../../plugins/engine/index.ts';

/*
 * Pieces written by hand, without the fold language. Numbers are inches, whole or `11/4`.
 */

export type Inches = number | string;
export type Pair = readonly [Inches, Inches];

const PLACE: Place = { file: 'invented.md', line: 7, column: 3 };
const ORIGIN = { place: PLACE, path: 'pieces' };

export function mm(inches: Inches): Fraction {
  return new Fraction(inches).mul('127/5');
}

export function at([x, y]: Pair): Point {
  return { x: mm(x), y: mm(y) };
}

/** A point that no fraction decided. */
export function about([x, y]: readonly [number, number]): Point {
  const grid = (value: number): Fraction => new Fraction(BigInt(Math.round(value * 25.4 * 1e12)), 10n ** 12n);
  return { x: grid(x), y: grid(y), rounded: true };
}

/** `['front 17/4', 'valley spine', 'back 17/4']`, or one number. */
export type Side = Inches | readonly string[];

export interface Extra {
  readonly outline?: Outline;
  readonly lines?: readonly Line[];
  readonly windows?: readonly Region[];
  readonly away?: readonly Region[];
  readonly shapes?: readonly PartCut[];
  readonly spots?: readonly Spot[];
}

export function piece(name: string, across: Side, down: Side, extra: Extra = {}): Piece {
  const [columns, rows] = [bandsOf(across), bandsOf(down)];
  const [width, height] = [Length.sum(columns.map(({ size }) => size)), Length.sum(rows.map(({ size }) => size))];
  return {
    ...{ name, width, height, declared: undefined, columns, rows },
    creases: [...creasesOf(across, columns, 'down'), ...creasesOf(down, rows, 'across')],
    outline: rectangle(new Fraction(0), new Fraction(0), width.mm, height.mm),
    ...{ lines: [], windows: [], away: [], shapes: [], spots: [] },
    ...{ stock: 'cover', thick: undefined, grain: undefined, ...ORIGIN },
    ...extra,
  };
}

function bandsOf(side: Side): Piece['columns'] {
  const words = typeof side === 'object' ? side.filter((_, i) => i % 2 === 0) : [String(side)];
  let start = Length.zero;
  return words.map((text) => {
    const [first = '', second] = text.split(' ');
    const size = Length.fromInches(second ?? first);
    const band = { name: second === undefined ? undefined : first, start, size, exact: size, ...ORIGIN };
    start = start.plus(size);
    return band;
  });
}

function creasesOf(side: Side, bands: Piece['columns'], runs: 'down' | 'across'): Piece['creases'] {
  if (typeof side !== 'object') return [];
  return side
    .filter((_, i) => i % 2 === 1)
    .map((text, i) => {
      const [fold = '', name] = text.split(' ');
      return {
        name: name ?? `${bands[i]?.name}|${bands[i + 1]?.name}`,
        ...{ runs, at: bands[i + 1]?.start ?? Length.zero, fold: fold as 'valley' | 'mountain', ...ORIGIN },
      };
    });
}

export function line(
  does: LineWork,
  name: string,
  from: Pair | Point,
  to: Pair | Point,
  folds: Line['folds'] = [],
): Line {
  const end = (point: Pair | Point): Point => ('x' in point ? point : at(point));
  return {
    ...{ name, family: name.replace(/\(\d+\)$/, ''), does, from: end(from), to: end(to), ...ORIGIN },
    folds: does === 'crease' && folds.length === 0 ? ['valley'] : folds,
  };
}

export function region(name: string, outline: Outline): Region {
  return { name, outline, ...ORIGIN };
}

export function partCut(name: string, outline: Outline, staysWith: string): PartCut {
  return { name, outline, staysWith, ...ORIGIN };
}

export function spot(name: string, point: Pair): Spot {
  return { name, at: at(point), ...ORIGIN };
}

export const shape = {
  circle: (centre: Pair, diameter: Inches): Outline => circle(at(centre), mm(diameter).div(2)),
  ellipse: (centre: Pair, width: Inches, height: Inches): Outline =>
    ellipse(at(centre), mm(width).div(2), mm(height).div(2)),
  rectangle: (left: Inches, top: Inches, width: Inches, height: Inches): Outline =>
    rectangle(mm(left), mm(top), mm(width), mm(height)),
  rounded: (left: Inches, top: Inches, width: Inches, height: Inches, radius: Inches): Outline =>
    roundedRectangle(mm(left), mm(top), mm(width), mm(height), mm(radius)),
  polygon: (...corners: readonly Pair[]): Outline => {
    const made = polygon(corners.map(at));
    if (made === undefined) throw new RangeError('the corners enclose nothing');
    return made;
  },
};

export function card(...pieces: readonly Piece[]): Card {
  return {
    ...{ name: 'Invented card', system: 'inch', mark: Length.fromInches('1/16'), parameters: [], pieces },
    ...{ joins: [], fillings: [], poses: [], motions: [], actsAs: undefined, posts: 'closed', closesWithin: [] },
    ...{ coats: [], work: [], requirements: [], equalities: [], lesson: [], place: PLACE },
  };
}
