import { compareX, compareY, type Seen, seen, sideOf } from './seen.ts';
import type { Point } from './types.ts';

export type Standing = 'inside' | 'edge' | 'outside';

/** Whether a point lies in a polygon (either way round), on its edge, or outside of it. Exact. */
export function standingIn(point: Point, corners: readonly Point[]): Standing {
  return standingOf(seen(point), corners.map(seen));
}

/** The same, for points that have been seen. Rays go to the right. */
export function standingOf(point: Seen, corners: readonly Seen[]): Standing {
  let inside = false;
  let a = corners.at(-1);
  for (const b of corners) {
    if (a === undefined) break;
    const [from, to] = [compareY(a, point), compareY(b, point)];
    if (from !== to || from === 0) {
      if (from === 0 && to === 0) {
        if (compareX(point, a) * compareX(point, b) <= 0) return 'edge';
      } else {
        const side = sideOf(a, b, point);
        if (side === 0) return 'edge';
        // Upwards or downwards past the ray, counting the lower end of an edge and not its upper end.
        if (from < 0 !== to < 0 && side > 0 === to >= 0) inside = !inside;
      }
    }
    a = b;
  }
  return inside ? 'inside' : 'outside';
}

/** In the paper of a polygon with holes: the edge of a hole is an edge. */
export function standingInPaper(
  point: Point,
  outline: readonly Point[],
  holes: readonly (readonly Point[])[],
): Standing {
  const standing = standingIn(point, outline);
  if (standing !== 'inside') return standing;
  for (const hole of holes) {
    const within = standingIn(point, hole);
    if (within !== 'outside') return within === 'edge' ? 'edge' : 'outside';
  }
  return 'inside';
}
