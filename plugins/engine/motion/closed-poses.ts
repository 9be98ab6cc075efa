import Fraction from 'fraction.js';
import type { Assembly } from '../assembly/index.ts';
import {
  type Bounds,
  boundsOf,
  facing,
  larger,
  minus,
  onDrawing,
  type Placement,
  type Point,
  place,
  smaller,
  ZERO,
} from '../geometry/index.ts';
import type { Pose } from '../spec/index.ts';
import { placeWithLoops } from './place-loops.ts';
import { type PosePart, partsIn } from './pose-parts.ts';
import { type PoseSettings, settingsOf, unsolvedIn } from './pose-settings.ts';
import type { ClosedPose, PlacedPanel, Unsolved } from './types.ts';

/**
 * Every body of an assembly in a pose whose angles are stated, in the order of the bodies; where a crease is left to the
 * solver, which. A body that is laid aside is left out; one that falls apart without what is laid aside gives a pose for each
 * part.
 *
 * Exact for turns of whole quarters about lines whose direction allows it; else on the grid, and `rounded`.
 */
export function closedPoses(assembly: Assembly, pose: Pose): readonly (ClosedPose | Unsolved)[] {
  const settings = settingsOf(pose);
  return assembly.bodies.flatMap((body, index) =>
    partsIn(assembly, body, pose).map((part) => {
      const creases = unsolvedIn(assembly, part, settings);
      if (creases.length > 0) return { pose: pose.name, body: index, creases };
      return posed(assembly, pose, settings, part, index);
    }),
  );
}

/** Whether all angles of a pose were known. */
export function isKnown(pose: ClosedPose | Unsolved): pose is ClosedPose {
  return 'panels' in pose;
}

function posed(assembly: Assembly, pose: Pose, settings: PoseSettings, part: PosePart, body: number): ClosedPose {
  const { placed, gaps, pressed } = placeWithLoops(assembly, settings, part);
  const all = part.panels.flatMap((name) => {
    const placement = placed.get(name);
    return placement === undefined ? [] : [placedPanel(assembly, name, placement)];
  });
  const panels = all.map(({ panel }) => panel);
  const [first, ...heights] = all.flatMap((one) => one.heights);
  const [low, high] = [heights.reduce(smaller, first ?? ZERO), heights.reduce(larger, first ?? ZERO)];
  return {
    pose: pose.name,
    assembly,
    body,
    ground: part.ground,
    panels,
    flat: panels.every(({ faces }) => faces === 'up' || faces === 'down'),
    gaps,
    pressed,
    box: boxOf(panels.flatMap(({ outline }) => outline)),
    deep: minus(high, low),
  };
}

/** Rounded corners are put on a coarser grid than theirs, so that a length that is whole to a ruler reads so. */
const PER_MM = 1e8;

function boxOf(corners: readonly Point[]): Bounds {
  const box = boundsOf(corners);
  if (!corners.some(({ rounded }) => rounded)) return box;
  const near = (side: Bounds['left']) => new Fraction(Math.round(side.valueOf() * PER_MM), PER_MM);
  return { left: near(box.left), top: near(box.top), right: near(box.right), bottom: near(box.bottom) };
}

function placedPanel(
  assembly: Assembly,
  name: string,
  placement: Placement,
): { panel: PlacedPanel; heights: Placement['t'][number][] } {
  const panel = assembly.panels.get(name);
  if (panel === undefined) throw new RangeError(`no panel \`${name}\``);
  const corners = panel.outline.map((corner) => place(placement, corner));
  return {
    panel: {
      panel: name,
      piece: panel.piece,
      placement,
      faces: facing(placement),
      outline: corners.map(onDrawing),
      holes: panel.holes.map((hole) => hole.map((corner) => onDrawing(place(placement, corner)))),
    },
    heights: corners.map(({ z }) => z),
  };
}
