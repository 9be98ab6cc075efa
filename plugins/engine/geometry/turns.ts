import type Fraction from 'fraction.js';
import { exactRoot, minus, negated, ONE, onGrid, plus, times, ZERO } from './numbers.ts';
import { inSpace, placeInSpace } from './placement.ts';
import { samePoint } from './points.ts';
import type { Placement, Point, SpacePoint } from './types.ts';

/** Cosine and sine. Exact for whole quarter turns, else on the grid and `rounded`. */
export interface Turn {
  readonly cos: Fraction;
  readonly sin: Fraction;
  readonly rounded?: true;
}

/** The turn by so many degrees. Throws RangeError for what is no finite number. */
export function turnBy(degrees: number): Turn {
  if (degrees % 90 === 0) {
    const cos = [ONE, ZERO, negated(ONE), ZERO];
    const quarter = (((degrees / 90) % 4) + 4) % 4;
    return { cos: cos[quarter] ?? ONE, sin: cos[(quarter + 3) % 4] ?? ZERO };
  }
  const radians = (degrees * Math.PI) / 180;
  return { cos: onGrid(Math.cos(radians)), sin: onGrid(Math.sin(radians)), rounded: true };
}

/**
 * The turn about a line of the drawing, by the right-hand rule along `from` to `to` in space: over the left panel's side of
 * a crease that is a valley for positive degrees.
 *
 * Exact for 0 and 180 degrees about any exact line, and for 90 where the line's length is a fraction; else on the grid.
 * Throws RangeError when the points coincide.
 */
export function rotationAbout(from: Point, to: Point, degrees: number): Placement {
  if (samePoint(from, to)) throw new RangeError('two points at one place name no line to turn about');
  const { cos, sin, rounded } = turnBy(degrees);
  const dx = minus(to.x, from.x);
  const dy = minus(from.y, to.y);
  const square = plus(times(dx, dx), times(dy, dy));
  const exactLine = !from.rounded && !to.rounded && !rounded;
  const length = sin.n === 0n ? ONE : (straightLength(dx, dy) ?? exactRoot(square));
  if (!exactLine || length === undefined) return roundedRotation(from, dx, dy, cos, sin);
  const rest = minus(ONE, cos).div(square);
  const [xx, xy, yy] = [times(dx, dx), times(dx, dy), times(dy, dy)].map((product) => times(rest, product)) as [
    Fraction,
    Fraction,
    Fraction,
  ];
  const [sx, sy] = sin.n === 0n ? [ZERO, ZERO] : [times(sin, dx).div(length), times(sin, dy).div(length)];
  const m: Placement['m'] = [plus(cos, xx), xy, sy, xy, plus(cos, yy), negated(sx), negated(sy), sx, cos];
  return about(inSpace(from), { m, t: [ZERO, ZERO, ZERO] });
}

function straightLength(dx: Fraction, dy: Fraction): Fraction | undefined {
  if (dx.n === 0n) return dy.abs();
  return dy.n === 0n ? dx.abs() : undefined;
}

function roundedRotation(from: Point, dx: Fraction, dy: Fraction, cosine: Fraction, sine: Fraction): Placement {
  const length = Math.hypot(dx.valueOf(), dy.valueOf());
  const [ux, uy, cos, sin] = [dx.valueOf() / length, dy.valueOf() / length, cosine.valueOf(), sine.valueOf()];
  const rest = 1 - cos;
  const m = [
    ...[cos + rest * ux * ux, rest * ux * uy, sin * uy],
    ...[rest * ux * uy, cos + rest * uy * uy, -sin * ux],
    ...[-sin * uy, sin * ux, cos],
  ].map(onGrid) as unknown as Placement['m'];
  return about(inSpace(from), { m, t: [ZERO, ZERO, ZERO], rounded: true });
}

/** A turn about the origin, made a turn about a point. */
function about(point: SpacePoint, turn: Placement): Placement {
  const moved = placeInSpace(turn, point);
  return { ...turn, t: [minus(point.x, moved.x), minus(point.y, moved.y), minus(point.z, moved.z)] };
}

type PaperSide = 'face' | 'back';

/**
 * Where a panel lies that is laid on another, in the other's own space: its point `p` on the other's point `q`, turned clockwise
 * on the other's drawing by `turn`, its `partSide` on the other's `ontoSide`, `height` mm apart. Like sides turn it over, left
 * for right, before it is turned.
 */
export function laidOn(
  laying: {
    readonly p: Point;
    readonly q: Point;
    readonly turn: Turn;
    readonly partSide: PaperSide;
    readonly ontoSide: PaperSide;
  },
  height: Fraction = ZERO,
): Placement {
  const { p, q, turn, partSide, ontoSide } = laying;
  const over = partSide === ontoSide ? negated(ONE) : ONE;
  const { cos, sin } = turn;
  const rounded = turn.rounded || p.rounded || q.rounded;
  const m: Placement['m'] = [
    ...([times(cos, over), sin, ZERO] as const),
    ...([negated(times(sin, over)), cos, ZERO] as const),
    ...([ZERO, ZERO, over] as const),
  ];
  const turned: Placement = { m, t: [ZERO, ZERO, ZERO], ...(rounded && { rounded: true }) };
  const [start, end] = [inSpace(p), inSpace(q)];
  const above = ontoSide === 'face' ? height : negated(height);
  const moved = placeInSpace(turned, start);
  return { ...turned, t: [minus(end.x, moved.x), minus(end.y, moved.y), minus(above, moved.z)] };
}
