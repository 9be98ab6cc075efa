import polygonClipping, { type Polygon } from 'polygon-clipping';

type Corner = readonly [number, number];

function polygon(corners: readonly Corner[]): Polygon {
  return [corners.map(([x, y]) => [x, y])];
}

function areaOf(ring: readonly (readonly number[])[]): number {
  return ring.reduce((sum, [x = 0, y = 0], i) => {
    const [nextX = 0, nextY = 0] = ring[(i + 1) % ring.length] ?? [];
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);
}

function sizeOf(polygons: readonly Polygon[]): number {
  return polygons.reduce((sum, [outer = [], ...holes]) => {
    return sum + Math.abs(areaOf(outer)) - holes.reduce((all, hole) => all + Math.abs(areaOf(hole)), 0);
  }, 0);
}

/** Area of a shape after others have been cut out of it, by a clipping library that the engine does not use. */
export function areaLeft(shape: readonly Corner[], cutOut: readonly (readonly Corner[])[]): number {
  return sizeOf(polygonClipping.difference(polygon(shape), ...cutOut.map(polygon)));
}

/** Area that two shapes share. */
export function areaShared(one: readonly Corner[], other: readonly Corner[]): number {
  return sizeOf(polygonClipping.intersection(polygon(one), polygon(other)));
}
