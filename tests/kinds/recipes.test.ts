import { describe, expect, it } from 'vitest';
import { recipeOf, type System } from '../../plugins/engine/index.ts';
import { cardWith, kindOf, type Settings } from './support/catalogue.ts';
import { closedSizeOf } from './support/closed.ts';
import { judge, said, stopsShort, wrongInShape } from './support/judged.ts';

interface Recipe {
  readonly kind: string;
  readonly settings: Settings;
  readonly system?: System;
  /** Sheet and scores from one end, of each piece, as makers say them. */
  readonly says: readonly string[];
  readonly closed: string;
}

/** Sheets, scores and closed sizes as lessons give them: common practice, no source. */
const RECIPES: readonly Recipe[] = [
  {
    kind: 'side-fold',
    settings: { width: '4 1/4', height: '5 1/2' },
    says: ['base 8 1/2 x 5 1/2 in; 4 1/4'],
    closed: '4 1/4 x 5 1/2 in',
  },
  {
    kind: 'top-fold',
    settings: { width: '4 1/4', height: '5 1/2' },
    says: ['base 4 1/4 x 11 in; 5 1/2'],
    closed: '4 1/4 x 5 1/2 in',
  },
  {
    kind: 'side-fold',
    settings: { width: '105 mm', height: '148 mm' },
    system: 'metric',
    says: ['base 210 x 148 mm; 105'],
    closed: '105 x 148 mm',
  },
  { kind: 'side-fold', settings: { width: '5', height: '7' }, says: ['base 10 x 7 in; 5'], closed: '5 x 7 in' },
  {
    // An A2 side fold with 1 1/4 in cut off the front's free edge.
    kind: 'short-front',
    settings: { width: '4 1/4', height: '5 1/2', short: '1 1/4' },
    says: ['base 7 1/4 x 5 1/2 in; 3'],
    closed: '4 1/4 x 5 1/2 in',
  },
  {
    kind: 'gate',
    settings: { width: '4 1/4', height: '5 1/2' },
    says: ['base 8 1/2 x 5 1/2 in; 2 1/8, 6 3/8'],
    closed: '4 1/4 x 5 1/2 in',
  },
  { kind: 'gate', settings: { width: '6', height: '4' }, says: ['base 12 x 4 in; 3, 9'], closed: '6 x 4 in' },
  {
    kind: 'tri-shutter',
    settings: { flap: '2', height: '7', inset: '1 1/2' },
    says: ['sheet 12 x 7 in; 2, 4, 8, 10'],
    closed: '4 x 7 in',
  },
  {
    kind: 'tri-shutter',
    settings: { flap: '1 3/4', height: '5 1/2', inset: '1 1/2' },
    says: ['sheet 10 1/2 x 5 1/2 in; 1 3/4, 3 1/2, 7, 8 3/4'],
    closed: '3 1/2 x 5 1/2 in',
  },
  {
    kind: 'graduated-pleat',
    settings: {
      ...{ width: '4 1/4', height: '5 1/2', first: '1 1/4', second: '2 1/2', third: '3 1/2' },
      ...{ 'picture-width': '3 1/4', 'picture-height': '4 1/2' },
    },
    says: ['base 11 1/2 x 5 1/2 in; 1 1/4, 3 3/4 mountain, 7 1/4', 'picture 3 1/4 x 4 1/2 in'],
    closed: '4 1/4 x 5 1/2 in',
  },
  {
    kind: 'square-easel',
    settings: { side: '6' },
    says: ['base 12 x 6 in; 3 mountain, 6', 'front 6 x 6 in'],
    closed: '6 x 6 in',
  },
  {
    kind: 'easel',
    settings: { width: '4 1/4', height: '5 1/2' },
    says: ['base 4 1/4 x 11 in; 2 3/4 mountain, 5 1/2', 'front 4 1/4 x 5 1/2 in'],
    closed: '4 1/4 x 5 1/2 in',
  },
  {
    // The size of the discs is not given; two inches is ours.
    kind: 'twisting-easel',
    settings: { side: '5 1/2', disc: '2' },
    says: [
      'base 11 x 5 1/2 in; 2 3/4 mountain, 5 1/2',
      'front 5 1/2 x 5 1/2 in',
      'disc(1) 2 x 2 in; 1',
      'disc(2) 2 x 2 in; 1',
    ],
    closed: '5 1/2 x 5 1/2 in',
  },
  ...['top', 'centre'].map(
    (level): Recipe => ({
      // The ornament is ours. A frame of 6-3-6-3 lies flat as 6 + 3.
      kind: 'bridge',
      settings: { width: '6', depth: '3', height: '5', strip: '1 1/2', level, ornament: '1 1/2' },
      says: ['base 12 x 5 in; 3, 6', 'bridge 12 x 1 1/2 in; 3, 6', 'charm 1 1/2 x 1 1/2 in'],
      closed: '9 x 5 in',
    }),
  ),
  {
    kind: 'inner-card',
    settings: { width: '4 1/4', height: '5 1/2', 'inner-width': '2 1/2', 'inner-height': '3 3/4' },
    says: ['base 8 1/2 x 5 1/2 in; 4 1/4', 'inner 5 x 3 3/4 in; 2 1/2'],
    closed: '4 1/4 x 5 1/2 in',
  },
  {
    kind: 'swing',
    settings: { width: '4 1/8', height: '5 1/2', 'from-top': '2 3/4' },
    says: ['card 8 1/4 x 5 1/2 in; 2 3/4 mountain, 4 1/8'],
    closed: '4 1/8 x 5 1/2 in',
  },
  {
    // The blocks are added by a post: see composed.test.ts.
    kind: 'z-fold',
    settings: { width: '3 3/4', height: '5 3/4', turn: '3 3/4' },
    says: ['base 11 1/4 x 5 3/4 in; 3 3/4 mountain, 7 1/2'],
    closed: '3 3/4 x 5 3/4 in',
  },
  {
    // "Scored 4 from each side": the second score stands 4 from the far end.
    kind: 'exploding-box',
    settings: { side: '4', high: '4', step: '1/2', drop: '1 1/2', play: '1/16', layers: '3' },
    says: [
      'layer(1) 12 x 12 in; 4, 8 across; 4, 8 down',
      'layer(2) 11 1/2 x 11 1/2 in; 4, 7 1/2 across; 4, 7 1/2 down',
      'layer(3) 11 x 11 in; 4, 7 across; 4, 7 down',
      'lid 7 1/16 x 7 1/16 in; 1 1/2, 5 9/16 across; 1 1/2, 5 9/16 down',
    ],
    closed: '4 1/16 x 4 1/16 in',
  },
  {
    kind: 'exploding-box',
    settings: { side: '9 cm', high: '9 cm', step: '0 cm', lower: '1 cm', drop: '4 cm', play: '1 mm', layers: '3' },
    system: 'metric',
    says: [
      'layer(1) 270 x 270 mm; 90, 180 across; 90, 180 down',
      'layer(2) 250 x 250 mm; 80, 170 across; 80, 170 down',
      'layer(3) 230 x 230 mm; 70, 160 across; 70, 160 down',
      'lid 171 x 171 mm; 40, 131 across; 40, 131 down',
    ],
    closed: '91 x 91 mm',
  },
  {
    // A lesson has the square in a card of 3 x 3 in. The triangle is as long as the square: tests/cases/insert-too-long.
    kind: 'explosion-insert',
    settings: { width: '3', height: '6', side: '5 1/2' },
    says: ['base 6 x 6 in; 3', 'insert 5 1/2 x 5 1/2 in; 2 3/4 mountain'],
    closed: '3 x 6 in',
  },
];

