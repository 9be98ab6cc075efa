import { describe, expect, it } from 'vitest';
import { Length, type Materials, turnTakes } from '../../../plugins/engine/index.ts';
import { type Design, folded, paper, sayWay, WAYS } from '../support/layered-design.ts';
import { found, lengthIn, outcomes } from './found.ts';

/** Card of 0.3 mm, text paper of 0.1 mm, and glue that counts as nothing, so that sums are short. */
const STOCK: Materials = {
  cover: paper('0.3', 270),
  inner: paper('0.1', 90),
  heavy: paper('0.8', 600),
  glue: paper('0', 50, { sort: 'adhesive' }),
  foam: { name: 'foam', sort: 'foam', height: Length.fromInches('1/16') },
};

/** A letter fold: `flap` is tucked into the fold at `one`, since `front` is too long to be tucked into the other. */
function letterFold(flap: number, stock = 'cover', front = 4.25): Design {
  return {
    pieces: [
      {
        name: 'sheet',
        across: [`front ${front}`, 'valley one', 'back 4', 'valley two', `flap ${flap}`],
        down: 5,
        stock,
      },
    ],
  };
}

/** A folded sheet inside a side fold, spine in spine, loose but for one half that is glued. */
function nested(width: number): Design {
  return {
    pieces: [
      { name: 'base', across: ['front 4', 'valley spine', 'back 4'], down: 5 },
      { name: 'leaf', across: [`free ${width}`, 'valley middle', `fast ${width}`], down: 5, stock: 'inner' },
    ],
    joins: [{ part: 'leaf.fast', onto: 'base.back', at: [0, 0, width, 5] }],
    panels: { 'base.back': [4, 5] },
  };
}

describe('the paper that a turn uses', () => {
  it('is (k + 1) t to pi/2 (k + 1) t round k plies of caliper t (derived from a square and a round bend)', () => {
    for (const k of [0, 1, 2, 5]) {
      const { least, most } = turnTakes(Length.fromMm('0.3'), Length.fromMm('0.3').times(k));
      expect(least.toMm()).toBeCloseTo((k + 1) * 0.3, 12);
      expect(most.toMm()).toBeCloseTo((Math.PI / 2) * (k + 1) * 0.3, 6);
    }
  });
});

describe.each(WAYS.map((way) => ({ way, title: sayWay(way) })))('thickness in the fold, $title', ({ way }) => {
  const check = (design: Design, materials = STOCK) => outcomes('thickness-in-fold', folded(design, way, materials));

  it('a tucked flap as long as its panel is too long by half of what the turn uses', () => {
    const card = folded(letterFold(4), way, STOCK);
    // Round one ply of 0.3 mm the turn uses pi/2 x 0.6 mm; half of it, 0.471 mm, has to be free.
    expect(outcomes('thickness-in-fold', card)).toEqual(['short sheet.flap']);
    const [short] = found('thickness-in-fold', card);
    expect(lengthIn(short, 'by').toMm()).toBeCloseTo((Math.PI / 4) * 0.6, 5);
    expect(short?.state).toBe('question');
    // Heavier than paper gives: pi/4 x 1.6 mm.
    const heavy = folded(letterFold(4, 'heavy'), way, STOCK);
    expect(outcomes('thickness-in-fold', heavy)).toEqual(['too-long sheet.flap']);
    expect(found('thickness-in-fold', heavy)[0]?.state).toBe('fail');
    expect(lengthIn(found('thickness-in-fold', heavy)[0], 'by').toMm()).toBeCloseTo((Math.PI / 4) * 1.6, 5);
  });

  it('a flap that is 1/16 in shorter, as print finishers make it, is free', () => {
    expect(check(letterFold(3.9375))).toEqual(['clear sheet.one']);
    const [clear] = found('thickness-in-fold', folded(letterFold(3.9375), way, STOCK));
    expect(lengthIn(clear, 'inside').mm.toString()).toBe('0.3');
  });

  it('of two ways to fold, the one in which everything has room counts', () => {
    // Both ends could be tucked in; the flap is the shorter, and fits.
    expect(check(letterFold(3.9375, 'cover', 4))).toEqual(['clear sheet.one']);
    expect(check(letterFold(4, 'cover', 3.9375))).toEqual(['clear sheet.two']);
  });

  it('a sheet folded inside another creeps out by half of what the outer turn uses more', () => {
    const card = folded(nested(4), way, STOCK);
    expect(outcomes('thickness-in-fold', card)).toContain('creeps leaf.free');
    const creeps = found('thickness-in-fold', card).find(({ witness }) => witness === 'leaf.free');
    // Outer turn round two plies of 0.1 mm: 0.2 + 0.3 mm; the inner one's own 0.1 mm. Half the difference, square and round.
    expect(lengthIn(creeps, 'least').toMm()).toBeCloseTo(0.2, 9);
    expect(lengthIn(creeps, 'most').toMm()).toBeCloseTo((Math.PI / 2) * 0.2, 6);
    expect(lengthIn(creeps).toMm()).toBeCloseTo((Math.PI / 2) * 0.2, 6);
    expect(check(nested(3.9375)).filter((one) => one.startsWith('creeps'))).toEqual([]);
  });

  it('wants a spine where one score cannot go round what lies inside', () => {
    const design = (layers: number): Design => ({
      pieces: [
        { name: 'base', across: ['front 4', 'valley spine', 'back 4'], down: 5 },
        { name: 'tile', across: 2, down: 2 },
      ],
      joins: [{ part: 'tile', onto: 'base.back', at: [1, 1, 2, 2], foam: 0.0625, layers }],
      panels: { 'base.back': [4, 5] },
    });
    const card = folded(design(2), way, STOCK);
    expect(outcomes('thickness-in-fold', card)).toEqual(['needs-spine base.spine']);
    const [spine] = found('thickness-in-fold', card);
    // Foam 3.175 and tile 0.3 inside; the spine that much and one ply more.
    expect(lengthIn(spine, 'inside').mm.toString()).toBe('3.475');
    expect(lengthIn(spine, 'least').mm.toString()).toBe('3.775');
    const flat: Design = { ...design(1), joins: [{ part: 'tile', onto: 'base.back', at: [1, 1, 2, 2] }] };
    expect(check(flat)).toEqual(['clear base.spine']);
  });

  it('is not tried with a paper whose thickness nobody knows', () => {
    expect(check(letterFold(4), { cover: { name: 'a find', sort: 'paper' } })).toEqual(['unknown cover']);
  });
});
