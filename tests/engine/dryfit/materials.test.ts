import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { Length, type Materials } from '../../../plugins/engine/index.ts';
import { type Design, folded, paper, sayWay, WAYS } from '../support/layered-design.ts';
import { found, lengthIn, outcomes, said } from './found.ts';

const STOCK: Materials = {
  cover: paper('0.3', 270),
  mat: paper('0.2', 160),
  foam: { name: 'foam tape', sort: 'foam', height: Length.fromInches('1/16'), density: new Fraction('0.1') },
  glue: paper('0.05', 50, { sort: 'adhesive' }),
};

const SIDE_FOLD: Design = { pieces: [{ name: 'base', across: ['front 4', 'valley spine', 'back 4'], down: 5 }] };

const LETTER = { name: 'US Letter', width: Length.fromInches('17/2'), height: Length.fromInches(11) };

describe.each(WAYS.map((way) => ({ way, title: sayWay(way) })))('findings of materials, $title', ({ way }) => {
  const check = (name: Parameters<typeof outcomes>[0], design: Design, materials = STOCK, more = {}) =>
    outcomes(name, folded(design, way, materials, more));

  describe('creasing', () => {
    it('wants a channel of 1.3 to 1.5 calipers beside the rule from 150 g/m2 on (mill guides)', () => {
      const [channel] = found('crease-channel', folded(SIDE_FOLD, way, STOCK));
      expect(channel?.outcome).toBe('channel');
      expect(lengthIn(channel, 'along').mm.toString()).toBe('0.39');
      expect(lengthIn(channel, 'across').mm.toString()).toBe('0.45');
      expect(check('crease-channel', SIDE_FOLD, { cover: paper('0.19', 150) })).toEqual(['channel cover']);
      expect(check('crease-channel', SIDE_FOLD, { cover: paper('0.19', 149) })).toEqual(['no-channel cover']);
    });

    it('asks about a spine that is narrower than its channels, and not about one that has room', () => {
      const spine = (size: string): Design => ({
        pieces: [{ name: 'base', across: ['front 4', 'valley one', `spine ${size}`, 'valley two', 'back 4'], down: 5 }],
      });
      // 1.5 x 0.8 mm and the rule of 0.7 mm are 1.9 mm: more than 1/16 in, less than 1/8 in.
      const heavy = { cover: paper('0.8', 600) };
      expect(check('crease-channel', spine('0.0625'), heavy)).toEqual(['too-close spine', 'channel cover']);
      expect(check('crease-channel', spine('0.125'), heavy)).toEqual(['channel cover']);
    });

    it('is not known for a paper that nobody weighed', () => {
      expect(check('crease-channel', SIDE_FOLD, { cover: { name: 'a find', sort: 'paper' } })).toEqual([
        'unknown cover',
      ]);
    });
  });

  describe('grain', () => {
    it('along the main fold is right, across it asked about', () => {
      const piece = { name: 'base', across: ['front 4', 'valley spine', 'back 4'], down: 5 } as const;
      const sheet = { sheets: { cover: LETTER } };
      const long = { cover: paper('0.3', 270, { grain: 'long' }) };
      expect(check('grain', { pieces: [{ ...piece, grain: 'across' }] }, long, sheet)).toEqual(['across spine']);
      expect(check('grain', { pieces: [{ ...piece, grain: 'down' }] }, long, sheet)).toEqual(['along spine']);
      expect(check('grain', SIDE_FOLD, long, sheet)).toEqual(['along spine']);
    });

    it('of the sheet decides where the piece lies on it one way only', () => {
      // 9 in along the fold comes from the 11 in of a Letter sheet alone, 8 in across from the 8 1/2.
      const tall: Design = { pieces: [{ name: 'base', across: ['front 4', 'valley spine', 'back 4'], down: 9 }] };
      const sheet = { sheets: { cover: LETTER } };
      expect(check('grain', tall, { cover: paper('0.3', 270, { grain: 'long' }) }, sheet)).toEqual(['along spine']);
      const short = folded(tall, way, { cover: paper('0.3', 270, { grain: 'short' }) }, sheet);
      expect(outcomes('grain', short)).toEqual(['sheet-across spine']);
      expect(found('grain', short)[0]?.state).toBe('question');
      // A sheet of its own wins over the card's.
      const own = { grain: 'short', sheet: { width: Length.fromInches(17), height: Length.fromInches(11) } } as const;
      expect(check('grain', tall, { cover: paper('0.3', 270, own) }, sheet)).toEqual(['along spine']);
    });

    it('is not known where no supply says, and asked once a stock', () => {
      const two: Design = {
        pieces: [...SIDE_FOLD.pieces, { name: 'other', across: ['near 2', 'valley turn', 'far 2'], down: 3 }],
      };
      expect(check('grain', two, STOCK, { sheets: { cover: LETTER } })).toEqual(['not-known spine']);
      expect(said('grain', folded(two, way, STOCK))).toContain(way.turned ? 'across the piece' : 'up and down');
    });
  });

  describe('moving parts', () => {
    const slider = (...tiles: readonly { foam?: number; at: readonly [number, number, number, number] }[]): Design => ({
      pieces: [
        {
          name: 'card',
          across: 8,
          down: 5,
          slits: [
            [2, 1, 4],
            [6, 1, 4],
          ],
        },
        { name: 'pull', across: 7, down: 2.75, stock: 'mat' },
        ...tiles.map(({ at }, i) => ({ name: `tile-${i}`, across: at[2], down: at[3], stock: 'mat' })),
      ],
      joins: [
        { is: 'slide', part: 'pull', onto: 'card' },
        ...tiles.map(({ at, foam }, i) => ({ part: `tile-${i}`, onto: 'pull', at, ...(foam && { foam }) })),
      ],
      panels: { pull: [7, 2.75] },
    });

    it('a slider may carry a little paper', () => {
      expect(check('moving-layers', slider({ at: [3, 1, 1, 1] }))).toEqual(['light pull']);
    });

    it('foam on a slider is asked about between its slits, and refused where it would go through one', () => {
      // The pull is 7 in long and has 1/4 in to stay beyond each slit: it moves 1 1/4 in to either side. The slits lie 1 1/2 in from its ends.
      expect(check('moving-layers', slider({ at: [3, 1, 1, 1], foam: 0.0625 }))).toEqual(['foam tile-0']);
      const caught = folded(slider({ at: [2, 1, 1, 1], foam: 0.0625 }), way, STOCK);
      expect(outcomes('moving-layers', caught)).toEqual(['foam-at-slit tile-0']);
      expect(found('moving-layers', caught)[0]?.state).toBe('fail');
    });

    it('a pinned part with more than three plies is asked about', () => {
      const pinned = (count: number): Design => ({
        pieces: [
          { name: 'card', across: 8, down: 5 },
          { name: 'wheel', across: 3, down: 3, stock: 'mat' },
          ...Array.from({ length: count }, (_, i) => ({ name: `disc-${i}`, across: 2, down: 2, stock: 'mat' })),
        ],
        joins: [
          { is: 'pin', part: 'wheel', onto: 'card' },
          ...Array.from({ length: count }, (_, i) => ({
            part: `disc-${i}`,
            onto: i === 0 ? 'wheel' : `disc-${i - 1}`,
          })),
        ],
      });
      expect(check('moving-layers', pinned(2))).toEqual(['light wheel']);
      expect(check('moving-layers', pinned(3))).toEqual(['many wheel']);
    });

    it('what swings in a part-cut shape is looked at too', () => {
      const swing: Design = {
        pieces: [
          {
            name: 'card',
            across: ['flap 3', 'mountain swing', 'strip 2', 'valley spine', 'back 5'],
            down: 5,
            shapes: { disc: { box: [2, 1.5, 2, 2], staysWith: 'strip' } },
          },
          { name: 'fish', across: 1, down: 1, stock: 'mat' },
        ],
        joins: [{ part: 'fish', onto: 'card.strip', foam: 0.0625 }],
      };
      expect(check('moving-layers', swing)).toEqual(['foam fish']);
      expect(check('moving-layers', { ...swing, joins: [{ part: 'fish', onto: 'card.strip' }] })).toEqual([
        'light card.disc',
      ]);
    });
  });

  describe('thickness and weight', () => {
    const mounted = (foam: number): Design => ({
      pieces: [...SIDE_FOLD.pieces, { name: 'tile', across: 2, down: 2, stock: 'mat' }],
      joins: [{ part: 'tile', onto: 'base.back', at: [1, 1, 2, 2], foam }],
      panels: { 'base.back': [4, 5] },
    });

    it('always say their figure, with what gives and what is assumed', () => {
      const card = folded(mounted(0.0625), way, STOCK);
      const [thick] = found('thickness', card);
      // back 0.3 + foam 1.5875 + tile 0.2 + front 0.3
      expect(thick).toMatchObject({ outcome: 'thick', state: 'pass' });
      expect(lengthIn(thick).mm.toString()).toBe('2.3875');
      expect(lengthIn(thick, 'gives').mm.toString()).toBe('1.5875');
      const [weighs] = found('weight', card);
      // 40 sq in of 270 g/m2, 4 of 160, and 4 x 1/16 cu in of foam at 0.1 g/cm3
      const grams = (40 * 645.16 * 270 + 4 * 645.16 * 160) / 1e6 + (4 * 645.16 * 1.5875 * 0.1) / 1000;
      expect(weighs).toMatchObject({ outcome: 'weighs', state: 'pass' });
      expect(weighs?.figure).toBeCloseTo(grams, 1);
      expect(found('thickness', folded(mounted(0.0625), way, {}))[0]?.facts.assumed).toBe('cover, mat');
    });

    it('are untested for a paper that nobody measured', () => {
      const bare = { ...STOCK, mat: { name: 'a find', sort: 'paper' } as const };
      const card = folded(mounted(0.0625), way, bare);
      expect(outcomes('thickness', card)).toEqual(['unknown mat']);
      expect(outcomes('weight', card)).toEqual(['unknown mat']);
      expect([...found('thickness', card), ...found('weight', card)].map(({ state }) => state)).toEqual([
        'untested',
        'untested',
      ]);
    });

    it('say how deep a box is that is posted standing, and what it weighs', () => {
      const box: Design = {
        pieces: [
          {
            name: 'tray',
            across: ['one 2', 'valley a', 'floor 4', 'valley b', 'two 2'],
            down: ['three 2', 'valley c', 'middle 4', 'valley d', 'four 2'],
          },
        ],
        more: 'poses: { boxed: { all: 90 } }\nposts: boxed',
      };
      const cut = { ...box, pieces: box.pieces.map((piece) => ({ ...piece, corners: 'away' as const })) };
      const card = folded(cut, way, STOCK);
      expect(outcomes('thickness', card)).toEqual(['box']);
      expect(lengthIn(found('thickness', card)[0]).equals(Length.fromInches(2))).toBe(true);
      // A square of 8 in without its corners of 2 in: 48 sq in.
      expect(found('weight', card)[0]?.figure).toBeCloseTo((48 * 645.16 * 270) / 1e6, 1);
    });

    it('are not measured of a card that does not close', () => {
      const stuck: Design = {
        pieces: [
          { name: 'base', across: ['a 3', 'valley one', 'b 1', 'mountain two', 'c 3', 'valley three', 'd 1'], down: 5 },
        ],
        more: 'poses: { closed: { one: solve, others: shut } }',
      };
      expect(check('thickness', stuck)).toEqual(['not-folded']);
    });

    it('ask about foam of a height that no number of its layers has', () => {
      const card = folded(mounted(0.09375), way, STOCK);
      expect(outcomes('thickness', card)).toContain('foam-height tile onto base.back');
      expect(outcomes('thickness', folded(mounted(0.125), way, STOCK)).join()).not.toContain('foam-height');
    });
  });
});
