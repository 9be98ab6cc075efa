import { counted, named, type Sentences } from './sentence.ts';

export const shaker: Sentences<'shaker'> = {
  moves: ({ filling, depth, bead, free }, words) => ({
    says: `${named(filling)} can move: the chamber is ${words.measured(depth)} deep, ${words.measured(free)} more than the largest bead, ${words.measured(bead)}.`,
  }),
  tight: ({ filling, depth, bead, free, least, layer, layers, now }, words) => ({
    says: `${named(filling)} is tight: the chamber is ${words.measured(depth)} deep and the largest bead ${words.measured(bead)}, which leaves ${words.measured(free)}, where ${words.measured(least)} is wanted. Foam gives when it is pressed, and film sags, so that beads rub.`,
    remedy: moreFoam(layers, now, words.measured(layer)),
  }),
  jams: ({ filling, depth, bead, least, layer, layers, now }, words) => ({
    says: `${named(filling)} does not move: the largest bead is ${words.measured(bead)} and the chamber only ${words.measured(depth)} deep. It wants the bead and ${words.measured(least)} more.`,
    remedy: moreFoam(layers, now, words.measured(layer)),
  }),
  'bead-unknown': ({ filling, stock, depth }, words) => ({
    says: `It was not tried whether ${named(filling)} moves in its chamber, ${words.measured(depth)} deep: nobody says how large ${named(stock)} is.`,
    remedy: `Measure the largest bead and write \`bead:\` in its supply.`,
  }),
  closed: ({ filling, floor, roof, wall, margin }, words) => ({
    says: `The chamber of ${named(filling)} is closed all round, between ${named(floor)} and ${named(roof)}: its narrowest wall is ${words.measured(wall)}, and both reach at least ${words.measured(margin)} past the opening.`,
  }),
  'no-chamber': ({ filling, piece, window }) => ({
    says: `${named(filling)} has no chamber: no paper is left round ${named(`${piece}.${window}`)}.`,
    remedy: `Make the window smaller than its piece.`,
  }),
  open: ({ filling, piece, side }) => ({
    says: `${named(filling)} falls out: nothing is glued to the ${side} of ${named(piece)} over the opening.`,
    remedy: `Glue a piece without a window there, as a film, or check by which side the pieces are glued.`,
  }),
  'open-in-part': ({ filling, panel }) => ({
    says: `${named(filling)} falls out: ${named(panel)} covers a part of the opening only.`,
    remedy: `Make ${named(panel)} larger, or move it over the whole opening.`,
  }),
  'narrow-wall': ({ filling, panel, wall, least }, words) => ({
    says: `The wall of ${named(panel)} round ${named(filling)} is ${words.measured(wall)} wide at its narrowest, where ${words.measured(least)} is wanted for it to hold.`,
    remedy: `Make the opening of ${named(panel)} smaller.`,
  }),
  'narrow-margin': ({ filling, panel, margin, least }, words) => ({
    says: `${named(panel)} reaches only ${words.measured(margin)} past the opening for ${named(filling)}, where ${words.measured(least)} is wanted to stick it.`,
    remedy: `Make ${named(panel)} larger, or the opening smaller.`,
  }),
  'frame-past-film': ({ filling, panel, film, by }, words) => ({
    says: `The window of ${named(panel)} reaches ${words.measured(by)} past ${named(film)}, whose edge would show, over ${named(filling)}.`,
    remedy: `Make ${named(film)} larger than the window of ${named(panel)} on all sides.`,
  }),
  'in-order': ({ filling, powder, closing }) => ({
    says: `In this order: 1. ${named(powder)}, 2. ${named(filling)}, 3. ${named(closing)}, which closes the chamber.`,
  }),
  'no-powder': ({ filling, closing }) => ({
    says: `Nothing is said against static. ${named(filling)} goes in before ${named(closing)} closes the chamber.`,
    remedy: `Wipe film and foam with anti-static powder before that, and say so under \`layers\`: \`as: anti-static\`.`,
  }),
  'powder-late': ({ filling, powder }) => ({
    says: `${named(powder)} comes after ${named(filling)}: powder keeps beads from clinging only when it is there first.`,
    remedy: `Put it before \`fill: ${filling}\` under \`layers\`.`,
  }),
  'filled-late': ({ filling, closing }) => ({
    says: `${named(filling)} is filled in after ${named(closing)} has closed the chamber.`,
    remedy: `Put \`fill: ${filling}\` before the step that glues ${named(closing)}.`,
  }),
};

function moreFoam(layers: number, now: number, layer: string): string {
  if (layers === 0) return 'Set the film on foam that is higher than the beads.';
  const why =
    layers === 2
      ? ' Two are usual for beads: one layer is hardly higher than a bead, and foam gives when it is pressed.'
      : '';
  return `Use ${counted(layers, 'layer')} of foam of ${layer} instead of ${now}, or smaller beads.${why}`;
}
