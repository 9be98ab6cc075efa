import { named, type Sentences } from './sentence.ts';

export const closedSize: Sentences<'closed-size'> = {
  within: ({ piece, width, height, cover }, words) => ({
    says: `Closed, ${named(piece)} is ${words.size(width, height)}. Nothing sticks out past ${named(cover)}.`,
  }),
  'sticks-out': ({ piece, width, height, cover, panel, side, by }, words) => ({
    says: `Closed, ${named(piece)} is ${words.size(width, height)}: ${named(panel)} sticks out ${words.measured(by)} past ${named(cover)} ${where(side)}.`,
    remedy: `If that is not meant, shorten ${named(panel)} by ${words.atLeast(by)}; if it is, name the panels that the card lies within, under \`closes-within\`.`,
  }),
  'turned-over': ({ piece, width, height, cover, panel, side, by, part, like }, words) => ({
    says: `Closed, ${named(piece)} is ${words.size(width, height)}: glued ${like} to ${like}, ${named(part)} is turned over, and ${named(panel)} sticks out ${words.measured(by)} past ${named(cover)} ${where(side)}.`,
    remedy: `Glue ${named(part)} by its ${like === 'back' ? 'face' : 'back'}: leave out \`${like} of\`, or write it only once.`,
  }),
  box: ({ piece, width, height, deep }, words) => ({
    says: `As it is posted, ${named(piece)} is ${words.size(width, height)} and ${words.length(deep)} deep.`,
  }),
  'as-promised': ({ piece, width, height }, words) => ({
    says: `Closed, ${named(piece)} is ${words.size(width, height)}, the size that is promised.`,
  }),
  turned: ({ piece, width, height, promisedWidth, promisedHeight }, words) => ({
    says: `Closed, ${named(piece)} is ${words.size(width, height)}; the size promised is ${words.size(promisedWidth, promisedHeight)}, the other way round. Width comes first.`,
    remedy: `Write \`finished: ${words.size(width, height)}\`, or change the fold to make an upright card of a lying one.`,
  }),
  'not-as-promised': ({ piece, width, height, promisedWidth, promisedHeight }, words) => {
    const wider = width.minus(promisedWidth);
    const higher = height.minus(promisedHeight);
    const parts = [
      wider.isZero ? '' : `${words.length(wider.abs())} ${wider.isPositive ? 'wider' : 'narrower'}`,
      higher.isZero ? '' : `${words.length(higher.abs())} ${higher.isPositive ? 'higher' : 'lower'}`,
    ].filter((part) => part !== '');
    return {
      says: `Closed, ${named(piece)} is ${words.size(width, height)}, not the ${words.size(promisedWidth, promisedHeight)} that is promised: ${parts.join(' and ')}.`,
      remedy: `Change the panels, or promise ${words.size(width, height)}.`,
    };
  },
  'does-not-close': ({ piece }) => ({
    says: `The closed size was not measured, because ${named(piece)} does not close.`,
  }),
};

function where(side: 'left' | 'right' | 'top' | 'bottom'): string {
  return side === 'left' || side === 'right' ? `on the ${side}` : `at the ${side}`;
}
