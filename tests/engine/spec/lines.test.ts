import { all, create } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { courses, pieceOf, shown } from '../support/one-piece.ts';

const math = create(all ?? {});

/** A sheet of 4 x 6 with lines upon it. */
const lines = (yaml: string, more = '', unit: 'in' | 'mm' = 'in') =>
  pieceOf(`{ size: wide x tall, ${yaml} ${more} }`, unit).lines;

describe('a line', () => {
  it.each([
    ['1 1/2', '(1.5, 0) (1.5, 6)'],
    ['middle down', '(2, 0) (2, 6)'],
    ['middle across', '(0, 3) (4, 3)'],
    ['{ left: 1 }', '(1, 0) (1, 6)'],
    ['{ right: 1 }', '(3, 0) (3, 6)'],
    ['{ top: 1 }', '(0, 1) (4, 1)'],
    ['{ bottom: 1 }', '(0, 5) (4, 5)'],
    ['{ bottom: 1, from: 1/2, to: wide - 1 }', '(0.5, 5) (3, 5)'],
    ['{ left: 1, from: 4, to: 1 }', '(1, 1) (1, 4)'],
    ['{ middle: down, to: 2 }', '(2, 0) (2, 2)'],
    ['top-left to bottom-right', '(0, 0) (4, 6)'],
    ['bottom-left to top', '(0, 6) (2, 0)'],
    ['"[1, 2] to centre"', '(1, 2) (2, 3)'],
    ['"left at 2 to [3, tall - 1]"', '(0, 2) (3, 5)'],
    ['{ from: [1, 2], to: right }', '(1, 2) (4, 3)'],
    ['{ start: top, off: top, by: 90 deg, towards: bottom-left }', '(2, 0) (2, 6)'],
    ['{ start: top-left, off: left, by: 45 deg, towards: bottom-right }', '(0, 0) (4, 4)'],
    ['{ start: [1, 1], off: top, by: 90 deg, towards: bottom-left, long: 2 }', '(1, 1) (1, 3)'],
  ])('%s runs %s, exactly', (written, course) => {
    expect(courses(lines(`marks: { a: ${written} }`))).toEqual([`a: ${course}`]);
    // The same numbers in the other unit system.
    expect(courses(lines(`marks: { a: ${written} }`, '', 'mm'), 'mm')).toEqual([`a: ${course}`]);
  });

  it('in a list is a family, whose members have numbers', () => {
    const made = lines('cuts: { slit: { left: [1, wide - 1], from: 1, to: 5 } }');
    expect(courses(made)).toEqual(['slit(1): (1, 1) (1, 5)', 'slit(2): (3, 1) (3, 5)']);
    expect(made.map(({ family, does, folds }) => [family, does, folds])).toEqual([
      ['slit', 'cut', []],
      ['slit', 'cut', []],
    ]);
  });

  it('does what its map says, and a crease folds as it says, a valley unless said', () => {
    const made = lines(
      'creases: { a: 1, b: { left: 2, fold: mountain }, c: { middle: across, fold: [valley, both] } }, perforations: { d: 3 }, marks: { e: 1/2 }',
    );
    expect(made.map(({ name, does, folds }) => `${name} ${does} ${folds.join(' ')}`)).toEqual([
      'a crease valley',
      'b crease mountain',
      'c crease valley both',
      'd perforation ',
      'e mark ',
    ]);
  });

  it('may be made from lines that come later', () => {
    const made = lines(
      'marks: { a: "b at 2 to top-left", b: { start: c at 1, off: c, by: 90 deg, towards: top-right }, c: middle down }',
    );
    expect(courses(made)).toEqual(['a: (4, 1) (0, 0)', 'b: (2, 1) (4, 1)', 'c: (2, 0) (2, 6)']);
  });

  it('may begin at the crease between two bands, and measure its own piece', () => {
    const made = pieceOf(
      '{ across: [left 2, valley spine, right 2], down: 6, marks: { a: spine at 1 to top-left, b: { left: sheet.left.width/2 }, c: { left: sheet.right.width + 1 }, d: { start: spine at 1, off: spine, by: 90 deg, towards: top-left } } }',
    ).lines;
    expect(courses(made)).toEqual(['a: (2, 1) (0, 0)', 'b: (1, 0) (1, 6)', 'c: (3, 0) (3, 6)', 'd: (2, 1) (0, 1)']);
  });
});

