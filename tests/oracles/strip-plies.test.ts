import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { foldStrip } from '../../plugins/engine/assembly/fold-strip.ts';
import { canLie, everyOrder, type Strip } from './strip-plies.ts';

function folded(strip: Strip) {
  return foldStrip(
    strip.lengths.map((length) => new Fraction(length)),
    [...strip.folds].map((fold) => (fold === 'V' ? 'valley' : 'mountain')),
  );
}

/** The order of the engine as the oracle counts it: seen with panel 0 face up. */
function orderOf(strip: Strip): number[] | undefined {
  const result = folded(strip);
  if ('stuck' in result) return undefined;
  const up = result.plies.find(({ panel }) => panel === 0)?.faceUp;
  const panels = result.plies.map(({ panel }) => panel);
  return up ? panels : panels.toReversed();
}

function expectAgreement(strip: Strip): void {
  const order = orderOf(strip);
  if (order === undefined) expect(everyOrder(strip), JSON.stringify(strip)).toEqual([]);
  else expect(canLie(strip, order), `${JSON.stringify(strip)} as ${order}`).toBe(true);
}

// The strips and their answers: Arkin, Bender, Demaine et al., "When can you fold a map?", Comput. Geom. 29, 2004.
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
    expect(everyOrder(strip).length > 0).toBe(folds);
    expect(orderOf(strip) !== undefined).toBe(folds);
    expectAgreement(strip);
  });

  it('an equal roll of four has three orders, and the engine gives one of them', () => {
    const roll = { lengths: [1, 1, 1, 1], folds: 'VVV' };
    expect(everyOrder(roll)).toHaveLength(3);
    expect(everyOrder(roll)).toContainEqual(orderOf(roll));
  });

  it('agrees with every order tried, for all strips of up to five panels of lengths 1 to 3', () => {
    let foldable = 0;
    for (let panels = 1; panels <= 5; panels++) {
      for (let code = 0; code < 3 ** panels * 2 ** (panels - 1); code++) {
        const strip = decoded(code, panels);
        expectAgreement(strip);
        if (orderOf(strip)) foldable++;
      }
    }
    expect(foldable).toBeGreaterThan(1000);
  });

  it('agrees with every order tried, for random strips of six and seven panels', () => {
    const strips = fc.integer({ min: 6, max: 7 }).chain((panels) =>
      fc.record({
        lengths: fc.array(fc.integer({ min: 1, max: 5 }), { minLength: panels, maxLength: panels }),
        folds: fc.string({ unit: fc.constantFrom('V', 'M'), minLength: panels - 1, maxLength: panels - 1 }),
      }),
    );
    fc.assert(fc.property(strips, expectAgreement), { numRuns: 250, seed: 1959 });
  });
});

function decoded(code: number, panels: number): Strip {
  const lengths = Array.from({ length: panels }, (_, i) => 1 + (Math.floor(code / 3 ** i) % 3));
  const bits = Math.floor(code / 3 ** panels);
  const folds = Array.from({ length: panels - 1 }, (_, i) => ((bits >> i) & 1 ? 'M' : 'V')).join('');
  return { lengths, folds };
}
