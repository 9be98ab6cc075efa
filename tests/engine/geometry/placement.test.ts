import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  compose,
  facing,
  IDENTITY,
  inverse,
  laidOn,
  type Placement,
  place,
  placeInSpace,
  rotationAbout,
  samePlacement,
  turnBy,
} from '../../../plugins/engine/geometry/index.ts';
import { reflected } from '../../oracles/reflected.ts';
import { type Triple, turnedInSpace } from '../../oracles/turned-in-space.ts';
import { f, p, xyz } from './numbers.ts';

const eighths = fc.integer({ min: -400, max: 400 });
const point = fc.tuple(eighths, eighths).map(([x, y]) => p(`${x}/8`, `${y}/8`));
const line = fc.tuple(point, point).filter(([a, b]) => !(a.x.equals(b.x) && a.y.equals(b.y)));
const degrees = fc.oneof(fc.constantFrom(0, 90, 180, 270, -90, -180), fc.double({ min: -360, max: 360, noNaN: true }));

function spatial({ x, y }: { x: { valueOf(): number }; y: { valueOf(): number } }): Triple {
  return [x.valueOf(), -y.valueOf(), 0];
}

function expectNear(found: readonly number[], expected: readonly number[]): void {
  for (const [i, value] of found.entries()) expect(value).toBeCloseTo(expected[i] ?? Number.NaN, 8);
}

function determinant({ m }: Placement): number {
  const [a, b, c, d, e, g, h, i, j] = m.map(Number) as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  return a * (e * j - g * i) - b * (d * j - g * h) + c * (d * i - e * h);
}

describe('rotationAbout', () => {
  it('turns about any line by any angle as quaternions do', () => {
    fc.assert(
      fc.property(line, degrees, point, ([from, to], angle, moved) => {
        const turn = rotationAbout(from, to, angle);
        expectNear(xyz(place(turn, moved)), turnedInSpace(spatial(moved), spatial(from), spatial(to), angle));
        expect(determinant(turn)).toBeCloseTo(1, 10);
      }),
    );
  });

  it('is exact for 180 degrees about any exact line, and lays paper as its mirror image, turned over', () => {
    fc.assert(
      fc.property(line, point, ([from, to], moved) => {
        const turn = rotationAbout(from, to, 180);
        expect(turn.rounded).toBeUndefined();
        expect(facing(turn)).toBe('down');
        const [image] = reflected(
          [[moved.x.valueOf(), moved.y.valueOf()]],
          [from.x.valueOf(), from.y.valueOf()],
          [to.x.valueOf(), to.y.valueOf()],
        );
        const [x, y, z] = xyz(place(turn, moved));
        expectNear([x, -y, z], [...(image ?? []), 0]);
        expect(samePlacement(compose(turn, turn), IDENTITY)).toBe(true);
      }),
    );
  });

  it('is exact for 90 degrees where the length of the line is a fraction, and four quarters are none', () => {
    for (const [to, exact] of [
      [p(0, 7), true],
      [p(9, 0), true],
      [p(3, 4), true],
      [p(1, 1), false],
    ] as const) {
      const turn = rotationAbout(p(0, 0), to, 90);
      expect(turn.rounded).toBe(exact ? undefined : true);
      expect(facing(turn)).toBe('edge-on');
      expect(samePlacement(compose(compose(turn, turn), compose(turn, turn)), IDENTITY)).toBe(true);
    }
  });

  it('raises the left side of a valley towards the face', () => {
    const valley = rotationAbout(p(3, 0), p(3, 10), 90);
    expect(xyz(place(valley, p(5, 2)))).toEqual([3, -2, 2]);
    expect(xyz(place(rotationAbout(p(3, 0), p(3, 10), -90), p(5, 2)))).toEqual([3, -2, -2]);
  });

  it('refuses two points at one place, and what is no angle', () => {
    expect(() => rotationAbout(p(1, 1), p(1, 1), 90)).toThrow(RangeError);
    expect(() => rotationAbout(p(1, 1), p(2, 1), Number.NaN)).toThrow(RangeError);
  });
});

describe('compose and inverse', () => {
  it('do one after the other, and undo', () => {
    fc.assert(
      fc.property(line, degrees, line, degrees, point, ([a, b], first, [c, d], second, moved) => {
        const [inner, outer] = [rotationAbout(a, b, first), rotationAbout(c, d, second)];
        const both = compose(outer, inner);
        expectNear(xyz(place(both, moved)), xyz(placeInSpace(outer, place(inner, moved))));
        expect(samePlacement(compose(inverse(both), both), IDENTITY)).toBe(true);
        const exact = inner.rounded === undefined && outer.rounded === undefined;
        expect(both.rounded === undefined).toBe(exact);
      }),
    );
  });

  it('tell exact placements apart however little they differ, and rounded ones beyond the tolerance', () => {
    const hair = rotationAbout(p('1/1000000000000', 0), p('1/1000000000000', 1), 180);
    expect(samePlacement(rotationAbout(p(0, 0), p(0, 1), 180), hair)).toBe(false);
    const [slanting, near, far] = [60, 60 + 1e-9, 60.001].map((angle) => rotationAbout(p(0, 0), p(0, 1), angle));
    if (!slanting || !near || !far) throw new RangeError('three turns');
    expect(samePlacement(slanting, near, 300)).toBe(true);
    expect(samePlacement(slanting, far, 300)).toBe(false);
  });

  it('stay on the grid through a long chain of rounded turns', () => {
    let turned = IDENTITY;
    for (let i = 0; i < 200; i++) turned = compose(turned, rotationAbout(p(i % 7, 0), p(i % 5, 3), 33));
    for (const value of [...turned.m, ...turned.t]) expect(10n ** 12n % value.d).toBe(0n);
    expect(determinant(turned)).toBeCloseTo(1, 9);
  });
});

describe('laidOn', () => {
  const lay = (partSide: 'face' | 'back', ontoSide: 'face' | 'back', turn: number) =>
    laidOn({ p: p(1, 2), q: p(10, 20), turn: turnBy(turn), partSide, ontoSide }, f('1/8'));

  it('puts point on point, above a face and below a back', () => {
    for (const partSide of ['face', 'back'] as const)
      for (const ontoSide of ['face', 'back'] as const)
        for (const turn of [0, 90, 180, 270, 33]) {
          const laid = lay(partSide, ontoSide, turn);
          expect(xyz(place(laid, p(1, 2)))).toEqual([10, -20, ontoSide === 'face' ? 0.125 : -0.125]);
          expect(facing(laid)).toBe(partSide === ontoSide ? 'down' : 'up');
          expect(determinant(laid)).toBeCloseTo(1, 10);
        }
  });

  it('turns clockwise on the drawing that it is laid on', () => {
    // One to the right of p: after a quarter turn clockwise it is one further down the page.
    expect(xyz(place(lay('back', 'face', 90), p(2, 2)))).toEqual([10, -21, 0.125]);
    expect(xyz(place(lay('back', 'face', 180), p(2, 2)))).toEqual([9, -20, 0.125]);
  });

  it('turns over left for right when like sides meet, and only then turns', () => {
    expect(xyz(place(lay('back', 'back', 0), p(2, 2)))).toEqual([9, -20, -0.125]);
    expect(xyz(place(lay('back', 'back', 0), p(1, 3)))).toEqual([10, -21, -0.125]);
    expect(xyz(place(lay('face', 'face', 90), p(2, 2)))).toEqual([10, -19, 0.125]);
  });
});
