import { angleAlong, crossingIn, type Outline, type PathEdge, type Point, samePoint } from '../geometry/index.ts';
import type { Origin } from './card-types.ts';
import { arcThrough, boxOf, hasArea, reversed } from './outlines.ts';
import type { PathStep } from './piece-specs.ts';
import type { PointSpec } from './point-spec.ts';
import type { Report } from './report.ts';

/** Where the points of a path lie. */
export interface Pathing {
  readonly pointOf: (spec: PointSpec) => Point | undefined;
  readonly report: Report;
}

/**
 * The edges of a closed path, from its first point on. Undefined after reporting two points that are one, or an arc that is straight.
 */
export function edgesOfPath(steps: readonly PathStep[], { pointOf, report }: Pathing): Outline | undefined {
  const ends = steps.map(({ to }) => pointOf(to));
  const edges = steps.map((step, index): PathEdge | undefined => {
    const [from, to] = [ends.at(index - 1), ends[index]];
    return from && to && edgeTo(step, from, to, { pointOf, report });
  });
  const [last, ...others] = edges;
  const whole = [...others, last].flatMap((edge) => edge ?? []);
  return whole.length === steps.length ? whole : undefined;
}

function edgeTo(step: PathStep, from: Point, to: Point, { pointOf, report }: Pathing): PathEdge | undefined {
  const { place, path } = step;
  if (samePoint(from, to)) {
    const remedy = 'Take one of the two points out. The last goes on to the first by itself.';
    const takes = 'a point other than the one before';
    report.at(place, path, { code: 'point-twice', wrote: step.to.text, takes, remedy });
    return undefined;
  }
  if (step.through === undefined) return { is: 'line', from, to };
  const through = pointOf(step.through);
  const arc = through && arcThrough(from, through, to);
  if (through && !arc) {
    const remedy = 'Write the point alone for a straight edge, or move `through` to one side.';
    const takes = 'a point off the straight way';
    report.at(place, path, { code: 'arc-is-straight', wrote: step.through.text, takes, remedy });
  }
  return arc;
}

/** A closed path as an outline: clockwise however it was written. Reports one that cannot be cut. */
export function outlineOfPath(
  steps: readonly PathStep[],
  { place, path }: Origin,
  pathing: Pathing,
): Outline | undefined {
  const edges = edgesOfPath(steps, pathing);
  if (edges === undefined) return undefined;
  const say = (code: string, wrote: string, remedy: string): undefined => {
    pathing.report.at(place, path, { code, wrote, takes: 'an outline that runs once round its paper', remedy });
  };
  if (!hasArea(boxOf(edges))) return say('no-paper', 'an outline round nothing', 'Give it three corners or more.');
  if (crossingIn(edges)) {
    return say('outline-crosses', 'an outline that meets itself', 'Put its points in order round the shape.');
  }
  return roughArea(edges) > 0 ? edges : reversed(edges);
}

/** Twice the area in square millimetres, positive when it runs clockwise: the shoelace of its ends, and what each arc bulges. */
function roughArea(edges: readonly PathEdge[]): number {
  return edges.reduce((sum, edge) => {
    const [x1, y1, x2, y2] = [edge.from.x, edge.from.y, edge.to.x, edge.to.y].map((side) => side.valueOf());
    const chord = (x1 ?? 0) * (y2 ?? 0) - (x2 ?? 0) * (y1 ?? 0);
    if (edge.is === 'line') return sum + chord;
    const sweep = angleAlong(edge, edge.to);
    const bulge = edge.rx.valueOf() * edge.ry.valueOf() * (sweep - Math.sin(sweep));
    return sum + chord + (edge.clockwise ? bulge : -bulge);
  }, 0);
}
