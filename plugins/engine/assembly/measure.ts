import Fraction from 'fraction.js';
import type { Point } from '../panels/index.ts';

/** A rectangle square to the drawing, in exact millimetres: y counts down, so `top` is less than `bottom`. */
export interface Bounds {
  readonly left: Fraction;
  readonly top: Fraction;
  readonly right: Fraction;
  readonly bottom: Fraction;
}

/** The smallest rectangle square to the drawing that holds all the points; empty at the origin for none. */
export function boundsOf(points: readonly Point[]): Bounds {
  const first = points[0] ?? { x: new Fraction(0), y: new Fraction(0) };
  return points.reduce<Bounds>(
    (box, { x, y }) => ({
      left: smaller(box.left, x),
      top: smaller(box.top, y),
      right: larger(box.right, x),
      bottom: larger(box.bottom, y),
    }),
    { left: first.x, top: first.y, right: first.x, bottom: first.y },
  );
}

/** Area in square millimetres, never negative, by the trapezoid formula. */
export function areaOf(outline: readonly Point[]): Fraction {
  const twice = outline.reduce((sum, point, i) => {
    const next = outline[(i + 1) % outline.length] ?? point;
    return sum.add(point.x.mul(next.y)).sub(next.x.mul(point.y));
  }, new Fraction(0));
  return twice.abs().div(2);
}

function smaller(a: Fraction, b: Fraction): Fraction {
  return a.compare(b) <= 0 ? a : b;
}

function larger(a: Fraction, b: Fraction): Fraction {
  return a.compare(b) >= 0 ? a : b;
}
