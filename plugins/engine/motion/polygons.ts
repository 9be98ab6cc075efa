import { Clipper64, ClipType, FillRule, type Path64, type PolyPath64, PolyTree64 } from 'clipper2-ts';
import type { Point } from '../geometry/index.ts';

/** A point of a drawing as floating millimetres, y down. */
export interface AreaPoint {
  readonly x: number;
  readonly y: number;
}

/** A connected area: its outer edge clockwise on the drawing, then its holes, anticlockwise. */
export type Area = readonly [outer: readonly AreaPoint[], ...holes: (readonly AreaPoint[])[]];

/** Areas are joined and parted on this grid, in mm: fine enough for any ruler, and coarse enough for products of two lengths to be exact. */
export const AREA_GRID_MM = 1e-5;

const PER_MM = 1e5;

/** Something with an outer edge and holes, either way round. */
export interface Shape {
  readonly outline: readonly Point[];
  readonly holes: readonly (readonly Point[])[];
}

/** All that any of the shapes covers. */
export function unionOf(shapes: readonly Shape[]): Area[] {
  return combined(ClipType.Union, shapes.flatMap(pathsOf), []);
}

/** What of a shape lies outside of areas. */
export function outsideOf(shape: Shape, areas: readonly Area[]): Area[] {
  return combined(
    ClipType.Difference,
    pathsOf(shape),
    areas.flatMap((area) => area.map(gridded)),
  );
}

/** What all of some shapes cover and none of the others does; nothing for no shapes. */
export function commonTo([first, ...others]: readonly Shape[], without: readonly Shape[] = []): Area[] {
  let areas = first === undefined ? [] : unionOf([first]);
  for (const shape of others) areas = combined(ClipType.Intersection, gridAll(areas), pathsOf(shape));
  return without.length === 0 ? areas : combined(ClipType.Difference, gridAll(areas), without.flatMap(pathsOf));
}

/** Square millimetres that areas cover in all. */
export function squareMm(areas: readonly Area[]): number {
  return areas.flat().reduce((sum, ring) => sum + twiceAreaOf(ring) / 2, 0);
}

function gridAll(areas: readonly Area[]): Path64[] {
  return areas.flatMap((area) => area.map(gridded));
}

/** An area with its holes filled. */
export function filled([outer]: Area): Area {
  return [outer];
}

/**
 * Outer edges turn one way and holes the other, whichever face of a panel looks up, so that what several shapes cover is
 * counted and never cancelled.
 */
function pathsOf({ outline, holes }: Shape): Path64[] {
  return [turning(floats(outline), 1), ...holes.map((hole) => turning(floats(hole), -1))].map(gridded);
}

function combined(clip: ClipType, subject: Path64[], others: Path64[]): Area[] {
  const clipper = new Clipper64();
  clipper.addPaths(subject, 0, false);
  if (others.length > 0) clipper.addPaths(others, 1, false);
  const tree = new PolyTree64();
  clipper.execute(clip, FillRule.NonZero, tree);
  return areasIn(tree);
}

/** Outer edges are the children of the root and of holes. */
function areasIn(node: PolyPath64): Area[] {
  return childrenOf(node).flatMap((outer) => {
    const holes = childrenOf(outer);
    const area: Area = [turning(millimetres(outer), 1), ...holes.map((hole) => turning(millimetres(hole), -1))];
    return [area, ...holes.flatMap(areasIn)];
  });
}

function childrenOf(node: PolyPath64): PolyPath64[] {
  return Array.from({ length: node.count }, (_, i) => node.child(i));
}

function millimetres(node: PolyPath64): AreaPoint[] {
  return (node.poly ?? []).map(({ x, y }) => ({ x: x / PER_MM, y: y / PER_MM }));
}

function gridded(spots: readonly AreaPoint[]): Path64 {
  return spots.map(({ x, y }) => ({ x: Math.round(x * PER_MM), y: Math.round(y * PER_MM) }));
}

export function floats(points: readonly Point[]): AreaPoint[] {
  return points.map(({ x, y }) => ({ x: x.valueOf(), y: y.valueOf() }));
}

/** `way` 1: clockwise on the drawing, whose y goes down; -1: anticlockwise. */
function turning(spots: readonly AreaPoint[], way: 1 | -1): readonly AreaPoint[] {
  return twiceAreaOf(spots) * way < 0 ? spots.toReversed() : spots;
}

/** Positive when clockwise on the drawing. */
export function twiceAreaOf(spots: readonly AreaPoint[]): number {
  return spots.reduce((sum, { x, y }, i) => {
    const next = spots[(i + 1) % spots.length];
    return next === undefined ? sum : sum + x * next.y - next.x * y;
  }, 0);
}
