import Fraction from 'fraction.js';
import { type Point, SNAP, samePoint } from '../geometry/index.ts';
import type { Line } from './card-types.ts';
import { membersOfLine, orderOfLines } from './check-places.ts';
import { type Box, edgeOfBox, familyOf, lineNamed } from './line-named.ts';
import type { Course, LineSpec } from './piece-specs.ts';
import {
  cross,
  dot,
  isRounded,
  minus,
  onGrid,
  plus,
  point,
  type Segment,
  times,
  unitOf,
  type Vector,
  ZERO,
} from './plane.ts';
import { cornerOf, pointIn, type Sizes } from './point-on.ts';
import type { Report } from './report.ts';
import type { Piece, PieceSpec } from './types.ts';

/** Creases, cuts, perforations and marks of a piece that has its size and its bands, in file order. */
export function makeLines(spec: PieceSpec, piece: Piece, sizes: Sizes, report: Report): Line[] {
  const made = new Map<string, Line[]>();
  for (const name of orderOfLines(spec).order) {
    const line = spec.lines.find((candidate) => candidate.name === name);
    if (line === undefined) continue;
    const sofar: Piece = { ...piece, lines: [...made.values()].flat() };
    made.set(name, membersOf(line, sofar, sizes, report));
  }
  return spec.lines.flatMap(({ name }) => made.get(name) ?? []);
}

function membersOf(spec: LineSpec, piece: Piece, sizes: Sizes, report: Report): Line[] {
  const { does, folds, place, path, name } = spec;
  const names = membersOfLine(spec);
  return segmentsOf(spec, piece, sizes, report).flatMap((segment, index) => {
    if (segment === undefined) return [];
    const own = names[index] ?? name;
    if (samePoint(segment.from, segment.to)) {
      const takes = 'a line that is longer than nothing';
      const remedy = 'It begins and ends at one point. Change one of the two ends.';
      report.at(place, path, { code: 'no-length', wrote: own, takes, remedy });
      return [];
    }
    return [{ name: own, family: familyOf(own), does, ...segment, folds, place, path }];
  });
}

function segmentsOf(spec: LineSpec, piece: Piece, sizes: Sizes, report: Report): (Segment | undefined)[] {
  const { course } = spec;
  const at = (of: Parameters<typeof pointIn>[1]): Point | undefined =>
    pointIn(piece, of, (name) => lineNamed(piece, name), sizes);
  switch (course.is) {
    case 'square': {
      return course.at.map((position) => {
        const far = sizes.length(position)?.mm;
        return far && between(course, movedIn(course.edge, piece, far), sizes);
      });
    }
    case 'middle': {
      const half = (course.runs === 'down' ? piece.width : piece.height).mm.div(2);
      return [between(course, movedIn(course.runs === 'down' ? 'left' : 'top', piece, half), sizes)];
    }
    case 'points': {
      const [from, to] = [at(course.from), at(course.to)];
      return [from && to && { from, to }];
    }
    case 'angle': {
      const start = at(course.start);
      return [start && angled(course, start, spec, piece, sizes, report)];
    }
  }
}

/** An edge of the piece, moved inwards. */
function movedIn(edge: 'left' | 'right' | 'top' | 'bottom', box: Box, far: Fraction): Segment {
  const { from, to } = edgeOfBox(box, edge);
  const inwards = edge === 'left' || edge === 'top' ? far : far.neg();
  const by = edge === 'left' || edge === 'right' ? point(inwards, ZERO) : point(ZERO, inwards);
  return { from: plus(from, by), to: plus(to, by) };
}

/** The part of a line that is wanted, counted from its top or left end. */
function between(
  { start, end }: Pick<Course & { is: 'middle' }, 'start' | 'end'>,
  line: Segment,
  sizes: Sizes,
): Segment | undefined {
  const [first, last] = [start && sizes.length(start), end && sizes.length(end)];
  if ((start && !first) || (end && !last)) return undefined;
  const along = unitOf(minus(line.to, line.from));
  const from = first ? plus(line.from, times(along, first.mm)) : line.from;
  const to = last ? plus(line.from, times(along, last.mm)) : line.to;
  return dot(minus(to, from), along).compare(0) < 0 ? { from: to, to: from } : { from, to };
}

