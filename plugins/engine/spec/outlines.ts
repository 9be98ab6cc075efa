import type Fraction from 'fraction.js';
import {
  boundsOf,
  ellipse,
  type Outline,
  type PathEdge,
  type Point,
  reachOf,
  rectangle,
  roundedRectangle,
} from '../geometry/index.ts';
import { cross, dot, isRounded, minus, plus, point, rootOf, ZERO } from './plane.ts';

/** A rectangle that stands square to the drawing. */
export interface Rectangle {
  readonly left: Fraction;
  readonly top: Fraction;
  readonly width: Fraction;
  readonly height: Fraction;
}

export function hasArea({ width, height }: Rectangle): boolean {
  return width.compare(ZERO) > 0 && height.compare(ZERO) > 0;
}

/** Expects an area, like those below. */
export function rectangleOutline({ left, top, width, height }: Rectangle): Outline {
  return rectangle(left, top, width, height);
}

/** As large as a rectangle. A circle where both sides are equal. */
export function ellipseOutline({ left, top, width, height }: Rectangle): Outline {
  const [rx, ry] = [width.div(2), height.div(2)];
  return ellipse(point(left.add(rx), top.add(ry)), rx, ry);
}

/** Expects a radius of at most half the shorter side. */
export function roundedOutline({ left, top, width, height }: Rectangle, radius: Fraction): Outline {
  return roundedRectangle(left, top, width, height, radius);
}

/** Smaller by so much on every side. */
export function inset({ left, top, width, height }: Rectangle, by: Fraction): Rectangle {
  return { left: left.add(by), top: top.add(by), width: width.sub(by.mul(2)), height: height.sub(by.mul(2)) };
}

/** The arc of a circle through three points; undefined when they lie on one straight line. */
export function arcThrough(from: Point, through: Point, to: Point): PathEdge | undefined {
  const [a, b] = [minus(through, from), minus(to, from)];
  const twice = cross(a, b).mul(2);
  if (twice.equals(0)) return undefined;
  const [aa, bb] = [dot(a, a), dot(b, b)];
  const offset = point(b.y.mul(aa).sub(a.y.mul(bb)).div(twice), a.x.mul(bb).sub(b.x.mul(aa)).div(twice));
  const radius = rootOf(dot(offset, offset));
  const at = plus(from, offset);
  const centre = point(at.x, at.y, radius.rounded || [from, through, to].some(isRounded));
  return { is: 'arc', from, to, centre, rx: radius.value, ry: radius.value, clockwise: twice.compare(ZERO) > 0 };
}

/** The same edge, the other way round: clockwise becomes anticlockwise. */
export function reversed(outline: Outline): Outline {
  return outline.toReversed().map((edge): PathEdge => {
    const ends = { from: edge.to, to: edge.from };
    return edge.is === 'line' ? { ...edge, ...ends } : { ...edge, ...ends, clockwise: !edge.clockwise };
  });
}

/** An outline moved by a distance, `rounded` where that is. */
export function movedBy(outline: Outline, by: Point): Outline {
  return outline.map((edge): PathEdge => {
    const ends = { from: plus(edge.from, by), to: plus(edge.to, by) };
    return edge.is === 'line' ? { ...edge, ...ends } : { ...edge, ...ends, centre: plus(edge.centre, by) };
  });
}

/** The smallest rectangle round an outline, arcs and all. `rounded` where what is no fraction reaches its edge. */
export function boxOf(outline: Outline): Rectangle & { readonly rounded: boolean } {
  const reached = outline.flatMap(reachOf);
  const { left, top, right, bottom } = boundsOf(reached);
  const outermost = ({ x, y }: Point): boolean =>
    x.equals(left) || x.equals(right) || y.equals(top) || y.equals(bottom);
  const rounded = reached.some((at) => isRounded(at) && outermost(at));
  return { left, top, width: right.sub(left), height: bottom.sub(top), rounded };
}
