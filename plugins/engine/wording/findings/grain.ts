import { named, type Sentences } from './sentence.ts';

export const grain: Sentences<'grain'> = {
  along: ({ piece, crease }) => ({
    says: `The grain of ${named(piece)} runs along ${named(crease)}, its main fold: 0 degrees between them.`,
  }),
  across: ({ piece, crease }) => ({
    says: `The grain of ${named(piece)} runs across ${named(crease)}, its main fold. Paper folds cleanly along its grain and roughens across it.`,
    remedy: `Turn \`grain\` to run along ${named(crease)}, or crease it well before folding.`,
  }),
  'sheet-across': ({ piece, crease, stock, sheet }) => ({
    says: `${named(piece)} comes from a sheet of ${named(stock)} (${named(sheet)}) one way only, and there the grain runs across ${named(crease)}, its main fold.`,
    remedy: `Take a larger sheet, or one whose grain runs the other way, or crease ${named(crease)} well before folding.`,
  }),
  'not-known': ({ piece, crease, stock, runs }) => ({
    says: `It is not known which way the grain of ${named(stock)} runs. For ${named(crease)}, the main fold of ${named(piece)}, it should run ${WAYS[runs]}.`,
    remedy: `Bend a sheet both ways: along the grain it gives more easily. Write \`grain: long\` or \`grain: short\` in its supply.`,
  }),
};

const WAYS = { down: 'up and down the piece', across: 'across the piece' } as const;
