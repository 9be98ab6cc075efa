import { listed, named, type Sentences } from './sentence.ts';
import { supposed } from './thickness.ts';

export const weight: Sentences<'weight'> = {
  weighs: ({ grams, heaviest, most, assumed }, words) => ({
    says: `The card weighs ${words.weight(grams)} without its envelope; its heaviest part is ${named(heaviest)} with ${words.weight(most)}.${supposed(assumed)}`,
  }),
  unknown: ({ grams, stocks }, words) => ({
    says: `The weight is not known, because nobody says what ${listed(stocks)} weighs; the rest comes to ${words.weight(grams)}.`,
    remedy: `Write the weight in its supply, in \`gsm\` or in \`lb\` with the grade; for beads, how much goes in: \`mass: 3 g\`.`,
  }),
};
