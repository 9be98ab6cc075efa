import type { CardParts } from './card-assembly-parts.ts';
import type { Pose } from './card-types.ts';

/**
 * The parts of several kinds as those of one card.
 *
 * The first kind is the host. Its poses are the card's, and so are its motions, how it is posted and what it offers. In each of its
 * poses the others stand as in their own pose of that name.
 */
export function mergeParts(kinds: readonly CardParts[]): CardParts | undefined {
  const [host, ...others] = kinds;
  if (host === undefined) return undefined;
  return {
    joins: kinds.flatMap(({ joins }) => joins),
    fillings: kinds.flatMap(({ fillings }) => fillings),
    poses: host.poses.map((pose) =>
      others.reduce(
        (merged, { poses }) =>
          withPose(
            merged,
            poses.find(({ name }) => name === pose.name),
          ),
        pose,
      ),
    ),
    motions: host.motions,
    actsAs: host.actsAs,
    posts: host.posts,
    closesWithin: host.closesWithin,
  };
}

function withPose(pose: Pose, other: Pose | undefined): Pose {
  if (other === undefined) return pose;
  const rests =
    typeof pose.rests === 'boolean' || typeof other.rests === 'boolean'
      ? pose.rests || other.rests
      : [...pose.rests, ...other.rests];
  return {
    ...pose,
    turns: [...pose.turns, ...other.turns],
    slides: [...pose.slides, ...other.slides],
    pins: [...pose.pins, ...other.pins],
    stands: [...pose.stands, ...other.stands],
    rests,
    aside: [...pose.aside, ...other.aside],
  };
}
