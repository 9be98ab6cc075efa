import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { Length, type Material, type Materials, type Thickness } from '../../../plugins/engine/index.ts';
import { caliperFor, gramsPerSquareMetre } from '../../../plugins/engine/units/index.ts';
import { COVER_POINTS, INDEX_CALIPERS } from '../../oracles/paper-tables.ts';
import { type SampledBond, type SampledPly, sampledPlates, sampledStacks } from '../../oracles/sampled-stacks.ts';
import { type Box, type Design, folded, paper, sayWay, WAYS, type Way } from '../support/layered-design.ts';

const FOAM: Material = {
  name: 'foam tape',
  sort: 'foam',
  height: Length.fromInches('1/16'),
  density: new Fraction('0.1'),
};

/** Calipers as a maker measures them, in whole hundredths of a millimetre. */
const STOCK: Materials = {
  cover: paper('0.28', 270),
  mat: paper('0.2', 160),
  film: paper('0.15', 200, { sort: 'film' }),
  foam: FOAM,
  glue: paper('0.05', 50, { sort: 'adhesive' }),
  paste: paper('0.4', 300, { sort: 'other' }),
};

function thicknessOf(design: Design, way: Way, materials = STOCK): Thickness {
  const [body] = folded(design, way, materials).closed;
  if (body?.thickness === undefined) throw new Error('no thickness');
  return body.thickness;
}

const base = { name: 'base', across: ['front 4.25', 'valley spine', 'back 4.25'], down: 5.5 } as const;
const panels = { 'base.front': [4.25, 5.5], 'base.back': [4.25, 5.5] } as const;

/** What a card's stack comes to by hand, in millimetres: overall, and the thinnest and the thickest place by itself. */
interface HandSum {
  readonly title: string;
  readonly design: Design;
  readonly overall: string;
  readonly least: string;
  readonly greatest: string;
  readonly gives: string;
}

const HAND_SUMS: readonly HandSum[] = [
  {
    title: 'a side fold with a mat inside',
    design: {
      pieces: [base, { name: 'mat', across: 4, down: 5.25, stock: 'mat' }],
      joins: [{ part: 'mat', onto: 'base.back', at: [0.125, 0.125, 4, 5.25] }],
      panels,
    },
    // back 0.28 + glue 0.05 + mat 0.20 + front 0.28
    overall: '0.81',
    greatest: '0.81',
    // At the rim there are back 0.28 and front 0.28 alone.
    least: '0.56',
    gives: '0',
  },
  {
    title: 'a greeting on one layer of foam, on a mat, inside',
    design: {
      pieces: [
        base,
        { name: 'mat', across: 4, down: 5.25, stock: 'mat' },
        { name: 'words', across: 3, down: 1, stock: 'mat' },
      ],
      joins: [
        { part: 'mat', onto: 'base.back', at: [0.125, 0.125, 4, 5.25] },
        { part: 'words', onto: 'mat', foam: 0.0625 },
      ],
      panels,
    },
    // back 0.28 + glue 0.05 + mat 0.20 + foam 1.5875 + words 0.20 + front 0.28
    overall: '2.5975',
    greatest: '2.5975',
    least: '0.56',
    gives: '1.5875',
  },
  {
    title: 'a shaker of two layers of foam',
    design: {
      pieces: [
        { name: 'backing', across: 4.25, down: 5.5 },
        { name: 'ring', across: 4, down: 5.25, windows: { chamber: [0.5, 0.5, 3, 4.25] }, stock: 'foam', thick: 0.125 },
        { name: 'film', across: 3.75, down: 5, stock: 'film' },
        { name: 'frame', across: 4.25, down: 5.5, windows: { view: [0.75, 0.75, 2.75, 4] } },
      ],
      stack: ['backing', 'ring', 'film', 'frame'],
    },
    // backing 0.28 + foam 2 x 1.5875 + film 0.15 + glue 0.05 + frame 0.28; foam tape has its own glue
    overall: '3.935',
    greatest: '3.935',
    // In the window backing 0.28 and film 0.15, with air between.
    least: '0.43',
    gives: '3.175',
  },
  {
    title: 'a letter fold of three panels, one tucked in',
    design: {
      pieces: [{ name: 'base', across: ['front 4', 'valley one', 'back 4', 'valley two', 'flap 3.75'], down: 5.5 }],
    },
    // three plies of 0.28
    overall: '0.84',
    greatest: '0.84',
    // Beside the flap two plies of 0.28.
    least: '0.56',
    gives: '0',
  },
  {
    title: 'a mat inside that carries a seal and a second mat with paste laid on',
    design: {
      pieces: [
        { name: 'base', across: ['front 4.25', 'valley spine', 'back 4.25'], down: 5.5 },
        { name: 'large', across: 4, down: 5.25, stock: 'mat' },
        { name: 'small', across: 2, down: 2, stock: 'mat' },
        { name: 'seal', across: 1, down: 1, stock: 'mat' },
      ],
      joins: [
        { part: 'large', onto: 'base.back', at: [0.125, 0.125, 4, 5.25] },
        { part: 'small', onto: 'large', at: [1, 1, 2, 2] },
        { part: 'seal', onto: 'large', at: [0, 4, 1, 1] },
      ],
      panels: { ...panels, large: [4, 5.25] },
      layers: '- { on: small, lay: [{ with: wash, as: ink }, { with: paste, as: paste }] }',
    },
    // back 0.28 + glue 0.05 + large 0.20 + glue 0.05 + small 0.20 + paste 0.40 + front 0.28; a wash of ink is nothing
    overall: '1.46',
    greatest: '1.46',
    least: '0.56',
    gives: '0',
  },
];

