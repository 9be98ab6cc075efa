import Logic from 'logic-solver';

/*
 * Flat foldings of a sheet by a general solver for statements (layer rules). Panels are convex; they are reflected crease by
 * crease, and overlap where the polygon that two of them have in common has an area. For each two that overlap it is asked
 * whether the one is above the other; every condition is written out as the arrangements it forbids. Knows nothing of
 * lines, spots or parities.
 */
export type Point = readonly [number, number];

export interface Creased {
  /** Convex panels on the drawing, y down. */
  readonly panels: readonly (readonly Point[])[];
  readonly creases: readonly {
    readonly a: number;
    readonly b: number;
    readonly from: Point;
    readonly to: Point;
    /** V or M; anything else may be either. */
    readonly fold: string;
  }[];
  /** Pairs that are stuck: the first lies on the face of the second where they overlap. */
  readonly glued?: readonly (readonly [number, number])[];
}

/** For every two panels that overlap, named `low,high`, whether the higher number lies above, with panel 0 as drawn. */
export type Arrangement = ReadonlyMap<string, boolean>;

/** Smaller areas (square mm) and lengths (mm) are none. */
const NO_AREA = 1e-6;
const NO_LENGTH = 1e-6;

/** All flat foldings, up to a number. */
export function flatFoldings(sheet: Creased, limit: number): Arrangement[] {
  const { solver, names } = encoded(sheet);
  const found: Arrangement[] = [];
  for (let solution = solver.solve(); solution && found.length < limit; solution = solver.solve()) {
    const answer = solution;
    found.push(new Map(names.map((name) => [name, answer.evaluate(name)])));
    if (names.length === 0) break;
    solver.forbid(Logic.and(...names.map((name) => (answer.evaluate(name) ? name : Logic.not(name)))));
  }
  return found;
}

function encoded(sheet: Creased): { solver: InstanceType<typeof Logic.Solver>; names: string[] } {
  const folded = fold(sheet);
  const { places, faceUp } = folded;
  const solver = new Logic.Solver();
  const common = (...panels: number[]): number => {
    const [first = [], ...rest] = panels.map((panel) => places[panel] ?? []);
    return area(rest.reduce<readonly Point[]>((left, place) => cutBy(left, place), first));
  };
  const names: string[] = [];
  const overlap = new Set<string>();
  for (let b = 0; b < places.length; b++) {
    for (let a = 0; a < b; a++) if (common(a, b) > NO_AREA) overlap.add(`${a},${b}`);
  }
  names.push(...overlap);
  const overlaps = (a: number, b: number): boolean => overlap.has(`${Math.min(a, b)},${Math.max(a, b)}`);
  /** That a lies above b. */
  const above = (a: number, b: number) => (a > b ? `${b},${a}` : Logic.not(`${a},${b}`));
  for (const name of names) solver.require(Logic.or(name, Logic.not(name)));
  for (let c = 0; c < places.length; c++) {
    for (let b = 0; b < c; b++) {
      for (let a = 0; a < b; a++) {
        if (!overlaps(a, b) || !overlaps(b, c) || !overlaps(a, c) || common(a, b, c) <= NO_AREA) continue;
        solver.forbid(Logic.and(above(a, b), above(b, c), above(c, a)));
        solver.forbid(Logic.and(above(b, a), above(c, b), above(a, c)));
      }
    }
  }
  const lines = sheet.creases.map(({ a, from, to }) => [folded.at(a, from), folded.at(a, to)] as const);
  for (const [i, { a, b, fold: way }] of sheet.creases.entries()) {
    if (way === 'V') solver.require(faceUp[a] ? above(b, a) : above(a, b));
    if (way === 'M') solver.require(faceUp[a] ? above(a, b) : above(b, a));
    const line = lines[i];
    if (line === undefined) continue;
    for (let c = 0; c < places.length; c++) {
      if (c === a || c === b || !passesThrough(line, places[c] ?? [])) continue;
      solver.forbid(Logic.and(above(c, a), above(b, c)));
      solver.forbid(Logic.and(above(c, b), above(a, c)));
    }
    for (const [j, other] of sheet.creases.entries()) {
      const otherLine = lines[j];
      if (j >= i || otherLine === undefined || sharedLength(line, otherLine) <= NO_LENGTH) continue;
      if (sideOf(line, places[a] ?? []) !== sideOf(line, places[other.a] ?? [])) continue;
      for (const [p, q] of [
        [a, b],
        [b, a],
      ] as const) {
        for (const [r, s] of [
          [other.a, other.b],
          [other.b, other.a],
        ] as const) {
          // From the bottom: p, r, q, s.
          solver.forbid(Logic.and(above(r, p), above(q, r), above(s, q)));
          solver.forbid(Logic.and(above(p, r), above(s, p), above(q, s)));
        }
      }
    }
  }
  for (const [a, b] of sheet.glued ?? []) {
    if (!overlaps(a, b)) continue;
    solver.require(faceUp[b] ? above(a, b) : above(b, a));
    for (let c = 0; c < places.length; c++) {
      if (c === a || c === b || common(a, b, c) <= NO_AREA) continue;
      solver.forbid(Logic.and(above(c, a), above(b, c)));
      solver.forbid(Logic.and(above(c, b), above(a, c)));
    }
  }
  return { solver, names };
}

