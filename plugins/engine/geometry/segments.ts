import type Fraction from 'fraction.js';
import { minus, onGrid, plus, times } from './numbers.ts';
import { compareX, compareY, type Seen, seen, sideOf } from './seen.ts';
import type { Point } from './types.ts';

export interface Segment {
  readonly from: Seen;
  readonly to: Seen;
}

/** What two segments share: nothing, one point, or a length. `proper` when neither ends there. */
export type Meeting =
  | { readonly is: 'apart' }
  | { readonly is: 'point'; readonly at: Seen; readonly proper: boolean }
  | { readonly is: 'overlap'; readonly from: Seen; readonly to: Seen };

const APART: Meeting = { is: 'apart' };

/** Where two straight segments meet. Exact; a proper crossing of rounded ones is put on the grid unless `exactly`. */
export function meetSegments(a: Segment, b: Segment, exactly = false): Meeting {
  const aFrom = sideOf(b.from, b.to, a.from);
  const aTo = sideOf(b.from, b.to, a.to);
  if (aFrom === 0 && aTo === 0) return overlapOf(a, b);
  if (aFrom * aTo > 0) return APART;
  const bFrom = sideOf(a.from, a.to, b.from);
  const bTo = sideOf(a.from, a.to, b.to);
  if (bFrom * bTo > 0) return APART;
  if (bFrom === 0) return { is: 'point', at: b.from, proper: false };
  if (bTo === 0) return { is: 'point', at: b.to, proper: false };
  if (aFrom === 0) return { is: 'point', at: a.from, proper: false };
  if (aTo === 0) return { is: 'point', at: a.to, proper: false };
  return { is: 'point', at: seen(crossing(a, b, exactly)), proper: true };
}

/** Both lie on one line. */
function overlapOf(a: Segment, b: Segment): Meeting {
  const order = (p: Seen, q: Seen): number => compareX(p, q) || compareY(p, q);
  const [aLow, aHigh] = order(a.from, a.to) <= 0 ? [a.from, a.to] : [a.to, a.from];
  const [bLow, bHigh] = order(b.from, b.to) <= 0 ? [b.from, b.to] : [b.to, b.from];
  const low = order(aLow, bLow) >= 0 ? aLow : bLow;
  const high = order(aHigh, bHigh) <= 0 ? aHigh : bHigh;
  const sense = order(low, high);
  if (sense > 0) return APART;
  if (sense === 0) return { is: 'point', at: low, proper: false };
  return order(a.from, a.to) <= 0 ? { is: 'overlap', from: low, to: high } : { is: 'overlap', from: high, to: low };
}

function crossing(a: Segment, b: Segment, exactly: boolean): Point {
  const point = lineCrossing(a.from.at, a.to.at, b.from.at, b.to.at);
  if (point === undefined) throw new RangeError('segments on parallel lines have no crossing');
  const rounded = [a.from, a.to, b.from, b.to].some(({ at }) => at.rounded);
  if (!rounded) return point;
  return exactly ? { ...point, rounded } : { x: onGrid(point.x.valueOf()), y: onGrid(point.y.valueOf()), rounded };
}

/** Where the endless lines through two pairs of points cross, exact; undefined when they are parallel. */
function lineCrossing(p: Point, q: Point, r: Point, s: Point): Point | undefined {
  const [ux, uy] = [minus(q.x, p.x), minus(q.y, p.y)];
  const [vx, vy] = [minus(s.x, r.x), minus(s.y, r.y)];
  const cross = minus(times(ux, vy), times(uy, vx));
  if (cross.n === 0n) return undefined;
  // On a line square to the drawing one coordinate is known.
  if (ux.n === 0n && vy.n === 0n) return { x: p.x, y: r.y };
  if (uy.n === 0n && vx.n === 0n) return { x: r.x, y: p.y };
  const share = minus(times(minus(r.x, p.x), vy), times(minus(r.y, p.y), vx)).div(cross);
  return { x: plus(p.x, times(share, ux)), y: plus(p.y, times(share, uy)) };
}

/** The point of the endless line through `from` and `to` that is nearest to `point`, exact. */
export function footOn(point: Point, from: Point, to: Point): Point {
  const [ux, uy] = [minus(to.x, from.x), minus(to.y, from.y)];
  const square = plus(times(ux, ux), times(uy, uy));
  if (square.n === 0n) return from;
  const along = plus(times(minus(point.x, from.x), ux), times(minus(point.y, from.y), uy));
  const share: Fraction = along.div(square);
  const foot = { x: plus(from.x, times(share, ux)), y: plus(from.y, times(share, uy)) };
  return from.rounded || to.rounded || point.rounded
    ? { x: onGrid(foot.x.valueOf()), y: onGrid(foot.y.valueOf()), rounded: true }
    : foot;
}

/** Distance in mm between a point and a segment, as a float. */
export function distanceToSegment(x: number, y: number, from: Seen, to: Seen): number {
  const [ux, uy, vx, vy] = [to.x - from.x, to.y - from.y, x - from.x, y - from.y];
  const square = ux * ux + uy * uy;
  const share = square === 0 ? 0 : Math.min(1, Math.max(0, (vx * ux + vy * uy) / square));
  return Math.hypot(vx - share * ux, vy - share * uy);
}
