import { named, type Sentences } from './sentence.ts';

export const scoresInside: Sentences<'scores-inside'> = {
  inside: ({ piece, scores, panel, least }, words) => ({
    says: `${scores === 1 ? 'The score' : scores === 2 ? 'Both scores' : `All ${scores} scores`} of ${named(piece)} ${scores === 1 ? 'lies' : 'lie'} inside the paper; the narrowest panel is ${named(panel)}, ${words.length(least)}.`,
  }),
  narrow: ({ piece, panel, size, least }, words) => ({
    says: `${named(panel)} of ${named(piece)} is only ${words.length(size)} wide: a score nearer than ${words.length(least)} to an edge or another score seldom folds cleanly.`,
    remedy: `Make ${named(panel)} at least ${words.length(least)} wide, or try it on scrap first.`,
  }),
  outside: ({ piece, crease, at, side }, words) => ({
    says: `${named(crease)} at ${words.length(at)} does not cross ${named(piece)}, which is ${words.length(side)} along that side.`,
    remedy: `Put the score between 0 and ${words.length(side)}, or check which side it runs along.`,
  }),
  'no-room': ({ piece, panel, size }, words) => ({
    says: `${named(panel)} of ${named(piece)} has no width left: it comes out at ${words.length(size)}.`,
    remedy: `Make the other panels smaller or the whole piece larger; check the score on each side of ${named(panel)}.`,
  }),
};
