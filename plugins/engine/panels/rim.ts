import { type Bounds, boundsOf, type Point, same } from '../geometry/index.ts';
import type { Corner, Edge } from '../spec/index.ts';
import type { Unnamed } from './panel-shapes.ts';

/** The outer edges and corners of a piece that a panel has a part in. */
export interface Rim {
  readonly edges: ReadonlySet<Edge>;
  readonly corners: ReadonlySet<Corner>;
}

const EDGES: readonly Edge[] = ['left', 'right', 'top', 'bottom'];

/**
 * Who has which edge of the smallest rectangle round all the panels. An edge is had along a length; where the paper only touches
 * it, as a circle does, at a point.
 */
export function rimsOf(panels: readonly Unnamed[]): Rim[] {
  const box = boundsOf(panels.flatMap(({ outline }) => outline));
  const rims = panels.map(() => ({ edges: new Set<Edge>(), corners: new Set<Corner>() }));
  for (const edge of EDGES) {
    const along = panels.map(({ outline }) => lies(outline, edge, box));
    const most = along.includes('length') ? 'length' : 'point';
    for (const [panel, has] of along.entries()) if (has === most) rims[panel]?.edges.add(edge);
  }
  for (const [panel, { outline }] of panels.entries())
    for (const point of outline) {
      const corner = cornerAt(point, box);
      if (corner) rims[panel]?.corners.add(corner);
    }
  return rims;
}

function lies(outline: readonly Point[], edge: Edge, box: Bounds): 'length' | 'point' | undefined {
  const is = (point: Point | undefined): boolean => point !== undefined && isOn(point, edge, box);
  let found: 'point' | undefined;
  for (const [i, point] of outline.entries()) {
    if (!is(point)) continue;
    if (is(outline[(i + 1) % outline.length])) return 'length';
    found = 'point';
  }
  return found;
}

function isOn({ x, y }: Point, edge: Edge, box: Bounds): boolean {
  return same(edge === 'left' || edge === 'right' ? x : y, box[edge]);
}

function cornerAt(point: Point, box: Bounds): Corner | undefined {
  const down = isOn(point, 'top', box) ? 'top' : isOn(point, 'bottom', box) ? 'bottom' : undefined;
  const across = isOn(point, 'left', box) ? 'left' : isOn(point, 'right', box) ? 'right' : undefined;
  return down && across && `${down}-${across}`;
}
