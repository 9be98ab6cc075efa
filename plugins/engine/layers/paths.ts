import type { LaidJoint } from '../assembly/index.ts';
import type { Leaves } from './leaves.ts';
import { dot, type PaperHinge, type Vector } from './paper.ts';
import type { Piled, Spot } from './piled.ts';
import { cross, type Pile } from './piles.ts';
import type { Passes } from './rules.ts';
import type { Crossing } from './survey.ts';

/** Paper that comes to a line from one side and leaves it to another; seen along the line, two rays from one point. */
export interface Path {
  readonly ends: readonly [Ray, Ray];
  readonly passes: Passes;
  /** Goes straight on in one leaf: two of these can never be in each other's way. */
  readonly plain: boolean;
}

export interface Ray {
  /** Radians from the left side of the line, by way of up. */
  readonly angle: number;
  readonly leaf: number;
  /** Whether of two leaves on this ray the one further round is the upper one in its pile. */
  readonly rising: boolean;
}

/** Everything that passes a line, creased or straight. */
export function pathsAt(piled: Piled, crossing: Crossing, pileOf: ReadonlyMap<number, Pile>): Path[] {
  const paths: Path[] = [];
  const whole = new Set<number>();
  for (const number of crossing.hinges) {
    const hinge = piled.paper.hinges[number];
    if (hinge?.is === 'flat') whole.add(piled.paper.facetOf[hinge.a] ?? 0);
    const path = hinge?.is === 'shut' ? shutPath(piled, crossing, hinge) : undefined;
    if (path) paths.push(path);
    const leaving = hinge?.is === 'leaves' ? leavingPath(piled, crossing, hinge, pileOf) : undefined;
    if (leaving) paths.push(leaving);
  }
  return [...paths, ...straightPaths(piled, crossing, whole)];
}

function ray(side: 'left' | 'right', leaf: number): Ray {
  return side === 'left' ? { angle: 0, leaf, rising: true } : { angle: Math.PI, leaf, rising: false };
}

function shutPath(piled: Piled, crossing: Crossing, hinge: PaperHinge): Path | undefined {
  const shut = shutLeaves(piled, crossing, hinge);
  if (shut === undefined) return undefined;
  const [a, b] = shut.leaves;
  return {
    ends: [ray(shut.side, a), ray(shut.side, b)],
    passes: { is: 'creased', joint: hinge.joint },
    plain: false,
  };
}

/** The side on which a shut crease's panels lie, and their leaves there. */
export function shutLeaves(
  { spots }: Piled,
  crossing: Crossing,
  { a, b }: PaperHinge,
): { side: 'left' | 'right'; leaves: readonly [number, number] } | undefined {
  for (const side of ['left', 'right'] as const) {
    const spot = spots.list[crossing[side]];
    const [one, other] = [leafBy(spot, a), leafBy(spot, b)];
    if (one !== undefined && other !== undefined) return { side, leaves: [one, other] };
  }
  return undefined;
}

function leafBy(spot: Spot | undefined, panel: number): number | undefined {
  return spot?.leaves[spot.panels.indexOf(panel)];
}

/** A crease whose other panel leaves the plane: what goes on past it must pass on the side that is left free. */
function leavingPath(
  { paper, leaves, spots, piles }: Piled,
  crossing: Crossing,
  hinge: PaperHinge,
  pileOf: ReadonlyMap<number, Pile>,
): Path | undefined {
  const plane = piles[crossing.pile];
  const stays = plane?.panels.includes(hinge.a) ? hinge.a : hinge.b;
  const goes = stays === hinge.a ? hinge.b : hinge.a;
  const [sheet, pile] = [paper.panels[goes], pileOf.get(goes)];
  const side = leafBy(spots.list[crossing.left], stays) === undefined ? 'right' : 'left';
  const leaf = leafBy(spots.list[crossing[side]], stays);
  const parts = leaves.leavesOf(paper.facetOf[goes] ?? 0);
  if (!plane || !sheet || !pile || leaf === undefined || parts.length !== 1) return undefined;
  // The panel b lies to the left of its crease on the drawing.
  const turn = goes === hinge.b ? 1 : -1;
  const [hx, hy] = [hinge.to[0] - hinge.from[0], hinge.to[1] - hinge.from[1]];
  const away = combined(sheet.columns[0], -turn * hy, sheet.columns[1], turn * hx);
  const left = combined(plane.across, -crossing.dy, plane.along, crossing.dx);
  const angle = Math.atan2(dot(away, plane.up), dot(away, left));
  // Further round is the way in which the ray turns about the line's own direction.
  const line = cross(left, plane.up);
  const further = cross(line, away);
  const round = angle < 0 ? angle + 2 * Math.PI : angle;
  return {
    ends: [ray(side, leaf), { angle: round, leaf: parts[0]?.leaf ?? 0, rising: dot(further, pile.up) > 0 }],
    passes: { is: 'creased', joint: hinge.joint },
    plain: false,
  };
}

function combined(u: Vector, a: number, v: Vector, b: number): Vector {
  return [a * u[0] + b * v[0], a * u[1] + b * v[1], a * u[2] + b * v[2]];
}

/** Facets with paper on both sides of the line and nothing that parts it there. */
function straightPaths({ paper, spots, leaves }: Piled, crossing: Crossing, whole: ReadonlySet<number>): Path[] {
  const [left, right] = [spots.list[crossing.left], spots.list[crossing.right]];
  const paths: Path[] = [];
  for (const [i, panel] of (left?.panels ?? []).entries()) {
    const facet = paper.facetOf[panel] ?? 0;
    if (crossing.ending.includes(facet) && !whole.has(facet)) continue;
    const there = right?.panels.findIndex((other) => paper.facetOf[other] === facet) ?? -1;
    const [near, far] = [left?.leaves[i], right?.leaves[there]];
    if (near === undefined || far === undefined) continue;
    const joint = near === far ? undefined : partedBy(leaves, facet, near, far);
    paths.push({
      ends: [ray('left', near), ray('right', far)],
      passes: { is: 'straight', panel, joint },
      plain: near === far,
    });
  }
  return paths;
}

/** What parts two leaves of one facet. */
function partedBy(leaves: Leaves, facet: number, near: number, far: number): LaidJoint | undefined {
  const [one, other] = [near, far].map((leaf) => leaves.leavesOf(facet).find((part) => part.leaf === leaf)?.left);
  const differs = one?.findIndex((left, i) => left !== other?.[i]) ?? -1;
  return leaves.partingsOf(facet)[differs]?.joint;
}
