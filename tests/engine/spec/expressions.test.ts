import fc from 'fast-check';
import { all, create } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { type Card, Length } from '../../../plugins/engine/index.ts';
import { cardOf, foldOf } from '../support/folds.ts';

/** The size of a plain piece whose width is the expression, worked out in the inch edition of a fold in inches. */
function widthOf(expression: string, values = ''): Length {
  const card: Card = cardOf(
    foldOf(`
name: Trial
units: in
parameters: { width: 4 1/4, height: 5 1/2, depth: 1 1/2, pages: { count: 4 } }
${values}
pieces: { sheet: { across: ['a ${expression}'], down: 1 } }`),
    'inch',
  );
  const [band] = card.pieces[0]?.columns ?? [];
  if (band === undefined) throw new Error('no band');
  return band.exact;
}

function inches(value: string | number): string {
  return Length.fromInches(value).mm.toFraction();
}

describe('an expression', () => {
  it.each([
    // Notation.
    ['5 1/2', '11/2'],
    ['5½', '11/2'],
    ['2.75', '11/4'],
    ['105 mm', '525/127'],
    ['10.5 cm', '525/127'],
    ['3 in', '3'],
    ['3"', '3'],
    ['1/2', '1/2'],
    // Beside * and / a bare number is a scalar; beside + and - and at the top a length.
    ['2*width', '17/2'],
    ['width*1/2', '17/8'],
    ['width/2 + 1', '25/8'],
    ['width - 1/4', '4'],
    ['(width - 1/4)/2', '2'],
    ['width*(1/4 + 1/4)', '17/8'],
    ['1/4 + 1/8', '3/8'],
    ['3 in - 25.4 mm', '2'],
    // A length over a length is a plain number.
    ['height*(width/width)', '11/2'],
    ['width/(2 in/1 in)', '17/8'],
    // Counts.
    ['pages*1/2 in + depth', '7/2'],
    ['width/pages', '17/16'],
    ['(pages - 1)*depth', '9/2'],
    // Divisions one after the other, as on paper; a mixed number after a division stays whole.
    ['width/2/2', '17/16'],
    ['12 in/3/4', '1'],
    ['width/1/2', '17/8'],
    ['9 in/4 1/2', '2'],
    // smaller of, larger of: as far to the right as they reach.
    ['smaller of width and height', '17/4'],
    ['larger of width and height - 2', '17/4'],
    ['(smaller of width and height) - 2', '9/4'],
    ['smaller of larger of width and depth and height', '17/4'],
    ['2*smaller of depth and width', '3'],
    ['larger of 2 and depth', '2'],
    // A minus before a number or a bracket.
    ['width + -1', '13/4'],
    ['-1 + width', '13/4'],
    ['width − 1', '13/4'],
  ])('%s is %s in', (expression, value) => {
    expect(widthOf(expression).mm.toFraction()).toBe(inches(value));
  });

  it('has names with digits and hyphens', () => {
    const values = 'values: { half-2: width/2, a: 1, a-1: 3 }';
    expect(widthOf('half-2 + a-1', values).mm.toFraction()).toBe(inches('41/8'));
    expect(widthOf('a-1 - a', values).mm.toFraction()).toBe(inches(2));
  });
});

/** Random expressions of lengths as texts, in our notation; mathjs reads the same text with names as fractions. */
const scalar = fc.integer({ min: 1, max: 9 }).map(String);
const atom = fc.oneof(
  fc.constantFrom('width', 'height', 'depth'),
  fc.tuple(fc.integer({ min: 0, max: 9 }), fc.integer({ min: 1, max: 7 })).map(([a, b]) => `(${a} + ${b}/8)*1 in`),
);
const { sum } = fc.letrec<{ sum: string; product: string }>((tie) => ({
  product: fc.oneof(
    { maxDepth: 4 },
    atom,
    fc.tuple(scalar, tie('product')).map(([n, p]) => `${n}*${p}`),
    fc.tuple(tie('product'), scalar).map(([p, n]) => `${p}/${n}`),
    tie('sum').map((inner) => `(${inner})`),
  ),
  sum: fc.oneof(
    { maxDepth: 4 },
    tie('product'),
    fc.tuple(tie('sum'), fc.constantFrom(' + ', ' - '), tie('product')).map((parts) => parts.join('')),
  ),
}));

describe('a random expression', () => {
  it('comes out as mathjs has it, exactly', () => {
    const math = create(all ?? {}, { number: 'Fraction' });
    const names = { width: math.fraction(17, 4), height: math.fraction(11, 2), depth: math.fraction(3, 2) };
    let compared = 0;
    fc.assert(
      fc.property(sum, (expression) => {
        const text = expression.slice(0, 380);
        if (text !== expression) return;
        const oracle = math.evaluate(expression.replaceAll('*1 in', ''), names) as { n: bigint; d: bigint; s: bigint };
        const value = `${oracle.s < 0n ? '-' : ''}${oracle.n}/${oracle.d}`;
        // Made small, and put on a hundred inches of paper, so that the piece is neither less than nothing nor too large.
        const size = widthOf(`100 in + (${expression})/10000`).minus(Length.fromInches(100)).times(10000);
        expect(size.mm.toFraction()).toBe(inches(value));
        compared++;
      }),
      { numRuns: 200 },
    );
    expect(compared).toBeGreaterThan(150);
  });
});