function angled(
  course: Course & { is: 'angle' },
  start: Point,
  { place, path }: LineSpec,
  piece: Piece,
  sizes: Sizes,
  report: Report,
): Segment | undefined {
  const off = lineNamed(piece, course.off.line);
  const by = sizes.angle(course.by);
  const long = course.long && sizes.length(course.long)?.mm;
  if (off === undefined || by === undefined || (course.long && !long)) return undefined;
  if (by.lte(0) || by.gt(90)) {
    const takes = 'an angle over 0 and at most 90 deg; `towards` says to which side';
    const remedy = 'Make the angle at most 90 deg, and name the corner that the line leans to.';
    const { node, path: here } = course.by.written;
    report.at(node.place, here, { code: 'angle-range', wrote: `${by.toFraction(true)} deg`, takes, remedy });
    return undefined;
  }
  const along = minus(off.to, off.from);
  const aim = minus(cornerOf(piece, course.towards), start);
  const [forward, aside] = [sideOf(dot(along, aim), along, aim), sideOf(cross(along, aim), along, aim)];
  if (aside === 0 || (forward === 0 && !by.equals(90))) {
    const takes = 'a corner that lies to one side of the start';
    const remedy = `From there, \`${course.towards}\` lies straight along or straight across \`${course.off.line}\`. Name another corner.`;
    report.at(place, path, { code: 'towards-unclear', wrote: course.towards, takes, remedy });
    return undefined;
  }
  const direction = turned(along, by, forward, aside);
  if (long) return { from: start, to: plus(start, times(unitOf(direction), long, isRounded(direction))) };
  return { from: start, to: reach(start, direction, piece) };
}

/** The sign of a product of two vectors; zero when what is left is rounding. */
function sideOf(product: Fraction, a: Vector, b: Vector): number {
  const size = Math.sqrt(dot(a, a).valueOf() * dot(b, b).valueOf());
  const rounded = isRounded(a) || isRounded(b);
  return rounded && Math.abs(product.valueOf()) <= SNAP * size ? 0 : Math.sign(product.compare(0));
}

/**
 * A direction at an angle to another, forward or backward along it and clockwise or anticlockwise of it on the drawing. Exact at
 * 90 and 45 degrees, where its slope is a fraction.
 */
function turned(along: Vector, degrees: Fraction, forward: number, aside: number): Vector {
  const straight = times(along, new Fraction(forward));
  const square = times(point(along.y.neg(), along.x, isRounded(along)), new Fraction(aside));
  if (degrees.equals(90)) return square;
  if (degrees.equals(45)) return plus(straight, square);
  const radians = (degrees.valueOf() * Math.PI) / 180;
  const [a, b] = [unitOf(straight), unitOf(square)];
  return plus(times(a, onGrid(Math.cos(radians)), true), times(b, onGrid(Math.sin(radians)), true));
}

/** Where a ray leaves the rectangle round a piece; that coordinate is the edge's own. The start itself when it leaves at once. */
function reach(start: Point, direction: Vector, { width, height }: Box): Point {
  const way = (from: Fraction, step: Fraction, far: Fraction): Fraction | undefined => {
    if (step.equals(0)) return undefined;
    return (step.compare(0) > 0 ? far.sub(from) : from.neg()).div(step);
  };
  const [x, y] = [way(start.x, direction.x, width.mm), way(start.y, direction.y, height.mm)];
  const first = x === undefined ? y : y === undefined ? x : x.lte(y) ? x : y;
  if (first === undefined || first.lte(0)) return start;
  const to = plus(start, times(direction, first, isRounded(direction)));
  const [atX, atY] = [first === x, first === y];
  const edgeX = direction.x.compare(0) > 0 ? width.mm : ZERO;
  const edgeY = direction.y.compare(0) > 0 ? height.mm : ZERO;
  return point(atX ? edgeX : to.x, atY ? edgeY : to.y, isRounded(to));
}
