import type { Assembly, LaidJoint } from '../assembly/index.ts';
import {
  compose,
  cornersOf,
  IDENTITY,
  insideOf,
  inverse,
  onDrawing,
  type Placement,
  type Point,
  place,
  standingIn,
} from '../geometry/index.ts';
import type { Panel } from '../panels/index.ts';
import type { Filling } from '../spec/index.ts';
import { Length } from '../units/index.ts';
import { type Beside, moved, type Side, sideOf, stuckTo, type Walk } from './chamber-sides.ts';
import { coverOf, distanceBetween } from './margins.ts';
import type { Materials } from './material.ts';
import { heightOf, type Layer, pliesOf } from './plies.ts';

/** What closes one side of a chamber, or leaves it open. Margins in millimetres: how far it reaches past the window. */
export type Closing =
  | {
      readonly is: 'closed';
      readonly panel: string;
      readonly joint: LaidJoint;
      readonly margin: number;
      /** Panels stuck on its other side with a window of their own, and how far it reaches past that; less than zero: not so far. */
      readonly frames: readonly { readonly panel: string; readonly margin: number }[];
    }
  | { readonly is: 'partly'; readonly panel: string; readonly joint: LaidJoint }
  | { readonly is: 'open' };

/** The room that a filling has: a window with walls, a floor at its back and a roof at its face. */
export interface Chamber {
  readonly filling: Filling;
  /** The panel whose window it is. */
  readonly ring: string;
  /** On the ring's drawing, arcs as chords. */
  readonly window: readonly Point[];
  /** Between floor and roof, without glue. */
  readonly depth: Length;
  /** What makes the depth. */
  readonly layers: readonly Layer[];
  readonly floor: Closing;
  readonly roof: Closing;
  /** Every panel that has a window round the chamber, and how wide it is at its narrowest, mm. */
  readonly walls: readonly { readonly panel: string; readonly wall: number }[];
  /** Joints that hold it together, walls first on each side. */
  readonly joints: readonly LaidJoint[];
}

/** Undefined when the window is on no panel: the piece does not hold together there. */
export function chamberOf(filling: Filling, assembly: Assembly, materials: Materials): Chamber | undefined {
  const piece = assembly.card.pieces.find(({ name }) => name === filling.piece);
  const region = piece?.windows.find(({ name }) => name === filling.window);
  const window = region && cornersOf(region.outline);
  const middle = window && insideOf(window);
  if (window === undefined || middle === undefined) return undefined;
  const round = ({ holes }: Panel): boolean => holes.some((hole) => standingIn(middle, hole) === 'inside');
  const ring = [...assembly.panels.values()].find((panel) => panel.piece === filling.piece && round(panel));
  if (ring === undefined) return undefined;
  const walk: Walk = { assembly, window, middle, plies: pliesOf(assembly, materials) };
  const [back, face] = (['back', 'face'] as const).map((side) => sideOf(ring, side, walk)) as [Side, Side];
  const { floor, roof, layers, depth } = between(back, face, ring, walk);
  const walls = [{ panel: ring, toHere: IDENTITY }, ...back.rings, ...face.rings].map(({ panel, toHere }) => ({
    panel: panel.name,
    wall: wallOf(panel, toHere, walk),
  }));
  const closing = [floor, roof].flatMap((one) => (one.is === 'open' ? [] : [one.joint]));
  const joints = [...back.joints, ...face.joints, ...closing];
  return { filling, ring: ring.name, window, depth, layers, floor, roof, walls, joints: [...new Set(joints)] };
}

/**
 * Floor, roof and what lies between them. A frame on foam with its film behind it has both at its back: the film right behind the
 * window is then the roof, and what the foam stands on the floor.
 */
function between(
  back: Side,
  face: Side,
  ring: Panel,
  walk: Walk,
): Pick<Chamber, 'floor' | 'roof' | 'layers' | 'depth'> {
  const [near, far] = [back, face].map(({ closings }) => closings[0]);
  for (const [own, other] of [
    [back, face],
    [face, back],
  ] as const) {
    const [film, ...further] = own.closings;
    const ground = further.at(-1);
    if (other.closings.length > 0 || film === undefined || ground === undefined || ground.foam.length === 0) continue;
    const [inner, outer] = [closingOf(film.beside, walk), closingOf(ground.beside, walk)];
    const depth = heightOf(ground.foam).minus(heightOf(walk.plies.layersOf(film.beside.panel.name)));
    const sides = own === back ? { floor: outer, roof: inner } : { floor: inner, roof: outer };
    return { ...sides, layers: ground.foam, depth: Length.larger(depth, Length.zero) };
  }
  const layers = [
    ...[...(near?.foam ?? []), ...back.layers].toReversed(),
    ...walk.plies.layersOf(ring.name),
    ...face.layers,
    ...(far?.foam ?? []),
  ];
  return {
    floor: near ? closingOf(near.beside, walk) : { is: 'open' },
    roof: far ? closingOf(far.beside, walk) : { is: 'open' },
    layers,
    depth: heightOf(layers),
  };
}

function closingOf(beside: Beside, walk: Walk): Closing {
  const { panel, joint, toHere, covers } = beside;
  if (covers === 'part') return { is: 'partly', panel: panel.name, joint };
  const window = moved(walk.window, toHere);
  const frames = stuckTo(beside, walk).flatMap((frame) => {
    const at = onDrawing(place(frame.toHere, walk.middle));
    const hole = frame.panel.holes.find((one) => standingIn(at, one) === 'inside');
    if (hole === undefined) return [];
    const back = moved(hole, compose(toHere, inverse(frame.toHere)));
    const margin = distanceBetween(back, panel.outline);
    return [{ panel: frame.panel.name, margin: coverOf(back, panel) === 'all' ? margin : -margin }];
  });
  return { is: 'closed', panel: panel.name, joint, margin: distanceBetween(window, panel.outline), frames };
}

/** From the window of a panel to its outer edge or to the nearest other window. */
function wallOf(panel: Panel, toHere: Placement, { middle }: Walk): number {
  const at = onDrawing(place(toHere, middle));
  const own = panel.holes.find((hole) => standingIn(at, hole) === 'inside') ?? [];
  const others = panel.holes.filter((hole) => hole !== own);
  return Math.min(...[panel.outline, ...others].map((ring) => distanceBetween(own, ring)));
}
