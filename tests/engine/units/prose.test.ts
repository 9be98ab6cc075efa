import { describe, expect, it } from 'vitest';
import { findMeasures, formatLengths, type ReadOptions, systemOf } from '../../../plugins/engine/units/index.ts';

/** Each measure as the text it takes and what it comes to: `5½" = 5 1/2 in`. Refused ones end in `= ?`. */
function found(text: string, options: ReadOptions = {}): string[] {
  return findMeasures(text, options).map(({ start, end, lengths, unit }) => {
    const value = lengths.length === 0 ? '?' : formatLengths(lengths, systemOf(unit));
    return `${text.slice(start, end)} = ${value}`;
  });
}

// How lessons are written: sentences of our own, common practice, no source.
describe('measures in prose', () => {
  it.each([
    ['Cut a panel 5 1/2 in wide.', ['5 1/2 in = 5 1/2 in']],
    ['Score at 2 3/4".', ['2 3/4" = 2 3/4 in']],
    ['A strip of 5½” and one of ½″.', ['5½” = 5 1/2 in', '½″ = 1/2 in']],
    ["Trim 1/8'' off.", ["1/8'' = 1/8 in"]],
    ['A 4 1/4 x 5 1/2 in card.', ['4 1/4 x 5 1/2 in = 4 1/4 x 5 1/2 in']],
    ['A 5x7" card and a 5" x 7" mat.', ['5x7" = 5 x 7 in', '5" x 7" = 5 x 7 in']],
    ['Fold 105 × 148 mm in half.', ['105 × 148 mm = 105 x 148 mm']],
    ['Two 5 x 7 in kraft cards.', ['5 x 7 in = 5 x 7 in']],
    ['A 4 x 4 x 2 in box.', ['4 x 4 x 2 in = 4 x 4 x 2 in']],
    ['Letter is 8 1/2 by 11 inches.', ['8 1/2 by 11 inches = 8 1/2 x 11 in']],
    ['A 12-inch ruler and a 5-inch-wide strip.', ['12-inch = 12 in', '5-inch = 5 in']],
    ['Two 1-1/2 in squares.', ['1-1/2 in = 1 1/2 in']],
    ['Foam of 3 mm, 0.5 mm film, 14 cm ribbon.', ['3 mm = 3 mm', '0.5 mm = 0.5 mm', '14 cm = 140 mm']],
    ['It is 5 in. wide, or 5 in. Then fold.', ['5 in. = 5 in', '5 in = 5 in']],
    ['A 5 in strip.', ['5 in = 5 in']],
    ['Each is 5 in wide.', ['5 in = 5 in']],
    ['Use 5\u00a0in strips.', ['5\u00a0in = 5 in']],
    ['Trim 3in off.', ['3in = 3 in']],
    ['Cut 5 1/2\nin wide.', ['5 1/2\nin = 5 1/2 in']],
    ['(5 mm) and [6 mm]; 7 mm: 8 mm!', ['5 mm = 5 mm', '6 mm = 6 mm', '7 mm = 7 mm', '8 mm = 8 mm']],
    ['Score it—5 mm from the edge.', ['5 mm = 5 mm']],
  ])('%j', (text, measures) => {
    expect(found(text)).toEqual(measures);
    expect(findMeasures(text).flatMap(({ faults }) => faults)).toEqual([]);
  });

  it.each([
    ['1/8 to 1/4 in of tape', ['1/8 = 1/8 in', '1/4 in = 1/4 in']],
    ['1/8–1/4 in of tape', ['1/8 = 1/8 in', '1/4 in = 1/4 in']],
    ['1/8-1/4 in of tape', ['1/8 = 1/8 in', '1/4 in = 1/4 in']],
    ['1/8 in–1/4 in of tape', ['1/8 in = 1/8 in', '1/4 in = 1/4 in']],
    ['1/4"-1/2" gaps', ['1/4" = 1/4 in', '1/2" = 1/2 in']],
    ['2 or 3 mm', ['2 = 2 mm', '3 mm = 3 mm']],
    ['between 2 and 3 in wide', ['2 = 2 in', '3 in = 3 in']],
    ['score at 2 1/8, 4 1/4 and 6 3/8 in.', ['2 1/8 = 2 1/8 in', '4 1/4 = 4 1/4 in', '6 3/8 in = 6 3/8 in']],
    ['score at 2, 4 and 6 in from the left', ['2 = 2 in', '4 = 4 in', '6 in = 6 in']],
    ['4 1/4 x 5 1/2 or 5 x 7 in', ['4 1/4 x 5 1/2 = 4 1/4 x 5 1/2 in', '5 x 7 in = 5 x 7 in']],
    ['take 2 and 3 mm strips', ['3 mm = 3 mm']],
  ])('gives each measure of %j its own', (text, measures) => {
    expect(found(text)).toEqual(measures);
  });

  it.each([
    'Meet at 10:30 on 2026-10-03, or 3/4/2026, or 3.10.2026.',
    'Mix 3:4, see in:score, ratio 1:1.5.',
    'Add 1/2 cup of water and 3 1/2 cups of flour.',
    'Done in 5 minutes, 5 in a row, 4 in total, 12 in all, 3 in each.',
    'Wait 5 in the car. 1/2 in the bowl. 2.5 in the end.',
    'Cut 4 in kraft and 2 in white.',
    'Step 5 in this lesson. Page 3 in our book.',
    'In 1985 in winter; 10/31 in Harbourtown; 24/7 in the shop.',
    'Top 5 In Winter',
    'A 3-in-1 tool, 4-in-line, 5 in-store.',
    "The class of '95 in June; the 5's; 5' and 5'6\".",
    'Say "5" and “6” and "Top 10".',
    'It costs $5 in all, or £5 mm.',
    'Version 1.2.3 in use; IP 10.0.0.5 in range.',
    '−5 mm and -5 mm and A-5 mm and A5mm',
    'An area of 5 mm² or 5 in2 or 5 in^2; 5 mm/s.',
    '5 x 7 card, 12x12 paper, 300 gsm, 80 lb cover, 5%, 5°.',
    'Two 5 x 7 in the pack.',
    'https://saltmarsh-paper.example/5mm/6in',
    '1/2/3 in and 1.5.2 mm',
    '5,000 in the first week',
    '',
    'No number here.',
  ])('leaves %j alone', (text) => {
    expect(found(text)).toEqual([]);
  });

  it.each([
    ['He said "cut it to 5 1/2" and left.', []],
    ['"Cut it to 5 1/2" wide," he said.', ['5 1/2" = 5 1/2 in']],
    ['“Cut it to 5 1/2” wide,” he said.', ['5 1/2” = 5 1/2 in']],
    ['“Cut it to 5 1/2” and he left.', []],
    ['"A 5" x 7" card," he said.', ['5" x 7" = 5 x 7 in']],
    ['The "Top 5" and 6" strips.', ['6" = 6 in']],
    ['A 6" strip, the "long" one.', ['6" = 6 in']],
    ['“Use 6″ paper”', ['6″ = 6 in']],
  ])('tells inch marks from quotation marks in %j', (text, measures) => {
    expect(found(text)).toEqual(measures);
  });

  it.each([
    ['trim to 53/4 in wide', '53/4 in = 13 1/4 in', 'fraction-run-together'],
    ['trim to 53/4"', '53/4" = 13 1/4 in', 'fraction-run-together'],
    ['5 4/3 in', '5 4/3 in = ?', 'fraction-too-big'],
    ['5–1/2 in tall', '5–1/2 in = ?', 'number-dash'],
    ['5,5 cm wide', '5,5 cm = ?', 'number-comma'],
    ['1,000 mm', '1,000 mm = ?', 'number-comma'],
    ['1/2 1/4 in', '1/2 1/4 in = ?', 'number-two-fractions'],
    ['5 in x 148 mm', '5 in x 148 mm = 127 x 148 mm', 'size-mixed-units'],
  ])('asks about %j', (text, measure, code) => {
    expect(found(text)).toEqual([measure]);
    expect(findMeasures(text).flatMap(({ faults }) => faults)).toMatchObject([{ code }]);
  });

  it('reads a decimal comma where the language has one', () => {
    expect(found('5,5 cm breit, 10,5 x 14,8 cm', { decimalComma: true })).toEqual([
      '5,5 cm = 55 mm',
      '10,5 x 14,8 cm = 105 x 148 mm',
    ]);
  });

  it('gives offsets in the whole text', () => {
    const text = 'Long before it, 53/4 in wide.';
    const [measure] = findMeasures(text);
    expect(measure?.start).toBe(text.indexOf('53/4'));
    expect(measure?.faults[0]?.offset).toBe(text.indexOf('53/4'));
  });

  it.each(['5 1/2 in wide and "x 5" ', '5 x ', '5, ', '1/2 ', '5,', '"5" ', '5 to ', '1', '5-', '.5', '5½', '5 " '])(
    'takes no longer than the length of a text of many %j asks for',
    (part) => {
      const time = (count: number): number => {
        const text = part.repeat(count);
        const times = [1, 2, 3].map(() => {
          const start = performance.now();
          findMeasures(text);
          return performance.now() - start;
        });
        return Math.min(...times);
      };
      time(500);
      // Eight times the text. Growth with the square would take sixty-four times as long.
      expect(time(16_000)).toBeLessThan(30 * Math.max(1, time(2000)));
    },
  );
});
