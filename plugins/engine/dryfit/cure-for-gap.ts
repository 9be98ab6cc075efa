import type { Assembly, Body, LaidJoint } from '../assembly/index.ts';
import { orderPlies } from '../layers/index.ts';
import type { Pose } from '../spec/index.ts';
import { gluedByOtherSide, poseOf } from './remake.ts';

/** What would let every loop of a body meet: other settings of the pose, or a join glued by its other side. */
export type Cure =
  | { readonly is: 'settings'; readonly settings: readonly string[] }
  | { readonly is: 'other-side'; readonly joint: LaidJoint };

/** Panels placed and loops looked at, over all trials, before the search gives up. */
const EFFORT = 3000;

type Turned = Pose['turns'][number];

/**
 * The least change that lets the loops meet and the plies lie in some order: a join of like sides glued by the other side, one
 * crease between flat and shut, another join glued by the other side, or two creases. Undefined when none of these does.
 */
export function cureFor(assembly: Assembly, body: Body, pose: Pose): Cure | undefined {
  let effort = EFFORT;
  const meets = (trial: Pose, made: Assembly = assembly, madeBody: Body = body): boolean => {
    effort -= body.panels.length + body.loops.length;
    const found = effort >= 0 ? poseOf(made, madeBody, trial) : undefined;
    return found?.gaps.length === 0 && !(found.flat && orderPlies(found).obstruction);
  };
  const glued = [...body.tree, ...body.loops].flatMap((joint) => (joint.is === 'glue' ? [joint] : []));
  const bySide = (like: boolean): Cure | undefined => {
    const joint = glued.find((one) => {
      const other = isLike(one) === like ? gluedByOtherSide(assembly, body, one) : undefined;
      return other && meets(pose, other.assembly, other.body);
    });
    return joint && { is: 'other-side', joint };
  };
  const flips = flippable(assembly, body, pose);
  const bySettings = (choices: Iterable<readonly Turned[]>): Cure | undefined => {
    for (const changed of choices) {
      if (effort < 0) return undefined;
      if (!isBent(pose, changed, flips) || !meets(flipped(pose, changed))) continue;
      return { is: 'settings', settings: changed.map((turn) => settingOf(turn, flips)) };
    }
    return undefined;
  };
  return (
    bySide(true) ??
    bySettings(flips.map((turn) => [turn])) ??
    bySide(false) ??
    bySettings(flips.flatMap((one, i) => flips.slice(i + 1).map((other) => [one, other])))
  );
}

function isLike({ join }: LaidJoint): boolean {
  return join.partSide === join.ontoSide;
}

/** Creases of the body that the pose has flat or shut. */
function flippable(assembly: Assembly, body: Body, pose: Pose): Turned[] {
  const creased = new Set<string>();
  for (const joint of assembly.joints) {
    if (joint.is === 'hinge' && body.panels.includes(joint.a))
      creased.add(`${joint.hinge.piece}\n${joint.hinge.crease}`);
  }
  return pose.turns.filter(
    ({ piece, crease, turn }) => creased.has(`${piece}\n${crease}`) && (turn === 0 || turn === 180),
  );
}

function flipped(pose: Pose, changed: readonly Turned[]): Pose {
  const turns = pose.turns.map((turn) =>
    changed.includes(turn) ? { ...turn, turn: turn.turn === 0 ? 180 : 0 } : turn,
  );
  return { ...pose, turns };
}

/** A card that lies all flat is no closed card. */
function isBent(pose: Pose, changed: readonly Turned[], flips: readonly Turned[]): boolean {
  return flipped(pose, changed).turns.some(({ turn }, i) => turn === 180 && flips.includes(pose.turns[i] as Turned));
}

/** As a pose is written: `outer: shut`, with its piece where two creases have one name. */
function settingOf({ piece, crease, turn }: Turned, flips: readonly Turned[]): string {
  const alone = flips.filter((one) => one.crease === crease).length === 1;
  return `${alone ? crease : `${piece}.${crease}`}: ${turn === 0 ? 'shut' : 'flat'}`;
}
