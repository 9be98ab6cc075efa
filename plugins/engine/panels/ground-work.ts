import type { Piece } from '../spec/index.ts';
import type { LineUp, Source } from './curves.ts';
import { type Faces, sidesOf } from './faces.ts';
import { type Cell, creasesWithinShapes, type LinkWork, shapesOf, workOf } from './link-work.ts';
import type { Link, Net } from './net.ts';

/** What every region and every link of a net is. */
export interface GroundWork {
  /** For each face whether it is paper, and whether it would be but for the windows. */
  readonly paper: readonly boolean[];
  readonly base: readonly boolean[];
  /** True when the face lies in the region of that number. */
  isIn(face: number, region: number): boolean;
  /** For each face the column and row that it lies in. */
  readonly cell: readonly Cell[];
  readonly work: readonly LinkWork[];
  /** For each link the number of the source whose line is done there: the first that counts. */
  readonly source: readonly number[];
}

export function groundWorkOf(piece: Piece, lineUp: LineUp, net: Net, faces: Faces): GroundWork {
  const { sources, curves } = lineUp;
  const inside = insidesOf(lineUp, net, faces);
  const isIn = (face: number, region: number): boolean => inside[face]?.[region] === true;
  const regionsOf = (is: Source['is']): number[] =>
    sources.filter((source) => source.is === is).map(({ region }) => region);
  const [away, windows] = [regionsOf('away'), regionsOf('window')];
  const base = inside.map((regions) => regions[0] === true && !away.some((region) => regions[region]));
  const paper = inside.map((regions, face) => base[face] === true && !windows.some((region) => regions[region]));
  const cell = cellsOf(piece, net, faces);
  const shapes = shapesOf(piece, sources);
  const whole = { isIn, cell, paper, faces };
  const ownCreases = creasesWithinShapes(lineUp, net, shapes, whole);
  const work: LinkWork[] = [];
  const source: number[] = [];
  for (const [number, link] of net.links.entries()) {
    const found = workOf(number, link, lineUp, shapes, whole, ownCreases);
    work.push(found.work);
    source.push(found.use === undefined ? -1 : (curves[found.use]?.source ?? -1));
  }
  return { paper, base, isIn, cell, work, source };
}

/** From the outside inwards: whoever crosses an edge of a region goes into it or out of it. */
function insidesOf({ sources, curves, regionCount }: LineUp, { links }: Net, faces: Faces): boolean[][] {
  const doors: { readonly to: number; readonly link: Link }[][] = Array.from({ length: faces.count }, () => []);
  for (const [number, link] of links.entries()) {
    const [right, left] = sidesOf(number, faces);
    if (right === left) continue;
    doors[right]?.push({ to: left, link });
    doors[left]?.push({ to: right, link });
  }
  const inside: boolean[][] = [new Array<boolean>(regionCount).fill(false)];
  const waiting = [0];
  for (const face of waiting)
    for (const { to, link } of doors[face] ?? []) {
      if (inside[to] !== undefined) continue;
      const regions = [...(inside[face] ?? [])];
      for (const { curve } of link.uses) {
        const region = sources[curves[curve]?.source ?? -1]?.region ?? -1;
        if (region >= 0) regions[region] = !regions[region];
      }
      inside[to] = regions;
      waiting.push(to);
    }
  return Array.from({ length: faces.count }, (_, face) => inside[face] ?? []);
}

/** By the middle of a face's width and height: a crease between bands runs through the whole paper. */
function cellsOf({ columns, rows }: Piece, { nodes }: Net, { boundary }: Faces): Cell[] {
  if (columns.length === 1 && rows.length === 1) return boundary.map(() => ({ column: 0, row: 0 }));
  const [xs, ys] = [columns, rows].map((bands) => bands.map(({ start }) => start.mm.valueOf())) as [number[], number[]];
  return boundary.map((corners) => {
    const seen = corners.map((node) => nodes.at(node));
    return {
      column: bandAt(
        xs,
        seen.map(({ x }) => x),
      ),
      row: bandAt(
        ys,
        seen.map(({ y }) => y),
      ),
    };
  });
}

function bandAt(starts: readonly number[], values: readonly number[]): number {
  const middle = (Math.min(...values) + Math.max(...values)) / 2;
  return Math.max(
    0,
    starts.findLastIndex((start) => start <= middle),
  );
}
