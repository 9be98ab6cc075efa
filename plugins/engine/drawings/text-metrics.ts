import { typesetFractions } from '../units/index.ts';
import type { Box } from './box.ts';
import { BOLD_WIDTHS, type FaceWidths, REGULAR_WIDTHS, type WidthRun } from './font-widths.ts';
import type { SceneLabel } from './scene.ts';

export type Weight = 'regular' | 'bold';

const FACES: Readonly<Record<Weight, FaceWidths>> = { regular: REGULAR_WIDTHS, bold: BOLD_WIDTHS };

const WIDTHS: Readonly<Record<Weight, ReadonlyMap<string, number>>> = {
  regular: widthsOf([...REGULAR_WIDTHS.extended, ...REGULAR_WIDTHS.main]),
  bold: widthsOf([...BOLD_WIDTHS.extended, ...BOLD_WIDTHS.main]),
};

const MAIN: ReadonlySet<string> = new Set(widthsOf(REGULAR_WIDTHS.main).keys());

/** Rise of the tallest letters and drop of the lowest above and below the baseline, in ems; figures stay within less. */
const RISE = { figure: 0.69, text: 0.72 };
const DROP = { figure: 0.1, text: 0.2 };

const FRACTION_SLASH = '\u2044';
const FRACTION = /(\d+\u2044\d+)/;
const FIGURES = /^\d+$/;
const BEFORE_UNIT = /(?<=\d) (?=(?:in|mm)\b)/g;

/** From one baseline to the next, in ems. */
const LEADING = 1.28;

function widthsOf(runs: readonly WidthRun[]): ReadonlyMap<string, number> {
  const widths = new Map<string, number>();
  for (const [first, list] of runs) {
    const start = Number.parseInt(first, 16);
    list.split(' ').forEach((width, i) => {
      widths.set(String.fromCodePoint(start + i), Number(width));
    });
  }
  return widths;
}

/** The weight a label is set in. */
export function weightOf(role: SceneLabel['role']): Weight {
  return role === 'title' ? 'bold' : 'regular';
}

/** The em, in mm, of letters whose capitals are `size` mm high. */
export function emOf(size: number, weight: Weight): number {
  return (size * 1000) / FACES[weight].capital;
}

/** Distance between baselines, in mm, for letters whose capitals are `size` mm high. */
export function leadingOf(size: number, weight: Weight = 'regular'): number {
  return emOf(size, weight) * LEADING;
}

/**
 * A text as it is drawn: fractions typeset, and every character one that the face has. A letter with marks that the
 * face lacks loses its marks; anything else it lacks becomes a question mark.
 */
export function drawable(text: string): string {
  let drawn = '';
  for (const character of typesetFractions(text.normalize('NFC')).replace(/\s*[\r\n\t]+\s*/g, ' ')) {
    if (WIDTHS.regular.has(character)) drawn += character;
    else {
      const bare = [...character.normalize('NFD')].filter((part) => WIDTHS.regular.has(part)).join('');
      drawn += bare === '' ? '?' : bare;
    }
  }
  return drawn;
}

/** Whether the main font file has the character; the extended one has the rest of what `drawable` leaves. */
export function inMainFont(character: string): boolean {
  return MAIN.has(character);
}

/** Width in mm of a text as drawn, capitals `size` mm high. Kerning, which is mostly negative, is left out. */
export function textWidth(text: string, size: number, weight: Weight = 'regular'): number {
  return drawnWidth(drawable(text), size, weight);
}

/** As `textWidth`, for a text that already is `drawable`. */
function drawnWidth(drawn: string, size: number, weight: Weight): number {
  const face = FACES[weight];
  const widths = WIDTHS[weight];
  let thousandths = 0;
  for (const part of drawn.split(FRACTION)) {
    const [above, below] = part.split(FRACTION_SLASH);
    if (above !== undefined && below !== undefined && FIGURES.test(above)) {
      thousandths += sum(above, face.numerators) + (widths.get(FRACTION_SLASH) ?? 0) + sum(below, face.denominators);
    } else {
      for (const character of part) thousandths += widths.get(character) ?? 0;
    }
  }
  return (thousandths / 1000) * emOf(size, weight);
}

function sum(digits: string, widths: readonly number[]): number {
  return [...digits].reduce((total, digit) => total + (widths[Number(digit)] ?? 0), 0);
}

/** The box that a label's letters stay within, in mm. */
export function labelBox(label: SceneLabel): Box {
  const weight = weightOf(label.role);
  const em = emOf(label.size, weight);
  const kind = label.role === 'figure' ? 'figure' : 'text';
  const width = textWidth(label.text, label.size, weight);
  const before = label.anchor === 'start' ? 0 : label.anchor === 'middle' ? width / 2 : width;
  const { x, y } = label.at;
  if (label.turn === 90) {
    return { left: x - RISE[kind] * em, right: x + DROP[kind] * em, top: y + before - width, bottom: y + before };
  }
  return { left: x - before, right: x - before + width, top: y - RISE[kind] * em, bottom: y + DROP[kind] * em };
}

/**
 * Breaks a text into lines at most `width` mm wide, as drawn. A number stays with its fraction and unit; a word wider
 * than the line is broken within.
 */
export function wrapText(text: string, size: number, width: number, weight: Weight = 'regular'): readonly string[] {
  const lines: string[] = [];
  const space = drawnWidth(' ', size, weight);
  let line = '';
  let length = 0;
  for (const whole of drawable(text).replace(BEFORE_UNIT, '\u00a0').split(/ +/)) {
    for (const word of breakWord(whole, size, width, weight)) {
      const wordLength = drawnWidth(word, size, weight);
      if (line !== '' && length + space + wordLength <= width) {
        line = `${line} ${word}`;
        length += space + wordLength;
        continue;
      }
      if (line !== '') lines.push(line);
      line = word;
      length = wordLength;
    }
  }
  return line === '' ? lines : [...lines, line];
}

function breakWord(word: string, size: number, width: number, weight: Weight): readonly string[] {
  if (drawnWidth(word, size, weight) <= width) return [word];
  const parts: string[] = [];
  let part = '';
  for (const character of word) {
    if (part !== '' && drawnWidth(part + character, size, weight) > width) {
      parts.push(part);
      part = character;
    } else part += character;
  }
  return [...parts, part];
}
