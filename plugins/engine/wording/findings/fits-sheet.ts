import type { Length } from '../../units/index.ts';
import { article, type EditionWords, named, type Sentences } from './sentence.ts';

export const fitsSheet: Sentences<'fits-sheet'> = {
  fits: ({ piece, width, height, sheet, along, across }, words) => ({
    says: `${named(piece)}, ${words.size(width, height)}, comes from one ${sheet} sheet, ${spare(along, across, words)}.`,
  }),
  'too-big': ({ piece, width, height, sheet, along, across, instead }, words) => ({
    says: `${named(piece)}, ${words.size(width, height)}, does not come from ${article(sheet)} ${sheet} sheet: it is ${over(along, across, words)}.`,
    remedy:
      instead === ''
        ? `Make ${named(piece)} smaller, or join it from two.`
        : `Cut it from ${article(instead)} ${instead} sheet, or make ${named(piece)} smaller.`,
  }),
  'no-sheet': ({ piece, width, height, stock, instead }, words) => ({
    says: `No sheet is named for \`${stock}\`, so it is not known whether ${named(piece)}, ${words.size(width, height)}, can be cut.`,
    remedy:
      instead === ''
        ? `Name the sheet that you cut it from.`
        : `Name the sheet that you cut it from: ${instead} would do.`,
  }),
};

function spare(along: Length, across: Length, words: EditionWords): string {
  if (along.isZero && across.isZero) return 'which it uses whole';
  return `with ${words.length(along)} left along and ${words.length(across)} across`;
}

function over(along: Length, across: Length, words: EditionWords): string {
  const parts = [
    along.isPositive || along.isZero ? '' : `${words.length(along.abs())} too long`,
    across.isPositive || across.isZero ? '' : `${words.length(across.abs())} too wide`,
  ];
  return parts.filter((part) => part !== '').join(' and ');
}
