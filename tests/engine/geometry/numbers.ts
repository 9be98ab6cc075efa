import Fraction from 'fraction.js';
import type { Point, SpacePoint } from '../../../plugins/engine/geometry/index.ts';

export function f(value: number | string): Fraction {
  return new Fraction(value);
}

export function p(x: number | string, y: number | string): Point {
  return { x: f(x), y: f(y) };
}

/** The exact value of a float, which is a fraction over a power of two. */
export function exactly(value: number): Fraction {
  let power = 0n;
  let scaled = value;
  while (!Number.isInteger(scaled)) {
    scaled *= 2;
    power++;
  }
  return new Fraction(BigInt(scaled), 2n ** power);
}

export function xy(point: Point): [number, number] {
  return [point.x.valueOf(), point.y.valueOf()];
}

export function xyz({ x, y, z }: SpacePoint): [number, number, number] {
  return [x.valueOf(), y.valueOf(), z.valueOf()];
}
