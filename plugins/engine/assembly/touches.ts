import type { Point } from '../geometry/index.ts';

/** How far from a panel a point may lie and still be on its edge: 1e-6 mm, far finer than paper is cut. */
const TOUCH_MM = 1e-6;

/** Whether a point lies in a closed outline or on it. */
export function touches(outline: readonly Point[], point: Point): boolean {
  const at = { x: point.x.valueOf(), y: point.y.valueOf() };
  let inside = false;
  for (const [i, corner] of outline.entries()) {
    const next = outline[(i + 1) % outline.length] ?? corner;
    const [a, b] = [corner, next].map(({ x, y }) => ({ x: x.valueOf(), y: y.valueOf() }));
    if (a === undefined || b === undefined) continue;
    if (distance(at, a, b) <= TOUCH_MM) return true;
    if (a.y > at.y !== b.y > at.y && at.x < a.x + ((at.y - a.y) / (b.y - a.y)) * (b.x - a.x)) inside = !inside;
  }
  return inside;
}

interface Spot {
  readonly x: number;
  readonly y: number;
}

function distance(p: Spot, a: Spot, b: Spot): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / square));
  return Math.hypot(p.x - a.x - share * dx, p.y - a.y - share * dy);
}
