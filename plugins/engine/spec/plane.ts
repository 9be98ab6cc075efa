import Fraction from 'fraction.js';
import { exactRoot, onGrid as nearestOnGrid, type Point, ZERO } from '../geometry/index.ts';

/** A direction or a distance on a drawing, in millimetres. `rounded` as for points. */
export type Vector = Point;

/** Two points of a line, in the order in which it runs. */
export interface Segment {
  readonly from: Point;
  readonly to: Point;
}

export { ZERO };

export function point(x: Fraction, y: Fraction, rounded = false): Point {
  return rounded ? { x, y, rounded } : { x, y };
}

export function minus(a: Point, b: Point): Vector {
  return point(a.x.sub(b.x), a.y.sub(b.y), isRounded(a) || isRounded(b));
}

export function plus(a: Point, b: Vector): Point {
  return point(a.x.add(b.x), a.y.add(b.y), isRounded(a) || isRounded(b));
}

/** A vector so many times as long. What is no fraction goes back on the grid. */
export function times(a: Vector, factor: Fraction, rounded = false): Vector {
  if (!rounded && !isRounded(a)) return point(a.x.mul(factor), a.y.mul(factor));
  return point(onGrid(a.x.mul(factor).valueOf()), onGrid(a.y.mul(factor).valueOf()), true);
}

export function middleOf({ from, to }: Segment): Point {
  return point(from.x.add(to.x).div(2), from.y.add(to.y).div(2), isRounded(from) || isRounded(to));
}

export function dot(a: Vector, b: Vector): Fraction {
  return a.x.mul(b.x).add(a.y.mul(b.y));
}

/** Positive when `b` lies clockwise of `a` on the drawing. */
export function cross(a: Vector, b: Vector): Fraction {
  return a.x.mul(b.y).sub(a.y.mul(b.x));
}

export function isRounded(a: Point): boolean {
  return a.rounded === true;
}

/** The vector with length 1: exact where its length is a fraction. Expects a vector that is not zero. */
export function unitOf(a: Vector): Vector {
  if (a.x.equals(0)) return point(ZERO, new Fraction(a.y.s < 0n ? -1 : 1), isRounded(a));
  if (a.y.equals(0)) return point(new Fraction(a.x.s < 0n ? -1 : 1), ZERO, isRounded(a));
  const long = rootOf(dot(a, a));
  return long.rounded || isRounded(a)
    ? point(onGrid(a.x.div(long.value).valueOf()), onGrid(a.y.div(long.value).valueOf()), true)
    : point(a.x.div(long.value), a.y.div(long.value));
}

/** The point `far` from the start of a line, in its direction; it may lie past its end. */
export function pointAlong(line: Segment, far: Fraction): Point {
  return plus(line.from, times(unitOf(minus(line.to, line.from)), far));
}

/** The square root of what is not negative: exact where it is a fraction, else on the grid. */
export function rootOf(value: Fraction): { readonly value: Fraction; readonly rounded: boolean } {
  const exact = exactRoot(value);
  return exact ? { value: exact, rounded: false } : { value: onGrid(Math.sqrt(value.valueOf())), rounded: true };
}

/** The nearest point of the grid for coordinates that are no fractions; zero for what is too large to be a number. */
export function onGrid(value: number): Fraction {
  return Number.isFinite(value * 1e12) ? nearestOnGrid(value) : ZERO;
}
