import { counted, named, type Sentences } from './sentence.ts';

export const creaseChannel: Sentences<'crease-channel'> = {
  channel: ({ stock, grams, creases, along, across }, words) => ({
    says: `${named(stock)}, ${grams} g/m², is creased before it is folded (mills advise it from 150 g/m² on): the channel is ${words.thin(along)} wider than the rule along the grain and ${words.thin(across)} across it, 1.3 and 1.5 times the paper. ${creases === 1 ? 'It has one fold' : `It has ${creases} folds`}.`,
  }),
  'no-channel': ({ stock, grams, creases }) => ({
    says: `${named(stock)}, ${grams} g/m², is thin enough to fold without a channel; mills advise one from 150 g/m² on. ${creases === 1 ? 'It has one fold' : `It has ${creases} folds`}.`,
  }),
  'too-close': ({ piece, panel, size, least }, words) => ({
    says: `${named(panel)} of ${named(piece)} is ${words.thin(size)} between two folds; each wants a channel of ${words.thin(least)}, so they run into each other.`,
    remedy: `Make ${named(panel)} at least ${words.atLeast(least)}, or use thinner paper.`,
  }),
  unknown: ({ stock, creases }) => ({
    says: `It is not known how wide a channel the ${counted(creases, 'fold')} in ${named(stock)} want, because nobody says how heavy and how thick it is.`,
    remedy: `Write its weight or its caliper in its supply.`,
  }),
};
