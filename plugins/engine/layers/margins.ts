import { distanceToSegment, type Point, seen } from '../geometry/index.ts';
import { outsideOf, type Shape, squareMm, unionOf } from '../motion/index.ts';

/** Less than this, in square millimetres, is the grid of areas and not paper. */
const NOTHING_MM2 = 1e-3;

type Ring = readonly Point[];

/** How much of a region paper covers. */
export function coverOf(region: Ring, paper: Shape): 'all' | 'part' | 'none' {
  const shape = { outline: region, holes: [] };
  const whole = squareMm(unionOf([shape]));
  const left = squareMm(outsideOf(shape, unionOf([paper])));
  if (left < NOTHING_MM2) return 'all';
  return whole - left < NOTHING_MM2 ? 'none' : 'part';
}

/** The least distance between the edges of two rings, in millimetres. */
export function distanceBetween(one: Ring, other: Ring): number {
  return Math.min(fromCorners(one, other), fromCorners(other, one));
}

function fromCorners(corners: Ring, ring: Ring): number {
  const edges = ring.map(seen);
  let least = Number.POSITIVE_INFINITY;
  for (const corner of corners) {
    const [x, y] = [corner.x.valueOf(), corner.y.valueOf()];
    let before = edges.at(-1);
    for (const edge of edges) {
      if (before) least = Math.min(least, distanceToSegment(x, y, before, edge));
      before = edge;
    }
  }
  return least;
}
