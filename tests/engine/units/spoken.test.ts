import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Length, spokenLength, spokenLengths, spokenSize } from '../../../plugins/engine/units/index.ts';
import { INCH_MARKS } from './numbers.ts';

const say = (inches: string) => spokenLength(Length.fromInches(inches), 'inch');

describe('spoken lengths', () => {
  // How English says fractions of an inch: common practice, no source.
  it.each([
    ['5 1/2', 'five and a half inches'],
    ['1 3/8', 'one and three eighths inches'],
    ['3/4', 'three quarters of an inch'],
    ['1/2', 'half an inch'],
    ['1/4', 'a quarter of an inch'],
    ['1/8', 'an eighth of an inch'],
    ['1/16', 'one sixteenth of an inch'],
    ['7/32', 'seven thirty-seconds of an inch'],
    ['1/64', 'one sixty-fourth of an inch'],
    ['1', 'one inch'],
    ['11', 'eleven inches'],
    ['21 1/8', 'twenty-one and an eighth inches'],
    ['40', 'forty inches'],
    ['0', 'zero inches'],
    ['1/3', '0.333 inches'],
    ['-1/8', 'minus an eighth of an inch'],
  ])('says %s in as "%s"', (inches, words) => {
    expect(say(inches)).toBe(words);
  });

  it.each([
    ['139.7', '139.7 millimetres'],
    ['105', '105 millimetres'],
    ['1', '1 millimetre'],
    ['0.5', 'half a millimetre'],
    ['1.5', '1.5 millimetres'],
  ])('says %s mm as "%s"', (mm, words) => {
    expect(spokenLength(Length.fromMm(mm), 'metric')).toBe(words);
  });

  it('says sizes width first, the unit once where it can', () => {
    const [a, b, c] = ['4 1/4', '5 1/2', '3/4'].map((inches) => Length.fromInches(inches)) as [Length, Length, Length];
    expect(spokenSize(a, b, 'inch')).toBe('four and a quarter by five and a half inches');
    expect(spokenSize(c, a, 'inch')).toBe('three quarters of an inch by four and a quarter inches');
    expect(spokenSize(Length.fromMm(105), Length.fromMm(148), 'metric')).toBe('105 by 148 millimetres');
    expect(spokenLengths([b, b, a], 'inch')).toBe('five and a half by five and a half by four and a quarter inches');
  });

  it('says different marks differently, and never with a stroke', () => {
    const heard = new Map<string, string>();
    fc.assert(
      fc.property(INCH_MARKS, (length) => {
        const words = spokenLength(length, 'inch');
        expect(words).not.toMatch(/[/⁄]/);
        const key = length.mm.toFraction();
        expect(heard.get(words) ?? key).toBe(key);
        heard.set(words, key);
      }),
    );
  });
});
