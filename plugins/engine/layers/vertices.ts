import type { Paper, PaperHinge, PaperPanel } from './paper.ts';
import { PARALLEL, TOUCH_MM } from './touch.ts';
import type { Obstruction } from './types.ts';

/** A shut crease as it leaves a vertex. */
interface Spoke {
  readonly name: string;
  /** Radians, anticlockwise on the drawing's face. */
  readonly angle: number;
  readonly is: PaperHinge['is'];
  readonly meets: PaperHinge['meets'];
  /** Panels on the clockwise and anticlockwise side. */
  readonly before: number;
  readonly after: number;
}

/**
 * The first point inside uncut paper that cannot fold flat with the creases shut that meet there, whatever lies elsewhere.
 *
 * Three theorems say so (textbooks): every other angle adds up to half a turn (Kawasaki); valleys and mountains differ in number
 * by two (Maekawa); an angle smaller than both its neighbours has one crease of each kind (big-little-big).
 */
export function brokenVertex(paper: Paper): Obstruction | undefined {
  for (const piece of new Set(paper.panels.map((panel) => panel.piece))) {
    const hinges = [...paper.hinges, ...paper.torn].filter(({ joint }) => joint.hinge.piece === piece);
    for (const point of meetingPoints(hinges)) {
      const spokes = spokesAt(hinges, point);
      const shut = spokes.filter(({ is }) => is === 'shut');
      if (shut.length === 0 || spokes.some(({ is }) => is === 'leaves') || !isUncut(paper, piece, point, spokes))
        continue;
      const broken = brokenRule(shut);
      if (broken) return { is: 'vertex', piece, ...broken };
    }
  }
  return undefined;
}

type Point = readonly [number, number];

/** Points where hinges end, each once. */
function meetingPoints(hinges: readonly PaperHinge[]): Point[] {
  const points: Point[] = [];
  for (const { from, to } of hinges) {
    for (const end of [from, to]) if (!points.some((point) => touch(point, end))) points.push(end);
  }
  return points;
}

function touch(a: Point, b: Point): boolean {
  return Math.hypot(a[0] - b[0], a[1] - b[1]) <= TOUCH_MM;
}

function spokesAt(hinges: readonly PaperHinge[], point: Point): Spoke[] {
  const spokes = hinges.flatMap(({ joint, from, to, a, b, is, meets }): Spoke[] => {
    const starts = touch(from, point);
    if (!starts && !touch(to, point)) return [];
    const angle = starts ? angleOf(from, to) : angleOf(to, from);
    // The panel b is on the left, looking from `from`.
    return [{ name: joint.hinge.crease, angle, is, meets, before: starts ? a : b, after: starts ? b : a }];
  });
  return spokes.sort((one, other) => one.angle - other.angle);
}

function angleOf(from: Point, to: Point): number {
  return Math.atan2(to[1] - from[1], to[0] - from[0]);
}

/** Whether paper goes all round a point and nothing but creases comes to it. */
function isUncut({ panels, pose }: Paper, piece: string, point: Point, spokes: readonly Spoke[]): boolean {
  const closed = spokes.every(({ after }, i) => after === spokes[(i + 1) % spokes.length]?.before);
  if (!closed || spokes.length < 2) return false;
  if (panels.some((panel) => panel.piece === piece && hasOtherEdgeAt(panel, point, spokes))) return false;
  return !pose.assembly.strokes.some(
    ({ piece: own, does, edge }) =>
      own === piece &&
      (does === 'cut' || does === 'edge') &&
      [edge.from, edge.to].some(({ x, y }) => touch([x.valueOf(), -y.valueOf()], point)),
  );
}

function hasOtherEdgeAt({ rings }: PaperPanel, point: Point, spokes: readonly Spoke[]): boolean {
  const creased = (to: Point): boolean => {
    const angle = angleOf(point, to);
    return spokes.some((spoke) => Math.abs(Math.sin((spoke.angle - angle) / 2)) < PARALLEL);
  };
  return rings.some((ring) => {
    for (let i = 0; i < ring.length; i += 2) {
      const j = (i + 2) % ring.length;
      const [from, to]: [Point, Point] = [
        [ring[i] ?? 0, ring[i + 1] ?? 0],
        [ring[j] ?? 0, ring[j + 1] ?? 0],
      ];
      const [atFrom, atTo] = [touch(from, point), touch(to, point)];
      if ((atFrom && !creased(to)) || (atTo && !creased(from))) return true;
      if (!atFrom && !atTo && isBetween(point, from, to) && !(creased(from) && creased(to))) return true;
    }
    return false;
  });
}

function isBetween(point: Point, from: Point, to: Point): boolean {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const size = Math.hypot(dx, dy);
  const along = ((point[0] - from[0]) * dx + (point[1] - from[1]) * dy) / size;
  const away = Math.abs((point[0] - from[0]) * dy - (point[1] - from[1]) * dx) / size;
  return away <= TOUCH_MM && along > 0 && along < size;
}

type Broken = Pick<Extract<Obstruction, { is: 'vertex' }>, 'creases' | 'why'>;

function brokenRule(shut: readonly Spoke[]): Broken | undefined {
  const creases = [...new Set(shut.map(({ name }) => name))];
  const sectors = shut.map(({ angle }, i) => {
    const next = shut[i + 1];
    return next ? next.angle - angle : (shut[0]?.angle ?? 0) + 2 * Math.PI - angle;
  });
  const turned = sectors.reduce((sum, sector, i) => sum + (i % 2 === 0 ? sector : -sector), 0);
  if (sectors.length % 2 === 1 || Math.abs(turned) > PARALLEL) return { creases, why: 'angles' };
  if (!canDifferByTwo(shut)) return { creases, why: 'directions' };
  for (const [i, sector] of sectors.entries()) {
    const [one, other] = [shut[i], shut[(i + 1) % shut.length]];
    const neighbours = [sectors.at(i - 1) ?? 0, sectors[(i + 1) % sectors.length] ?? 0];
    if (!one || !other || one.meets === undefined || one.meets !== other.meets) continue;
    if (neighbours.every((neighbour) => neighbour > sector + PARALLEL)) {
      return { creases: [...new Set([one.name, other.name])], why: 'smallest-sector' };
    }
  }
  return undefined;
}

/** Creases that may fold to either side are taken as it fits. */
function canDifferByTwo(shut: readonly Spoke[]): boolean {
  const fixed = shut.reduce((sum, { meets }) => sum + (meets === 'face' ? 1 : meets === 'back' ? -1 : 0), 0);
  const free = shut.filter(({ meets }) => meets === undefined).length;
  return [-2, 2].some((difference) => Math.abs(difference - fixed) <= free && (difference - fixed - free) % 2 === 0);
}
