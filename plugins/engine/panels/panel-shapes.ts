import {
  clockwise,
  distanceToSegment,
  insideOf,
  type Point,
  readingOrder,
  type Seen,
  sideOf,
} from '../geometry/index.ts';
import { type Faces, sidesOf } from './faces.ts';
import type { GroundWork } from './ground-work.ts';
import type { Net } from './net.ts';

/** A panel before it has a name: paper that no cut, crease or edge divides. */
export interface Unnamed {
  readonly outline: readonly Point[];
  readonly holes: readonly (readonly Point[])[];
  readonly inside: Point;
  readonly faces: readonly number[];
}

export interface Grouped {
  /** From the top down and from left to right by the first corner. */
  readonly panels: readonly Unnamed[];
  /** For each face the number of its panel; -1 for what is no paper. */
  readonly panelOf: readonly number[];
}

/** Faces without a cut or a crease between them are one panel. `tolerance`, in mm, is how far rounding may bend an edge. */
export function panelsOfNet(net: Net, faces: Faces, ground: GroundWork, tolerance: number): Grouped {
  const groups = groupsOf(net, faces, ground);
  const groupOf = new Array<number>(faces.count).fill(-1);
  for (const [group, members] of groups.entries()) for (const face of members) groupOf[face] = group;
  const rings = ringsOf(net, faces, groupOf);
  const shaped = groups.map((members, group) => ({
    group,
    panel: shapeOf(rings[group] ?? [], members, net, tolerance),
  }));
  const sound = shaped.flatMap(({ group, panel }) => (panel ? [{ group, panel }] : []));
  sound.sort((a, b) => panelOrder(a.panel, b.panel));
  const number = new Map(sound.map(({ group }, place) => [group, place]));
  return { panels: sound.map(({ panel }) => panel), panelOf: groupOf.map((group) => number.get(group) ?? -1) };
}

function panelOrder(a: Unnamed, b: Unnamed): number {
  const [first, second] = [a.outline[0], b.outline[0]];
  return (first && second ? readingOrder(first, second) : 0) || readingOrder(a.inside, b.inside);
}

function groupsOf(net: Net, faces: Faces, { paper, work }: GroundWork): number[][] {
  const parent = Array.from({ length: faces.count }, (_, face) => face);
  const root = (face: number): number => {
    let at = face;
    while ((parent[at] ?? at) !== at) at = parent[at] ?? at;
    return at;
  };
  for (const link of net.links.keys()) {
    const [right, left] = sidesOf(link, faces);
    if (work[link] !== 'none' || !paper[right] || !paper[left]) continue;
    const [a, b] = [root(right), root(left)];
    if (a !== b) parent[Math.max(a, b)] = Math.min(a, b);
  }
  const groups = new Map<number, number[]>();
  for (let face = 1; face < faces.count; face++) {
    if (!paper[face]) continue;
    const members = groups.get(root(face));
    if (members) members.push(face);
    else groups.set(root(face), [face]);
  }
  return [...groups.values()];
}

/** For each group the closed paths round it, its own paper on their right; a path that touches itself is two. */
function ringsOf({ links, next }: Net, faces: Faces, groupOf: readonly number[]): number[][][] {
  const sideGroup = (half: number): number => groupOf[faces.of[half] ?? 0] ?? -1;
  const bounds = (half: number): boolean => sideGroup(half) >= 0 && sideGroup(half) !== sideGroup(half ^ 1);
  const rings: number[][][] = [];
  const walked = new Set<number>();
  for (let first = 0; first < links.length * 2; first++) {
    if (walked.has(first) || !bounds(first)) continue;
    const path: number[] = [];
    for (let half = first; !walked.has(half); ) {
      walked.add(half);
      path.push((half & 1 ? links[half >> 1]?.to : links[half >> 1]?.from) ?? -1);
      half = next[half] ?? first;
      // Across what divides nothing the way leads on through the panel's own paper.
      while (!bounds(half)) half = next[half ^ 1] ?? first;
    }
    const group = sideGroup(first);
    rings[group] = [...(rings[group] ?? []), ...simpleRings(path)];
  }
  return rings;
}

/** Divided wherever it comes back to a node. */
function simpleRings(path: readonly number[]): number[][] {
  const rings: number[][] = [];
  const open: number[] = [];
  const at = new Map<number, number>();
  for (const node of path) {
    const before = at.get(node);
    if (before !== undefined) {
      const ring = open.splice(before);
      for (const left of ring) at.delete(left);
      rings.push(ring);
    }
    at.set(node, open.length);
    open.push(node);
  }
  return [...rings, open];
}

function shapeOf(
  rings: readonly (readonly number[])[],
  faces: readonly number[],
  net: Net,
  tolerance: number,
): Unnamed | undefined {
  const cleaned = rings
    .map((ring) =>
      straightened(
        ring.map((node) => net.nodes.at(node)),
        tolerance,
      ),
    )
    .filter((ring) => ring.length >= 3)
    .map((ring) => ({ turns: clockwise(ring), corners: fromTopLeft(ring.map(({ at }) => at)) }));
  const outline = cleaned.find(({ turns }) => turns > 0)?.corners;
  if (outline === undefined) return undefined;
  const holes = cleaned
    .filter(({ turns }) => turns < 0)
    .map(({ corners }) => corners)
    .sort((a, b) => (a[0] && b[0] ? readingOrder(a[0], b[0]) : 0));
  const inside = insideOf(outline, holes);
  return inside && { outline, holes, inside, faces };
}

/** Without the points on a straight way: exactly straight, or bent by no more than rounding. */
function straightened(ring: readonly Seen[], tolerance: number): Seen[] {
  const kept = [...ring];
  for (let i = 0; i < kept.length && kept.length > 2; ) {
    const [before, point, after] = [kept.at(i - 1), kept[i], kept[(i + 1) % kept.length]];
    if (before && point && after && isStraight(before, point, after, tolerance)) {
      kept.splice(i, 1);
      i = Math.max(0, i - 1);
    } else i++;
  }
  return kept;
}

function isStraight(before: Seen, point: Seen, after: Seen, tolerance: number): boolean {
  if (sideOf(before, point, after) === 0) return true;
  return point.at.rounded === true && distanceToSegment(point.x, point.y, before, after) <= tolerance;
}

function fromTopLeft(ring: readonly Point[]): Point[] {
  let first = 0;
  for (const [i, point] of ring.entries()) {
    const best = ring[first];
    if (best && readingOrder(point, best) < 0) first = i;
  }
  return [...ring.slice(first), ...ring.slice(0, first)];
}
