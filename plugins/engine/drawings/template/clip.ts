import { arcMeetings, arcPoint } from '../arcs.ts';
import type { Box } from '../box.ts';
import { shareWithin } from '../meetings.ts';
import type { SceneArc, SceneLine } from '../scene.ts';

/** Slack for what lies along the window's own edge, in mm. */
const EDGE_MM = 1e-6;

/** The parts of a line or an arc that lie in a window. */
export function clipped(item: SceneLine | SceneArc, window: Box): readonly (SceneLine | SceneArc)[] {
  return item.kind === 'arc' ? clipArc(item, window) : clipLine(item, window);
}

/** The part of a straight line that lies in a window; none or one. Its dashes go on as if it had been drawn whole. */
export function clipLine(line: SceneLine, window: Box): readonly SceneLine[] {
  const { from, to } = line;
  const share = shareWithin(line, grownBy(window));
  if (share === undefined) return [];
  const [first, last] = share;
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const length = Math.hypot(dx, dy);
  if ((last - first) * length <= 2 * EDGE_MM) return [];
  const at = (part: number): SceneLine['from'] => ({
    x: clamp(from.x + part * dx, window.left, window.right),
    y: clamp(from.y + part * dy, window.top, window.bottom),
  });
  const before = (line.before ?? 0) + first * length;
  return [
    {
      ...line,
      from: first === 0 ? inWindow(from, window) : at(first),
      to: last === 1 ? inWindow(to, window) : at(last),
      ...(before > EDGE_MM ? { before } : {}),
    },
  ];
}

/** The parts of an arc that lie in a window, in the order in which it runs. */
export function clipArc(arc: SceneArc, window: Box): readonly SceneArc[] {
  const { left, right, top, bottom } = window;
  const stops = [
    arc.from,
    ...(['x', 'y'] as const).flatMap((axis) =>
      (axis === 'x' ? [left, right] : [top, bottom]).flatMap((at) => arcMeetings(arc, axis, at)),
    ),
    arc.to,
  ].sort((a, b) => a - b);
  const parts: SceneArc[] = [];
  for (const [i, to] of stops.entries()) {
    const from = stops[i - 1];
    if (from === undefined || to - from < LEAST_DEGREES) continue;
    const { x, y } = arcPoint(arc, (from + to) / 2);
    if (x < left - EDGE_MM || x > right + EDGE_MM || y < top - EDGE_MM || y > bottom + EDGE_MM) continue;
    const last = parts.at(-1);
    if (last !== undefined && from - last.to < LEAST_DEGREES) parts[parts.length - 1] = { ...last, to };
    else parts.push({ ...arc, from, to });
  }
  return parts;
}

const LEAST_DEGREES = 1e-9;

function grownBy({ left, right, top, bottom }: Box): Box {
  return { left: left - EDGE_MM, right: right + EDGE_MM, top: top - EDGE_MM, bottom: bottom + EDGE_MM };
}

function inWindow({ x, y }: SceneLine['from'], window: Box): SceneLine['from'] {
  return { x: clamp(x, window.left, window.right), y: clamp(y, window.top, window.bottom) };
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
