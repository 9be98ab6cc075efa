import type { Assembly, Joint } from '../assembly/index.ts';
import type { Hinge } from '../panels/index.ts';
import type { Pose, TurnOf } from '../spec/index.ts';
import type { PosePart } from './pose-parts.ts';
import { ringOf } from './rings.ts';

/** What a pose says, by the names that it is asked for. */
export interface PoseSettings {
  /**
   * Degrees about the hinge from `from` to `to`, positive for a valley; undefined when left to the solver. A crease that the
   * pose does not mention is flat.
   */
  turnOf(hinge: Hinge): number | undefined;
  /** False where the pose says nothing of a crease, and its angle is that of the pose before. */
  isSaid(piece: string, crease: string): boolean;
  /** As the pose has it: in the crease's own direction. */
  statedFor(piece: string, crease: string): TurnOf | undefined;
  /** Exact millimetres that a slider is out; zero when the pose says nothing. */
  slideOf(piece: string): Pose['slides'][number]['at'] | undefined;
  /** Clockwise degrees of a pinned piece beyond its turn at rest. */
  pinOf(piece: string): number;
}

export function settingsOf(pose: Pose): PoseSettings {
  const turns = new Map(pose.turns.map(({ piece, crease, turn }) => [keyOf(piece, crease), turn]));
  const unsaid = new Set(pose.turns.filter(({ said }) => said === false).map((turn) => keyOf(turn.piece, turn.crease)));
  const slides = new Map(pose.slides.map(({ piece, at }) => [piece, at]));
  const pins = new Map(pose.pins.map(({ piece, turn }) => [piece, turn]));
  return {
    isSaid: (piece, crease) => !unsaid.has(keyOf(piece, crease)),
    statedFor: (piece, crease) => turns.get(keyOf(piece, crease)),
    turnOf: ({ piece, crease, fold }) => {
      const turn = turns.get(keyOf(piece, crease)) ?? 0;
      if (turn === 'solve') return undefined;
      return fold === 'mountain' ? -turn : turn;
    },
    slideOf: (piece) => slides.get(piece),
    pinOf: (piece) => pins.get(piece) ?? 0,
  };
}

/**
 * Creases of a part that a pose leaves to the solver, each once, in the order of their hinges: those that it says so of, and
 * those that it does not speak of and a ring of paper holds.
 */
export function unsolvedIn(
  assembly: Assembly,
  { ground, tree, loops, panels }: PosePart,
  settings: PoseSettings,
): { readonly piece: string; readonly crease: string }[] {
  const inside = new Set(panels);
  const hinges = assembly.joints.flatMap((joint) => (joint.is === 'hinge' && inside.has(joint.a) ? [joint] : []));
  const open = hinges.filter(({ hinge: { piece, crease } }) => !settings.isSaid(piece, crease));
  const held = new Set<Joint>(open.length === 0 ? [] : loops.flatMap((joint) => ringOf(joint, ground, tree)));
  const found = new Map<string, { piece: string; crease: string }>();
  for (const joint of hinges) {
    const { piece, crease } = joint.hinge;
    const solved = settings.statedFor(piece, crease) === 'solve' || (open.includes(joint) && held.has(joint));
    if (solved) found.set(keyOf(piece, crease), { piece, crease });
  }
  return [...found.values()];
}

function keyOf(piece: string, crease: string): string {
  return `${piece}\n${crease}`;
}