interface Folded {
  readonly places: readonly (readonly Point[])[];
  readonly faceUp: readonly boolean[];
  at(panel: number, point: Point): Point;
}

type Reflections = readonly (readonly [Point, Point])[];

/** Each panel is reflected in the creases on its way to panel 0, the nearest first, all as drawn. */
function fold({ panels, creases }: Creased): Folded {
  const ways = new Map<number, Reflections>([[0, []]]);
  for (const [panel, way] of ways) {
    for (const { a, b, from, to } of creases) {
      const next = a === panel ? b : b === panel ? a : undefined;
      if (next !== undefined && !ways.has(next)) ways.set(next, [[from, to], ...way]);
    }
  }
  const at = (panel: number, point: Point): Point =>
    (ways.get(panel) ?? []).reduce<Point>((moved, [from, to]) => reflected(moved, from, to), point);
  return {
    places: panels.map((panel, i) => panel.map((point) => at(i, point))),
    faceUp: panels.map((_, i) => (ways.get(i) ?? []).length % 2 === 0),
    at,
  };
}

function reflected([x, y]: Point, [ax, ay]: Point, [bx, by]: Point): Point {
  const [dx, dy] = [bx - ax, by - ay];
  const share = ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy);
  return [2 * (ax + share * dx) - x, 2 * (ay + share * dy) - y];
}

/** The part of a convex polygon inside another one. */
function cutBy(polygon: readonly Point[], other: readonly Point[]): readonly Point[] {
  const turn = signedArea(other) > 0 ? 1 : -1;
  return other.reduce<readonly Point[]>((left, from, i) => {
    const to = other[(i + 1) % other.length] ?? from;
    const height = (point: Point): number => turn * away(point, from, to);
    return left.flatMap((point, j) => {
      const next = left[(j + 1) % left.length] ?? point;
      const [h, k] = [height(point), height(next)];
      const kept = h >= 0 ? [point] : [];
      if (h >= 0 === k >= 0) return kept;
      const share = h / (h - k);
      const crossing: Point = [point[0] + share * (next[0] - point[0]), point[1] + share * (next[1] - point[1])];
      return [...kept, crossing];
    });
  }, polygon);
}

function signedArea(polygon: readonly Point[]): number {
  return polygon.reduce((sum, [x, y], i) => {
    const [nx, ny] = polygon[(i + 1) % polygon.length] ?? [x, y];
    return sum + (x * ny - nx * y) / 2;
  }, 0);
}

function area(polygon: readonly Point[]): number {
  return Math.abs(signedArea(polygon));
}

/** Distance from a line, positive on one side of it. */
function away([x, y]: Point, [ax, ay]: Point, [bx, by]: Point): number {
  return ((bx - ax) * (y - ay) - (by - ay) * (x - ax)) / Math.hypot(bx - ax, by - ay);
}

function sideOf([from, to]: readonly [Point, Point], polygon: readonly Point[]): boolean {
  return polygon.reduce((sum, point) => sum + away(point, from, to), 0) > 0;
}

/** Whether some length of a line lies inside a convex polygon, not along its edge. */
function passesThrough([from, to]: readonly [Point, Point], polygon: readonly Point[]): boolean {
  const turn = signedArea(polygon) > 0 ? 1 : -1;
  let [low, high] = [0, 1];
  for (const [i, corner] of polygon.entries()) {
    const next = polygon[(i + 1) % polygon.length] ?? corner;
    const [h, k] = [turn * away(from, corner, next), turn * away(to, corner, next)];
    if (h <= NO_LENGTH && k <= NO_LENGTH) return false;
    if (h < 0 || k < 0) {
      const share = h / (h - k);
      if (h < 0) low = Math.max(low, share);
      else high = Math.min(high, share);
    }
  }
  return (high - low) * Math.hypot(to[0] - from[0], to[1] - from[1]) > NO_LENGTH;
}

function sharedLength([from, to]: readonly [Point, Point], [a, b]: readonly [Point, Point]): number {
  if (Math.abs(away(a, from, to)) > NO_LENGTH || Math.abs(away(b, from, to)) > NO_LENGTH) return 0;
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const along = ([x, y]: Point): number =>
    ((x - from[0]) * (to[0] - from[0]) + (y - from[1]) * (to[1] - from[1])) / long;
  return Math.min(long, Math.max(along(a), along(b))) - Math.max(0, Math.min(along(a), along(b)));
}
