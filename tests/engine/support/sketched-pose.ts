import Fraction from 'fraction.js';
import type { Assembly, Joint } from '../../../plugins/engine/assembly/types.ts';
import type { Point as ExactPoint, Placement, SpacePoint } from '../../../plugins/engine/geometry/types.ts';
import type { ClosedPose, Gap, PlacedPanel } from '../../../plugins/engine/motion/types.ts';
import type { Panel, Stroke } from '../../../plugins/engine/panels/types.ts';
import type { Card, CreaseFold, Join, PaperSide } from '../../../plugins/engine/spec/index.ts';

/*
 * A pose drawn by hand: panels with their creases, folded by products of matrices in floats. It stands in for the stages
 * that read, divide and fold a card, so that the order of plies can be tested by itself.
 */

/** Millimetres on the drawing: across, and down the page. */
export type Point = readonly [number, number];

export interface SketchedPanel {
  readonly name: string;
  /** `sheet` unless said. */
  readonly piece?: string;
  readonly outline: readonly Point[];
  readonly holes?: readonly (readonly Point[])[];
}

export interface SketchedHinge {
  /** The two panels, in any order. */
  readonly between: readonly [string, string];
  readonly from: Point;
  readonly to: Point;
  readonly fold: CreaseFold;
  /** The two names joined by `|` unless said. */
  readonly crease?: string;
  /** Degrees in its own direction: shut unless said, negative against its score. */
  readonly turn?: number;
}

export interface SketchedJoin {
  readonly is: 'glue' | 'pin' | 'slide' | 'slot' | 'slip' | 'hang';
  readonly part: string;
  readonly onto: string;
  /** Point of the part's drawing that comes to lie on a point of the receiver's. */
  readonly p?: Point;
  readonly q?: Point;
  /** Clockwise degrees on the receiver's drawing. */
  readonly turn?: number;
  readonly partSide?: PaperSide;
  readonly ontoSide?: PaperSide;
  readonly foam?: number;
  readonly through?: readonly string[];
  readonly along?: Point;
  readonly shows?: 'between' | 'outside';
  readonly line?: string;
}

export interface Sketch {
  readonly panels: readonly SketchedPanel[];
  readonly hinges?: readonly SketchedHinge[];
  readonly joins?: readonly SketchedJoin[];
  readonly cuts?: readonly {
    readonly piece: string;
    readonly name: string;
    readonly from: Point;
    readonly to: Point;
  }[];
  /** The first panel unless said. */
  readonly ground?: string;
}

/** Row by row, four by four. */
type Matrix = readonly number[];

export function poseOf(sketch: Sketch): ClosedPose {
  const ground = sketch.ground ?? sketch.panels[0]?.name ?? '';
  const hinges = (sketch.hinges ?? []).map((hinge) => hingeJoint(sketch, hinge));
  const joins = (sketch.joins ?? []).map(laidJoint);
  const steps = [...hinges, ...joins];
  const placed = new Map<string, Matrix>([[ground, IDENTITY]]);
  for (const name of placed.keys()) {
    for (const { joint, aToB } of steps) {
      const from = placed.get(name) ?? IDENTITY;
      if (joint.a === name && !placed.has(joint.b)) placed.set(joint.b, product(from, aToB));
      if (joint.b === name && !placed.has(joint.a)) placed.set(joint.a, product(from, inverse(aToB)));
    }
  }
  const at = (name: string): Matrix => placed.get(name) ?? IDENTITY;
  const panels = sketch.panels.filter(({ name }) => placed.has(name));
  const joints = steps.map(({ joint }) => joint);
  return {
    pose: 'closed',
    assembly: assemblyOf(sketch, joints, ground),
    body: 0,
    ground,
    panels: panels.map((panel) => placedPanel(panel, at(panel.name))),
    flat: panels.every((panel) => Math.abs(Math.abs(at(panel.name)[10] ?? 0) - 1) < 1e-9),
    gaps: steps.flatMap(({ joint, aToB }) =>
      gapOf(joint, product(at(joint.a), aToB), at(joint.b), sketch.joins?.some(({ foam }) => foam) ?? false),
    ),
    box: { left: ZERO, top: ZERO, right: ZERO, bottom: ZERO },
    pressed: [],
    deep: ZERO,
  };
}

interface Step {
  readonly joint: Joint;
  readonly aToB: Matrix;
}

