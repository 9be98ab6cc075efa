import { counted, listed, named, type Sentences } from './sentence.ts';

export const thickness: Sentences<'thickness'> = {
  thick: ({ piece, overall, least, greatest, made, gives, springback, creases, assumed }, words) => {
    const where = least.equals(greatest)
      ? 'the same everywhere'
      : `from ${words.thin(least)} at its thinnest to ${words.thin(greatest)} where ${listed(made)} lie on each other`;
    const soft = gives.isZero ? '' : ` Of this ${words.thin(gives)} is foam, which gives.`;
    const spring =
      creases === 0
        ? ''
        : ` ${counted(creases, 'shut fold')} may spring back by ${words.thin(springback)} more until the card is pressed: one thickness of paper a fold, common practice, no source.`;
    return {
      says: `Closed, ${named(piece)} is ${words.thin(overall)} thick, ${where}.${soft}${spring}${supposed(assumed)}`,
    };
  },
  unknown: ({ piece, stocks }) => ({
    says: `It is not known how thick ${named(piece)} is, because nobody says how thick ${listed(stocks)} is.`,
    remedy: `Measure it and write \`caliper:\` in its supply: twenty sheets between the jaws, divided by twenty.`,
  }),
  'foam-height': ({ where, stock, high, layer }, words) => ({
    says: `${named(where)} counts on ${words.thin(high)} of ${named(stock)}, but a layer of that is ${words.thin(layer)} high, and no number of layers comes to it.`,
    remedy: `Give the foam the height that it has, or as many layers as you use.`,
  }),
  box: ({ piece, deep }, words) => ({
    says: `${named(piece)} is posted standing up: ${words.length(deep)} deep, its paper not counted.`,
  }),
  'not-folded': ({ piece }) => ({
    says: `The thickness was not measured, because ${named(piece)} does not close.`,
  }),
};

/** What the figures rest upon that nobody named. */
export function supposed(assumed: string): string {
  if (assumed === '') return '';
  return ` Assumed, since no supply is named: ${listed(assumed)}.`;
}
