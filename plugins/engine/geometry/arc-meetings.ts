import Fraction from 'fraction.js';
import { type ArcEdge, angleAlong, isOnArc, pointAt } from './arcs.ts';
import { exactRoot, minus, ONE, onGrid, plus, same, times, ZERO } from './numbers.ts';
import { samePoint } from './points.ts';
import { compareX, compareY, type Seen, seen } from './seen.ts';
import type { Point } from './types.ts';

/**
 * Where a straight segment meets an arc, in the order of the segment: exact where the coordinates are fractions (through the
 * quarter points, through the corners of a 3-4-5 triangle), else on the grid. A line that touches meets once.
 */
export function lineMeetsArc(from: Point, to: Point, arc: ArcEdge): Point[] {
  if (staysOff(from, to, arc)) return [];
  const ends = { from: seen(from), to: seen(to) };
  const within = (point: Point): boolean => point === from || point === to || isBetween(seen(point), ends);
  return endlessMeetsEllipse(from, to, arc).filter((point) => within(point) && isOnArc(arc, point));
}

function isBetween(point: Seen, { from, to }: { from: Seen; to: Seen }): boolean {
  return compareX(point, from) * compareX(point, to) <= 0 && compareY(point, from) * compareY(point, to) <= 0;
}

/** Far more than floats lose where an ellipse is drawn in to a radius of 1. */
const DOUBT = 1e-6;

/** Whether a segment plainly lies within an arc's ellipse or passes by it, by floats; false where that is in doubt. */
function staysOff(p: Point, q: Point, { centre, rx, ry }: ArcEdge): boolean {
  const [cx, cy, a, b] = [centre.x.valueOf(), centre.y.valueOf(), rx.valueOf(), ry.valueOf()];
  const [px, py, qx, qy] = [
    ...[(p.x.valueOf() - cx) / a, (p.y.valueOf() - cy) / b],
    ...[(q.x.valueOf() - cx) / a, (q.y.valueOf() - cy) / b],
  ] as [number, number, number, number];
  if (Math.hypot(px, py) < 1 - DOUBT && Math.hypot(qx, qy) < 1 - DOUBT) return true;
  const [dx, dy] = [qx - px, qy - py];
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : Math.min(1, Math.max(0, -(px * dx + py * dy) / square));
  return Math.hypot(px + share * dx, py + share * dy) > 1 + DOUBT;
}

/** In the order from `p` to `q`. */
function endlessMeetsEllipse(p: Point, q: Point, { centre, rx, ry, from, to }: ArcEdge): Point[] {
  // Drawn in until the ellipse is the circle of radius 1 about the origin.
  const [x, y] = [minus(p.x, centre.x).div(rx), minus(p.y, centre.y).div(ry)];
  const [dx, dy] = [minus(q.x, p.x).div(rx), minus(q.y, p.y).div(ry)];
  const a = plus(times(dx, dx), times(dy, dy));
  if (a.n === 0n) return [];
  const half = plus(times(x, dx), times(y, dy));
  const c = minus(plus(times(x, x), times(y, y)), ONE);
  const square = minus(times(half, half), times(a, c));
  if (square.compare(ZERO) < 0) return [];
  const root = exactRoot(square);
  const rounded = p.rounded || q.rounded || centre.rounded || from.rounded || to.rounded;
  if (root !== undefined) {
    const shares = root.n === 0n ? [ZERO] : [root.neg(), root];
    return shares.map((part) => {
      const share = minus(part, half).div(a);
      const point = { x: plus(p.x, times(share, minus(q.x, p.x))), y: plus(p.y, times(share, minus(q.y, p.y))) };
      return rounded ? { ...point, rounded } : point;
    });
  }
  return [-1, 1].map((sign) => {
    const share = (sign * Math.sqrt(square.valueOf()) - half.valueOf()) / a.valueOf();
    return {
      x: plus(p.x, onGrid(share * minus(q.x, p.x).valueOf())),
      y: plus(p.y, onGrid(share * minus(q.y, p.y).valueOf())),
      rounded: true,
    };
  });
}

/**
 * Where two arcs meet: of one ellipse, the ends of each that lie on the other; else their crossings and touchings, exact for arcs
 * of like proportions where the coordinates are fractions, else on the grid. In the order of `a`.
 */
