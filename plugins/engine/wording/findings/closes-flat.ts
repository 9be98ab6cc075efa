import { counted, named, type Sentences } from './sentence.ts';

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
  gap: ({ piece, panel, crease }) => ({
    says: `${named(piece)} does not fold flat: reached over ${named(crease)}, ${named(panel)} does not lie where its other creases put it.`,
    remedy: `Check which creases around ${named(panel)} are shut in this pose.`,
  }),
  'not-scored': ({ piece }) => ({
    says: `${named(piece)} was not folded, because its scores do not divide it into panels.`,
    remedy: `Put the scores right first.`,
  }),
};
