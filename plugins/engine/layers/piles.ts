import { Groups } from './groups.ts';
import { dot, type Paper, type PaperPanel, spaceOf, type Vector } from './paper.ts';
import { PARALLEL, TOUCH_MM } from './touch.ts';

/** Panels that lie in one plane, or in planes that only foam keeps apart. */
export interface Pile {
  /** Axes of the plane, right-handed; `up` is the way from the bottom of the pile to its top. */
  readonly across: Vector;
  readonly along: Vector;
  readonly up: Vector;
  /** Indices of panels, rising. */
  readonly panels: readonly number[];
}

/**
 * The piles of a pose; the ground's own comes first.
 *
 * Up is the way the ground's face looks. In planes that stand on the ground it is up the ground's drawing, and where these
 * run straight up the drawing too, to its right.
 */
export function pilesOf({ pose, panels, indexOf, laid, hinges }: Paper): Pile[] {
  const normals = panels.map(({ columns }) => upright(columns[2]));
  const groups = new Groups(panels.length);
  const parallel = (a: number, b: number): boolean => {
    const [one, other] = [normals[a], normals[b]];
    return one !== undefined && other !== undefined && distance(one, other) < PARALLEL;
  };
  const height = (panel: number, along: number): number => dot(panels[panel]?.origin ?? UP, normals[along] ?? UP);
  const first: number[] = [];
  for (let i = 0; i < panels.length; i++) {
    const like = first.find((j) => parallel(i, j) && (pose.flat || Math.abs(height(i, j) - height(j, j)) <= TOUCH_MM));
    if (like === undefined) first.push(i);
    else groups.join(i, like);
  }
  for (const { a, b } of [...laid.map((joint) => ends(joint, indexOf)), ...hinges])
    if (parallel(a, b)) groups.join(a, b);
  const { of, count } = groups.numbered();
  const ground = of[indexOf.get(pose.ground) ?? 0] ?? 0;
  const order = [ground, ...Array.from({ length: count }, (_, i) => i).filter((pile) => pile !== ground)];
  return order.map((pile) => {
    const members = panels.flatMap((_, i) => (of[i] === pile ? [i] : []));
    return { ...axesFor(normals[members[0] ?? 0] ?? UP), panels: members };
  });
}

const UP: Vector = [0, 0, 1];

function ends(joint: { a: string; b: string }, indexOf: ReadonlyMap<string, number>): { a: number; b: number } {
  return { a: indexOf.get(joint.a) ?? 0, b: indexOf.get(joint.b) ?? 0 };
}

/** A normal or its opposite, whichever looks up. */
function upright(normal: Vector): Vector {
  const [x, y, z] = normal;
  const leading = Math.abs(z) > PARALLEL ? z : Math.abs(y) > PARALLEL ? y : x;
  return leading > 0 ? normal : [-x, -y, -z];
}

function axesFor(up: Vector): Pick<Pile, 'across' | 'along' | 'up'> {
  if (distance(up, UP) < PARALLEL) return { across: [1, 0, 0], along: [0, 1, 0], up: UP };
  const across = unit(Math.abs(up[0]) < 0.9 ? cross(up, [1, 0, 0]) : cross(up, [0, 1, 0]));
  return { across, along: cross(up, across), up };
}

function unit([x, y, z]: Vector): Vector {
  const size = Math.hypot(x, y, z);
  return [x / size, y / size, z / size];
}

export function cross(a: Vector, b: Vector): Vector {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

function distance(a: Vector, b: Vector): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

/** Where a point of a panel's drawing (y up) comes to lie in a pile's plane. */
export function inPile(pile: Pile, panel: PaperPanel, x: number, y: number): [number, number] {
  const point = spaceOf(panel, x, y);
  return [dot(point, pile.across), dot(point, pile.along)];
}

/** Whether a panel's face looks up in its pile. */
export function facesUp(pile: Pile, panel: PaperPanel): boolean {
  return dot(pile.up, panel.columns[2]) > 0;
}