describe.each(WAYS.map((way) => ({ way, title: sayWay(way) })))('thickness of a stack, $title', ({ way }) => {
  it.each(HAND_SUMS)('$title is as thick as its layers add up to', ({ design, overall, least, greatest, gives }) => {
    const found = thicknessOf(design, way);
    expect(found.unknown).toEqual([]);
    expect(found.overall.mm.toString()).toBe(overall);
    expect(found.least.local.mm.toString()).toBe(least);
    expect(found.greatest.local.mm.toString()).toBe(greatest);
    expect(found.compressible.high.mm.toString()).toBe(gives);
    // What makes it is what it comes to.
    const sum = Length.sum(found.tallest.flatMap(({ high }) => high ?? []));
    expect(sum.mm.toString()).toBe(overall);
  });

  it('a plate on foam is lifted wherever it reaches, and what lies over its rim with it', () => {
    const design: Design = {
      pieces: [
        { name: 'ground', across: 6, down: 6 },
        { name: 'tile', across: 1, down: 1, stock: 'mat' },
        { name: 'plate', across: 4, down: 4, stock: 'mat' },
      ],
      joins: [
        { part: 'tile', onto: 'ground', at: [1, 1, 1, 1] },
        { part: 'plate', onto: 'tile', at: [-0.5, -0.5, 4, 4], foam: 0.0625 },
      ],
      panels: { ground: [6, 6], tile: [1, 1] },
    };
    const found = thicknessOf(design, way);
    // ground 0.28 + glue 0.05 + tile 0.20 + foam 1.5875 + plate 0.20
    expect(found.overall.mm.toString()).toBe('2.3175');
    const rim = found.stacks.find(({ panels }) => panels.join(' ') === 'ground plate');
    expect(rim?.local.mm.toString()).toBe('0.48');
  });

  it('says where the thinnest and the thickest place is', () => {
    const [mat] = HAND_SUMS;
    if (mat === undefined) throw new Error('no stack');
    const { least, greatest } = thicknessOf(mat.design, way);
    // Square inches as square millimetres: the mat 4 x 5 1/4, and what of the card 4 1/4 x 5 1/2 is beside it.
    expect(greatest.region.area).toBeCloseTo(4 * 5.25 * 645.16, 3);
    expect(least.region.area).toBeCloseTo((4.25 * 5.5 - 4 * 5.25) * 645.16, 3);
    // The last of two leaves alike is the ground: mirrored that is the front.
    const upwards = ['base.back', 'mat', 'base.front'];
    expect(greatest.panels).toEqual(way.mirrored ? upwards.toReversed() : upwards);
    // The upper leaf is a plate: over the rim it lies as high as over the mat.
    expect(least.lifted.mm.toString()).toBe('0.81');
  });

  it('a shut fold springs back by one caliper of its cardstock, thin paper by none', () => {
    const design: Design = { pieces: [base] };
    expect(thicknessOf(design, way).springback).toMatchObject({ creases: ['base.spine'] });
    expect(thicknessOf(design, way).springback.high.mm.toString()).toBe('0.28');
    const thin = { ...STOCK, cover: paper('0.1', 149) };
    expect(thicknessOf(design, way, thin).springback).toMatchObject({ creases: [], high: Length.zero });
  });

  it('a role whose thickness nobody knows is named, and one that no supply is named for is marked as assumed', () => {
    const design: Design = {
      pieces: [base, { name: 'mat', across: 4, down: 5, stock: 'mat' }],
      joins: [{ part: 'mat', onto: 'base.back' }],
    };
    const unknown = thicknessOf(design, way, { ...STOCK, mat: { name: 'a find', sort: 'paper' } });
    expect(unknown.unknown).toEqual(['mat']);
    const assumed = thicknessOf(design, way, { mat: paper('0.2', 160) });
    expect(assumed.assumed.map(({ role }) => role)).toEqual(['cover', 'glue']);
    expect(thicknessOf(design, way).assumed).toEqual([]);
  });
});

