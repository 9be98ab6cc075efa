import type Fraction from 'fraction.js';
import { isZero, onGrid, plus } from './numbers.ts';
import { samePoint } from './points.ts';
import { seen, sideOf } from './seen.ts';
import { SAG_MM } from './tolerances.ts';
import type { PathEdge, Point } from './types.ts';

export type ArcEdge = Extract<PathEdge, { is: 'arc' }>;

const QUARTER = Math.PI / 2;
/** More chords than this in one edge are of no use to anybody who cuts paper. */
const MOST_CHORDS = 256;

/** Angle of a point on an arc's ellipse, in radians clockwise on the drawing from its right; exact at quarter points. */
function angleAt(point: Point, { centre, rx, ry }: ArcEdge): number {
  const [x, y] = [point.x.sub(centre.x), point.y.sub(centre.y)];
  if (isZero(x)) return y.s < 0n ? -QUARTER : QUARTER;
  if (isZero(y)) return x.s < 0n ? Math.PI : 0;
  return Math.atan2(y.div(ry).valueOf(), x.div(rx).valueOf());
}

/** From the start of the arc to a point on it, in radians along its own direction: 0 up to less than a whole turn. */
export function angleAlong(arc: ArcEdge, point: Point): number {
  if (samePoint(point, arc.from)) return 0;
  const turn = (angleAt(point, arc) - angleAt(arc.from, arc)) * (arc.clockwise ? 1 : -1);
  return turn < 0 ? turn + 4 * QUARTER : turn;
}

/** True for a point of the arc's ellipse that lies on the arc, its ends included. Exact for exact points. */
export function isOnArc(arc: ArcEdge, point: Point): boolean {
  if (samePoint(point, arc.from) || samePoint(point, arc.to)) return true;
  const side = sideOf(seen(arc.from), seen(arc.to), seen(point));
  return side === 0 || side === (arc.clockwise ? -1 : 1);
}

/**
 * An arc in parts, divided at points that lie on it, given in any order. Points at its ends divide nothing.
 */
export function splitArc(arc: ArcEdge, points: readonly Point[]): ArcEdge[] {
  const inner = points
    .filter((point) => !samePoint(point, arc.from) && !samePoint(point, arc.to))
    .map((point) => ({ point, along: angleAlong(arc, point) }))
    .sort((a, b) => a.along - b.along)
    .map(({ point }) => point);
  const stops = [...inner, arc.to];
  return stops
    .map((to, i) => ({ ...arc, from: stops[i - 1] ?? arc.from, to }))
    .filter(({ from, to }) => !samePoint(from, to));
}

/**
 * The corners of the chords that stand for an edge, its ends included: the ends of a line; for an arc at least one point
 * between, and no chord further than `SAG_MM` from it. A whole quarter gives the mirror image of its mirror image's chords,
 * and the same points when it is walked the other way.
 */
export function chordsOf(edge: PathEdge): Point[] {
  if (edge.is === 'line') return [edge.from, edge.to];
  const total = angleAlong(edge, edge.to);
  const largest = Math.max(edge.rx.valueOf(), edge.ry.valueOf());
  const step = 2 * Math.acos(Math.max(0, 1 - SAG_MM / largest));
  const count = Math.min(MOST_CHORDS, Math.max(2, Math.ceil(total / step - 1e-9)));
  const start = angleAt(edge.from, edge);
  const quarter = quarterOf(start, total, edge.clockwise);
  const corners = [edge.from];
  for (let k = 1; k < count; k++) {
    const direction =
      quarter === undefined
        ? directionAt(start + ((edge.clockwise ? 1 : -1) * total * k) / count)
        : directionInQuarter(quarter, edge.clockwise ? k : count - k, count);
    corners.push(pointAt(edge, ...direction));
  }
  return [...corners, edge.to];
}

/** The number of the quarter that an arc fills, counted clockwise from the right; undefined for another arc. */
function quarterOf(start: number, total: number, clockwise: boolean): number | undefined {
  const quarters = start / QUARTER;
  if (Math.abs(total - QUARTER) > 1e-12 || Math.abs(quarters - Math.round(quarters)) > 1e-12) return undefined;
  return (Math.round(quarters) + (clockwise ? 4 : 3)) % 4;
}

function directionAt(angle: number): [number, number] {
  return [Math.cos(angle), Math.sin(angle)];
}

/** The same two numbers for steps that lie alike in their quarter or mirrored in it. */
function directionInQuarter(quarter: number, k: number, count: number): [number, number] {
  const early = 2 * k <= count;
  const angle = ((early ? k : count - k) / count) * QUARTER;
  const [near, far] = 2 * k === count ? [Math.SQRT1_2, Math.SQRT1_2] : [Math.cos(angle), Math.sin(angle)];
  const [x, y] = early ? [near, far] : [far, near];
  const turned: readonly [number, number][] = [
    [x, y],
    [-y, x],
    [-x, -y],
    [y, -x],
  ];
  return turned[quarter] ?? [x, y];
}

/** On the ellipse in a direction given for the circle that it is drawn out of. */
export function pointAt(arc: ArcEdge, cos: number, sin: number): Point {
  const { centre, rx, ry } = arc;
  const off = (radius: Fraction, share: number): Fraction => onGrid(radius.valueOf() * share);
  return { x: plus(centre.x, off(rx, cos)), y: plus(centre.y, off(ry, sin)), rounded: true };
}

/** The corners of a closed path, arcs as chords, without repeating the first. */
export function cornersOf(outline: readonly PathEdge[]): Point[] {
  return outline.flatMap((edge) => chordsOf(edge).slice(0, -1));
}

/** The points that decide how far an edge reaches: its ends, and the right, bottom, left and top of its ellipse if on it. */
export function reachOf(edge: PathEdge): Point[] {
  if (edge.is === 'line') return [edge.from, edge.to];
  const { centre, rx, ry } = edge;
  const outermost: Point[] = [
    { ...centre, x: centre.x.add(rx) },
    { ...centre, y: centre.y.add(ry) },
    { ...centre, x: centre.x.sub(rx) },
    { ...centre, y: centre.y.sub(ry) },
  ];
  return [edge.from, edge.to, ...outermost.filter((point) => isOnArc(edge, point))];
}