describe('a line at an angle', () => {
  const leaning = (by: string, towards: string, more = '', unit: 'in' | 'mm' = 'in') => {
    const [line] = lines(
      `marks: { a: { start: centre, off: middle, by: ${by}, towards: ${towards} ${more} }, middle: middle down }`,
      '',
      unit,
    );
    if (line === undefined) throw new Error('no line');
    return { line, from: shown(line.from, unit), to: shown(line.to, unit) };
  };

  it.each(['in', 'mm'] as const)('leans by that angle, as long as said, into the quarter of the corner: %s', (unit) => {
    for (const degrees of [1, 20, 35.5, 50, 89]) {
      const across = 2 * Number(math.evaluate(`sin(${degrees} deg)`));
      const along = 2 * Number(math.evaluate(`cos(${degrees} deg)`));
      for (const [corner, x, y] of [
        ['top-left', -1, -1],
        ['top-right', 1, -1],
        ['bottom-left', -1, 1],
        ['bottom-right', 1, 1],
      ] as const) {
        const { line, from, to } = leaning(`${degrees} deg`, corner, ', long: 2', unit);
        expect(from).toEqual([2, 3]);
        expect(to[0]).toBeCloseTo(2 + x * across, 11);
        expect(to[1]).toBeCloseTo(3 + y * along, 11);
        expect(line.to.rounded).toBe(true);
      }
    }
  });

  it('goes as far as the paper when no length is said, and ends on its very edge', () => {
    const { line, to } = leaning('lean', 'top-right');
    expect(line.to.x.toFraction()).toBe('508/5');
    expect(to[1]).toBeCloseTo(3 - 2 / Math.tan((50 * Math.PI) / 180), 11);
    const steep = leaning('10 deg', 'bottom-left');
    expect(steep.line.to.y.toFraction()).toBe('762/5');
    expect(steep.to[0]).toBeCloseTo(2 - 3 * Math.tan((10 * Math.PI) / 180), 11);
  });

  it('is the mirror image of the one towards the opposite corner, to the last digit', () => {
    const ends = ['top-left', 'top-right', 'bottom-left', 'bottom-right'].map(
      (corner) => leaning('37 deg', corner, ', long: 1').line.to,
    );
    const off = ends.map(({ x, y }) => [x.sub('254/5').abs().toFraction(), y.sub('381/5').abs().toFraction()]);
    expect(new Set(off.map(String)).size).toBe(1);
  });

  it('at 45 degrees is as long as said though its ends are no fractions', () => {
    const { to } = leaning('45 deg', 'top-right', ', long: 1');
    expect(Math.hypot(to[0] - 2, to[1] - 3)).toBeCloseTo(1, 11);
  });
});

describe('in another edition', () => {
  it('every place of a line is on a mark, and what is equal as written is equal in print', () => {
    const [slit, fold, end] = pieceOf(
      '{ across: [a 4 1/4, valley, b 4 1/4], down: 5 1/2, cuts: { slit: { left: [4 1/4, sheet.a.width], from: 1/3, to: 5 1/2 } }, marks: { end: { left: 8 1/2 } } }',
      'in',
      'metric',
    ).lines;
    // 4 1/4 in = 107.95 mm -> 108; 1/3 in = 8.467 -> 8.5; 5 1/2 in = 139.7 -> 139.5; the sum of the bands is 216.
    expect(
      courses(
        [slit, fold, end].flatMap((line) => line ?? []),
        'mm',
      ),
    ).toEqual(['slit(1): (108, 8.5) (108, 139.5)', 'slit(2): (108, 8.5) (108, 139.5)', 'end: (216, 0) (216, 139.5)']);
  });
});
