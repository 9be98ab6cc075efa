/**
 * The characters that people and their programs write measurements with.
 *
 * Sets are given as the inside of a regular expression class, so that patterns can be put together from them.
 */

/** Every kind of space, the zero-width ones that copying leaves behind included. */
export const SPACE = '[\\s\\u200b\\u2060]';

/** Ordinary and full-width digits. */
export const DIGIT = '[0-9\\uff10-\\uff19]';

/** Solidus, fraction slash, division slash, full-width solidus. */
export const SLASH = '[/\\u2044\\u2215\\uff0f]';

/** Hyphens that join a whole number to its fraction: hyphen-minus, hyphen, non-breaking hyphen. */
export const HYPHEN = '[-\\u2010\\u2011]';

/** Dashes that stand for a range or a sign: figure dash, en dash, em dash, minus, full-width hyphen. */
export const DASH = '[\\u2012-\\u2015\\u2212\\uff0d]';

/** One character that means inches: straight, curly, low and full-width double quotes, double primes, ditto marks. */
export const DOUBLE_MARK =
  '["\\u201c-\\u201f\\u2033\\u2036\\u02ba\\u02dd\\u02ee\\u05f4\\u3003\\u301d-\\u301f\\u275d\\u275e\\uff02]';

/** One character that means feet alone and inches when doubled: quotes, primes, apostrophes, accents. */
export const SINGLE_MARK = "['\\u2018-\\u201b\\u2032\\u2035\\u02b9\\u02bb-\\u02bd\\u00b4`\\uff07]";

/** Signs that are only ever a times sign; the letter x is another matter. */
export const TIMES = '[\\u00d7\\u2715\\u2716\\u2a2f\\u2a09]';

/** Single characters that are a fraction: numerator and denominator (Unicode, Number Forms and Latin-1). */
export const FRACTION_CHARACTERS: ReadonlyMap<string, readonly [number, number]> = new Map([
  ['¼', [1, 4]],
  ['½', [1, 2]],
  ['¾', [3, 4]],
  ['⅐', [1, 7]],
  ['⅑', [1, 9]],
  ['⅒', [1, 10]],
  ['⅓', [1, 3]],
  ['⅔', [2, 3]],
  ['⅕', [1, 5]],
  ['⅖', [2, 5]],
  ['⅗', [3, 5]],
  ['⅘', [4, 5]],
  ['⅙', [1, 6]],
  ['⅚', [5, 6]],
  ['⅛', [1, 8]],
  ['⅜', [3, 8]],
  ['⅝', [5, 8]],
  ['⅞', [7, 8]],
]);

export const FRACTION_CHARACTER = `[${[...FRACTION_CHARACTERS.keys()].join('')}]`;

const SUPERSCRIPTS = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const SUBSCRIPTS = '₀₁₂₃₄₅₆₇₈₉';
const FULL_WIDTH = '０１２３４５６７８９';

export const SUPERSCRIPT = `[${SUPERSCRIPTS}]`;
export const SUBSCRIPT = `[${SUBSCRIPTS}]`;

/** Digits of any of the sets above as ordinary digits; other characters stay. */
export function plainDigits(text: string): string {
  return text.replace(/[^0-9]/gu, (character) => {
    for (const set of [SUPERSCRIPTS, SUBSCRIPTS, FULL_WIDTH]) {
      const digit = set.indexOf(character);
      if (digit >= 0) return String(digit);
    }
    return character;
  });
}
