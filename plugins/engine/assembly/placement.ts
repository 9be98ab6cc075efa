import Fraction from 'fraction.js';
import type { Point } from '../panels/index.ts';
import type { Placement } from './types.ts';

const ZERO = new Fraction(0);
const ONE = new Fraction(1);

/** Where the ground panel lies: as drawn, face up. */
export const IDENTITY: Placement = { a: ONE, b: ZERO, c: ZERO, d: ONE, e: ZERO, f: ZERO, faceUp: true };

/**
 * Reflection in the line through two points, exact for any rational points, whatever the line's slope.
 * Throws RangeError when the points coincide, since they name no line.
 */
export function reflectionIn(from: Point, to: Point): Placement {
  const dx = to.x.sub(from.x);
  const dy = to.y.sub(from.y);
  const square = dx.mul(dx).add(dy.mul(dy));
  if (square.equals(0)) throw new RangeError('two points at one place name no line to reflect in');
  const a = dx.mul(dx).sub(dy.mul(dy)).div(square);
  const b = dx.mul(dy).mul(2).div(square);
  return {
    a,
    b,
    c: b,
    d: a.neg(),
    e: from.x.sub(a.mul(from.x)).sub(b.mul(from.y)),
    f: from.y.sub(b.mul(from.x)).add(a.mul(from.y)),
    faceUp: false,
  };
}

/** The motion that does `inner` first and `outer` after it. */
export function compose(outer: Placement, inner: Placement): Placement {
  return {
    a: outer.a.mul(inner.a).add(outer.b.mul(inner.c)),
    b: outer.a.mul(inner.b).add(outer.b.mul(inner.d)),
    c: outer.c.mul(inner.a).add(outer.d.mul(inner.c)),
    d: outer.c.mul(inner.b).add(outer.d.mul(inner.d)),
    e: outer.a.mul(inner.e).add(outer.b.mul(inner.f)).add(outer.e),
    f: outer.c.mul(inner.e).add(outer.d.mul(inner.f)).add(outer.f),
    faceUp: outer.faceUp === inner.faceUp,
  };
}

export function place(placement: Placement, point: Point): Point {
  return {
    x: placement.a.mul(point.x).add(placement.b.mul(point.y)).add(placement.e),
    y: placement.c.mul(point.x).add(placement.d.mul(point.y)).add(placement.f),
  };
}

/** Exactly the same motion: no tolerance. */
export function samePlacement(one: Placement, other: Placement): boolean {
  const numbers = (p: Placement): Fraction[] => [p.a, p.b, p.c, p.d, p.e, p.f];
  const others = numbers(other);
  return one.faceUp === other.faceUp && numbers(one).every((value, i) => value.equals(others[i] ?? Number.NaN));
}
