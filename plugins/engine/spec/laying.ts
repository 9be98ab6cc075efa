import Fraction from 'fraction.js';
import type { Point } from '../geometry/index.ts';
import type { PaperSide, PlaneTurn } from './card-types.ts';
import { cross, dot, isRounded, onGrid, rootOf, type Vector } from './plane.ts';

const ONE = new Fraction(1);
const NONE = new Fraction(0);

/** No turn at all. */
export const AS_DRAWN: PlaneTurn = { cos: ONE, sin: NONE };

/** Like sides meet only when one of the two pieces is turned over. */
export function turnedOver(partSide: PaperSide, ontoSide: PaperSide): boolean {
  return partSide === ontoSide;
}

/** A direction of the part as it is seen on the receiver's drawing before any turn: turned over about an upright axis, left is right. */
export function seen(direction: Vector, over: boolean): Vector {
  return over ? { ...direction, x: direction.x.neg() } : direction;
}

/** The clockwise turn that takes one direction to another: exact where the lengths of both are fractions. Neither may be zero. */
export function turnBetween(from: Vector, to: Vector): PlaneTurn {
  const long = rootOf(dot(from, from).mul(dot(to, to)));
  const [cos, sin] = [dot(from, to).div(long.value), cross(from, to).div(long.value)];
  // Along an axis of the drawing a direction is known however its length was come by.
  if (cross(from, to).equals(0)) return { cos: new Fraction(cos.s < 0n ? -1 : 1), sin: NONE };
  if (dot(from, to).equals(0)) return { cos: NONE, sin: new Fraction(sin.s < 0n ? -1 : 1) };
  if (!long.rounded && !isRounded(from) && !isRounded(to)) return { cos, sin };
  return { cos: onGrid(cos.valueOf()), sin: onGrid(sin.valueOf()), rounded: true };
}

/** A clockwise turn by degrees: exact for whole quarters. */
export function turnOf(degrees: Fraction): PlaneTurn {
  const quarters = degrees.div(90);
  if (quarters.d === 1n) {
    const quarter = Number(((quarters.s * quarters.n) % 4n) + 4n) % 4;
    const [cos, sin] = [
      [1, 0],
      [0, 1],
      [-1, 0],
      [0, -1],
    ][quarter] ?? [1, 0];
    return { cos: new Fraction(cos ?? 1), sin: new Fraction(sin ?? 0) };
  }
  const radians = (degrees.mod(360).valueOf() * Math.PI) / 180;
  return { cos: onGrid(Math.cos(radians)), sin: onGrid(Math.sin(radians)), rounded: true };
}

/** A direction of the part, turned over and turned, as it lies on the receiver's drawing. */
export function laidDirection(direction: Vector, over: boolean, turn: PlaneTurn): Vector {
  const { x, y } = seen(direction, over);
  const [across, down] = [x.mul(turn.cos).sub(y.mul(turn.sin)), x.mul(turn.sin).add(y.mul(turn.cos))];
  return isRounded(direction) || turn.rounded ? { x: across, y: down, rounded: true } : { x: across, y: down };
}

/** The same the other way: a direction of the receiver on the part's own drawing. */
export function ownDirection(direction: Vector, over: boolean, turn: PlaneTurn): Vector {
  const back: PlaneTurn = { ...turn, sin: turn.sin.neg() };
  return seen(laidDirection(direction, false, back), over);
}

export function isSame(a: Point, b: Point): boolean {
  return a.x.equals(b.x) && a.y.equals(b.y);
}
