import type { Steps } from './limits.ts';
import { TOUCH_MM } from './touch.ts';

/** Segments in one plane: x and y of both ends in turn, and what each is. */
export interface Segments {
  readonly ends: number[];
  /** For the edge of a panel its number, counted from 0; for any other line -1. Edges of one panel stand together. */
  readonly panel: number[];
}

/** A stretch of a line between two points where anything begins, ends or crosses it. */
export interface Stretch {
  /** Its middle. */
  readonly x: number;
  readonly y: number;
  /** Direction of its line; the near side is to the left of it. */
  readonly dx: number;
  readonly dy: number;
  /** Panels whose paper is there a hair to the left of it, and a hair to the right, rising. */
  readonly left: readonly number[];
  readonly right: readonly number[];
  /** Segments that it is part of. */
  readonly on: readonly number[];
}

/** Segments that lie on one line. */
interface Line {
  readonly x: number;
  readonly y: number;
  readonly dx: number;
  readonly dy: number;
  /** Member segments: number, start and end along the line, in turn. */
  readonly members: number[];
  low: number;
  high: number;
}

/**
 * Visits every stretch of the lines that segments lie on, each once however many segments share it.
 *
 * What lies to its sides is found along the line square to it through its middle: paper that is there is left through an
 * edge further out, so that the edges of a panel beyond are odd in number. One step is one segment that is looked at; false when
 * they ran out.
 */
export function visitStretches(segments: Segments, visit: (stretch: Stretch) => void, steps: Steps): boolean {
  const edges = panelEdges(segments);
  const lines = linesOf(segments, steps);
  const lineOf = new Int32Array(segments.panel.length).fill(-1);
  for (const [i, { members }] of lines.entries()) {
    for (let m = 0; m < members.length; m += 3) lineOf[members[m] ?? 0] = i;
  }
  for (const [i, line] of lines.entries()) {
    const breaks = breaksOn(line, i, segments, edges, lineOf, steps);
    if (steps.left < 0) return false;
    for (let b = 0; b + 1 < breaks.length; b++) {
      const [from, to] = [breaks[b] ?? 0, breaks[b + 1] ?? 0];
      const middle = (from + to) / 2;
      const on = membersAt(line, middle);
      if (on.length === 0) continue;
      const { dx, dy } = line;
      const [x, y] = [line.x + middle * dx, line.y + middle * dy];
      visit({ x, y, dx, dy, on, ...sidesAt(x, y, line, i, segments, edges, lineOf, steps) });
    }
  }
  return true;
}

/** Longest first, so that a line is known by its longest segment and shorter ones are measured against that. */
function linesOf({ ends }: Segments, steps: Steps): Line[] {
  const count = ends.length / 4;
  const size = new Float64Array(count);
  for (let s = 0; s < count; s++)
    size[s] = Math.hypot(at(ends, 4 * s + 2) - at(ends, 4 * s), at(ends, 4 * s + 3) - at(ends, 4 * s + 1));
  const order = Array.from({ length: count }, (_, s) => s).filter((s) => at(size, s) > TOUCH_MM);
  order.sort((s, t) => at(size, t) - at(size, s) || s - t);
  const lines: Line[] = [];
  const byDirection = new Directions();
  for (const s of order) {
    if (steps.left < 0) return lines;
    const [x0, y0, x1, y1] = [at(ends, 4 * s), at(ends, 4 * s + 1), at(ends, 4 * s + 2), at(ends, 4 * s + 3)];
    const length = at(size, s);
    const near = length < SHORT_MM ? lines.keys() : byDirection.near(x1 - x0, y1 - y0);
    let line: Line | undefined;
    for (const i of near) {
      const other = lines[i];
      steps.left--;
      if (other === undefined || !isOn(other, x0, y0) || !isOn(other, x1, y1)) continue;
      line = other;
      break;
    }
    if (line === undefined) {
      line = {
        x: x0,
        y: y0,
        dx: (x1 - x0) / length,
        dy: (y1 - y0) / length,
        members: [],
        low: Infinity,
        high: -Infinity,
      };
      byDirection.add(lines.push(line) - 1, line.dx, line.dy);
    }
    const t0 = (x0 - line.x) * line.dx + (y0 - line.y) * line.dy;
    const t1 = (x1 - line.x) * line.dx + (y1 - line.y) * line.dy;
    line.members.push(s, Math.min(t0, t1), Math.max(t0, t1));
    line.low = Math.min(line.low, t0, t1);
    line.high = Math.max(line.high, t0, t1);
  }
  return lines;
}

