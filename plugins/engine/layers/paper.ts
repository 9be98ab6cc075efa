import type { HingeJoint, Joint, LaidJoint, SlipJoint } from '../assembly/index.ts';
import type { Point } from '../geometry/index.ts';
import type { ClosedPose, PlacedPanel } from '../motion/index.ts';
import { Groups } from './groups.ts';
import { PARALLEL } from './touch.ts';

/** A panel as numbers. Its drawing is turned to x to the right and y up, so that it needs no change of sign in space. */
export interface PaperPanel {
  readonly name: string;
  readonly piece: string;
  /** Edge and holes, x and y in turn, millimetres. */
  readonly rings: readonly Float64Array[];
  /** From the drawing into space: three columns of the rotation, then where the origin goes. */
  readonly columns: readonly [Vector, Vector, Vector];
  readonly origin: Vector;
}

export type Vector = readonly [number, number, number];

/** A stretch of crease in the pose, between two panels by their index. */
export interface PaperHinge {
  readonly joint: HingeJoint;
  readonly a: number;
  readonly b: number;
  /** `leaves`: at any other angle than 0 and 180 degrees. */
  readonly is: 'flat' | 'shut' | 'leaves';
  /** Which sides meet when it shuts; undefined when it may be either. */
  readonly meets: 'face' | 'back' | undefined;
  /** On the drawing, y up. */
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}

/** A pose as numbers: what the order of plies depends on. Joints that do not meet are left out. */
export interface Paper {
  readonly pose: ClosedPose;
  /** In the order of the pose. */
  readonly panels: readonly PaperPanel[];
  readonly indexOf: ReadonlyMap<string, number>;
  readonly hinges: readonly PaperHinge[];
  /** Hinges whose panels do not come to lie edge to edge; as the pose means them. */
  readonly torn: readonly PaperHinge[];
  readonly laid: readonly LaidJoint[];
  readonly slipped: readonly SlipJoint[];
  /** For each panel, the facet that it belongs to: panels joined by flat hinges are one facet. */
  readonly facetOf: Int32Array;
  readonly facets: number;
}

export function paperOf(pose: ClosedPose): Paper {
  const panels = pose.panels.map((placed) => paperPanel(pose, placed));
  const indexOf = new Map(panels.map(({ name }, i) => [name, i]));
  const apart = new Set(pose.gaps.map(({ joint }) => joint));
  const present = pose.assembly.joints.filter((joint) => indexOf.has(joint.a) && indexOf.has(joint.b));
  const joints = present.filter((joint) => !apart.has(joint));
  const turnOf = statedTurns(pose);
  const hingeOf = (joint: HingeJoint): PaperHinge => paperHinge(joint, indexOf, turnOf(joint));
  const hinges = joints.filter(isHinge).map((joint) => ({ ...hingeOf(joint), is: stateOf(joint, panels, indexOf) }));
  const groups = new Groups(panels.length);
  for (const { is, a, b } of hinges) if (is === 'flat') groups.join(a, b);
  const { of: facetOf, count: facets } = groups.numbered();
  return {
    pose,
    panels,
    indexOf,
    hinges,
    torn: present.filter(isHinge).flatMap((joint) => (apart.has(joint) ? [hingeOf(joint)] : [])),
    laid: joints.filter((joint): joint is LaidJoint => ['glue', 'pin', 'slide', 'slot'].includes(joint.is)),
    slipped: joints.filter((joint): joint is SlipJoint => joint.is === 'slip'),
    facetOf,
    facets,
  };
}

function paperPanel({ assembly }: ClosedPose, { panel, piece, placement }: PlacedPanel): PaperPanel {
  const drawn = assembly.panels.get(panel);
  if (drawn === undefined) throw new RangeError(`a pose places a panel that the card does not have: ${panel}`);
  const [a, b, c, d, e, f, g, h, i] = placement.m.map((entry) => entry.valueOf()) as number[] as Nine;
  const [x, y, z] = placement.t;
  return {
    name: panel,
    piece,
    rings: [drawn.outline, ...drawn.holes].map(ringOf),
    columns: [
      [a, d, g],
      [b, e, h],
      [c, f, i],
    ],
    origin: [x.valueOf(), y.valueOf(), z.valueOf()],
  };
}

type Nine = [number, number, number, number, number, number, number, number, number];

function ringOf(points: readonly Point[]): Float64Array {
  const ring = new Float64Array(2 * points.length);
  for (const [i, { x, y }] of points.entries()) {
    ring[2 * i] = x.valueOf();
    ring[2 * i + 1] = -y.valueOf();
  }
  return ring;
}

function isHinge(joint: Joint): joint is HingeJoint {
  return joint.is === 'hinge';
}

/** As the pose means it, whatever became of its panels. */
function paperHinge(joint: HingeJoint, indexOf: ReadonlyMap<string, number>, turn: number): PaperHinge {
  const { fold, from, to } = joint.hinge;
  const against = turn < 0;
  return {
    joint,
    a: indexOf.get(joint.a) ?? 0,
    b: indexOf.get(joint.b) ?? 0,
    is: turn === 0 ? 'flat' : Math.abs(turn) === 180 ? 'shut' : 'leaves',
    // One worked both ways is free, unless it is told to be a mountain.
    meets: fold === 'both' ? (against ? 'back' : undefined) : (fold === 'valley') === against ? 'back' : 'face',
    from: [from.x.valueOf(), -from.y.valueOf()],
    to: [to.x.valueOf(), -to.y.valueOf()],
  };
}

/** As its panels lie. */
function stateOf(
  joint: HingeJoint,
  panels: readonly PaperPanel[],
  indexOf: ReadonlyMap<string, number>,
): PaperHinge['is'] {
  const [one, other] = [joint.a, joint.b].map((name) => panels[indexOf.get(name) ?? 0]?.columns[2]);
  const cosine = one && other ? dot(one, other) : 1;
  return Math.abs(cosine) < 1 - PARALLEL ? 'leaves' : cosine > 0 ? 'flat' : 'shut';
}

/** Degrees in the crease's own direction; a crease that the pose does not mention counts as shut. */
function statedTurns({ assembly, pose }: ClosedPose): (joint: HingeJoint) => number {
  const key = (piece: string, crease: string): string => `${piece}\n${crease}`;
  const stated = assembly.card.poses.find(({ name }) => name === pose)?.turns ?? [];
  const turns = new Map(stated.map(({ piece, crease, turn }) => [key(piece, crease), turn]));
  return ({ hinge: { piece, crease } }) => {
    const turn = turns.get(key(piece, crease));
    return typeof turn === 'number' ? turn : 180;
  };
}

export function dot(a: Vector, b: Vector): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/** Where a point of a panel's drawing (y up) comes to lie in space. */
export function spaceOf({ columns: [u, v], origin }: PaperPanel, x: number, y: number): Vector {
  return [u[0] * x + v[0] * y + origin[0], u[1] * x + v[1] * y + origin[1], u[2] * x + v[2] * y + origin[2]];
}