describe('published calipers', () => {
  const twoPlies: Design = { pieces: [base] };
  const measured = (grade: 'index' | 'cover', pounds: number): Materials => {
    const weight = { gsm: gramsPerSquareMetre(pounds, grade), pounds: new Fraction(pounds), grade };
    return {
      cover: { name: `${pounds} lb ${grade}`, sort: 'paper', caliper: caliperFor({ weight }), grammage: weight.gsm },
    };
  };
  const flat: Way = { turned: false, mirrored: false, system: 'inch' };

  it.each(INDEX_CALIPERS)('JCP K10: two plies of $pounds lb index', ({ pounds, mm, toleranceMm }) => {
    const { overall } = thicknessOf(twoPlies, flat, measured('index', pounds));
    expect(Math.abs(overall.toMm() - 2 * mm)).toBeLessThanOrEqual(2 * toleranceMm);
  });

  it.each(COVER_POINTS)('cover guide: two plies of %i lb cover are twice %f points', (pounds, points) => {
    const { overall } = thicknessOf(twoPlies, flat, measured('cover', pounds));
    expect(overall.equals(Length.fromInches(new Fraction(2 * points, 1000)))).toBe(true);
  });
});

/** Half inches. */
const HALF = 0.5;

/** A side fold of 4 x 5 in with rectangles inside, each glued flat or on foam to the back or to an earlier one. */
const anyStack = fc.array(
  fc.record({
    onto: fc.nat({ max: 10 }),
    left: fc.integer({ min: 0, max: 7 }),
    top: fc.integer({ min: 0, max: 9 }),
    wide: fc.integer({ min: 1, max: 8 }),
    high: fc.integer({ min: 1, max: 10 }),
    foam: fc.constantFrom(0, 0, 0.0625, 0.125),
    stock: fc.constantFrom('mat', 'cover', 'film'),
  }),
  { minLength: 1, maxLength: 5 },
);

