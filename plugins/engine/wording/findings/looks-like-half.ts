import { named, type Sentences } from './sentence.ts';

export const looksLikeHalf: Sentences<'looks-like-half'> = {
  even: ({ piece, half, total }, words) => ({
    says: `${named(piece)} is folded in half: ${words.length(total)} scored at ${words.length(half)}.`,
  }),
  uneven: ({ piece, first, second, firstSize, secondSize, half, total }, words) => ({
    says: `${named(piece)} is nearly folded in half, but not quite: ${named(first)} is ${words.length(firstSize)} and ${named(second)} ${words.length(secondSize)}.`,
    remedy: `If you meant a half fold of ${words.length(total)}, score at ${words.length(half)}.`,
  }),
};
