import type Fraction from 'fraction.js';
import { isZero, negated, ONE, onGrid, plus, same, times, ZERO } from './numbers.ts';
import { SNAP } from './tolerances.ts';
import type { Placement, Point, SpacePoint } from './types.ts';

type Nine = Placement['m'];
type Three = Placement['t'];

/** As drawn, face up. */
export const IDENTITY: Placement = { m: [ONE, ZERO, ZERO, ZERO, ONE, ZERO, ZERO, ZERO, ONE], t: [ZERO, ZERO, ZERO] };

/** A drawing's point in its own space: y counts down on paper and Y up in space. */
export function inSpace(point: Point): SpacePoint {
  const { x, y } = point;
  return point.rounded ? { x, y: negated(y), z: ZERO, rounded: true } : { x, y: negated(y), z: ZERO };
}

/**
 * A point of the plane Z = 0 on the drawing that it belongs to. What lies above or below the plane is seen square from
 * above.
 */
export function onDrawing(point: SpacePoint): Point {
  const { x, y } = point;
  return point.rounded ? { x, y: negated(y), rounded: true } : { x, y: negated(y) };
}

/** Where a placement puts a point of a panel's drawing. */
export function place(placement: Placement, point: Point): SpacePoint {
  return placeInSpace(placement, inSpace(point));
}

/** Where a placement puts a point of the panel's own space. */
export function placeInSpace(placement: Placement, point: SpacePoint): SpacePoint {
  if (placement === IDENTITY) return point;
  const { m, t } = placement;
  const v: Three = [point.x, point.y, point.z];
  if (placement.rounded || point.rounded) {
    const [a, b] = [m.map(Number), v.map(Number)];
    const [x, y, z] = [0, 1, 2].map((row) => onGrid(dotFloats(a, row, b) + Number(t[row]))) as unknown as Three;
    return { x, y, z, rounded: true };
  }
  return { x: plus(dot(m, 0, v), t[0]), y: plus(dot(m, 3, v), t[1]), z: plus(dot(m, 6, v), t[2]) };
}

/** Fractions with more in them below the line than this (77 digits) would take longer than they are worth. */
const LARGEST_DENOMINATOR = 1n << 256n;

/**
 * The motion that does `inner` first and `outer` after it. Exact when both are, as long as no number in it has more than 77 digits
 * below the line; else on the grid.
 */
export function compose(outer: Placement, inner: Placement): Placement {
  if (outer === IDENTITY) return inner;
  if (inner === IDENTITY) return outer;
  if (outer.rounded || inner.rounded) return composeRounded(outer, inner);
  const { m, t } = outer;
  const columns = [0, 1, 2].map((c): Three => [inner.m[c], inner.m[c + 3], inner.m[c + 6]] as unknown as Three);
  const entry = (row: number, column: number): Fraction => dot(m, row, columns[column] ?? t);
  const both: Placement = {
    m: [0, 3, 6].flatMap((row) => [0, 1, 2].map((column) => entry(row, column))) as unknown as Nine,
    t: [plus(dot(m, 0, inner.t), t[0]), plus(dot(m, 3, inner.t), t[1]), plus(dot(m, 6, inner.t), t[2])],
  };
  return [...both.m, ...both.t].some(({ d }) => d > LARGEST_DENOMINATOR) ? composeRounded(outer, inner) : both;
}

function composeRounded(outer: Placement, inner: Placement): Placement {
  const [a, b] = [outer.m.map(Number), inner.m.map(Number)];
  const [s, t] = [outer.t.map(Number), inner.t.map(Number)];
  const column = (c: number): number[] => [b[c] ?? 0, b[c + 3] ?? 0, b[c + 6] ?? 0];
  return {
    m: [0, 1, 2].flatMap((row) => [0, 1, 2].map((c) => onGrid(dotFloats(a, row, column(c))))) as unknown as Nine,
    t: [0, 1, 2].map((row) => onGrid(dotFloats(a, row, t) + (s[row] ?? 0))) as unknown as Three,
    rounded: true,
  };
}

/** The motion that undoes this one. */
export function inverse(placement: Placement): Placement {
  if (placement === IDENTITY) return placement;
  const { m, t } = placement;
  const turned: Nine = [m[0], m[3], m[6], m[1], m[4], m[7], m[2], m[5], m[8]];
  const back = [0, 3, 6].map((row) => negated(dot(turned, row, t))) as unknown as Three;
  if (!placement.rounded) return { m: turned, t: back };
  return { m: turned, t: back.map((value) => onGrid(value.valueOf())) as unknown as Three, rounded: true };
}

/**
 * The same motion: exactly when both are exact, else as near as `SNAP` of `side`, the larger side of the paper in mm, in
 * every point of a sheet of that size.
 */
export function samePlacement(one: Placement, other: Placement, side = 1000): boolean {
  if (one === other) return true;
  const near = (a: Fraction, b: Fraction, allowed: number): boolean =>
    same(a, b) || (roundedPair && Math.abs(a.valueOf() - b.valueOf()) <= allowed);
  const roundedPair = one.rounded === true || other.rounded === true;
  return (
    one.m.every((value, i) => near(value, other.m[i] ?? ZERO, SNAP)) &&
    one.t.every((value, i) => near(value, other.t[i] ?? ZERO, SNAP * side))
  );
}

/** True when the panel lies parallel to the ground; `up` when its face looks the ground's way. */
export function facing(placement: Placement): 'up' | 'down' | 'edge-on' | 'slanting' {
  const z = placement.m[8];
  const allowed = placement.rounded ? SNAP : 0;
  const value = z.valueOf();
  if (placement.rounded ? Math.abs(value) <= allowed : isZero(z)) return 'edge-on';
  if (Math.abs(Number(placement.m[6])) > allowed || Math.abs(Number(placement.m[7])) > allowed) return 'slanting';
  return value > 0 ? 'up' : 'down';
}

/** Row times column, row given by the index of its first entry. */
function dot(m: Nine, row: number, v: Three): Fraction {
  const [a, b, c] = [m[row], m[row + 1], m[row + 2]] as unknown as Three;
  return plus(plus(times(a, v[0]), times(b, v[1])), times(c, v[2]));
}

function dotFloats(m: readonly number[], row: number, v: readonly number[]): number {
  const at = row * 3;
  return (m[at] ?? 0) * (v[0] ?? 0) + (m[at + 1] ?? 0) * (v[1] ?? 0) + (m[at + 2] ?? 0) * (v[2] ?? 0);
}
