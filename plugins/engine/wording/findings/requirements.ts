import { named, type Sentences } from './sentence.ts';

export const requirements: Sentences<'requirements'> = {
  holds: ({ that, left, right }, words) => ({
    says: `As the fold asks, ${named(that)}: ${words.measure(left)} against ${words.measure(right)}.`,
  }),
  broken: ({ that, otherwise, left, right }, words) => ({
    says: `The fold asks that ${named(that)}, but it is ${words.measure(left)} against ${words.measure(right)}.`,
    remedy: otherwise,
  }),
  'broken-locally': ({ that, otherwise, left, right, local, home, parameters }, words) => ({
    says: `The fold asks that ${named(that)}, but in the size for this edition, ${local} for ${home}, it is ${words.measure(left)} against ${words.measure(right)}.`,
    remedy: `${otherwise} Or give ${parameters} of this edition under ${named(`${words.system}:`)}.`,
  }),
};
