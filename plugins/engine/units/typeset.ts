import { FRACTION_CHARACTER, FRACTION_CHARACTERS } from './characters.ts';

/** Narrow enough to hold a whole number and its fraction together to the eye. */
const THIN_SPACE = '\u2009';
const FRACTION_SLASH = '\u2044';

/** A fraction written with a stroke, not part of a date, a ratio or a path; its whole number may stand before it. */
const STROKED = /(?<![\w./:⁄])(?:(\d+)(?:[ \u00a0\u2009]|[-\u2010\u2011]))?(\d{1,3})[/⁄∕](\d{1,3})(?![\w/⁄]|[.:,]\d)/g;

const CHARACTER = new RegExp(`(\\d?)[ \\u00a0\\u2009]?(${FRACTION_CHARACTER})`, 'g');

const TIMES_BETWEEN = /(?<=[\d"”″½¼¾⅛⅜⅝⅞⅓⅔]|\b(?:in|mm|cm)) [xX] (?=[\d½¼¾⅛⅜⅝⅞⅓⅔])/g;

/**
 * The text with its fractions ready for a font that sets them: `5 1/2` becomes 5, thin space, 1⁄2 (U+2044), and the
 * x of a size becomes ×. Proper fractions only, so that `24/7` stays.
 */
export function typesetFractions(text: string): string {
  return text
    .replace(TIMES_BETWEEN, ' × ')
    .replace(STROKED, (written, whole: string | undefined, numerator: string, denominator: string) => {
      if (Number(numerator) >= Number(denominator) || Number(numerator) === 0) return written;
      return setFraction(whole ?? '', numerator, denominator);
    })
    .replace(CHARACTER, (written, digit: string, character: string) => {
      const [numerator, denominator] = FRACTION_CHARACTERS.get(character) ?? [];
      if (numerator === undefined || denominator === undefined) return written;
      const gap = digit === '' && written.length > 1 ? written.slice(0, 1) : '';
      return `${gap}${setFraction(digit, String(numerator), String(denominator))}`;
    });
}

function setFraction(whole: string, numerator: string, denominator: string): string {
  return `${whole}${whole === '' ? '' : THIN_SPACE}${numerator}${FRACTION_SLASH}${denominator}`;
}
