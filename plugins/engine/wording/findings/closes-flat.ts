import { counted, listed, named, type Sentences } from './sentence.ts';

export const closesFlat: Sentences<'closes-flat'> = {
  flat: ({ piece, plies, panels }) => ({
    says: `${named(piece)} folds flat: ${counted(panels, 'panel')}, ${plies} deep at the thickest.`,
  }),
  'one-panel': ({ piece }) => ({ says: `${named(piece)} has no crease: it is one flat panel.` }),
  'too-long': ({ piece, panel, crease, by }, words) => ({
    says: `${named(piece)} does not fold flat: ${named(panel)} has to lie inside the fold next to it, and is ${words.length(by)} too long for that.`,
    remedy: `Shorten ${named(panel)} by ${words.length(by)}, or fold ${named(crease)} the other way.`,
  }),
  'no-order': ({ piece, panel, crease, by }, words) => ({
    says: `${named(piece)} does not fold flat in any order: the part that ends with ${named(panel)} is ${words.length(by)} too long to lie inside the fold next to it, and shortening that alone is not enough.`,
    remedy: `Look at the creases on both sides of ${named(panel)}: change the way that ${named(crease)} folds, or make the panels shorter towards the end that is tucked in.`,
  }),
  crossing: ({ piece, crease, other }) => ({
    says: `${named(piece)} does not fold flat: ${named(crease)} crosses ${named(other)} and both are shut. When paper is folded a second time, the second crease changes direction where it crosses the first.`,
    remedy: `Leave one of them flat in this pose, or cut the paper where they cross.`,
  }),
  'point-angles': ({ piece, creases }) => ({
    says: `${named(piece)} does not fold flat where ${listed(creases)} meet: taken in turn, every other angle between the creases must add up to half a turn, 180 degrees, and they do not.`,
    remedy: `Move one of the creases, leave some of them flat in this pose, or cut the paper where they meet.`,
  }),
  'point-directions': ({ piece, creases }) => ({
    says: `${named(piece)} does not fold flat where ${listed(creases)} meet: in paper that is not cut there, valleys and mountains at such a point must differ by two in number.`,
    remedy: `Fold one of the creases the other way, or cut the paper where they meet.`,
  }),
  'point-narrowest': ({ piece, creases }) => ({
    says: `${named(piece)} does not fold flat where ${listed(creases)} meet: the narrowest angle lies between two creases that fold the same way, so that the paper on its two sides would have to pass through each other.`,
    remedy: `Fold one of the two creases beside the narrowest angle the other way, or cut the paper where they meet.`,
  }),
  through: ({ piece, how, panel, other, crease }) => ({
    says: `${named(piece)} does not ${how}: ${named(panel)} would have to pass through ${named(other)}${crease === '' ? '' : ` at ${named(crease)}`}.`,
    remedy:
      crease === ''
        ? `Check which sides are glued, and which way the creases between ${named(panel)} and ${named(other)} fold.`
        : `Fold ${named(crease)} the other way, or shorten ${named(panel)} so that it does not reach ${named(other)}.`,
  }),
  between: ({ piece, how, panel, part, onto }) => ({
    says: `${named(piece)} does not ${how}: ${named(panel)} would have to lie between ${named(part)} and ${named(onto)}, which are held to each other.`,
    remedy: `Check which way the creases of ${named(panel)} fold, or glue ${named(part)} elsewhere.`,
  }),
  circle: ({ piece, how, panels }) => ({
    says: `${named(piece)} does not ${how}: there is no order in which ${listed(panels)} can lie on each other.`,
    remedy: `Check which way the creases between them fold and by which side they are glued; change one at a time.`,
  }),
  box: ({ piece, panels, deep }, words) => ({
    says: `${named(piece)} is posted standing up, not flat: ${counted(panels, 'panel')}, ${words.length(deep)} deep.`,
  }),
  'below-floor': ({ piece, pose, panel, floor, by }, words) => ({
    says: `In ${named(pose)}, ${named(panel)} goes ${words.length(by)} below ${named(floor)}, which ${named(piece)} stands on.`,
    remedy: `Check which way the creases of ${named(panel)} fold, or name what the card stands on under \`ground\`.`,
  }),
  apart: ({ piece }) => ({
    says: `It was not tried whether ${named(piece)} folds flat, because its joins do not meet.`,
  }),
  'not-known': ({ piece, pose, crease }) => ({
    says: `It was not tried whether ${named(piece)} folds flat: ${named(pose)} does not say how far ${named(crease)} is folded.`,
    remedy: `Say so in the pose, as \`${crease}: shut\`.`,
  }),
  'not-scored': ({ piece }) => ({
    says: `${named(piece)} was not folded, because its scores do not divide it into panels.`,
    remedy: `Put the scores right first.`,
  }),
  'too-much': ({ piece, panels }) => ({
    says: `It was not worked out whether ${named(piece)} folds flat: its ${counted(panels, 'panel')} can lie on each other in too many ways.`,
    remedy: `Fold a model from scrap paper first, or take the card apart into smaller ones.`,
  }),
};
