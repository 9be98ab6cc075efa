import type { Outcomes } from '../../dryfit/index.ts';
import { type EditionWords, named, type Sentences } from './sentence.ts';

export const joinsAgree: Sentences<'joins-agree'> = {
  agree: ({ piece, loops, pose }) => ({
    says: `In ${named(pose)}, ${loops === 1 ? 'the one ring of paper' : `all ${loops} rings of paper`} of ${named(piece)} ${loops === 1 ? 'comes' : 'come'} together again without a gap.`,
  }),
  misses: (facts, words) => ({
    says: missed(facts, words),
    remedy: `Check the sizes of the panels between ${named(facts.part)} and ${named(facts.onto)}, where they are glued, and what ${named(facts.pose)} says of the creases between them.`,
  }),
  'wrong-setting': (facts, words) => ({
    says: missed(facts, words),
    remedy: `Try \`${facts.settings}\` in ${named(facts.pose)}.`,
  }),
  'wrong-side': (facts, words) => ({
    says: missed(facts, words),
    remedy: `Glue ${named(facts.glued)} by its ${facts.side}.`,
  }),
  tears: ({ piece, crease, panel, other, by, pose, settings }, words) => ({
    says: `In ${named(pose)}, ${named(piece)} would tear along ${named(crease)}: ${named(panel)} and ${named(other)} come to lie ${words.measured(by)} apart, each where its other creases put it.`,
    remedy:
      settings === ''
        ? `Check which creases around ${named(crease)} are shut in ${named(pose)}, and the angles between them.`
        : `Try \`${settings}\` in ${named(pose)}.`,
  }),
  'foam-in-ring': ({ part, onto, foam }, words) => ({
    says: `${named(part)} stands on ${words.length(foam)} of foam over ${named(onto)}, in a ring of paper that is not made for it: the ring was looked at as if the foam had no height.`,
    remedy: `Try it on scrap: the paper has to bend, and may not lie flat. Glue without foam is safer there.`,
  }),
};

function missed({ part, onto, pose, by, way }: Outcomes['joins-agree']['misses'], words: EditionWords): string {
  return `In ${named(pose)}, ${named(part)} misses its place on ${named(onto)} by ${words.measured(by)}: it lies ${WAYS[way]}.`;
}

const WAYS = {
  left: 'too far to the left',
  right: 'too far to the right',
  top: 'too far up',
  bottom: 'too far down',
  above: 'above it',
  below: 'below it',
} as const;
