import { named, type Sentences } from './sentence.ts';

export const lidGoesOver: Sentences<'lid-goes-over'> = {
  'goes-over': ({ lid, over, room }, words) => ({
    says: `${named(lid)} goes over ${named(over)} with ${words.length(room)} of room.`,
  }),
  tight: ({ lid, over, room, play }, words) => ({
    says: `${named(lid)} is only ${words.length(room)} wider than ${named(over)}, where ${words.length(play)} of play is wanted.`,
    remedy: `Make ${named(lid)} ${words.length(play.minus(room))} wider, or try it on scrap.`,
  }),
  'too-small': ({ lid, over, room, play }, words) => ({
    says: room.isZero
      ? `${named(lid)} is exactly as wide as ${named(over)} and does not go over it.`
      : `${named(lid)} is ${words.length(room.abs())} narrower than ${named(over)} and does not go over it.`,
    remedy: `Make ${named(lid)} ${words.length(play.minus(room))} wider.`,
  }),
};
