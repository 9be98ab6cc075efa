import { same } from './numbers.ts';
import type { Point } from './types.ts';

/** Exactly the same place: no tolerance. */
export function samePoint(a: Point, b: Point): boolean {
  return a === b || (same(a.x, b.x) && same(a.y, b.y));
}

/** From the top down, and from left to right in one height: negative when `a` comes first. */
export function readingOrder(a: Point, b: Point): number {
  return a.y.compare(b.y) || a.x.compare(b.x);
}
