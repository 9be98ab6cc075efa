import { counted, listed, named, type Sentences } from './sentence.ts';

export const thicknessInFold: Sentences<'thickness-in-fold'> = {
  clear: ({ crease, inside, least, most, creases }, words) => ({
    says: inside.isZero
      ? `Nothing lies inside ${creases === 1 ? 'the shut fold' : `the ${creases} shut folds`}.`
      : `Of ${counted(creases, 'shut fold')} ${named(crease)} goes round most, ${words.thin(inside)}, and uses ${words.thin(least)} to ${words.thin(most)} of paper for it. Every panel inside ends far enough from it.`,
  }),
  short: ({ crease, panel, gap, inside, least, most, by }, words) => ({
    says: `${named(panel)} ends ${words.thin(gap)} from ${named(crease)} inside the fold. Round ${words.thin(inside)} the fold uses ${words.thin(least)} to ${words.thin(most)} of paper, half of it from each side, so ${named(panel)} pushes against it.`,
    remedy: `Make ${named(panel)} shorter by ${words.atLeast(by)}.`,
  }),
  'too-long': ({ crease, panel, gap, inside, least, most, by }, words) => ({
    says: `${named(panel)} is too long for the fold that it lies in: it ends ${words.thin(gap)} from ${named(crease)}, and round ${words.thin(inside)} that fold uses ${words.thin(least)} to ${words.thin(most)} of paper, half of it from each side.`,
    remedy: `Make ${named(panel)} shorter by ${words.atLeast(by)}, or use thinner paper.`,
  }),
  creeps: ({ crease, panel, out, least, most }, words) => ({
    says: `Folded inside ${named(crease)}, ${named(panel)} creeps out by ${words.thin(least)} to ${words.thin(most)}, and so sticks out by up to ${words.thin(out)}.`,
    remedy: `Make ${named(panel)} shorter by ${words.atLeast(out)}, or trim it when it is folded.`,
  }),
  'needs-spine': ({ crease, inside, least, most }, words) => ({
    says: `${named(crease)} goes round ${words.thin(inside)}, which is more than one score folds round cleanly.`,
    remedy: `Score it twice, ${words.thin(least)} to ${words.thin(most)} apart, so that a spine stands between.`,
  }),
  unknown: ({ stocks }) => ({
    says: `It was not tried whether thickness gets in the way of the folds, because nobody says how thick ${listed(stocks)} is.`,
    remedy: `Measure it and write \`caliper:\` in its supply.`,
  }),
};
