import { Columns } from './columns.ts';
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
 * What lies to its sides is found straight up and down from its middle, or to the left and right where the line is steep: paper
 * that is there is left through an edge further out, so that the edges of a panel beyond are odd in number. One step is one segment
 * that is looked at; false when they ran out.
 */
export function visitStretches(segments: Segments, visit: (stretch: Stretch) => void, steps: Steps): boolean {
  const lines = linesOf(segments, steps);
  const lineOf = new Int32Array(segments.panel.length).fill(-1);
  for (const [i, { members }] of lines.entries()) {
    for (let m = 0; m < members.length; m += 3) lineOf[members[m] ?? 0] = i;
  }
  const field = fieldOf(segments, lineOf, steps);
  for (const [i, line] of lines.entries()) {
    const breaks = breaksOn(line, i, field);
    if (steps.left < 0) return false;
    for (let b = 0; b + 1 < breaks.length; b++) {
      const [from, to] = [breaks[b] ?? 0, breaks[b + 1] ?? 0];
      const middle = (from + to) / 2;
      const on = membersAt(line, middle);
      if (on.length === 0) continue;
      const { dx, dy } = line;
      const [x, y] = [line.x + middle * dx, line.y + middle * dy];
      visit({ x, y, dx, dy, on, ...sidesAt(x, y, line, i, field) });
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

/** Segments, and where to find them. */
interface Field {
  readonly ends: readonly number[];
  readonly panel: readonly number[];
  readonly lineOf: Int32Array;
  readonly byX: Columns;
  readonly byY: Columns;
  readonly steps: Steps;
  /** For each panel whether edges of it beyond a point are odd in number, `LEFT` or `RIGHT` of it; `MET` with any. Else 0. */
  readonly beyond: Uint8Array;
}

const LEFT = 1;
const RIGHT = 2;
const MET = 4;

function fieldOf({ ends, panel }: Segments, lineOf: Int32Array, steps: Steps): Field {
  const panels = panel.reduce((most, owner) => Math.max(most, owner + 1), 0);
  const [byX, byY] = [new Columns(ends, 0), new Columns(ends, 1)];
  return { ends, panel, lineOf, byX, byY, steps, beyond: new Uint8Array(panels) };
}

/** Where along a line anything begins, ends or crosses it, rising; points that touch are one. */
function breaksOn(line: Line, own: number, { ends, lineOf, byX, byY, steps }: Field): number[] {
  const found: number[] = [];
  for (let m = 0; m < line.members.length; m += 3) found.push(at(line.members, m + 1), at(line.members, m + 2));
  const { x, y, dx, dy, low, high } = line;
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
  const steep = Math.abs(dx) < Math.abs(dy);
  const [start, end] = steep ? [x + low * dx, x + high * dx] : [y + low * dy, y + high * dy];
  steps.left -= (steep ? byX : byY).visit(Math.min(start, end), Math.max(start, end), look);
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

/** Panels whose paper is a hair to the left and to the right of a point of a line. */
function sidesAt(
  x: number,
  y: number,
  { dx, dy }: Line,
  own: number,
  { ends, panel, lineOf, byX, byY, steps, beyond }: Field,
): Pick<Stretch, 'left' | 'right'> {
  const steep = Math.abs(dx) < Math.abs(dy);
  // Up is to the left of what runs to the right, and right is to the right of what runs up.
  const sign = steep ? -dy : dx;
  const met: number[] = [];
  const look = (s: number): void => {
    const owner = at(panel, s);
    if (owner < 0 || lineOf[s] === own) return;
    const [ax, ay] = [at(ends, 4 * s) - x, at(ends, 4 * s + 1) - y];
    const [bx, by] = [at(ends, 4 * s + 2) - x, at(ends, 4 * s + 3) - y];
    const [t0, t1, h0, h1] = steep ? [ay, by, ax, bx] : [ax, bx, ay, by];
    if (t0 > 0 === t1 > 0) return;
    const left = (h0 + ((h1 - h0) * t0) / (t0 - t1)) * sign > 0;
    if (beyond[owner] === 0) met.push(owner);
    beyond[owner] = (at(beyond, owner) | MET) ^ (left ? LEFT : RIGHT);
  };
  steps.left -= steep ? byY.visit(y, y, look) : byX.visit(x, x, look);
  met.sort((a, b) => a - b);
  const side = (bit: number): number[] => met.filter((p) => (at(beyond, p) & bit) !== 0);
  const sides = { left: side(LEFT), right: side(RIGHT) };
  for (const p of met) beyond[p] = 0;
  return sides;
}

/** Indices here never leave their lists. */
function at(list: ArrayLike<number>, i: number): number {
  return list[i] as number;
}
