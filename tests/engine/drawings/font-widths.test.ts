import { describe, expect, it } from 'vitest';
import {
  BOLD_WIDTHS,
  type FaceWidths,
  REGULAR_WIDTHS,
  type WidthRun,
} from '../../../plugins/engine/drawings/font-widths.ts';
import { drawable, inMainFont, textWidth, wrapText } from '../../../plugins/engine/drawings/text-metrics.ts';
import { realFont, realRun } from './real-font.ts';

// The oracle is the font file itself, read by fontkit.
const FACES: readonly (readonly [400 | 700, FaceWidths, 'regular' | 'bold'])[] = [
  [400, REGULAR_WIDTHS, 'regular'],
  [700, BOLD_WIDTHS, 'bold'],
];

function* charactersOf(runs: readonly WidthRun[]): Generator<[character: string, width: number]> {
  for (const [first, list] of runs) {
    const widths = list.split(' ').map(Number);
    for (const [i, width] of widths.entries()) yield [String.fromCodePoint(Number.parseInt(first, 16) + i), width];
  }
}

describe.each(FACES)('advance widths, weight %i', (weight, face, name) => {
  const main = realFont('latin', weight);
  const extended = realFont('latin-ext', weight);

  it('has the width of every character, the main and the extended file each its own', () => {
    expect(main.unitsPerEm).toBe(1000);
    expect(face.capital).toBe(main.capHeight);
    const wrong: unknown[] = [];
    for (const [runs, font] of [
      [face.main, main],
      [face.extended, extended],
    ] as const) {
      for (const [character, width] of charactersOf(runs)) {
        const real = realRun(font, character);
        if (real.glyphs[0]?.id === 0 || real.advanceWidth !== width)
          wrong.push({ character, width, real: real.advanceWidth });
      }
    }
    expect(wrong).toEqual([]);
  });

  it('leaves out no letter, figure or mark that the main file has', () => {
    const known = new Set([...charactersOf(face.main)].map(([character]) => character));
    const printable = main.characterSet.filter((code) => code >= 0x20 && code < 0xfffe && code !== 0xad);
    const missing = printable
      .map((code) => String.fromCodePoint(code))
      .filter((each) => !known.has(each) && !/\p{M}/u.test(each));
    expect(missing).toEqual([]);
  });

  it('has the figures of fractions', () => {
    for (const digit of '0123456789') {
      const [above, , below] = realRun(main, `${digit}\u2044${digit}`).glyphs;
      expect([face.numerators[Number(digit)], face.denominators[Number(digit)]]).toEqual([
        above?.advanceWidth,
        below?.advanceWidth,
      ]);
    }
  });

  it.each([
    'Cut the base, a piece 8 1/2 in wide and 5 1/2 in high.',
    'Score a valley fold, the spine, at 4 15/16 in, from top to bottom.',
    '139.7',
    '63/64',
    'To a Wave: AVATAR, Ty. “quoted”',
  ])('measures as the font does, kerning apart: %s', (text) => {
    const real = (realRun(main, drawable(text)).advanceWidth / main.capHeight) * 3.5;
    const measured = textWidth(text, 3.5, name);
    expect(measured).toBeGreaterThan(real * 0.995);
    expect(measured).toBeLessThan(real * 1.05);
  });
});

describe('text as drawn', () => {
  it('sets fractions and keeps only characters that the face has', () => {
    expect(drawable('5 1/2 x 4 in')).toBe('5\u20091\u20442 × 4 in');
    expect(drawable('Święta, ɘ and \u{1F426}')).toBe('Święta, ? and ?');
    expect(drawable('two\nlines\tand\u0000more')).toBe('two lines and?more');
    expect([...'Śę'].map(inMainFont)).toEqual([false, false]);
    expect([...'5\u2009\u2044é’—'].every(inMainFont)).toBe(true);
  });

  it('breaks lines between words and keeps a number with its fraction and unit', () => {
    const text = 'Cut it 8 1/2 in wide and 5 1/2 in high';
    for (let width = 18; width < 80; width += 0.5) {
      const lines = wrapText(text, 2.5, width);
      expect(lines.join(' ').replace(/[\u2009\u00a0]/g, ' ')).toBe('Cut it 8 1⁄2 in wide and 5 1⁄2 in high');
      for (const line of lines) {
        expect(textWidth(line, 2.5)).toBeLessThanOrEqual(width + 1e-9);
        expect(line).not.toMatch(/^(1⁄2|in )|\d$/);
      }
    }
  });

  it('breaks a word that no line holds', () => {
    const lines = wrapText('kelpkelpkelpkelpkelp', 2.5, 12);
    expect(lines.length).toBeGreaterThan(2);
    expect(lines.join('')).toBe('kelpkelpkelpkelpkelp');
  });
});
