import type { Place } from '../diagnostics/index.ts';
import { Length } from '../units/index.ts';
import type { PoseSpec } from './assembly-specs.ts';
import type { Pose } from './card-types.ts';
import { checkAll, checkTwice } from './check-poses.ts';
import { findPanel, type NamedPieces } from './find-references.ts';
import { piecesNamed, pinIn, slideIn, standsOn } from './pose-moves.ts';
import { type Settable, targetOf } from './pose-targets.ts';
import { pinnedOf, rankOf, type Said, type Settling, slidersOf, speaksOf, turnOf } from './pose-turns.ts';

type Turn = Pose['turns'][number];

export interface PoseMaking extends Settling {
  readonly specs: readonly PoseSpec[];
  readonly pieces: NamedPieces;
  /** Poses that the card has already; one of the same name is changed by what is written. */
  readonly earlier: readonly Pose[];
}

/**
 * The poses as written, after those that are there already.
 *
 * A crease does what its own name says, then what its family, its piece and `all` or `others` say; else it stays as in the pose before, flat
 * before the first, and is marked as unsaid. `{}` shuts everything.
 */
export function makePoses(making: PoseMaking): Pose[] {
  const poses = [...making.earlier];
  let before = poses.at(-1) ?? stillPose('', making, 0, { place: { file: '', line: 0, column: 0 }, path: '' });
  for (const spec of making.specs) {
    const index = poses.findIndex(({ name }) => name === spec.name);
    before = makePose(spec, poses[index] ?? before, making);
    if (index < 0) poses.push(before);
    else poses[index] = before;
  }
  return poses;
}

/** A pose with every crease at one angle, sliders in the middle and pinned pieces as they were pinned. */
export function stillPose(
  name: string,
  { creases, joins }: Pick<PoseMaking, 'creases' | 'joins'>,
  degrees: number,
  { place, path }: { readonly place: Place; readonly path: string },
): Pose {
  return {
    name,
    turns: creases.map((crease) => ({ ...crease, turn: degrees, said: true })),
    slides: slidersOf(joins).map(({ part }) => ({ piece: part.piece, at: Length.zero })),
    pins: pinnedOf(joins).map((piece) => ({ piece, turn: 0 })),
    ground: undefined,
    stands: [],
    rests: false,
    aside: [],
    place,
    path,
  };
}

function makePose(spec: PoseSpec, before: Pose, making: PoseMaking): Pose {
  const { creases, joins, pieces, report } = making;
  const settable: Settable = { creases, joins, pieces };
  const said = spec.settings.flatMap((written): Said[] => {
    const target = targetOf(written, settable, report);
    return target ? [{ written, target }] : [];
  });
  checkTwice(said, report);
  checkAll(spec, report);
  const nothing = spec.settings.length === 0 && !spec.ground && spec.stands.length === 0 && !spec.rests;
  const all = nothing && spec.aside.length === 0;
  const angles = new Map(said.map((one) => [one, turnOf(one, making)]));
  const turns = creases.map((crease): Turn => {
    const last = before.turns.find((turn) => turn.piece === crease.piece && turn.crease === crease.crease);
    if (all) return { ...crease, turn: 180, said: true };
    const [first] = said
      .filter((one) => angles.get(one) !== undefined && speaksOf(one.target, crease))
      .sort((a, b) => rankOf(a.target) - rankOf(b.target));
    const turn = first && angles.get(first);
    const still = last?.turn ?? 0;
    return { ...crease, turn: turn === undefined || turn === 'keep' ? still : turn, said: turn !== undefined };
  });
  const ground = spec.ground && findPanel(spec.ground, 'body', pieces, report)?.ref;
  return {
    name: spec.name,
    turns,
    slides: slidersOf(joins).map((join) => slideIn(join, said, before, making)),
    pins: pinnedOf(joins).map((piece) => pinIn(piece, said, before, making)),
    ground,
    stands: spec.stands.flatMap((ref) => standsOn(ref, making)),
    rests: typeof spec.rests === 'boolean' ? spec.rests : spec.rests.flatMap((ref) => piecesNamed(ref, making)),
    aside: spec.aside.flatMap((ref) => piecesNamed(ref, making)),
    place: spec.place,
    path: spec.path,
  };
}
