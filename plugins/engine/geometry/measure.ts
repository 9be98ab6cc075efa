import Fraction from 'fraction.js';
import { minus, ZERO } from './numbers.ts';
import type { Seen } from './seen.ts';
import type { Point } from './types.ts';

/** A rectangle square to the drawing, in exact millimetres: y counts down, so `top` is less than `bottom`. */
export interface Bounds {
  readonly left: Fraction;
  readonly top: Fraction;
  readonly right: Fraction;
  readonly bottom: Fraction;
}

/** The smallest rectangle square to the drawing that holds all the points; empty at the origin for none. */
export function boundsOf(points: readonly Point[]): Bounds {
  const first = points[0] ?? { x: ZERO, y: ZERO };
  let [left, right, top, bottom] = [first.x, first.x, first.y, first.y];
  for (const { x, y } of points) {
    if (x.compare(left) < 0) left = x;
    else if (x.compare(right) > 0) right = x;
    if (y.compare(top) < 0) top = y;
    else if (y.compare(bottom) > 0) bottom = y;
  }
  return { left, top, right, bottom };
}

/** Twice the area, positive for corners that go clockwise on the drawing, in square millimetres. Exact. */
export function twiceSignedArea(corners: readonly Point[]): Fraction {
  // In whole steps of a common denominator, since fractions in lowest terms ask for a division at every addition.
  const steps = commonDenominator(corners);
  let sum = 0n;
  let before = corners.at(-1);
  for (const point of corners) {
    if (before)
      sum += inSteps(before.x, steps) * inSteps(point.y, steps) - inSteps(point.x, steps) * inSteps(before.y, steps);
    before = point;
  }
  return new Fraction(sum, steps * steps);
}

function commonDenominator(corners: readonly Point[]): bigint {
  let steps = 1n;
  for (const { x, y } of corners)
    for (const { d } of [x, y]) if (steps % d !== 0n) steps *= d / commonDivisor(steps, d);
  return steps;
}

function commonDivisor(a: bigint, b: bigint): bigint {
  return b === 0n ? a : commonDivisor(b, a % b);
}

function inSteps(value: Fraction, steps: bigint): bigint {
  return value.s * value.n * (steps / value.d);
}

/** 1 for corners that go clockwise on the drawing, -1 anticlockwise, 0 when they enclose nothing. Exact. */
export function clockwise(corners: readonly Seen[]): -1 | 0 | 1 {
  const origin = corners[0];
  let [sum, size] = [0, 0];
  let a = corners.at(-1);
  for (const b of corners) {
    if (a === undefined || origin === undefined) break;
    sum += (a.x - origin.x) * (b.y - origin.y) - (b.x - origin.x) * (a.y - origin.y);
    size = Math.max(size, Math.abs(b.x), Math.abs(b.y), Math.abs(b.x - origin.x) + Math.abs(b.y - origin.y));
    a = b;
  }
  // Every term is off by a few units of the size squared.
  if (Math.abs(sum) > 1e-14 * size * size * corners.length) return sum > 0 ? 1 : -1;
  return Math.sign(twiceSignedArea(corners.map(({ at }) => at)).compare(ZERO)) as -1 | 0 | 1;
}

/** Area in square millimetres, never negative. */
export function areaOf(corners: readonly Point[]): Fraction {
  return twiceSignedArea(corners).abs().div(2);
}

/** Area of a polygon without its holes. */
export function paperArea(outline: readonly Point[], holes: readonly (readonly Point[])[]): Fraction {
  return holes.reduce((area, hole) => minus(area, areaOf(hole)), areaOf(outline));
}
