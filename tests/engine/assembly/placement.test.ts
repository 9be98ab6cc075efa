import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { compose, IDENTITY, place, reflectionIn, samePlacement } from '../../../plugins/engine/assembly/placement.ts';
import { reflected } from '../../oracles/reflected.ts';

const TOUCH_MM = 1e-9;

const number = fc.tuple(fc.integer({ min: -4000, max: 4000 }), fc.integer({ min: 1, max: 64 }));
const point = fc
  .tuple(number, number)
  .map(([[xn, xd], [yn, yd]]) => ({ x: new Fraction(xn, xd), y: new Fraction(yn, yd) }));
const line = fc.tuple(point, point).filter(([a, b]) => !(a.x.equals(b.x) && a.y.equals(b.y)));

function asPair({ x, y }: { x: Fraction; y: Fraction }): readonly [number, number] {
  return [x.valueOf(), y.valueOf()];
}

describe('reflection in a crease', () => {
  it('agrees with matrices of floating numbers, whatever the slope of the line (mathjs)', () => {
    const check = (
      [from, to]: readonly [{ x: Fraction; y: Fraction }, { x: Fraction; y: Fraction }],
      points: { x: Fraction; y: Fraction }[],
    ) => {
      const exact = points.map((one) => asPair(place(reflectionIn(from, to), one)));
      const numeric = reflected(points.map(asPair), asPair(from), asPair(to));
      exact.forEach(([x, y], i) => {
        const scale = 1 + Math.max(...[from, to, ...points].flatMap(asPair).map(Math.abs));
        // Points close together name a line whose direction floats know only roughly.
        const span = Math.hypot(to.x.sub(from.x).valueOf(), to.y.sub(from.y).valueOf());
        const allowed = TOUCH_MM * scale * Math.max(1, scale / span);
        expect(Math.abs(x - (numeric[i]?.[0] ?? Number.NaN))).toBeLessThan(allowed);
        expect(Math.abs(y - (numeric[i]?.[1] ?? Number.NaN))).toBeLessThan(allowed);
      });
    };
    fc.assert(fc.property(line, fc.array(point, { minLength: 1, maxLength: 6 }), check), { numRuns: 200, seed: 1959 });
  });

  it('done twice, changes nothing at all; the points of the line stay', () => {
    fc.assert(
      fc.property(line, ([from, to]) => {
        const once = reflectionIn(from, to);
        expect(samePlacement(compose(once, once), IDENTITY)).toBe(true);
        expect(place(once, from).x.equals(from.x) && place(once, from).y.equals(from.y)).toBe(true);
        expect(once.faceUp).toBe(false);
      }),
      { numRuns: 100, seed: 1959 },
    );
  });

  it('two reflections in parallel lines are a shift of twice their distance', () => {
    const at = (x: number) =>
      reflectionIn({ x: new Fraction(x), y: new Fraction(0) }, { x: new Fraction(x), y: new Fraction(9) });
    const shift = compose(at(10), at(3));
    expect(place(shift, { x: new Fraction(1), y: new Fraction(2) }).x.valueOf()).toBe(15);
    expect(shift.faceUp).toBe(true);
  });

  it('refuses a line through one point', () => {
    const here = { x: new Fraction(1), y: new Fraction(1) };
    expect(() => reflectionIn(here, here)).toThrow(RangeError);
  });
});
