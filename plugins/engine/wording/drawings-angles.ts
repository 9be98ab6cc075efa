import { type PathEdge, type Point, ZERO } from '../geometry/index.ts';
import type { Piece } from '../spec/index.ts';
import { nearly } from './drawings-forms.ts';
import { endPlace, floats, liesOn, type WorkLine } from './drawings-lines.ts';

/** The angle that a sloping line makes with another, or with an edge, where it begins there. */
export interface LineAngle {
  /** The point where both are. */
  readonly at: Point;
  /** The sloping line's other end. */
  readonly away: Point;
  /** Unit vector from `at` along the other line, on the side where the angle is at most 90 degrees. */
  readonly along: readonly [x: number, y: number];
  /** 0 to 90, to a tenth. */
  readonly degrees: number;
  /** The line, or the side of the piece; undefined for a level line that is not drawn. */
  readonly with: WorkLine | 'left' | 'right' | 'top' | 'bottom' | 'edge' | undefined;
}

/** The angle by which a sloping line is drawn; undefined for one from corner to corner, which needs none. */
export function angleOf(line: WorkLine, lines: readonly WorkLine[], piece: Piece): LineAngle | undefined {
  if (line.runs !== 'angled') return undefined;
  const ends = [line.from, line.to];
  if (ends.every((end) => endPlace(end, piece) === 'corner')) return undefined;
  const ways = [
    [line.from, line.to],
    [line.to, line.from],
  ] as const;
  // Best where it begins on a crease, then where it begins on an edge, upright and level ones before sloping ones.
  for (const sloping of [false, true]) {
    for (const [at, away] of ways) {
      const other = lines.find(
        (each) =>
          each !== line &&
          each.name !== line.name &&
          (each.runs === 'angled') === sloping &&
          liesOn(at, { is: 'line', from: each.from, to: each.to }),
      );
      if (other) return angleBetween(at, away, other.from, other.to, other);
    }
    for (const [at, away] of ways) {
      const edge = piece.outline.find((each) => each.is === 'line' && isSloping(each) === sloping && liesOn(at, each));
      if (edge) return angleBetween(at, away, edge.from, edge.to, sideOf(edge, piece));
    }
  }
  const [[x, y], [tx, ty]] = [floats(line.from), floats(line.to)];
  const level = [Math.sign(tx - x), 0] as const;
  return { at: line.from, away: line.to, along: level, degrees: acute([tx - x, ty - y], level), with: undefined };
}

function isSloping({ from, to }: PathEdge): boolean {
  return !nearly(from.x, to.x) && !nearly(from.y, to.y);
}

/** The side of the piece that an edge is part of. */
function sideOf(edge: PathEdge, piece: Piece): LineAngle['with'] {
  if (isSloping(edge)) return 'edge';
  const { from, to } = edge;
  const [width, height] = [piece.width.mm, piece.height.mm];
  if (nearly(from.x, to.x)) return nearly(from.x, ZERO) ? 'left' : nearly(from.x, width) ? 'right' : 'edge';
  return nearly(from.y, ZERO) ? 'top' : nearly(from.y, height) ? 'bottom' : 'edge';
}

function angleBetween(at: Point, away: Point, from: Point, to: Point, other: LineAngle['with']): LineAngle {
  const [[x, y], [ax, ay], [fx, fy], [tx, ty]] = [floats(at), floats(away), floats(from), floats(to)];
  const length = Math.hypot(tx - fx, ty - fy);
  const along = [(tx - fx) / length, (ty - fy) / length] as const;
  const slope = [ax - x, ay - y] as const;
  const same = slope[0] * along[0] + slope[1] * along[1] >= 0;
  const way = same ? along : ([-along[0], -along[1]] as const);
  return { at, away, along: way, degrees: acute(slope, way), with: other };
}

/** Between two directions at most 90 degrees apart, to a tenth of a degree. */
function acute(a: readonly [number, number], b: readonly [number, number]): number {
  const across = Math.abs(a[0] * b[1] - a[1] * b[0]);
  const along = a[0] * b[0] + a[1] * b[1];
  return Math.round((Math.atan2(across, along) * 1800) / Math.PI) / 10;
}
