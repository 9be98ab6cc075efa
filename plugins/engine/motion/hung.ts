import type { Assembly, HangJoint } from '../assembly/index.ts';
import {
  between,
  boundsOf,
  laidOn,
  minus,
  negated,
  ONE,
  type Placement,
  type Point,
  plus,
  type Turn,
  times,
  ZERO,
} from '../geometry/index.ts';

/**
 * Where something hangs while everything lies flat: square to the edge that its thread comes from, a thread's length away, in
 * the plane of the panel, its face up. It turns so that its middle lies beyond its own end of the thread.
 */
export function hungFrom({ a, join }: HangJoint, assembly: Assembly): Placement {
  const { p, q, away, thread } = join;
  const [x, y] = [plus(q.x, times(thread.mm, away.x)), plus(q.y, times(thread.mm, away.y))];
  const at: Point = q.rounded ? { x, y, rounded: true } : { x, y };
  const turn = turnTo(hangingWay(p, assembly.panels.get(a)?.outline ?? []), away);
  return laidOn({ p, q: at, turn, partSide: 'back', ontoSide: 'face' });
}

interface Way {
  readonly x: Placement['t'][number];
  readonly y: Placement['t'][number];
}

/** The way from the thread to the middle of the part, square to its drawing: down, unless it hangs by another side. */
function hangingWay(p: Point, outline: readonly Point[]): Way {
  const { left, right, top, bottom } = boundsOf(outline);
  const [dx, dy] = [minus(between(left, right), p.x), minus(between(top, bottom), p.y)];
  if (dx.abs().gt(dy.abs())) return { x: dx.gt(0) ? ONE : negated(ONE), y: ZERO };
  return { x: ZERO, y: dy.lt(0) ? negated(ONE) : ONE };
}

/** The turn, clockwise on the drawing, that takes one unit vector to another. */
function turnTo(from: Way, to: Way): Turn {
  return {
    cos: plus(times(from.x, to.x), times(from.y, to.y)),
    sin: minus(times(from.x, to.y), times(from.y, to.x)),
  };
}
