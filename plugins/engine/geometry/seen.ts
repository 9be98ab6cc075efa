import type Fraction from 'fraction.js';
import type { Point } from './types.ts';

/** A point with its nearest floats: they decide what is far from doubtful, the exact numbers the rest. */
export interface Seen {
  readonly at: Point;
  readonly x: number;
  readonly y: number;
}

export function seen(at: Point): Seen {
  return { at, x: at.x.valueOf(), y: at.y.valueOf() };
}

/** A float of an exact number is off by half a unit in its last place: 2^-53 of it. */
const UNIT = 2 ** -53;

/**
 * Which way the path turns that goes from `a` to `b` and on to `c`: 1 clockwise on the drawing (`c` lies on the right), -1
 * anticlockwise, 0 when the three lie on one line. Exact.
 */
export function sideOf(a: Seen, b: Seen, c: Seen): -1 | 0 | 1 {
  const [ux, uy, vx, vy] = [b.x - a.x, b.y - a.y, c.x - a.x, c.y - a.y];
  const twice = ux * vy - uy * vx;
  const largest = Math.max(Math.abs(a.x), Math.abs(a.y), Math.abs(b.x), Math.abs(b.y), Math.abs(c.x), Math.abs(c.y));
  const longest = Math.abs(ux) + Math.abs(uy) + Math.abs(vx) + Math.abs(vy);
  // Each difference is off by less than four units of the largest coordinate, each product by that times a difference.
  const doubt = 16 * UNIT * largest * longest + 1e-300;
  if (twice > doubt) return 1;
  if (twice < -doubt) return -1;
  return exactSide(a.at, b.at, c.at);
}

function exactSide(a: Point, b: Point, c: Point): -1 | 0 | 1 {
  const [ux, uxd] = difference(a.x, b.x);
  const [vy, vyd] = difference(a.y, c.y);
  const [uy, uyd] = difference(a.y, b.y);
  const [vx, vxd] = difference(a.x, c.x);
  const left = ux === 0n || vy === 0n ? 0n : ux * vy * uyd * vxd;
  const right = uy === 0n || vx === 0n ? 0n : uy * vx * uxd * vyd;
  if (left === right) return 0;
  return left > right ? 1 : -1;
}

/** `to - from` as numerator and denominator, not in lowest terms. */
function difference(from: Fraction, to: Fraction): [bigint, bigint] {
  if (from.d === to.d) return [to.s * to.n - from.s * from.n, from.d];
  return [to.s * to.n * from.d - from.s * from.n * to.d, from.d * to.d];
}

/** Sign of `a.x - b.x`, exact. */
export function compareX(a: Seen, b: Seen): -1 | 0 | 1 {
  return compareSeen(a.x, b.x, a.at.x, b.at.x);
}

/** Sign of `a.y - b.y`, exact. */
export function compareY(a: Seen, b: Seen): -1 | 0 | 1 {
  return compareSeen(a.y, b.y, a.at.y, b.at.y);
}

function compareSeen(a: number, b: number, exactA: Fraction, exactB: Fraction): -1 | 0 | 1 {
  const doubt = 4 * UNIT * (Math.abs(a) + Math.abs(b));
  if (a - b > doubt) return 1;
  if (b - a > doubt) return -1;
  return exactA === exactB ? 0 : (Math.sign(exactA.compare(exactB)) as -1 | 0 | 1);
}

export function sameSeen(a: Seen, b: Seen): boolean {
  return a === b || (compareX(a, b) === 0 && compareY(a, b) === 0);
}
