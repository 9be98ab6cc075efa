import { between, onGrid } from './numbers.ts';
import { standingInPaper, standingOf } from './polygons.ts';
import { type Seen, seen } from './seen.ts';
import { distanceToSegment } from './segments.ts';
import type { Point } from './types.ts';

/** The search stops when no square can better the best point by this share of the paper's shorter side. */
const PRECISION = 0.05;
/** How many distances to an edge may be asked for, and how many squares looked at: in slivers the search would not end soon. */
const MOST_DISTANCES = 100_000;
const MOST_SQUARES = 500;

interface Square {
  readonly x: number;
  readonly y: number;
  readonly half: number;
  /** To the nearest edge; negative outside. */
  readonly clear: number;
}

/**
 * A point inside a polygon with holes, about as far from its edges as a point can be. Exact, and in the middle of a
 * rectangle. Undefined when nothing is inside.
 */
export function insideOf(outline: readonly Point[], holes: readonly (readonly Point[])[] = []): Point | undefined {
  const rings = [outline, ...holes].map((ring) => ring.map(seen));
  const [corners = []] = rings;
  if (holes.length === 0 && isRectangle(corners)) return middleOf(corners);
  const best = roomiest(rings);
  if (best !== undefined && best.clear > 0) {
    // Of the points that are as good, the one that is said in whole parts of a millimetre.
    for (const parts of [64, 4096, 2 ** 24]) {
      const point = { x: onGrid(Math.round(best.x * parts) / parts), y: onGrid(Math.round(best.y * parts) / parts) };
      if (standingInPaper(point, outline, holes) === 'inside') return point;
    }
  }
  return onOneLevel(outline, holes);
}

function isRectangle(corners: readonly Seen[]): boolean {
  const [a, b, c, d] = corners;
  if (!a || !b || !c || !d || corners.length !== 4) return false;
  return a.y === b.y && b.x === c.x && c.y === d.y && d.x === a.x;
}

function middleOf(corners: readonly Seen[]): Point | undefined {
  const [a, , c] = corners;
  return a && c && { x: between(a.at.x, c.at.x), y: between(a.at.y, c.at.y) };
}

/** By quartering squares, the most promising first. */
function roomiest(rings: readonly (readonly Seen[])[]): Square | undefined {
  const [corners = []] = rings;
  const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)];
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const size = Math.min(right - left, bottom - top);
  if (!(size > 0)) return undefined;
  const across = Math.min(8, Math.ceil((right - left) / size));
  const down = Math.min(8, Math.ceil((bottom - top) / size));
  const half = Math.max((right - left) / across, (bottom - top) / down) / 2;
  const squareAt = (x: number, y: number, reach: number): Square => ({
    x,
    y,
    half: reach,
    clear: clearance(x, y, rings),
  });
  const waiting: Square[] = [];
  for (let row = 0; row < down; row++)
    for (let column = 0; column < across; column++)
      waiting.push(
        squareAt(left + ((column + 0.5) * (right - left)) / across, top + ((row + 0.5) * (bottom - top)) / down, half),
      );
  let best: Square | undefined;
  const edges = rings.reduce((sum, ring) => sum + ring.length, 0);
  const most = Math.min(MOST_SQUARES, Math.max(32, MOST_DISTANCES / edges));
  for (let count = 0; count < most && waiting.length > 0; count++) {
    const next = takeMostPromising(waiting);
    if (best === undefined || next.clear > best.clear) best = next;
    if (promiseOf(next) <= best.clear + size * PRECISION) break;
    const quarter = next.half / 2;
    for (const [dx, dy] of [
      [-1, -1],
      [1, -1],
      [-1, 1],
      [1, 1],
    ] as const)
      waiting.push(squareAt(next.x + dx * quarter, next.y + dy * quarter, quarter));
  }
  return best;
}

/** No point of a square is clearer than this. */
function promiseOf({ clear, half }: Square): number {
  return clear + half * Math.SQRT2;
}

function takeMostPromising(waiting: Square[]): Square {
  let at = 0;
  for (const [i, square] of waiting.entries()) {
    const most = waiting[at];
    if (most !== undefined && promiseOf(square) > promiseOf(most)) at = i;
  }
  const [taken] = waiting.splice(at, 1);
  if (taken === undefined) throw new RangeError('nothing is left to take');
  return taken;
}

function clearance(x: number, y: number, rings: readonly (readonly Seen[])[]): number {
  let nearest = Number.POSITIVE_INFINITY;
  let inside = false;
  for (const ring of rings) {
    let a = ring.at(-1);
    for (const b of ring) {
      if (a === undefined) break;
      nearest = Math.min(nearest, distanceToSegment(x, y, a, b));
      if (a.y > y !== b.y > y && x < ((b.x - a.x) * (y - a.y)) / (b.y - a.y) + a.x) inside = !inside;
      a = b;
    }
  }
  return inside ? nearest : -nearest;
}

/** For slivers too thin for floats: the middle of the widest stretch on a level half way between two corners. */
function onOneLevel(outline: readonly Point[], holes: readonly (readonly Point[])[]): Point | undefined {
  const rings = [outline, ...holes].map((ring) => ring.map(seen));
  const levels = rings.flat().sort((a, b) => a.at.y.compare(b.at.y));
  let best: { readonly point: Point; readonly wide: number } | undefined;
  for (const [i, above] of levels.entries()) {
    const below = levels[i + 1];
    if (below === undefined || above.at.y.equals(below.at.y)) continue;
    const y = between(above.at.y, below.at.y);
    const crossings = rings.flatMap((ring) =>
      ring.flatMap((to, k) => {
        const from = (ring.at(k - 1) ?? to).at;
        if (from.y.compare(y) < 0 === to.at.y.compare(y) < 0) return [];
        const share = y.sub(from.y).div(to.at.y.sub(from.y));
        return [from.x.add(share.mul(to.at.x.sub(from.x)))];
      }),
    );
    crossings.sort((a, b) => a.compare(b));
    for (let k = 0; k + 1 < crossings.length; k += 2) {
      const [left, right] = [crossings[k], crossings[k + 1]];
      if (!left || !right || left.equals(right)) continue;
      const point = { x: between(left, right), y };
      const wide = right.sub(left).valueOf();
      if ((best === undefined || wide > best.wide) && standingOf(seen(point), rings[0] ?? []) === 'inside')
        best = { point, wide };
    }
    if (best !== undefined && i > 64) break;
  }
  return best?.point;
}
