import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEFAULT_MARKS, Length, roundTogether, toMarks } from '../../../plugins/engine/units/index.ts';
import { ANY_LENGTH } from './numbers.ts';

const MARKS = fc.constantFrom('1/2', '1', '127/80', '127/40').map((mm) => Length.fromMm(mm));
const mm = (value: string | number) => Length.fromMm(value);
const inMm = (lengths: readonly Length[]) => lengths.map((length) => length.toMm());

describe('toMarks', () => {
  // NIST SP 811 (2008) B.7.1, cited from memory; IS 2 has the same rule: exactly half goes to the even digit.
  it.each([
    ['0.5', 0],
    ['1.5', 2],
    ['2.5', 2],
    ['3.5', 4],
    ['2.500001', 3],
    ['2.499999', 2],
    ['-0.5', 0],
    ['-1.5', -2],
  ])('puts %s mm on the mark at %d', (written, mark) => {
    expect(toMarks(mm(written), mm(1), 'nearest').equals(mm(mark))).toBe(true);
  });

  it('puts half a Letter sheet, 139.7 mm, on 139.5, and 5 1/2 in on itself', () => {
    expect(toMarks(mm('139.7'), DEFAULT_MARKS.metric, 'nearest').toMm()).toBe(139.5);
    expect(toMarks(mm('139.7'), DEFAULT_MARKS.inch, 'nearest').equals(Length.fromInches('5 1/2'))).toBe(true);
  });

  it('never crosses a limit, and lands on a whole number of marks less than one away', () => {
    fc.assert(
      fc.property(ANY_LENGTH, MARKS, (length, mark) => {
        const down = toMarks(length, mark, 'down');
        const up = toMarks(length, mark, 'up');
        const nearest = toMarks(length, mark, 'nearest');
        expect(down.moreThan(length)).toBe(false);
        expect(up.lessThan(length)).toBe(false);
        expect(nearest.equals(down) || nearest.equals(up)).toBe(true);
        expect(nearest.minus(length).abs().times(2).moreThan(mark)).toBe(false);
        for (const one of [down, up]) {
          expect(one.per(mark).d).toBe(1n);
          expect(one.minus(length).abs().lessThan(mark)).toBe(true);
        }
      }),
    );
  });

  it('wants marks that are apart', () => {
    expect(() => toMarks(mm(5), Length.zero, 'nearest')).toThrow(RangeError);
  });
});

describe('roundTogether', () => {
  it('keeps the halves of 11 in equal: not 139.5 and 140', () => {
    expect(inMm(roundTogether([mm('139.7'), mm('139.7')], DEFAULT_MARKS.metric))).toEqual([139.5, 139.5]);
  });

  it('fills a sheet that three unequal panels fill', () => {
    const bands = ['98 2/5', '99 2/5', '99 1/5'].map(mm);
    const marks = roundTogether(bands, mm(1));
    expect(Length.sum(marks).toMm()).toBe(297);
    expect(inMm(marks)).toEqual([98, 100, 99]);
  });

  it('takes over what other strips have settled', () => {
    const settled = [{ exact: mm('10.4'), printed: mm(11) }];
    expect(inMm(roundTogether([mm('10.4'), mm('5.4')], mm(1), settled))).toEqual([11, 5]);
  });

  it('keeps equal lengths equal, marks where they are, and the total as near as equal lengths allow', () => {
    const bands = fc.array(fc.integer({ min: 0, max: 40 }), { minLength: 1, maxLength: 7 });
    fc.assert(
      fc.property(bands, fc.integer({ min: 1, max: 12 }), (counts, parts) => {
        const lengths = counts.map((count) => mm(`${count}/${parts}`));
        const marks = roundTogether(lengths, mm(1));
        lengths.forEach((length, i) => {
          const mark = marks[i] as Length;
          expect(mark.per(mm(1)).d).toBe(1n);
          expect(mark.minus(length).abs().lessThan(mm(1))).toBe(true);
          lengths.forEach((other, j) => {
            if (other.equals(length)) expect((marks[j] as Length).equals(mark)).toBe(true);
          });
        });
        expect(off(marks, lengths)).toBe(leastOff(lengths));
      }),
    );
  });

  it('agrees with toMarks on a single length and on equal ones', () => {
    fc.assert(
      fc.property(ANY_LENGTH, MARKS, (length, mark) => {
        expect(roundTogether([length], mark)[0]?.equals(toMarks(length, mark, 'nearest'))).toBe(true);
        expect(roundTogether([length, length], mark)[1]?.equals(toMarks(length, mark, 'nearest'))).toBe(true);
      }),
    );
  });

  it('stays quick on a strip of many bands', () => {
    const many = Array.from({ length: 200 }, (_, i) => mm(`${1000 + i}/7`));
    expect(roundTogether(many, mm(1))).toHaveLength(200);
  });
});

/** How many marks of 1 mm the sum lies from the nearest mark of the exact sum. */
function off(marks: readonly Length[], lengths: readonly Length[]): number {
  const exact = toMarks(Length.sum(lengths), mm(1), 'nearest');
  return Length.sum(marks).minus(exact).abs().toMm();
}

/** The least there is, by trying every way to raise or lower the distinct lengths. */
function leastOff(lengths: readonly Length[]): number {
  const distinct = [...new Set(lengths.map((length) => length.mm.toFraction()))];
  let least = Number.POSITIVE_INFINITY;
  for (let ways = 0; ways < 2 ** distinct.length; ways++) {
    const marks = lengths.map((length) => {
      const up = Math.floor(ways / 2 ** distinct.indexOf(length.mm.toFraction())) % 2 === 1;
      return toMarks(length, mm(1), up ? 'up' : 'down');
    });
    least = Math.min(least, off(marks, lengths));
  }
  return least;
}
