import {
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

interface Reach {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/**
 * For each curve the points where others meet it, its own ends first. An end that comes nearer to another curve than the
 * tolerance (mm) meets it at the nearest point. Undefined when there are more meetings than are worth counting.
 */
export function meetingsOf(curves: readonly Curve[], tolerance: number): Seen[][] | undefined {
  const stops: Seen[][] = curves.map(({ from, to }) => [from, to]);
  const reaches = curves.map((curve) => reachWith(curve, tolerance));
  let count = 0;
  for (const [i, a] of curves.entries())
    for (let j = i + 1; j < curves.length; j++) {
      const b = curves[j];
      const [near, far] = [reaches[i], reaches[j]];
      if (b === undefined || !near || !far || !overlap(near, far)) continue;
      const shared = a.edge.is === 'arc' && b.edge.is === 'arc' && a.source === b.source ? [] : meetings(a, b);
      if (shared.length > 0 && a.source !== b.source) count++;
      if (count > MEETING_LIMIT) return undefined;
      for (const point of shared) {
        stops[i]?.push(point);
        stops[j]?.push(point);
      }
      for (const end of [b.from, b.to]) addNearMiss(stops[i], end, a, tolerance);
      for (const end of [a.from, a.to]) addNearMiss(stops[j], end, b, tolerance);
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
function addNearMiss(stops: Seen[] | undefined, end: Seen, { edge, from, to }: Curve, tolerance: number): void {
  if (sameSeen(end, from) || sameSeen(end, to)) return;
  if (edge.is === 'line') {
    const distance = distanceToSegment(end.x, end.y, from, to);
    if (distance <= tolerance && !stops?.some((stop) => sameSeen(stop, end)))
      stops?.push(seen(footOn(end.at, edge.from, edge.to)));
    return;
  }
  const [x, y] = [end.x - edge.centre.x.valueOf(), end.y - edge.centre.y.valueOf()];
  const [rx, ry] = [edge.rx.valueOf(), edge.ry.valueOf()];
  const share = Math.hypot(x / rx, y / ry);
  if (share === 0 || Math.abs(share - 1) * Math.hypot(x, y) > tolerance) return;
  const foot = pointAt(edge, x / rx / share, y / ry / share);
  if (isOnArc(edge, foot) && !stops?.some((stop) => sameSeen(stop, end))) stops?.push(seen(foot));
}

function reachWith({ edge, from, to }: Curve, tolerance: number): Reach {
  const points = edge.is === 'line' ? [from, to] : reachOf(edge).map(seen);
  return {
    left: Math.min(...points.map(({ x }) => x)) - tolerance,
    right: Math.max(...points.map(({ x }) => x)) + tolerance,
    top: Math.min(...points.map(({ y }) => y)) - tolerance,
    bottom: Math.max(...points.map(({ y }) => y)) + tolerance,
  };
}

function overlap(a: Reach, b: Reach): boolean {
  return a.left <= b.right && b.left <= a.right && a.top <= b.bottom && b.top <= a.bottom;
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
