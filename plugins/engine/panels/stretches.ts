import { angleAlong, chordsOf, type PathEdge, type Seen, SNAP, seen } from '../geometry/index.ts';
import type { Curve, LineUp } from './curves.ts';
import { meetingsOf } from './meetings.ts';
import { Nodes } from './nodes.ts';

/** Curves divided wherever anything meets them, arcs as chords: chains of nodes, one for each curve, from its start to its end. */
export interface Divided {
  readonly nodes: Nodes;
  readonly chains: readonly (readonly number[])[];
}

/** Undefined when the curves meet in more places than are worth counting. `side` is the larger side of the piece, in mm. */
export function divide({ curves, sources }: LineUp, side: number): Divided | undefined {
  const tolerance = SNAP * side;
  const stops = meetingsOf(curves, tolerance);
  if (stops === undefined) return undefined;
  const nodes = new Nodes(side, tolerance);
  const entered = new Map<Seen, number>();
  for (const { point } of byWeight(curves, stops, (curve) => sources[curve.source]?.region !== -1))
    entered.set(point, nodes.enter(point));
  const chains = curves.map((curve, i) => {
    const ordered = (stops[i] ?? []).map((stop) => entered.get(stop) ?? nodes.enter(stop));
    return chainOf(curve, ordered, nodes);
  });
  return { nodes, chains };
}

/** What is exact before what is rounded, corners of paper before ends of lines, then as written. */
function byWeight(
  curves: readonly Curve[],
  stops: readonly (readonly Seen[])[],
  bounds: (curve: Curve) => boolean,
): { readonly point: Seen; readonly weight: number }[] {
  return curves
    .flatMap((curve, i) =>
      (stops[i] ?? []).map((point, k) => ({
        point,
        weight: (point.at.rounded ? 4 : 0) + (bounds(curve) ? (k < 2 ? 0 : 1) : 2),
      })),
    )
    .sort((a, b) => a.weight - b.weight);
}

/** `ordered` are the nodes where it stops, its two ends first. */
function chainOf({ edge, from, to }: Curve, ordered: readonly number[], nodes: Nodes): number[] {
  const along = placeAlong(edge, from, to);
  const start = ordered[0];
  const last = ordered[1];
  if (start === undefined || last === undefined) return [];
  const inner = [...new Set(ordered)]
    .filter((node) => node !== start && node !== last)
    .map((node) => ({ node, at: along(nodes.at(node)) }))
    .sort((a, b) => a.at - b.at)
    .map(({ node }) => node);
  const corners = [start, ...inner, ...(last === start && inner.length === 0 ? [] : [last])];
  if (edge.is === 'line') return corners;
  const chain = [start];
  for (const [i, node] of corners.entries()) {
    const before = corners[i - 1];
    if (before === undefined) continue;
    const part = { ...edge, from: nodes.at(before).at, to: nodes.at(node).at };
    for (const corner of chordsOf(part).slice(1, -1)) chain.push(nodes.enter(seen(corner)));
    chain.push(node);
  }
  return chain.filter((node, i) => node !== chain[i - 1]);
}

/** Something that grows along an edge. */
function placeAlong(edge: PathEdge, from: Seen, to: Seen): (point: Seen) => number {
  if (edge.is === 'line') {
    const [dx, dy] = [to.x - from.x, to.y - from.y];
    return ({ x, y }) => (x - from.x) * dx + (y - from.y) * dy;
  }
  const whole = angleAlong(edge, edge.to);
  // A point that was snapped to just before the start has gone nearly all the way round.
  const furthest = (whole + 2 * Math.PI) / 2;
  return ({ at }) => {
    const angle = angleAlong(edge, at);
    return angle > furthest ? 0 : angle;
  };
}
