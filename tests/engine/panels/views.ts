import Fraction from 'fraction.js';
import type { Outline, PathEdge, Point } from '../../../plugins/engine/geometry/index.ts';
import type { Card, Length, Piece } from '../../../plugins/engine/index.ts';

/**
 * The same card lying otherwise on the table, or made for the other ruler: what is true of one is true of all. In the
 * other system the numbers are kept and read as tens of millimetres.
 */
export const VIEWS: readonly { readonly view: string; readonly of: (made: Card) => Card; readonly perInch: number }[] =
  [
    { view: 'as drawn', of: (made) => made, perInch: 25.4 },
    { view: 'turned a quarter', of: (made) => changed(made, turned), perInch: 25.4 },
    { view: 'mirrored', of: (made) => changed(made, mirrored), perInch: 25.4 },
    { view: 'turned and mirrored', of: (made) => changed(made, (one) => mirrored(turned(one))), perInch: 25.4 },
    { view: 'in millimetres', of: (made) => ({ ...changed(made, inTens), system: 'metric' }), perInch: 10 },
  ];

function changed(made: Card, change: (one: Piece) => Piece): Card {
  return { ...made, pieces: made.pieces.map(change) };
}

/** A quarter turn clockwise: what was the left edge is the top one, and the bottom edge is the left one. */
function turned(one: Piece): Piece {
  const move = (point: Point): Point => ({ ...point, x: one.height.mm.sub(point.y), y: point.x });
  const moveOutline = (outline: Outline): Outline =>
    outline.map((edge) => ({
      ...movedEdge(edge, move),
      ...(edge.is === 'arc' && { rx: edge.ry, ry: edge.rx }),
    }));
  return {
    ...withPoints(one, move, moveOutline),
    width: one.height,
    height: one.width,
    columns: reversed(one.rows, one.height),
    rows: one.columns,
    creases: [
      ...reversedCreases(one, 'across', one.height).map((crease) => ({ ...crease, runs: 'down' as const })),
      ...one.creases.filter(({ runs }) => runs === 'down').map((crease) => ({ ...crease, runs: 'across' as const })),
    ],
  };
}

/** Left for right: a valley stays a valley, since the face stays up. */
function mirrored(one: Piece): Piece {
  const move = (point: Point): Point => ({ ...point, x: one.width.mm.sub(point.x) });
  const moveOutline = (outline: Outline): Outline =>
    outline.toReversed().map((edge) => {
      const { from, to, ...rest } = movedEdge(edge, move);
      return { ...rest, from: to, to: from };
    });
  return {
    ...withPoints(one, move, moveOutline),
    columns: reversed(one.columns, one.width),
    creases: [...reversedCreases(one, 'down', one.width), ...one.creases.filter(({ runs }) => runs === 'across')],
  };
}

function inTens(one: Piece): Piece {
  const factor = new Fraction(50, 127);
  const scaled = (length: Length): Length => length.times(factor);
  const move = (point: Point): Point => ({ ...point, x: point.x.mul(factor), y: point.y.mul(factor) });
  const bands = (list: Piece['columns']): Piece['columns'] =>
    list.map((band) => ({ ...band, start: scaled(band.start), size: scaled(band.size), exact: scaled(band.exact) }));
  const moveOutline = (outline: Outline): Outline =>
    outline.map((edge) => ({
      ...movedEdge(edge, move),
      ...(edge.is === 'arc' && { rx: edge.rx.mul(factor), ry: edge.ry.mul(factor) }),
    }));
  return {
    ...withPoints(one, move, moveOutline),
    ...{ width: scaled(one.width), height: scaled(one.height), columns: bands(one.columns), rows: bands(one.rows) },
    creases: one.creases.map((crease) => ({ ...crease, at: scaled(crease.at) })),
  };
}

function withPoints(one: Piece, move: (point: Point) => Point, moveOutline: (outline: Outline) => Outline): Piece {
  const regions = <T extends { readonly outline: Outline }>(list: readonly T[]): T[] =>
    list.map((region) => ({ ...region, outline: moveOutline(region.outline) }));
  return {
    ...one,
    outline: moveOutline(one.outline),
    lines: one.lines.map((line) => ({ ...line, from: move(line.from), to: move(line.to) })),
    ...{ windows: regions(one.windows), away: regions(one.away), shapes: regions(one.shapes) },
    spots: one.spots.map((spot) => ({ ...spot, at: move(spot.at) })),
  };
}

function movedEdge(edge: PathEdge, move: (point: Point) => Point): PathEdge {
  const ends = { from: move(edge.from), to: move(edge.to) };
  return edge.is === 'line' ? { ...edge, ...ends } : { ...edge, ...ends, centre: move(edge.centre) };
}

function reversed(bands: Piece['columns'], side: Length): Piece['columns'] {
  return bands.toReversed().map((band) => ({ ...band, start: side.minus(band.start).minus(band.size) }));
}

function reversedCreases({ creases }: Piece, runs: 'down' | 'across', side: Length): Piece['creases'] {
  return creases
    .filter((crease) => crease.runs === runs)
    .toReversed()
    .map((crease) => ({ ...crease, at: side.minus(crease.at) }));
}