function hingeJoint({ panels }: Sketch, { between, from, to, fold, crease, turn = 180 }: SketchedHinge): Step {
  const [one, other] = between;
  const middle = centre(panels.find(({ name }) => name === one)?.outline ?? []);
  // On the drawing y counts down, so what lies to the left has a negative product.
  const oneIsLeft = (to[0] - from[0]) * (middle[1] - from[1]) - (to[1] - from[1]) * (middle[0] - from[0]) < 0;
  const [left, right] = oneIsLeft ? [one, other] : [other, one];
  const piece = panels.find(({ name }) => name === one)?.piece ?? 'sheet';
  const hinge = { crease: crease ?? `${one}|${other}`, piece, fold, from: exact(from), to: exact(to), left, right };
  const axis: Point = [to[0] - from[0], -(to[1] - from[1])];
  return {
    joint: { is: 'hinge', a: right, b: left, hinge },
    aToB: turning(from, axis, fold === 'mountain' ? -turn : turn),
  };
}

function laidJoint(sketched: SketchedJoin): Step {
  const { is, part, onto, p = [0, 0], q = [0, 0], turn = 0, partSide = 'back', ontoSide = 'face', foam = 0 } = sketched;
  const join = {
    is,
    p: exact(p),
    q: exact(q),
    partSide,
    ontoSide,
    through: sketched.through ?? [],
    along: exact(sketched.along ?? [1, 0]),
    shows: sketched.shows ?? 'between',
    line: sketched.line ?? '',
  } as unknown as Join;
  const like = partSide === ontoSide;
  const height = ontoSide === 'face' ? foam : -foam;
  const [cos, sin] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  const onReceiver = [
    shift(q[0], -q[1], height),
    [cos, sin, 0, 0, -sin, cos, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1],
    like ? [-1, 0, 0, 0, 0, 1, 0, 0, 0, 0, -1, 0, 0, 0, 0, 1] : IDENTITY,
    shift(-p[0], p[1], 0),
  ].reduce(product);
  return { joint: { is, a: part, b: onto, join } as Joint, aToB: inverse(onReceiver) };
}

function assemblyOf(sketch: Sketch, joints: readonly Joint[], ground: string): Assembly {
  const panels = new Map(
    sketch.panels.map(({ name, piece = 'sheet', outline, holes = [] }): [string, Panel] => [
      name,
      {
        name,
        piece,
        outline: outline.map(exact),
        holes: holes.map((hole) => hole.map(exact)),
        inside: exact(centre(outline)),
      },
    ]),
  );
  const turns = (sketch.hinges ?? []).map(({ between: [one, other], crease, turn = 180 }) => ({
    piece: panels.get(one)?.piece ?? '',
    crease: crease ?? `${one}|${other}`,
    turn,
  }));
  const strokes = (sketch.cuts ?? []).map(
    ({ piece, name, from, to }): Stroke => ({
      piece,
      does: 'cut',
      name,
      fold: undefined,
      edge: { is: 'line', from: exact(from), to: exact(to) },
    }),
  );
  const names = sketch.panels.map(({ name }) => name);
  const pieces = [...new Set([...panels.values()].map(({ piece }) => piece))];
  return {
    card: { poses: [{ name: 'closed', turns }] } as unknown as Card,
    panels,
    strokes,
    joints,
    bodies: [{ pieces, panels: names, tree: joints, loops: [], ground }],
    slips: { panels: [], joins: [] },
    find: () => [],
  };
}

function placedPanel({ name, piece = 'sheet', outline, holes = [] }: SketchedPanel, m: Matrix): PlacedPanel {
  const at = (i: number): Fraction => fraction(m[i] ?? 0);
  const placement: Placement = {
    m: [at(0), at(1), at(2), at(4), at(5), at(6), at(8), at(9), at(10)],
    t: [at(3), at(7), at(11)],
    rounded: true,
  };
  const seen = (point: Point): ExactPoint => {
    const [x = 0, y = 0] = moved(m, point);
    return exact([x, -y]);
  };
  const up = m[10] ?? 0;
  return {
    panel: name,
    piece,
    placement,
    faces: Math.abs(up) < 1e-9 ? 'edge-on' : Math.abs(Math.abs(up) - 1) > 1e-9 ? 'slanting' : up > 0 ? 'up' : 'down',
    outline: outline.map(seen),
    holes: holes.map((hole) => hole.map(seen)),
  };
}