export function arcMeetsArc(a: ArcEdge, b: ArcEdge): Point[] {
  if (keepApart(a, b)) return [];
  const found = meetingsOf(a, b).filter((point) => isOnArc(a, point) && isOnArc(b, point));
  return found
    .filter((point, i) => found.findIndex((other) => samePoint(point, other)) === i)
    .map((point) => ({ point, along: angleAlong(a, point) }))
    .sort((one, other) => one.along - other.along)
    .map(({ point }) => point);
}

/** Whether two ellipses of like proportions plainly lie beside or within each other, by floats. */
function keepApart(a: ArcEdge, b: ArcEdge): boolean {
  const [rx, ry, scale] = [a.rx.valueOf(), a.ry.valueOf(), b.rx.valueOf() / a.rx.valueOf()];
  if (Math.abs(b.ry.valueOf() / ry - scale) > DOUBT * scale) return false;
  const x = (b.centre.x.valueOf() - a.centre.x.valueOf()) / rx;
  const y = (b.centre.y.valueOf() - a.centre.y.valueOf()) / ry;
  const [far, doubt] = [Math.hypot(x, y), DOUBT * (1 + scale)];
  return far > 1 + scale + 2 * doubt || far < Math.abs(1 - scale) - 2 * doubt;
}

function meetingsOf(a: ArcEdge, b: ArcEdge): Point[] {
  if (!same(times(a.rx, b.ry), times(a.ry, b.rx))) return searched(a, b);
  const [dx, dy] = [minus(b.centre.x, a.centre.x), minus(b.centre.y, a.centre.y)];
  if (dx.n === 0n && dy.n === 0n) return same(a.rx, b.rx) ? [a.from, a.to, b.from, b.to] : [];
  // Two circles of one drawing-in meet on the straight line where their equations differ by nothing.
  const [x, y] = [dx.div(a.rx), dy.div(a.ry)];
  const ratio = b.rx.div(a.rx);
  const far = plus(times(x, x), times(y, y));
  const share = plus(minus(far, times(ratio, ratio)), ONE).div(times(far, new Fraction(2)));
  const foot = { x: plus(a.centre.x, times(share, dx)), y: plus(a.centre.y, times(share, dy)) };
  const aside = { x: minus(foot.x, times(y, a.rx)), y: plus(foot.y, times(x, a.ry)) };
  const rounded = a.centre.rounded || b.centre.rounded;
  return endlessMeetsEllipse(rounded ? { ...foot, rounded } : foot, aside, a);
}

/** Steps in which the whole of an arc is searched: two ellipses meet at most four times. */
const STEPS = 256;

/** Ellipses of unlike proportions: by halving wherever the one passes from inside to outside of the other. */
function searched(a: ArcEdge, b: ArcEdge): Point[] {
  const total = angleAlong(a, a.to);
  const sense = a.clockwise ? 1 : -1;
  const first = Math.atan2(
    minus(a.from.y, a.centre.y).div(a.ry).valueOf(),
    minus(a.from.x, a.centre.x).div(a.rx).valueOf(),
  );
  const [ax, ay, arx, ary] = [a.centre.x, a.centre.y, a.rx, a.ry].map(Number) as [number, number, number, number];
  const [bx, by, brx, bry] = [b.centre.x, b.centre.y, b.rx, b.ry].map(Number) as [number, number, number, number];
  const beyond = (along: number): number => {
    const angle = first + sense * along;
    return ((ax + arx * Math.cos(angle) - bx) / brx) ** 2 + ((ay + ary * Math.sin(angle) - by) / bry) ** 2 - 1;
  };
  const pointAlong = (along: number): Point => {
    const angle = first + sense * along;
    return pointAt(a, Math.cos(angle), Math.sin(angle));
  };
  const found: Point[] = [a.from, a.to].filter((point) => Math.abs(beyond(angleAlong(a, point))) < 1e-13);
  for (let k = 0; k < STEPS; k++) {
    let [low, high] = [(total * k) / STEPS, (total * (k + 1)) / STEPS];
    const outside = beyond(low) > 0;
    if (outside === beyond(high) > 0) continue;
    for (let halving = 0; halving < 60; halving++) {
      const middle = (low + high) / 2;
      if (beyond(middle) > 0 === outside) low = middle;
      else high = middle;
    }
    found.push(pointAlong((low + high) / 2));
  }
  return found;
}
