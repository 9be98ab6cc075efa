import { clockwise, type Seen, standingOf } from '../geometry/index.ts';
import type { Net } from './net.ts';

/** The regions that a net divides the plane into. Region 0 is all that lies outside. */
export interface Faces {
  readonly count: number;
  /** For each half the face on its right. */
  readonly of: readonly number[];
  /** For each face but the first its outer boundary, clockwise, as nodes. */
  readonly boundary: readonly (readonly number[])[];
}

/** Left, right, top and bottom, by floats. */
type Box = readonly [number, number, number, number];

interface Cycle {
  readonly halves: readonly number[];
  readonly nodes: readonly number[];
  readonly corners: readonly Seen[];
  readonly turns: -1 | 0 | 1;
  readonly box: Box;
  readonly component: number;
}

export function facesOf(net: Net): Faces {
  const components = componentsOf(net);
  const cycles = cyclesOf(net, components);
  const bounding = cycles.filter(({ turns }) => turns > 0);
  const faceOfHalf = new Array<number>(net.next.length).fill(0);
  for (const [i, { halves }] of bounding.entries()) for (const half of halves) faceOfHalf[half] = i + 1;
  const several = new Set(cycles.map(({ component }) => component)).size > 1;
  for (const cycle of cycles) {
    if (cycle.turns > 0 || !several) continue;
    const face = around(cycle, bounding);
    for (const half of cycle.halves) faceOfHalf[half] = face;
  }
  return { count: bounding.length + 1, of: faceOfHalf, boundary: [[], ...bounding.map(({ nodes }) => nodes)] };
}

/** The face in which a component of the net lies: the smallest of another component's that holds one of its nodes. */
function around(cycle: Cycle, bounding: readonly Cycle[]): number {
  const [point] = cycle.corners;
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  if (point === undefined) return best;
  for (const [i, { corners, component, box }] of bounding.entries()) {
    if (component === cycle.component) continue;
    if (isBeside(point, box) || standingOf(point, corners) !== 'inside') continue;
    const area = roughArea(corners);
    if (area >= least) continue;
    best = i + 1;
    least = area;
  }
  return best;
}

function boxOf(corners: readonly Seen[]): Box {
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { x, y } of corners) {
    if (x < left) left = x;
    if (x > right) right = x;
    if (y < top) top = y;
    if (y > bottom) bottom = y;
  }
  return [left, right, top, bottom];
}

function isBeside({ x, y }: Seen, [left, right, top, bottom]: Box): boolean {
  return x < left || x > right || y < top || y > bottom;
}

/** By floats: of two regions of which one holds the other, the areas are far enough apart. */
function roughArea(corners: readonly Seen[]): number {
  let sum = 0;
  let a = corners.at(-1);
  for (const b of corners) {
    if (a) sum += a.x * b.y - b.x * a.y;
    a = b;
  }
  return sum;
}

function cyclesOf({ next, links, nodes }: Net, components: readonly number[]): Cycle[] {
  const walked = new Array<boolean>(next.length).fill(false);
  const cycles: Cycle[] = [];
  for (const first of next.keys()) {
    if (walked[first]) continue;
    const halves: number[] = [];
    for (let half = first; !walked[half]; half = next[half] ?? first) {
      walked[half] = true;
      halves.push(half);
    }
    const tails = halves.map((half) => (half & 1 ? links[half >> 1]?.to : links[half >> 1]?.from) ?? -1);
    const corners = tails.map((node) => nodes.at(node));
    cycles.push({
      halves,
      nodes: tails,
      corners,
      turns: clockwise(corners),
      box: boxOf(corners),
      component: components[tails[0] ?? -1] ?? -1,
    });
  }
  return cycles;
}

/** For each node the number of the connected part of the net that it belongs to. */
function componentsOf({ links, nodes }: Net): number[] {
  const parent = nodes.all.map((_, node) => node);
  const root = (node: number): number => {
    let at = node;
    while ((parent[at] ?? at) !== at) {
      parent[at] = parent[parent[at] ?? at] ?? at;
      at = parent[at] ?? at;
    }
    return at;
  };
  for (const { from, to } of links) parent[root(from)] = root(to);
  return nodes.all.map((_, node) => root(node));
}

/** The faces on the right and on the left of a link. */
export function sidesOf(link: number, faces: Faces): readonly [number, number] {
  return [faces.of[2 * link] ?? 0, faces.of[2 * link + 1] ?? 0];
}
