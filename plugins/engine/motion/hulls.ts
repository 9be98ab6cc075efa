import type { AreaPoint } from './polygons.ts';

/** The smallest outline without a notch around points, clockwise on the drawing. */
export function hullOf(points: readonly AreaPoint[]): readonly AreaPoint[] {
  const sorted = points.toSorted((a, b) => a.x - b.x || a.y - b.y);
  return [...chain(sorted), ...chain(sorted.toReversed())];
}

/** Half of a hull, without its last point. */
function chain(sorted: readonly AreaPoint[]): AreaPoint[] {
  const half: AreaPoint[] = [];
  for (const point of sorted) {
    for (let [a, b] = half.slice(-2); a && b && side(a, b, point) <= 0; [a, b] = half.slice(-2)) half.pop();
    half.push(point);
  }
  return half.slice(0, -1);
}

/** Whether a point lies within a hull or on its rim. */
export function isInHull(hull: readonly AreaPoint[], point: AreaPoint): boolean {
  return hull.every((a, i) => side(a, hull[(i + 1) % hull.length] ?? a, point) >= -1e-9);
}

/** Positive when `point` lies to the right of the way from `a` to `b`, as seen on the drawing. */
function side(a: AreaPoint, b: AreaPoint, point: AreaPoint): number {
  return (b.x - a.x) * (point.y - a.y) - (b.y - a.y) * (point.x - a.x);
}
