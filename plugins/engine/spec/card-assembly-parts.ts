import type { Place } from '../diagnostics/index.ts';
import { actsAs } from './acts-as.ts';
import type { AssemblyParts, JoinSpec, RefSpec } from './assembly-specs.ts';
import { makePoses, stillPose } from './card-poses.ts';
import type { Join, Motion, Pose } from './card-types.ts';
import { checkGluedTwice } from './check-joins.ts';
import { checkPoseName } from './check-poses.ts';
import { findPanel, type NamedPieces } from './find-references.ts';
import type { Making } from './join-making.ts';
import { makeFilling } from './make-fillings.ts';
import { makeJoin } from './make-joins.ts';
import { type CreaseId, creasesOf } from './pose-targets.ts';
import { USUAL_MOTION } from './read-assembly-parts.ts';
import type { Sizes } from './references.ts';
import type { Report } from './report.ts';
import type { Card, Piece } from './types.ts';

/** What of a card is more than its pieces. */
export type CardParts = Pick<Card, 'joins' | 'fillings' | 'poses' | 'motions' | 'actsAs' | 'posts' | 'closesWithin'>;

/** A pose that every card has: as it is posted. */
const USUAL_POSTED = 'closed';

/** The pieces of the card; the names that its fold has for them (`namedPieces(all)`); and how its sizes are worked out. */
export interface PartsMaking {
  readonly all: readonly Piece[];
  readonly pieces: NamedPieces;
  readonly sizes: Sizes;
  readonly report: Report;
  /** Where the fold stands, for the poses and the motion that it has without writing them. */
  readonly place: Place;
  /** Joins that the pieces bring with them: the tabs of corners. */
  readonly implied: readonly Join[];
  /** What the card has from kinds that it uses, or from the kind that a post adds to. */
  readonly earlier: CardParts | undefined;
}

/** Joins, fillings, poses and the rest of a card: names looked up in its pieces, lengths on the edition's marks. */
export function makeAssemblyParts(parts: AssemblyParts, making: PartsMaking): CardParts {
  const { earlier, report, pieces } = making;
  const joins = [...(earlier?.joins ?? []), ...making.implied, ...makeJoins(parts, making)];
  checkGluedTwice(joins, report);
  const fillings = parts.fillings.flatMap((spec) => makeFilling(spec, making) ?? []);
  const posts = parts.posts?.text ?? earlier?.posts ?? USUAL_POSTED;
  const poses = allPoses(parts, joins, posts, making);
  if (parts.posts) checkPoseName(parts.posts, 'posts', poses, report);
  const closesWithin = parts.closesWithin.flatMap((ref) => findPanel(ref, 'body', pieces, report)?.ref ?? []);
  return {
    joins,
    fillings: [...(earlier?.fillings ?? []), ...fillings],
    poses,
    motions: motionsOf(parts, poses, making),
    actsAs: actsAs(parts, joins, making) ?? earlier?.actsAs,
    posts,
    closesWithin: parts.closesWithin.length > 0 ? closesWithin : (earlier?.closesWithin ?? []),
  };
}

function makeJoins(parts: AssemblyParts, making: Making): Join[] {
  const stacked = parts.stack.flatMap((upper, index): Join[] => {
    const lower = parts.stack[index - 1];
    const join = lower && makeJoin(stackJoin(upper, lower), making);
    return join ? [{ ...join, implied: true }] : [];
  });
  return [...stacked, ...parts.joins.flatMap((spec) => makeJoin(spec, making) ?? [])];
}

/** In a stack each piece is glued with its middle on the middle of the one before. */
function stackJoin(part: RefSpec, onto: RefSpec): JoinSpec {
  const silent = { lay: undefined, after: undefined, match: undefined, turn: undefined, foam: undefined };
  return { is: 'glue', part, onto, ...silent, place: part.node.place, path: part.path };
}

/**
 * The poses as written, with `open` and `closed` where they are missing. A fold that says how it is posted speaks for itself and gets
 * none.
 */
function allPoses(parts: AssemblyParts, joins: readonly Join[], posts: string, making: PartsMaking): Pose[] {
  const { all, pieces, sizes, report, place, earlier } = making;
  const creases = creasesOf(all);
  const inherited = (earlier?.poses ?? []).map((pose) => widened(pose, creases, joins));
  const poses = makePoses({ specs: parts.poses, creases, joins, pieces, sizes, report, earlier: inherited });
  const lacks = (name: string): boolean => posts === USUAL_POSTED && !poses.some((pose) => pose.name === name);
  const origin = { place, path: 'poses' };
  return [
    ...(lacks('open') ? [stillPose('open', { creases, joins }, 0, origin)] : []),
    ...poses,
    ...(lacks(USUAL_POSTED) ? [stillPose(USUAL_POSTED, { creases, joins }, 180, origin)] : []),
  ];
}

/**
 * A pose of fewer pieces, with those that have come since: shut in the closed pose, flat where all is flat. Any other pose says
 * nothing of them: they lie flat, or are left to the paper where a ring of it holds them.
 */
function widened(pose: Pose, creases: readonly CreaseId[], joins: readonly Join[]): Pose {
  const shut = pose.name === USUAL_POSTED;
  const still = stillPose(pose.name, { creases, joins }, shut ? 180 : 0, pose);
  const known = new Map(pose.turns.map((turn) => [`${turn.piece}.${turn.crease}`, turn]));
  const said = shut || pose.turns.every(({ turn }) => turn === 0);
  return {
    ...pose,
    turns: still.turns.map((turn) => known.get(`${turn.piece}.${turn.crease}`) ?? { ...turn, said }),
    slides: still.slides.map((slide) => pose.slides.find(({ piece }) => piece === slide.piece) ?? slide),
    pins: still.pins.map((pin) => pose.pins.find(({ piece }) => piece === pin.piece) ?? pin),
  };
}

/** The motions as written; else one through the poses as they are written, or from open to closed. */
function motionsOf(parts: AssemblyParts, poses: readonly Pose[], { earlier, report, place }: PartsMaking): Motion[] {
  const written = parts.motions.map((spec): Motion => {
    const found = spec.poses.filter(({ node, path }) => checkPoseName(node, path, poses, report));
    return { name: spec.name, poses: found.map(({ node }) => node.text), place: spec.place, path: spec.path };
  });
  if (written.length > 0 || earlier) return written.length > 0 ? written : [...(earlier?.motions ?? [])];
  const names = (parts.poses.length > 1 ? parts.poses : poses).map(({ name }) => name);
  return names.length > 1 ? [{ name: USUAL_MOTION, poses: names, place, path: 'poses' }] : [];
}
