import { named, type Sentences } from './sentence.ts';

export const requirements: Sentences<'requirements'> = {
  holds: ({ that, left, right }, words) => ({
    says: `As the fold asks, ${named(that)}: ${words.measure(left)} against ${words.measure(right)}.`,
  }),
  broken: ({ that, otherwise, left, right }, words) => ({
    says: `The fold asks that ${named(that)}, but it is ${words.measure(left)} against ${words.measure(right)}.`,
    remedy: otherwise,
  }),
};
