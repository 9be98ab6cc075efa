import { counted, named, type Sentences } from './sentence.ts';

export const movingLayers: Sentences<'moving-layers'> = {
  light: ({ part, plies }) => ({ says: `${named(part)} moves with ${counted(plies, 'ply', 'plies')} of its own.` }),
  many: ({ part, plies, most }) => ({
    says: `${named(part)} moves with ${plies} plies on each other; more than ${most} make it heavy and stiff.`,
    remedy: `Leave a layer out, or use thinner paper for it.`,
  }),
  foam: ({ part, panel }) => ({
    says: `${named(part)} moves and carries foam with ${named(panel)}, which catches on what it passes and makes it heavy.`,
    remedy: `Glue ${named(panel)} flat, or put it where nothing moves.`,
  }),
  'foam-at-slit': ({ part, panel, slit }) => ({
    says: `${named(panel)} stands on foam and would have to go through ${named(slit)} as ${named(part)} moves.`,
    remedy: `Glue ${named(panel)} flat, or where it never reaches ${named(slit)}.`,
  }),
};
