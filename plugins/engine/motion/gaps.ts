import type Fraction from 'fraction.js';
import type { Assembly, Joint } from '../assembly/index.ts';
import {
  compose,
  inSpace,
  minus,
  onGrid,
  type Placement,
  type Point,
  placeInSpace,
  plus,
  type SpacePoint,
  samePoint,
} from '../geometry/index.ts';
import { frameOf } from './joint-frame.ts';
import type { PoseSettings } from './pose-settings.ts';
import type { Gap } from './types.ts';

/**
 * Points that a coordinate off the exact numbers keeps apart and paper does not, in mm: a hundred thousand steps of the
 * grid, so that a long chain of rounded turns still meets.
 */
export const MEET_MM = 1e-7;

/**
 * How far the two panels of a joint come to lie apart: undefined when they meet. Looked at in three points that are not in
 * line, which decide a rigid motion. Exact numbers meet exactly; rounded ones to `MEET_MM`.
 */
export function gapAt(
  joint: Joint,
  placed: ReadonlyMap<string, Placement>,
  assembly: Assembly,
  settings: PoseSettings,
  pressed: boolean,
): Gap | undefined {
  const [a, b] = [placed.get(joint.a), placed.get(joint.b)];
  if (a === undefined || b === undefined) return undefined;
  const expected = compose(b, frameOf(joint, assembly, settings, pressed));
  let worst: Gap | undefined;
  for (const point of probesOf(joint, assembly)) {
    const at = { a: placeInSpace(a, point), b: placeInSpace(expected, point) };
    const mm = distance(at.a, at.b);
    if (mm > (worst?.mm ?? 0)) worst = { joint, mm, at };
  }
  return worst;
}

function distance(a: SpacePoint, b: SpacePoint): number {
  // What is rounded has lost more already than floats lose in a difference.
  const rounded = a.rounded || b.rounded;
  const apart = (one: Fraction, other: Fraction): number =>
    rounded ? one.valueOf() - other.valueOf() : minus(one, other).valueOf();
  const mm = Math.hypot(apart(a.x, b.x), apart(a.y, b.y), apart(a.z, b.z));
  return rounded && mm < MEET_MM ? 0 : mm;
}

/** In the space of panel `a`. A pin lets its part turn, so that only the point and the way up are looked at. */
function probesOf(joint: Joint, assembly: Assembly): readonly SpacePoint[] {
  const outline = assembly.panels.get(joint.a)?.outline ?? [];
  if (joint.is === 'pin') {
    const at = inSpace(joint.join.p);
    const span = outline.map((corner) => squareOf(corner, joint.join.p)).reduce((x, y) => Math.max(x, y), 1);
    return [at, { ...at, z: plus(at.z, onGrid(Math.sqrt(span))) }];
  }
  if (joint.is === 'hinge') {
    const { from, to } = joint.hinge;
    return [from, to, furthest(outline, (corner) => offLine(corner, from, to)) ?? from].map(inSpace);
  }
  const [first] = outline;
  if (first === undefined) return [];
  const second = furthest(outline, (corner) => squareOf(corner, first)) ?? first;
  const third = furthest(outline, (corner) => offLine(corner, first, second)) ?? first;
  return [first, second, third].filter((point, i) => i === 0 || !samePoint(point, first)).map(inSpace);
}

function furthest(points: readonly Point[], measure: (point: Point) => number): Point | undefined {
  let best: { point: Point; far: number } | undefined;
  for (const point of points) {
    const far = measure(point);
    if (best === undefined || far > best.far) best = { point, far };
  }
  return best?.point;
}

function squareOf(a: Point, b: Point): number {
  return (a.x.valueOf() - b.x.valueOf()) ** 2 + (a.y.valueOf() - b.y.valueOf()) ** 2;
}

function offLine(point: Point, from: Point, to: Point): number {
  const [x, y] = [from.x.valueOf(), from.y.valueOf()];
  const [dx, dy] = [to.x.valueOf() - x, to.y.valueOf() - y];
  return Math.abs(dx * (point.y.valueOf() - y) - dy * (point.x.valueOf() - x));
}
