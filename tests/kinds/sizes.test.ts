import { describe, expect, it } from 'vitest';
import type { System } from '../../plugins/engine/index.ts';
import { CATALOGUE, cardWith, kindOf, type Settings } from './support/catalogue.ts';
import { closedSizeOf } from './support/closed.ts';
import { judge, said, stopsShort, wrongInShape } from './support/judged.ts';

/** The finished sizes that the trade makes most: common practice, no source; ISO A6 by ISO 216. */
const SIZES: Readonly<Record<string, readonly [width: string, height: string, system: System, shown: string]>> = {
  'US A2': ['4 1/4 in', '5 1/2 in', 'inch', '4 1/4 x 5 1/2 in'],
  'ISO A6': ['105 mm', '148 mm', 'metric', '105 x 148 mm'],
  '5 x 7 in': ['5 in', '7 in', 'inch', '5 x 7 in'],
  '6 x 6 in': ['6 in', '6 in', 'inch', '6 x 6 in'],
};

const ALL = Object.keys(SIZES);

const byBothSides = (width: string, height: string): Settings => ({ width, height });
const bySide = (side: string): Settings => ({ side });

/** How a kind is asked for a closed size, and which sizes it is made in. */
const MADE: Readonly<
  Record<string, { readonly sizes: readonly string[]; readonly by: (width: string, height: string) => Settings }>
> = {
  accordion: { sizes: ALL, by: byBothSides },
  'box-pop-up': { sizes: ALL, by: byBothSides },
  // Closed it is one and a half times as wide as its back: 6 in for a back of 4. Smaller cards leave no stage.
  bridge: { sizes: ['6 x 6 in'], by: (_, height) => ({ width: '4 in', height }) },
  easel: { sizes: ALL, by: byBothSides },
  // Its closed size is that of a lid over a box.
  'exploding-box': { sizes: [], by: bySide },
  'explosion-insert': { sizes: ALL, by: byBothSides },
  gate: { sizes: ALL, by: byBothSides },
  'graduated-pleat': { sizes: ALL, by: byBothSides },
  'inner-card': { sizes: ALL, by: byBothSides },
  'pull-slider': { sizes: ALL, by: byBothSides },
  'shaker-front': { sizes: ALL, by: byBothSides },
  'short-front': { sizes: ALL, by: byBothSides },
  'side-fold': { sizes: ALL, by: byBothSides },
  // Square by its nature.
  'square-easel': { sizes: ['6 x 6 in'], by: bySide },
  swing: { sizes: ALL, by: byBothSides },
  'top-fold': { sizes: ALL, by: byBothSides },
  // Asked for by the width of a flap, half the card.
  'tri-shutter': { sizes: ALL, by: (width, height) => ({ flap: `(${width})/2`, height }) },
  'twisting-easel': { sizes: ['6 x 6 in'], by: bySide },
  'v-fold': { sizes: ALL, by: byBothSides },
  'z-fold': { sizes: ALL, by: byBothSides },
};

it('says of every kind which sizes it is made in', () => {
  expect(CATALOGUE.map(({ id }) => id).filter((id) => MADE[id] === undefined)).toEqual([]);
});

describe.each(Object.entries(MADE).filter(([, { sizes }]) => sizes.length > 0))('%s', (id, { sizes, by }) => {
  it.each(sizes)('is made in %s', (name) => {
    const [width, height, system, shown] = SIZES[name] ?? ['', '', 'inch', ''];
    const card = cardWith(kindOf(id).fold, system, by(width, height));
    const judged = judge(card);
    expect(stopsShort(judged.folded)).toEqual([]);
    expect(wrongInShape(judged.findings).map((finding) => said(finding, card))).toEqual([]);
    expect(closedSizeOf(judged, system)).toBe(shown);
  });
});
