import type { Assembly, LaidJoint } from '../assembly/index.ts';
import {
  compose,
  IDENTITY,
  inverse,
  laidOn,
  onDrawing,
  type Placement,
  type Point,
  place,
  standingIn,
} from '../geometry/index.ts';
import type { Panel } from '../panels/index.ts';
import type { PaperSide } from '../spec/index.ts';
import { coverOf } from './margins.ts';
import type { Layer, Plies } from './plies.ts';
import { heightOf } from './plies.ts';

/** What a chamber is looked for with: its window, on the drawing of the panel that has it. */
export interface Walk {
  readonly assembly: Assembly;
  readonly window: readonly Point[];
  readonly middle: Point;
  readonly plies: Plies;
}

export interface Beside {
  readonly panel: Panel;
  readonly joint: LaidJoint;
  /** From the ring's drawing to this panel's. */
  readonly toHere: Placement;
  /** The side of this panel that looks away from the ring. */
  readonly away: PaperSide;
  readonly covers: ReturnType<typeof coverOf>;
}

export interface Side {
  readonly rings: readonly Beside[];
  readonly joints: readonly LaidJoint[];
  /** Plies of the rings and foam of joins up to what closes. */
  readonly layers: readonly Layer[];
  /** Whatever covers the window there, nearest first. */
  readonly closings: readonly { readonly beside: Beside; readonly foam: readonly Layer[] }[];
}

/** More rings on each other than this are not looked through. */
const MOST_RINGS = 20;

/** From the ring outwards: through panels that have a window there too, to what covers the window. */
export function sideOf(ring: Panel, side: PaperSide, walk: Walk): Side {
  const rings: Beside[] = [];
  const layers: Layer[] = [];
  let here: Pick<Beside, 'panel' | 'toHere' | 'away'> = { panel: ring, toHere: IDENTITY, away: side };
  for (let count = 0; ; count++) {
    const stuck = stuckTo(here, walk);
    const covering = stuck.filter(({ covers }) => covers !== 'none');
    const next = stuck.find(({ covers, panel, toHere }) => covers === 'none' && isRound(panel, toHere, walk));
    if (covering.length > 0 || next === undefined || count >= MOST_RINGS) {
      const closings = covering
        .map((beside) => ({ beside, foam: foamIn(beside.joint, walk) }))
        .toSorted((a, b) => heightOf(a.foam).compare(heightOf(b.foam)));
      return { rings, joints: rings.map(({ joint }) => joint), layers, closings };
    }
    rings.push(next);
    layers.push(...foamIn(next.joint, walk), ...walk.plies.layersOf(next.panel.name));
    here = next;
  }
}

function foamIn(joint: LaidJoint, { plies }: Walk): Layer[] {
  return plies.between(joint).filter(({ is }) => is === 'foam');
}

/** Panels glued to one side of another. */
export function stuckTo({ panel, toHere, away }: Pick<Beside, 'panel' | 'toHere' | 'away'>, walk: Walk): Beside[] {
  return walk.assembly.joints.flatMap((joint): Beside[] => {
    if (joint.is !== 'glue' || joint.join.is !== 'glue' || (joint.a !== panel.name && joint.b !== panel.name))
      return [];
    const { join, a, b } = joint;
    const isPart = a === panel.name;
    const other = walk.assembly.panels.get(isPart ? b : a);
    if ((isPart ? join.partSide : join.ontoSide) !== away || other === undefined) return [];
    const laid = laidOn(join);
    const there = compose(isPart ? laid : inverse(laid), toHere);
    const touched = isPart ? join.ontoSide : join.partSide;
    const covers = coverOf(moved(walk.window, there), other);
    return [{ panel: other, joint, toHere: there, away: touched === 'face' ? 'back' : 'face', covers }];
  });
}

export function moved(ring: readonly Point[], to: Placement): Point[] {
  return ring.map((point) => onDrawing(place(to, point)));
}

export function isRound({ holes }: Panel, toHere: Placement, { middle }: Walk): boolean {
  const at = onDrawing(place(toHere, middle));
  return holes.some((hole) => standingIn(at, hole) === 'inside');
}
