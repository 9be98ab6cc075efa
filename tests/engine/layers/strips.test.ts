import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foldStrip } from '../../../plugins/engine/layers/fold-strip.ts';
import { orderPlies } from '../../../plugins/engine/layers/index.ts';
import { everyOrder, type Strip } from '../../oracles/strip-plies.ts';
import { poseOf, redrawn } from '../support/sketched-pose.ts';
import { stripSketch } from '../support/sketched-shapes.ts';

const MANY = 1000;

/** Orders that the oracle finds, by which of two panels that overlap is the upper one: others have no order. */
function expected(strip: Strip): string[] {
  const x = [0];
  for (const [i, length] of strip.lengths.entries()) x.push((x[i] ?? 0) + (i % 2 === 0 ? length : -length));
  const ends = (i: number): [number, number] => [
    Math.min(x[i] ?? 0, x[i + 1] ?? 0),
    Math.max(x[i] ?? 0, x[i + 1] ?? 0),
  ];
  const overlap = (i: number, j: number): boolean => ends(i)[0] < ends(j)[1] && ends(j)[0] < ends(i)[1];
  const orders = everyOrder(strip).map((order) =>
    order.flatMap((under, i) =>
      order.slice(i + 1).flatMap((over) => (overlap(over, under) ? [`${over} over ${under}`] : [])),
    ),
  );
  return [...new Set(orders.map((pairs) => pairs.sort().join()))].sort();
}

function expectAgreement(strip: Strip, drawn = stripSketch(strip.lengths, strip.folds)): void {
  const { orders, count, obstruction } = orderPlies(poseOf(drawn), { limit: MANY });
  const found = orders.map(({ pairs }) =>
    pairs
      .map(({ over, under }) => `${over} over ${under}`)
      .sort()
      .join(),
  );
  expect(found.sort(), JSON.stringify(strip)).toEqual(expected(strip));
  expect(count).toBe(BigInt(orders.length));
  expect(obstruction === undefined).toBe(orders.length > 0);
}

// The strips and their answers: strips.
const PUBLISHED: readonly [string, Strip, boolean][] = [
  ['letter fold with a shorter end', { lengths: [100, 100, 97], folds: 'VV' }, true],
  ['pleat round a short middle', { lengths: [3, 1, 3], folds: 'VM' }, true],
  ['roll and pleat', { lengths: [100, 20, 20, 60], folds: 'VMV' }, true],
  ['letter fold with a shorter middle', { lengths: [100, 98, 100], folds: 'VV' }, false],
  ['both ends over a short middle', { lengths: [3, 1, 3], folds: 'VV' }, false],
  ['all one way over short panels', { lengths: [2, 1, 2, 1, 2], folds: 'VVVV' }, false],
];

