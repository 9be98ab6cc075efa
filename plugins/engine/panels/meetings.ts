import {
  type ArcEdge,
  distanceToSegment,
  footOn,
  isOnArc,
  meetingPoints,
  meetSegments,
  pointAt,
  reachOf,
  type Seen,
  sameSeen,
  seen,
} from '../geometry/index.ts';
import type { Curve } from './curves.ts';
import { MEETING_LIMIT } from './limits.ts';

/** A curve with the box that it lies in, in floats, wider by the tolerance on each side; for an arc its ellipse too. */
interface Reach {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly round: { readonly x: number; readonly y: number; readonly rx: number; readonly ry: number } | undefined;
}

/**
 * For each curve the points where others meet it, its own ends first. An end that comes nearer to another curve than the
 * tolerance (mm) meets it at the nearest point. Undefined when there are more meetings than are worth counting.
 */
export function meetingsOf(curves: readonly Curve[], tolerance: number): Seen[][] | undefined {
  const stops: Seen[][] = curves.map(({ from, to }) => [from, to]);
  const reaches = curves.map((curve) => reachWith(curve, tolerance));
  let count = 0;
  for (const [i, a] of curves.entries()) {
    const [near, own] = [reaches[i], stops[i]];
    if (!near || !own) continue;
    for (let j = i + 1; j < curves.length; j++) {
      const far = reaches[j];
      if (far === undefined || !overlap(near, far)) continue;
      const [b, others] = [curves[j], stops[j]];
      if (!b || !others) continue;
      const shared = a.edge.is === 'arc' && b.edge.is === 'arc' && a.source === b.source ? [] : meetings(a, b);
      if (shared.length > 0 && a.source !== b.source) count++;
      if (count > MEETING_LIMIT) return undefined;
      own.push(...shared);
      others.push(...shared);
      for (const end of [b.from, b.to]) if (holds(near, end)) addNearMiss(own, end, a, near, tolerance);
      for (const end of [a.from, a.to]) if (holds(far, end)) addNearMiss(others, end, b, far, tolerance);
    }
  }
  return stops;
}

function meetings(a: Curve, b: Curve): Seen[] {
  if (a.edge.is === 'arc' || b.edge.is === 'arc') return meetingPoints(a.edge, b.edge).map(seen);
  const meeting = meetSegments(a, b);
  if (meeting.is === 'apart') return [];
  return meeting.is === 'point' ? [meeting.at] : [meeting.from, meeting.to];
}

/** `end` belongs to another curve. On this one already, it is found as a meeting. */
function addNearMiss(stops: Seen[], end: Seen, { edge, from, to }: Curve, { round }: Reach, tolerance: number): void {
  if (edge.is === 'line' || round === undefined) {
    if (distanceToSegment(end.x, end.y, from, to) > tolerance || sameSeen(end, from) || sameSeen(end, to)) return;
    if (!stops.some((stop) => sameSeen(stop, end))) stops.push(seen(footOn(end.at, edge.from, edge.to)));
    return;
  }
  const [x, y] = [end.x - round.x, end.y - round.y];
  const share = Math.hypot(x / round.rx, y / round.ry);
  if (share === 0 || Math.abs(share - 1) * Math.hypot(x, y) > tolerance) return;
  if (sameSeen(end, from) || sameSeen(end, to)) return;
  const foot = pointAt(edge, x / round.rx / share, y / round.ry / share);
  if (isOnArc(edge, foot) && !stops.some((stop) => sameSeen(stop, end))) stops.push(seen(foot));
}

function reachWith({ edge, from, to }: Curve, tolerance: number): Reach {
  const points = edge.is === 'line' ? [from, to] : reachOf(edge).map(seen);
  return {
    left: Math.min(...points.map(({ x }) => x)) - tolerance,
    right: Math.max(...points.map(({ x }) => x)) + tolerance,
    top: Math.min(...points.map(({ y }) => y)) - tolerance,
    bottom: Math.max(...points.map(({ y }) => y)) + tolerance,
    round: edge.is === 'line' ? undefined : floatsOf(edge),
  };
}

function floatsOf({ centre, rx, ry }: ArcEdge): NonNullable<Reach['round']> {
  return { x: centre.x.valueOf(), y: centre.y.valueOf(), rx: rx.valueOf(), ry: ry.valueOf() };
}

function overlap(a: Reach, b: Reach): boolean {
  return a.left <= b.right && b.left <= a.right && a.top <= b.bottom && b.top <= a.bottom;
}

function holds({ left, right, top, bottom }: Reach, { x, y }: Seen): boolean {
  return left <= x && x <= right && top <= y && y <= bottom;
}

/** How many places lines cross, by floats alone and without an end: for saying how far too many there are. */
export function roughCrossings(curves: readonly Curve[]): number {
  let count = 0;
  const side = (a: Seen, b: Seen, c: Seen): boolean => (b.x - a.x) * (c.y - a.y) > (b.y - a.y) * (c.x - a.x);
  for (const [i, a] of curves.entries())
    for (let j = i + 1; j < curves.length; j++) {
      const b = curves[j];
      if (b === undefined) continue;
      const apart =
        side(a.from, a.to, b.from) === side(a.from, a.to, b.to) ||
        side(b.from, b.to, a.from) === side(b.from, b.to, a.to);
      if (!apart) count++;
    }
  return count;
}
