import type { Length } from '../units/index.ts';
import type { Edge } from './card-types.ts';
import { point, type Segment, ZERO } from './plane.ts';
import type { Crease, Piece } from './types.ts';
import { EDGES } from './words.ts';

/** The smallest rectangle round a piece. */
export interface Box {
  readonly width: Length;
  readonly height: Length;
}

/**
 * The line of a piece that a name means, as it runs: an edge (top to bottom or left to right), a crease between bands, any
 * other line or member, or a family with one member. Undefined when there is none, or a family has several.
 */
export function lineNamed(piece: Piece, name: string): Segment | undefined {
  const named = linesNamed(piece, name);
  return named.length === 1 ? named[0]?.line : undefined;
}

/** Every line that a name means: all members where it is the name of a family. */
export function linesNamed(piece: Piece, name: string): { readonly name: string; readonly line: Segment }[] {
  if ((EDGES as readonly string[]).includes(name)) return [{ name, line: edgeOfBox(piece, name as Edge) }];
  const crease = piece.creases.find((candidate) => candidate.name === name);
  if (crease) return [{ name, line: lineOfCrease(piece, crease) }];
  const exact = piece.lines.filter((line) => line.name === name);
  if (exact.length > 0) return exact.map((line) => ({ name: line.name, line }));
  const creases = piece.creases.filter((candidate) => familyOf(candidate.name) === name);
  const lines = piece.lines.filter((line) => line.family === name);
  return [
    ...creases.map((one) => ({ name: one.name, line: lineOfCrease(piece, one) })),
    ...lines.map((line) => ({ name: line.name, line })),
  ];
}

/** Names of all lines of a piece, for suggestions. */
export function lineNames(piece: Piece): string[] {
  return [...EDGES, ...piece.creases.map(({ name }) => name), ...piece.lines.map(({ name }) => name)];
}

/** A name without its numbers: `disc(1)` is one of `disc`. */
export function familyOf(name: string): string {
  return name.replace(/(?:\(\d+\))+$/u, '');
}

export function edgeOfBox({ width, height }: Box, edge: Edge): Segment {
  const [left, top] = [ZERO, ZERO];
  const [right, bottom] = [width.mm, height.mm];
  switch (edge) {
    case 'left':
      return { from: point(left, top), to: point(left, bottom) };
    case 'right':
      return { from: point(right, top), to: point(right, bottom) };
    case 'top':
      return { from: point(left, top), to: point(right, top) };
    case 'bottom':
      return { from: point(left, bottom), to: point(right, bottom) };
  }
}

/** A crease between bands, from edge to edge: top to bottom, or left to right. */
export function lineOfCrease({ width, height }: Box, { runs, at }: Pick<Crease, 'runs' | 'at'>): Segment {
  return runs === 'down'
    ? { from: point(at.mm, ZERO), to: point(at.mm, height.mm) }
    : { from: point(ZERO, at.mm), to: point(width.mm, at.mm) };
}