describe('order of plies of a strip', () => {
  it.each(PUBLISHED)('published: %s', (_, strip, folds) => {
    const sketch = stripSketch(strip.lengths, strip.folds);
    for (const drawn of [
      sketch,
      redrawn(sketch, 'turned'),
      redrawn(sketch, 'mirrored'),
      redrawn(sketch, 'turned', 25.4),
    ]) {
      const { orders, obstruction } = orderPlies(poseOf(drawn));
      expect(orders.length > 0).toBe(folds);
      expect(obstruction?.is).toBe(folds ? undefined : 'too-long');
      expectAgreement(strip, drawn);
    }
  });

  it('an equal roll of four has three orders, each named from the bottom to the top', () => {
    const { orders, count, deepest } = orderPlies(poseOf(stripSketch([1, 1, 1, 1], 'VVV')));
    expect(orders.map(({ plies }) => plies?.join('')).sort()).toEqual(['0231', '2013', '2301']);
    expect([count, deepest]).toEqual([3n, 4]);
  });

  it('counts no further than it is asked, and says so', () => {
    const { orders, count } = orderPlies(poseOf(stripSketch([1, 1, 1, 1], 'VVV')), { limit: 2 });
    expect([orders.length, count]).toEqual([2, undefined]);
  });

  it('gives every order that trying all of them finds, for strips of up to four panels of lengths 1 to 3', () => {
    for (let panels = 1; panels <= 4; panels++) {
      for (let code = 0; code < 3 ** panels * 2 ** (panels - 1); code++) expectAgreement(decoded(code, panels));
    }
  });

  it('gives every order for random strips of five to seven panels', () => {
    const strips = fc.integer({ min: 5, max: 7 }).chain((panels) =>
      fc.record({
        lengths: fc.array(fc.integer({ min: 1, max: 4 }), { minLength: panels, maxLength: panels }),
        folds: fc.string({ unit: fc.constantFrom('V', 'M'), minLength: panels - 1, maxLength: panels - 1 }),
      }),
    );
    fc.assert(
      fc.property(strips, (strip) => expectAgreement(strip)),
      { numRuns: 80 },
    );
  });

  it('end folds and crimps decide as trying all orders does, for strips of up to five panels', () => {
    let foldable = 0;
    for (let panels = 1; panels <= 5; panels++) {
      for (let code = 0; code < 3 ** panels * 2 ** (panels - 1); code += panels < 5 ? 1 : 3) {
        const strip = decoded(code, panels);
        const stuck = foldStrip(
          strip.lengths,
          [...strip.folds].map((fold) => (fold === 'V' ? 'valley' : 'mountain')),
        );
        expect(stuck === undefined, JSON.stringify(strip)).toBe(everyOrder(strip).length > 0);
        if (stuck === undefined) foldable++;
      }
    }
    expect(foldable).toBeGreaterThan(500);
  });

  it('a crease worked both ways gives the orders of either direction', () => {
    for (const folds of ['VB', 'BB', 'MBV', 'BVB']) {
      const lengths = [3, 2, 3, 2].slice(0, folds.length + 1);
      const all = [...folds].reduce<string[]>(
        (list, letter) => list.flatMap((start) => (letter === 'B' ? ['V', 'M'] : [letter]).map((one) => start + one)),
        [''],
      );
      const orders = all.reduce((sum, way) => sum + expected({ lengths, folds: way }).length, 0);
      expect(orderPlies(poseOf(stripSketch(lengths, folds))).count, folds).toBe(BigInt(orders));
    }
  });

  it('folded against its scores a strip lies as one scored the other way', () => {
    const scored = stripSketch([50, 40, 45], 'VM');
    const against = { ...scored, hinges: scored.hinges?.map((hinge) => ({ ...hinge, turn: -180 })) ?? [] };
    const opposite = orderPlies(poseOf(stripSketch([50, 40, 45], 'MV')));
    expect(orderPlies(poseOf(against)).orders).toEqual(opposite.orders);
    expect(opposite.count).toBe(1n);
  });
});

describe('a strip that does not fold', () => {
  it('names the end that is too long, by how much, and that taking that off cures it', () => {
    const { obstruction } = orderPlies(poseOf(stripSketch([100, 98, 100], 'VV')));
    expect(obstruction).toEqual({ is: 'too-long', piece: 'strip', panel: '2', crease: '1|2', mm: 2, cures: true });
    expect(orderPlies(poseOf(stripSketch([100, 98, 98], 'VV'))).count).toBe(1n);
  });

  it('says when taking it off is no cure', () => {
    const { obstruction } = orderPlies(poseOf(stripSketch([2, 1, 2, 1, 2], 'VVVV')));
    expect(obstruction).toMatchObject({ is: 'too-long', mm: 1, cures: false });
  });

  it('is told so in a card of several pieces too', () => {
    const { panels, hinges = [] } = stripSketch([100, 98, 100], 'VV');
    const mat = {
      name: 'mat',
      piece: 'mat',
      outline: [
        [0, 0],
        [20, 0],
        [20, 20],
        [0, 20],
      ] as const,
    };
    const card = {
      panels: [...panels, mat],
      hinges,
      joins: [{ is: 'glue', part: 'mat', onto: '0', q: [10, 5] } as const],
    };
    expect(orderPlies(poseOf(card)).obstruction).toMatchObject({ is: 'too-long', piece: 'strip', mm: 2 });
  });
});

function decoded(code: number, panels: number): Strip {
  const lengths = Array.from({ length: panels }, (_, i) => 1 + (Math.floor(code / 3 ** i) % 3));
  const bits = Math.floor(code / 3 ** panels);
  const folds = Array.from({ length: panels - 1 }, (_, i) => ((bits >> i) & 1 ? 'M' : 'V')).join('');
  return { lengths, folds };
}
