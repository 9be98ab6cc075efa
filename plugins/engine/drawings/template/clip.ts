import type { Box } from '../box.ts';
import type { SceneLine } from '../scene.ts';

/** Slack for lines along the window's own edge, in mm. */
const EDGE_MM = 1e-6;

/** The part of an upright or level line that lies in a window; none or one. */
export function clipLine(line: SceneLine, window: Box): readonly SceneLine[] {
  const { from, to } = line;
  if (from.x === to.x) {
    if (from.x < window.left - EDGE_MM || from.x > window.right + EDGE_MM) return [];
    const [a, b] = [clamp(from.y, window.top, window.bottom), clamp(to.y, window.top, window.bottom)];
    return a === b ? [] : [{ ...line, from: { x: from.x, y: a }, to: { x: to.x, y: b } }];
  }
  if (from.y < window.top - EDGE_MM || from.y > window.bottom + EDGE_MM) return [];
  const [a, b] = [clamp(from.x, window.left, window.right), clamp(to.x, window.left, window.right)];
  return a === b ? [] : [{ ...line, from: { x: a, y: from.y }, to: { x: b, y: to.y } }];
}

/** The part of a box that lies in a window; none or one. */
export function clipBox(box: Box, window: Box): readonly Box[] {
  const left = Math.max(box.left, window.left);
  const right = Math.min(box.right, window.right);
  const top = Math.max(box.top, window.top);
  const bottom = Math.min(box.bottom, window.bottom);
  return left < right && top < bottom ? [{ left, right, top, bottom }] : [];
}

function clamp(value: number, low: number, high: number): number {
  return Math.min(Math.max(value, low), high);
}
