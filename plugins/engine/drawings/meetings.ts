import { arcMeetings, arcPoint } from './arcs.ts';
import type { Box } from './box.ts';
import type { ArcOfEllipse, SceneArc, SceneLine, ScenePoint } from './scene.ts';

/** The part of a straight line that lies within a box, as shares of it from `from` to `to`; undefined for none. */
export function shareWithin(
  { from, to }: { readonly from: ScenePoint; readonly to: ScenePoint },
  box: Box,
): readonly [first: number, last: number] | undefined {
  let [first, last] = [0, 1];
  for (const [start, step, low, high] of [
    [from.x, to.x - from.x, box.left, box.right],
    [from.y, to.y - from.y, box.top, box.bottom],
  ] as const) {
    if (step === 0) {
      if (start < low || start > high) return undefined;
      continue;
    }
    const [a, b] = [(low - start) / step, (high - start) / step];
    first = Math.max(first, Math.min(a, b));
    last = Math.min(last, Math.max(a, b));
  }
  return first <= last ? [first, last] : undefined;
}

/** Whether a line or an arc and a box share more than the box's edge. */
export function meets(line: SceneLine | SceneArc, box: Box): boolean {
  return line.kind === 'arc' ? arcMeets(line, box) : lineMeets(line, box);
}

/** Whether a straight line and a box share more than the box's edge. */
export function lineMeets(line: { readonly from: ScenePoint; readonly to: ScenePoint }, box: Box): boolean {
  const within = shareWithin(line, box);
  if (within === undefined) return false;
  // A line along an edge of the box, or through one of its corners, only touches it.
  const middle = (within[0] + within[1]) / 2;
  return inside(
    { x: line.from.x + middle * (line.to.x - line.from.x), y: line.from.y + middle * (line.to.y - line.from.y) },
    box,
  );
}

/** Whether an arc and a box share a point within the box. */
export function arcMeets(arc: ArcOfEllipse, box: Box): boolean {
  if (inside(arcPoint(arc, arc.from), box) || inside(arcPoint(arc, arc.to), box)) return true;
  const crosses = (axis: 'x' | 'y', at: number, low: number, high: number): boolean =>
    arcMeetings(arc, axis, at).some((degrees) => {
      const along = arcPoint(arc, degrees)[axis === 'x' ? 'y' : 'x'];
      return along > low && along < high;
    });
  const { left, right, top, bottom } = box;
  return (
    crosses('x', left, top, bottom) ||
    crosses('x', right, top, bottom) ||
    crosses('y', top, left, right) ||
    crosses('y', bottom, left, right)
  );
}

function inside({ x, y }: ScenePoint, { left, right, top, bottom }: Box): boolean {
  return x > left && x < right && y > top && y < bottom;
}