describe('random stacks', () => {
  it('come to what sampled points add up to, and lie as high as plates pushed up point by point', () => {
    let compared = 0;
    fc.assert(
      fc.property(anyStack, fc.constantFrom(...WAYS), (tiles, way) => {
        // Each tile within the card: left, top, width, height in half inches.
        const boxes = tiles.map(
          ({ left, top, wide, high }): Box => [
            ...([left * HALF, top * HALF] as const),
            ...([Math.min(wide, 8 - left) * HALF, Math.min(high, 10 - top) * HALF] as const),
          ],
        );
        const owner = tiles.map(({ onto }, i) => (onto % (i + 1)) - 1);
        const meet = (a: Box, b: Box): boolean =>
          Math.min(a[0] + a[2], b[0] + b[2]) > Math.max(a[0], b[0]) &&
          Math.min(a[1] + a[3], b[1] + b[3]) > Math.max(a[1], b[1]);
        const whole: Box = [0, 0, 4, 5];
        const boxOf = (i: number): Box => boxes[i] ?? whole;
        fc.pre(boxes.every((box, i) => meet(box, owner[i] === -1 ? whole : boxOf(owner[i] ?? 0))));
        const nameOf = (i: number): string => (i === -1 ? 'base.back' : `tile-${i}`);
        const design: Design = {
          pieces: [
            { name: 'base', across: ['front 4', 'valley spine', 'back 4'], down: 5 },
            ...tiles.map(({ stock }, i) => ({ name: nameOf(i), across: boxOf(i)[2], down: boxOf(i)[3], stock })),
          ],
          joins: tiles.map(({ foam }, i) => {
            const on = owner[i] ?? -1;
            const [x, y] = on === -1 ? [0, 0] : boxOf(on);
            const at: Box = [boxOf(i)[0] - x, boxOf(i)[1] - y, boxOf(i)[2], boxOf(i)[3]];
            return { part: nameOf(i), onto: nameOf(on), at, foam };
          }),
          panels: {
            'base.back': [4, 5],
            ...Object.fromEntries(boxes.map((box, i) => [nameOf(i), [box[2], box[3]] as const])),
          },
        };
        const [body] = folded(design, way, STOCK).closed;
        fc.pre(body?.thickness !== undefined && body.plies?.orders[0]?.plies !== undefined);
        const found = body?.thickness as Thickness;
        const high = (stock: string): number => STOCK[stock]?.caliper?.length.toMm() ?? Number.NaN;
        const corners = ([x, y, w, h]: Box) =>
          [
            [x, y],
            [x + w, y],
            [x + w, y + h],
            [x, y + h],
          ] as const;
        const plies: SampledPly[] = [
          { name: 'base.back', corners: corners(whole), high: 0.28 },
          { name: 'base.front', corners: corners(whole), high: 0.28 },
          ...tiles.map(({ stock }, i) => ({ name: nameOf(i), corners: corners(boxOf(i)), high: high(stock) })),
        ];
        const bonds: SampledBond[] = tiles.map(({ foam }, i) => ({
          between: [nameOf(i), nameOf(owner[i] ?? -1)],
          high: foam > 0 ? foam * 25.4 : 0.05,
        }));
        // The middle of every half inch: no edge runs between two of them unseen.
        const points = Array.from(
          { length: 80 },
          (_, i) => [(i % 8) * HALF + 0.25, Math.floor(i / 8) * HALF + 0.25] as const,
        );
        const sampled = sampledStacks(plies, bonds, points);
        const own = new Map(found.stacks.map(({ panels, local }) => [panels.toSorted().join(' '), local.toMm()]));
        expect([...own.keys()].sort()).toEqual([...sampled.keys()].sort());
        for (const [names, sum] of sampled) expect(own.get(names)).toBeCloseTo(sum, 9);
        const order = body?.plies?.orders[0]?.plies ?? [];
        expect(found.overall.toMm()).toBeCloseTo(sampledPlates(plies, bonds, points, order), 9);
        compared++;
      }),
      { numRuns: 60, seed: 1605 },
    );
    expect(compared).toBeGreaterThan(40);
  });
});
