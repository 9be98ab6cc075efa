import type Fraction from 'fraction.js';
import { twiceSignedArea } from './measure.ts';
import { same, ZERO } from './numbers.ts';
import { samePoint } from './points.ts';
import type { Outline, PathEdge, Point } from './types.ts';

/*
 * Builders of outlines: clockwise on the drawing, circles and ellipses as four quarters. Sizes must be over zero, else
 * RangeError: who has read them can say where they stand.
 */

/** From its top left corner, clockwise. */
export function rectangle(left: Fraction, top: Fraction, width: Fraction, height: Fraction): Outline {
  needPositive(width, height);
  const right = left.add(width);
  const bottom = top.add(height);
  return lines([at(left, top), at(right, top), at(right, bottom), at(left, bottom)]);
}

/** Four quarters, from its top. */
export function circle(centre: Point, radius: Fraction): Outline {
  return ellipse(centre, radius, radius);
}

/** Four quarters, from its top. `rx` and `ry` are half its width and half its height. */
export function ellipse(centre: Point, rx: Fraction, ry: Fraction): Outline {
  needPositive(rx, ry);
  const { x, y } = centre;
  const top = like(centre, x, y.sub(ry));
  const right = like(centre, x.add(rx), y);
  const bottom = like(centre, x, y.add(ry));
  const left = like(centre, x.sub(rx), y);
  return [
    quarter(top, right, centre, rx, ry),
    quarter(right, bottom, centre, rx, ry),
    quarter(bottom, left, centre, rx, ry),
    quarter(left, top, centre, rx, ry),
  ];
}

/**
 * A rectangle with round corners, from the left end of its straight top. A radius of half a side leaves no straight part
 * there. Throws RangeError when the radius is more than half the shorter side; 0 gives a rectangle.
 */
export function roundedRectangle(
  left: Fraction,
  top: Fraction,
  width: Fraction,
  height: Fraction,
  radius: Fraction,
): Outline {
  needPositive(width, height);
  if (radius.compare(ZERO) < 0 || radius.mul(2).compare(width) > 0 || radius.mul(2).compare(height) > 0)
    throw new RangeError('round corners take a radius from 0 to half the shorter side');
  if (radius.equals(ZERO)) return rectangle(left, top, width, height);
  const [right, bottom] = [left.add(width), top.add(height)];
  const [inLeft, inRight] = [left.add(radius), right.sub(radius)];
  const [inTop, inBottom] = [top.add(radius), bottom.sub(radius)];
  const corner = (from: Point, to: Point, centre: Point): PathEdge => quarter(from, to, centre, radius, radius);
  const straight = (from: Point, to: Point): PathEdge[] => (samePoint(from, to) ? [] : [line(from, to)]);
  return [
    ...straight(at(inLeft, top), at(inRight, top)),
    corner(at(inRight, top), at(right, inTop), at(inRight, inTop)),
    ...straight(at(right, inTop), at(right, inBottom)),
    corner(at(right, inBottom), at(inRight, bottom), at(inRight, inBottom)),
    ...straight(at(inRight, bottom), at(inLeft, bottom)),
    corner(at(inLeft, bottom), at(left, inBottom), at(inLeft, inBottom)),
    ...straight(at(left, inBottom), at(left, inTop)),
    corner(at(left, inTop), at(inLeft, top), at(inLeft, inTop)),
  ];
}

/**
 * Straight from point to point and back to the first, put clockwise; points written twice in a row count once. Undefined when
 * it encloses nothing. Whether it crosses itself is asked of `crossingIn`.
 */
export function polygon(points: readonly Point[]): Outline | undefined {
  const corners = points.filter((point, i) => !samePoint(point, points[(i + 1) % points.length] ?? point));
  if (corners.length < 3) return undefined;
  const area = twiceSignedArea(corners);
  if (same(area, ZERO)) return undefined;
  const [first, ...rest] = corners;
  return lines(area.compare(ZERO) > 0 || !first ? corners : [first, ...rest.toReversed()]);
}

/** The same path moved by (dx, dy). */
export function moved(outline: Outline, dx: Fraction, dy: Fraction): Outline {
  const move = (point: Point): Point => like(point, point.x.add(dx), point.y.add(dy));
  return outline.map((edge) => ({
    ...edge,
    from: move(edge.from),
    to: move(edge.to),
    ...(edge.is === 'arc' && { centre: move(edge.centre) }),
  }));
}

function lines(corners: readonly Point[]): Outline {
  return corners.map((from, i) => line(from, corners[(i + 1) % corners.length] ?? from));
}

function line(from: Point, to: Point): PathEdge {
  return { is: 'line', from, to };
}

function quarter(from: Point, to: Point, centre: Point, rx: Fraction, ry: Fraction): PathEdge {
  return { is: 'arc', from, to, centre, rx, ry, clockwise: true };
}

function at(x: Fraction, y: Fraction): Point {
  return { x, y };
}

function like(point: Point, x: Fraction, y: Fraction): Point {
  return point.rounded ? { x, y, rounded: true } : { x, y };
}

function needPositive(...sizes: readonly Fraction[]): void {
  if (sizes.some((size) => size.compare(ZERO) <= 0)) throw new RangeError('an outline takes sizes over zero');
}