function isOn({ x, y, dx, dy }: Line, toX: number, toY: number): boolean {
  return Math.abs(dx * (toY - y) - dy * (toX - x)) <= TOUCH_MM;
}

/** Directions in parts of this size, in radians: more than `TOUCH_MM` at each end can turn a segment of `SHORT_MM`. */
const PART = 1e-3;
const SHORT_MM = 0.01;

/** Lines by their direction, to find those that a segment may lie on. */
class Directions {
  readonly #parts = new Map<number, number[]>();
  readonly #count = Math.ceil(Math.PI / PART);

  add(line: number, dx: number, dy: number): void {
    const part = this.#partOf(dx, dy);
    const list = this.#parts.get(part);
    if (list) list.push(line);
    else this.#parts.set(part, [line]);
  }

  /** Numbers of lines that run nearly as a segment does, either way, rising. */
  near(dx: number, dy: number): number[] {
    const part = this.#partOf(dx, dy);
    const around = [part - 1, part, part + 1].map((one) => (one + this.#count) % this.#count);
    return around.flatMap((one) => this.#parts.get(one) ?? []).sort((a, b) => a - b);
  }

  #partOf(dx: number, dy: number): number {
    const angle = Math.atan2(dy, dx);
    return Math.floor((angle < 0 ? angle + Math.PI : angle) / PART) % this.#count;
  }
}

/** Where along a line anything begins, ends or crosses it, rising; points that touch are one. */
function breaksOn(
  line: Line,
  own: number,
  { ends, panel }: Segments,
  { count, first, boxes }: PanelEdges,
  lineOf: Int32Array,
  steps: Steps,
): number[] {
  const found: number[] = [];
  for (let m = 0; m < line.members.length; m += 3) found.push(at(line.members, m + 1), at(line.members, m + 2));
  const { x, y, dx, dy, low, high } = line;
  const [middle, half] = [(low + high) / 2, (high - low) / 2 + TOUCH_MM];
  const [midX, midY, halfX, halfY] = [x + middle * dx, y + middle * dy, half * Math.abs(dx), half * Math.abs(dy)];
  const look = (s: number): void => {
    if (lineOf[s] === own) return;
    const ax = at(ends, 4 * s) - x;
    const ay = at(ends, 4 * s + 1) - y;
    const bx = at(ends, 4 * s + 2) - x;
    const by = at(ends, 4 * s + 3) - y;
    const h0 = dx * ay - dy * ax;
    const h1 = dx * by - dy * bx;
    if ((h0 > TOUCH_MM && h1 > TOUCH_MM) || (h0 < -TOUCH_MM && h1 < -TOUCH_MM)) return;
    const t0 = dx * ax + dy * ay;
    const t1 = dx * bx + dy * by;
    if (Math.abs(h0) <= TOUCH_MM) found.push(t0);
    if (Math.abs(h1) <= TOUCH_MM) found.push(t1);
    if (Math.abs(h0) > TOUCH_MM && Math.abs(h1) > TOUCH_MM) found.push(t0 + ((t1 - t0) * h0) / (h0 - h1));
  };
  for (let p = 0; p < count; p++) {
    const reachX = halfX + at(boxes, 4 * p + 2) + TOUCH_MM;
    const reachY = halfY + at(boxes, 4 * p + 3) + TOUCH_MM;
    if (Math.abs(at(boxes, 4 * p) - midX) > reachX || Math.abs(at(boxes, 4 * p + 1) - midY) > reachY) continue;
    steps.left -= at(first, p + 1) - at(first, p);
    for (let s = at(first, p); s < at(first, p + 1); s++) look(s);
  }
  for (let s = at(first, count); s < panel.length; s++) look(s);
  steps.left -= count + panel.length - at(first, count);
  found.sort((a, b) => a - b);
  const breaks: number[] = [];
  for (const t of found) {
    if (t < low - TOUCH_MM || t > high + TOUCH_MM) continue;
    if (t - (breaks.at(-1) ?? -Infinity) > TOUCH_MM) breaks.push(t);
  }
  return breaks;
}

function membersAt({ members }: Line, t: number): number[] {
  const on: number[] = [];
  for (let m = 0; m < members.length; m += 3) {
    if (at(members, m + 1) < t && t < at(members, m + 2)) on.push(at(members, m));
  }
  return on;
}

/** Edges panel by panel, with a box around each panel. */
interface PanelEdges {
  readonly count: number;
  readonly first: Int32Array;
  readonly boxes: Float64Array;
}

function panelEdges({ ends, panel }: Segments): PanelEdges {
  const count = panel.reduce((most, owner) => Math.max(most, owner + 1), 0);
  const first = new Int32Array(count + 1);
  for (const owner of panel) if (owner >= 0) first[owner + 1] = at(first, owner + 1) + 1;
  for (let p = 0; p < count; p++) first[p + 1] = at(first, p + 1) + at(first, p);
  const boxes = new Float64Array(4 * count);
  for (let p = 0; p < count; p++) {
    let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity];
    for (let s = at(first, p); s < at(first, p + 1); s++) {
      left = Math.min(left, at(ends, 4 * s), at(ends, 4 * s + 2));
      right = Math.max(right, at(ends, 4 * s), at(ends, 4 * s + 2));
      low = Math.min(low, at(ends, 4 * s + 1), at(ends, 4 * s + 3));
      high = Math.max(high, at(ends, 4 * s + 1), at(ends, 4 * s + 3));
    }
    boxes.set([(left + right) / 2, (low + high) / 2, (right - left) / 2, (high - low) / 2], 4 * p);
  }
  return { count, first, boxes };
}

function sidesAt(
  x: number,
  y: number,
  { dx, dy }: Line,
  own: number,
  { ends }: Segments,
  { count, first, boxes }: PanelEdges,
  lineOf: Int32Array,
  steps: Steps,
): Pick<Stretch, 'left' | 'right'> {
  const left: number[] = [];
  const right: number[] = [];
  steps.left -= count;
  for (let p = 0; p < count; p++) {
    const away = dx * (at(boxes, 4 * p) - x) + dy * (at(boxes, 4 * p + 1) - y);
    if (Math.abs(away) > Math.abs(dx) * at(boxes, 4 * p + 2) + Math.abs(dy) * at(boxes, 4 * p + 3) + TOUCH_MM) continue;
    let [beyondLeft, beyondRight] = [false, false];
    steps.left -= at(first, p + 1) - at(first, p);
    for (let s = at(first, p); s < at(first, p + 1); s++) {
      if (lineOf[s] === own) continue;
      const ax = at(ends, 4 * s) - x;
      const ay = at(ends, 4 * s + 1) - y;
      const bx = at(ends, 4 * s + 2) - x;
      const by = at(ends, 4 * s + 3) - y;
      const t0 = dx * ax + dy * ay;
      const t1 = dx * bx + dy * by;
      if (t0 > 0 === t1 > 0) continue;
      const h0 = dx * ay - dy * ax;
      const h1 = dx * by - dy * bx;
      if (h0 + ((h1 - h0) * t0) / (t0 - t1) > 0) beyondLeft = !beyondLeft;
      else beyondRight = !beyondRight;
    }
    if (beyondLeft) left.push(p);
    if (beyondRight) right.push(p);
  }
  return { left, right };
}

/** Indices here never leave their lists. */
function at(list: ArrayLike<number>, i: number): number {
  return list[i] as number;
}