function gapOf(joint: Joint, one: Matrix, other: Matrix, pressed: boolean): Gap[] {
  // Foam in a loop is pressed: its height, the twelfth entry, is left out of account.
  const mm = Math.max(...one.map((entry, i) => (pressed && i === 11 ? 0 : Math.abs(entry - (other[i] ?? 0)))));
  const nowhere: SpacePoint = { x: ZERO, y: ZERO, z: ZERO };
  return mm < 1e-6 ? [] : [{ joint, mm, at: { a: nowhere, b: nowhere } }];
}

const ZERO = new Fraction(0);
const IDENTITY: Matrix = shift(0, 0, 0);

function shift(x: number, y: number, z: number): Matrix {
  return [1, 0, 0, x, 0, 1, 0, y, 0, 0, 1, z, 0, 0, 0, 1];
}

/** About a line of the drawing, by Rodrigues' formula. */
function turning(through: Point, axis: Point, degrees: number): Matrix {
  const size = Math.hypot(axis[0], axis[1]);
  const [x, y] = [axis[0] / size, axis[1] / size];
  const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  const turn = [
    c + x * x * (1 - c),
    x * y * (1 - c),
    y * s,
    0,
    x * y * (1 - c),
    c + y * y * (1 - c),
    -x * s,
    0,
    -y * s,
    x * s,
    c,
    0,
  ];
  const about = [shift(through[0], -through[1], 0), [...turn, 0, 0, 0, 1], shift(-through[0], through[1], 0)];
  return about.reduce(product);
}

function product(a: Matrix, b: Matrix): Matrix {
  return Array.from({ length: 16 }, (_, i) =>
    [0, 1, 2, 3].reduce((sum, k) => sum + (a[4 * Math.floor(i / 4) + k] ?? 0) * (b[4 * k + (i % 4)] ?? 0), 0),
  );
}

function inverse(m: Matrix): Matrix {
  const at = (row: number, column: number): number => m[4 * row + column] ?? 0;
  const back = [0, 1, 2].map((i) => -[0, 1, 2].reduce((sum, k) => sum + at(k, i) * at(k, 3), 0));
  return [0, 1, 2].flatMap((i) => [at(0, i), at(1, i), at(2, i), back[i] ?? 0]).concat([0, 0, 0, 1]);
}

function moved(m: Matrix, [x, down]: Point): number[] {
  return [0, 1, 2].map((row) => (m[4 * row] ?? 0) * x - (m[4 * row + 1] ?? 0) * down + (m[4 * row + 3] ?? 0));
}

function centre(points: readonly Point[]): Point {
  const sum = points.reduce<Point>(([x, y], point) => [x + point[0], y + point[1]], [0, 0]);
  return [sum[0] / points.length, sum[1] / points.length];
}

function exact([x, y]: Point): ExactPoint {
  return { x: fraction(x), y: fraction(y) };
}

/** On a grid of 1e-12 mm. */
function fraction(value: number): Fraction {
  return new Fraction(BigInt(Math.round(value * 1e12)), 10n ** 12n);
}

/** The same sketch turned by a quarter clockwise, or seen in a mirror: then valleys stay valleys. */
export function redrawn(sketch: Sketch, how: 'turned' | 'mirrored', by = 1): Sketch {
  const point = ([x, y]: Point): Point => (how === 'turned' ? [-y * by, x * by] : [-x * by, y * by]);
  const outline = (points: readonly Point[]): Point[] => (how === 'turned' ? points : points.toReversed()).map(point);
  const mirroredTurn = how === 'mirrored' ? -1 : 1;
  // A part laid with like sides is turned over about the line down the page; after a quarter turn that is the other line.
  const turnedOver = ({ partSide = 'back', ontoSide = 'face' }: SketchedJoin): number =>
    how === 'turned' && partSide === ontoSide ? 180 : 0;
  return {
    ...sketch,
    panels: sketch.panels.map((panel) => ({
      ...panel,
      outline: outline(panel.outline),
      ...(panel.holes && { holes: panel.holes.map(outline) }),
    })),
    ...(sketch.hinges && {
      hinges: sketch.hinges.map((hinge) => ({ ...hinge, from: point(hinge.from), to: point(hinge.to) })),
    }),
    ...(sketch.joins && {
      joins: sketch.joins.map((join) => ({
        ...join,
        p: point(join.p ?? [0, 0]),
        q: point(join.q ?? [0, 0]),
        along: point(join.along ?? [1, 0]),
        turn: mirroredTurn * (join.turn ?? 0) + turnedOver(join),
      })),
    }),
    ...(sketch.cuts && { cuts: sketch.cuts.map((cut) => ({ ...cut, from: point(cut.from), to: point(cut.to) })) }),
  };
}
