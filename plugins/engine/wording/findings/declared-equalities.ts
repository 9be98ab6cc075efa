import { named, type Sentences } from './sentence.ts';

export const declaredEqualities: Sentences<'declared-equalities'> = {
  equal: ({ measures, value }, words) => ({
    says: `Declared to be the same, and so it is: ${measures}, each ${words.length(value)}.`,
  }),
  differ: ({ first, second, firstValue, secondValue, by }, words) => ({
    says: `${named(first)} and ${named(second)} are declared the same, but are ${words.length(firstValue)} and ${words.length(secondValue)}: ${words.length(by)} apart.`,
    remedy: `Change one of the two by ${words.length(by)}, or take them out of \`same\`.`,
  }),
  'differ-in-print': ({ first, second, firstValue, secondValue, by }, words) => ({
    says: `${named(first)} and ${named(second)} are the same, but would be printed as ${words.length(firstValue)} and ${words.length(secondValue)}: ${words.length(by)} apart.`,
    remedy: `Choose sizes that fall on the marks of the ruler, or give this edition sizes of its own.`,
  }),
};
