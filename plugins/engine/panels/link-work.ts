import type { Piece } from '../spec/index.ts';
import type { LineUp, Source } from './curves.ts';
import { type Faces, sidesOf } from './faces.ts';
import type { Link, Net } from './net.ts';

/** What a link is on the finished piece. `none`: off the paper, or nothing that parts it. */
export type LinkWork = 'none' | 'edge' | 'cut' | 'crease';

/** A column and a row, by number. */
export interface Cell {
  readonly column: number;
  readonly row: number;
}

/** A part-cut shape. */
export interface Shape {
  readonly region: number;
  isBand(cell: Cell | undefined): boolean;
}

/** What is known of the faces. */
export interface Whole {
  isIn(face: number, region: number): boolean;
  readonly cell: readonly Cell[];
  readonly paper: readonly boolean[];
  readonly faces: Faces;
}

export function shapesOf({ columns, rows }: Piece, sources: readonly Source[]): Shape[] {
  return sources
    .filter(({ is }) => is === 'shape')
    .map(({ region, staysWith }) => ({
      region,
      isBand: (cell) =>
        cell !== undefined && (columns[cell.column]?.name === staysWith || rows[cell.row]?.name === staysWith),
    }));
}

/** Numbers of creases that lie wholly within a part-cut shape and so are folds of the shape itself. */
export function creasesWithinShapes(
  { sources, curves }: LineUp,
  net: Net,
  shapes: readonly Shape[],
  whole: Whole,
): Set<number> {
  const own = new Set<number>();
  if (shapes.length === 0) return own;
  for (const [number, { source }] of curves.entries()) {
    const { is, ofBands } = sources[source] ?? {};
    if (is !== 'crease' || ofBands) continue;
    const within = (net.steps[number] ?? []).every(({ link }) => {
      const sides = sidesOf(link, whole.faces);
      return shapes.some(({ region }) => sides.every((face) => whole.isIn(face, region)));
    });
    if (within) own.add(source);
  }
  return own;
}

/** What is done along a link, and the curve that counts. A cut wins over a crease. */
export function workOf(
  number: number,
  { uses }: Link,
  { sources, curves }: LineUp,
  shapes: readonly Shape[],
  whole: Whole,
  ownCreases: ReadonlySet<number>,
): { readonly work: LinkWork; readonly use: number | undefined } {
  const sides = sidesOf(number, whole.faces);
  const papers = sides.filter((face) => whole.paper[face]).length;
  if (papers === 0) return { work: 'none', use: undefined };
  const sourceOf = (curve: number): Source | undefined => sources[curves[curve]?.source ?? -1];
  const first = (takes: (source: Source, number: number) => boolean): number | undefined =>
    uses.find(({ curve }) => {
      const source = sourceOf(curve);
      return source !== undefined && takes(source, curves[curve]?.source ?? -1);
    })?.curve;
  if (papers === 1)
    return { work: 'edge', use: first(({ is }) => is === 'outline' || is === 'away' || is === 'window') };
  const shapeOf = (region: number): Shape | undefined => shapes.find((shape) => shape.region === region);
  const cut = first((source) => {
    if (source.is === 'cut') return true;
    const shape = source.is === 'shape' ? shapeOf(source.region) : undefined;
    return shape !== undefined && isCutAlong(shape, sides, whole);
  });
  if (cut !== undefined) return { work: 'cut', use: cut };
  const interrupted = shapes.some((shape) => interrupts(shape, sides, whole));
  const crease = first(({ is }, source) => is === 'crease' && (!interrupted || ownCreases.has(source)));
  return crease === undefined ? { work: 'none', use: undefined } : { work: 'crease', use: crease };
}

/** A part-cut shape is cut round where it and what lies next to it are both out of its band. */
function isCutAlong(shape: Shape, sides: readonly number[], { isIn, cell }: Whole): boolean {
  const within = sides.filter((face) => isIn(face, shape.region)).length;
  return within === 1 && sides.every((face) => !shape.isBand(cell[face]));
}

/** Creases stop at a shape; so does the one across which it sticks out of its band. */
function interrupts(shape: Shape, sides: readonly number[], { isIn, cell }: Whole): boolean {
  const [inner, outer] = [
    sides.filter((face) => isIn(face, shape.region)),
    sides.filter((face) => !isIn(face, shape.region)),
  ];
  if (outer.length === 0) return true;
  return inner.some((face) => !shape.isBand(cell[face])) && outer.every((face) => shape.isBand(cell[face]));
}