describe('recipes of the trade come out of the kinds', () => {
  it.each(RECIPES.map((recipe) => [`${recipe.kind}, ${recipe.closed}`, recipe] as const))('%s', (_, recipe) => {
    const { kind, settings, system = 'inch', says, closed } = recipe;
    const card = cardWith(kindOf(kind).fold, system, settings);
    const first = card.pieces[0]?.name ?? '';
    const lines = new Map<string, string[]>();
    for (const { piece = first, cut, along, score } of recipeOf(card)) {
      const line = lines.get(piece) ?? [`${piece} ${cut}`];
      const square = says.some((said) => said.startsWith(`${piece} `) && said.endsWith('down'));
      if (score !== undefined) line.push(square ? `${score} ${along ?? 'across'}` : score);
      lines.set(piece, line);
    }
    expect([...lines.values()].map((line) => line.join('; '))).toEqual(says);
    const judged = judge(card);
    expect(stopsShort(judged.folded)).toEqual([]);
    expect(wrongInShape(judged.findings).map((finding) => said(finding, card))).toEqual([]);
    expect(closedSizeOf(judged, system)).toBe(closed);
  });

  it('a box is as high as its walls, and its lid lies on them', () => {
    const { fold } = kindOf('exploding-box');
    const { folded } = judge(cardWith(fold, 'inch', { side: '4', high: '4' }));
    expect(folded.closed[0]?.pose?.deep.equals('508/5')).toBe(true);
  });

  it('a graduated pleat closes to exactly 4 1/4 x 5 1/2 in, at 0, 1 1/4, -1 1/4, 2 1/4 and -2', () => {
    const { folded } = judge(cardWith(kindOf('graduated-pleat').fold, 'inch'));
    const pose = folded.closed[0]?.pose;
    if (pose === undefined) throw new Error('no pose');
    expect(pose.box.right.sub(pose.box.left).div('127/5').toFraction(true)).toBe('4 1/4');
    expect(pose.box.bottom.sub(pose.box.top).div('127/5').toFraction(true)).toBe('5 1/2');
    // Worked by hand: each panel begins where the one before ends, and goes back. The back lies as drawn, from -2 at its fold.
    const hand: Record<string, readonly [number, number]> = {
      'base.first': [0, 1.25],
      'base.second': [-1.25, 1.25],
      'base.third': [-1.25, 2.25],
      'base.back': [-2, 2.25],
    };
    const inches = (panel: string): number[] =>
      (pose.panels.find((one) => one.panel === panel)?.outline ?? []).map(({ x }) => x.div('127/5').valueOf());
    const end = Math.max(...inches('base.back'));
    for (const [panel, [from, to]] of Object.entries(hand)) {
      const seen = inches(panel).map((x) => x - end);
      // The free edge of the back is at -2 by hand, and the fold at 2 1/4.
      expect([Math.min(...seen), Math.max(...seen)], panel).toEqual([-2 - to, -2 - from]);
    }
  });
});
