import type { Length } from '../../units/index.ts';
import { article, type EditionWords, named, type Sentences } from './sentence.ts';

export const fitsEnvelope: Sentences<'fits-envelope'> = {
  fits: ({ envelope, along, across, clearance }, words) => ({
    says: `It fits ${article(envelope)} ${envelope} envelope with ${words.length(along)} to spare along and ${words.length(across)} across (at least ${words.length(clearance)} is wanted).`,
  }),
  tight: ({ envelope, along, across, clearance, next }, words) => ({
    says: `It is tight in ${article(envelope)} ${envelope} envelope: ${words.length(along)} to spare along and ${words.length(across)} across, where ${words.length(clearance)} is wanted.`,
    remedy: `Try it with the finished card${orTake(next)}.`,
  }),
  'too-big': ({ piece, envelope, along, across, next }, words) => ({
    says: `It does not fit ${article(envelope)} ${envelope} envelope: ${tooBig(along, across, words)}.`,
    remedy:
      next === ''
        ? `Make ${named(piece)} smaller; no usual envelope holds it.`
        : `Take ${article(next)} ${next} envelope, or make ${named(piece)} smaller.`,
  }),
  'no-envelope': ({ next }) => ({
    says: next === '' ? 'No envelope is named, and no usual one holds the card.' : 'No envelope is named.',
    remedy:
      next === ''
        ? `Name the envelope you use, or make the card smaller.`
        : `Add \`envelope: ${next}\`: it is the smallest of the usual envelopes that the card fits.`,
  }),
  box: ({ piece, deep }, words) => ({
    says: `No envelope was tried, because ${named(piece)} is posted standing up, ${words.length(deep)} deep.`,
  }),
  'does-not-close': ({ piece }) => ({
    says: `The envelope was not tried, because ${named(piece)} does not close.`,
  }),
};

function orTake(next: string): string {
  return next === '' ? '' : `, or take ${article(next)} ${next} envelope`;
}

function tooBig(along: Length, across: Length, words: EditionWords): string {
  const along_ = lack(along, 'long', words);
  const across_ = lack(across, 'wide', words);
  return [along_, across_].filter((part) => part !== '').join(' and ');
}

function lack(room: Length, way: 'long' | 'wide', words: EditionWords): string {
  if (room.isPositive) return '';
  if (room.isZero) return `exactly as ${way} as the envelope, with nothing to spare`;
  return `${words.length(room.abs())} too ${way}`;
}
