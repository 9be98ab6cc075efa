import { describe, expect, it } from 'vitest';
import { formatNumber, formatSize, recipeOf, type System } from '../../../plugins/engine/index.ts';
import { type Asked, cardOf, foldOf, kind, make, printed } from '../support/folds.ts';

/**
 * Worked by hand from the rule of each kind. A side fold is twice its width, a top fold twice its height, a gate twice
 * its width with gates of a quarter of the sheet, a short front its width twice less what shows: common practice.
 *
 * In the metric edition each size goes to the nearest half millimetre first: 4 1/4 in = 107.95 -> 108; 5 1/2 in = 139.7
 * -> 139.5; 2 in = 50.8 -> 51; 8 in = 203.2 -> 203; 11 in = 279.4 -> 279.5; 1 1/4 in = 31.75, half way, -> 32, the even
 * one of 63 and 64 marks; 1/4 in = 6.35 -> 6.5.
 *
 * But 4 1/4 x 5 1/2 in, a US A2 card from a Letter sheet, is never converted: its metric card is ISO A6 from A4,
 * 105 x 148 mm, and 216 x 139.5 mm would be a sheet that no metric maker has a card or envelope for.
 */
const HAND: Readonly<Record<string, readonly [given: string, system: System, sheet: string, bands: string][]>> = {
  'side-fold': [
    ['', 'inch', '8 1/2 x 5 1/2 in', '4 1/4 | 4 1/4'],
    ['', 'metric', '210 x 148 mm', '105 | 105'],
    ['width: 2', 'inch', '4 x 5 1/2 in', '2 | 2'],
    ['width: 2', 'metric', '102 x 139.5 mm', '51 | 51'],
    ['width: 8', 'inch', '16 x 5 1/2 in', '8 | 8'],
    ['width: 8', 'metric', '406 x 139.5 mm', '203 | 203'],
    ['height: 2', 'inch', '8 1/2 x 2 in', '4 1/4 | 4 1/4'],
    ['height: 2', 'metric', '216 x 51 mm', '108 | 108'],
    ['height: 11', 'inch', '8 1/2 x 11 in', '4 1/4 | 4 1/4'],
    ['height: 11', 'metric', '216 x 279.5 mm', '108 | 108'],
  ],
  'top-fold': [
    ['', 'inch', '4 1/4 x 11 in', '5 1/2 | 5 1/2'],
    ['', 'metric', '105 x 296 mm', '148 | 148'],
    ['width: 2', 'inch', '2 x 11 in', '5 1/2 | 5 1/2'],
    ['width: 2', 'metric', '51 x 279 mm', '139.5 | 139.5'],
    ['width: 11', 'inch', '11 x 11 in', '5 1/2 | 5 1/2'],
    // 11 in alone would be 279.5 mm; but the two equal halves make 279, and a square sheet stays square.
    ['width: 11', 'metric', '279 x 279 mm', '139.5 | 139.5'],
    ['height: 2', 'inch', '4 1/4 x 4 in', '2 | 2'],
    ['height: 2', 'metric', '108 x 102 mm', '51 | 51'],
    ['height: 8', 'inch', '4 1/4 x 16 in', '8 | 8'],
    ['height: 8', 'metric', '108 x 406 mm', '203 | 203'],
  ],
  gate: [
    ['', 'inch', '8 1/2 x 5 1/2 in', '2 1/8 | 4 1/4 | 2 1/8'],
    ['', 'metric', '210 x 148 mm', '52.5 | 105 | 52.5'],
    ['width: 2', 'inch', '4 x 5 1/2 in', '1 | 2 | 1'],
    // Half of 51 mm is 25.5 mm, which lies on a mark.
    ['width: 2', 'metric', '102 x 139.5 mm', '25.5 | 51 | 25.5'],
    ['width: 8', 'inch', '16 x 5 1/2 in', '4 | 8 | 4'],
    ['width: 8', 'metric', '406 x 139.5 mm', '101.5 | 203 | 101.5'],
    ['height: 2', 'inch', '8 1/2 x 2 in', '2 1/8 | 4 1/4 | 2 1/8'],
    ['height: 2', 'metric', '216 x 51 mm', '54 | 108 | 54'],
    ['height: 11', 'inch', '8 1/2 x 11 in', '2 1/8 | 4 1/4 | 2 1/8'],
    ['height: 11', 'metric', '216 x 279.5 mm', '54 | 108 | 54'],
    // The most overlap is half the width, 2 1/8 in: each gate is (4 1/4 + 2 1/8)/2 = 3 3/16 in.
    ['overlap: 2 1/8', 'inch', '10 5/8 x 5 1/2 in', '3 3/16 | 4 1/4 | 3 3/16'],
    // 2 1/8 in is more than half of 105 mm. The most is 52.5: (105 + 52.5)/2 = 78.75, half way; 158 marks is even.
    ['overlap: 2 1/8', 'metric', '263 x 148 mm', '79 | 105 | 79'],
    // 1/2 in = 12.7 -> 12.5 mm: (105 + 12.5)/2 = 58.75, half way between marks; 118 marks is even.
    ['overlap: 1/2', 'metric', '223 x 148 mm', '59 | 105 | 59'],
  ],
  'short-front': [
    ['', 'inch', '7 1/4 x 5 1/2 in', '3 | 4 1/4'],
    ['', 'metric', '178 x 148 mm', '73 | 105'],
    // The step is at most half the width less 1/4 in: 3/4 in; in millimetres 51/2 - 6.5 = 19.
    ['width: 2', 'inch', '3 1/4 x 5 1/2 in', '1 1/4 | 2'],
    ['width: 2', 'metric', '83 x 139.5 mm', '32 | 51'],
    ['{ width: 2, short: 1 }', 'inch', '3 x 5 1/2 in', '1 | 2'],
    // 1 in = 25.4 -> 25.5 mm.
    ['{ width: 2, short: 1 }', 'metric', '76.5 x 139.5 mm', '25.5 | 51'],
    ['width: 8', 'inch', '14 3/4 x 5 1/2 in', '6 3/4 | 8'],
    ['width: 8', 'metric', '374 x 139.5 mm', '171 | 203'],
    ['height: 2', 'inch', '7 1/4 x 2 in', '3 | 4 1/4'],
    ['height: 11', 'metric', '184 x 279.5 mm', '76 | 108'],
    ['short: 1/4', 'inch', '8 1/4 x 5 1/2 in', '4 | 4 1/4'],
    ['short: 1/4', 'metric', '203.5 x 148 mm', '98.5 | 105'],
    ['short: 3 1/4', 'inch', '5 1/4 x 5 1/2 in', '1 | 4 1/4'],
    // 3 1/4 in = 82.55 mm leaves less than an inch of the front on 105 mm; the most is 105 - 25.4 = 79.6, on marks 79.5.
    ['short: 3 1/4', 'metric', '130.5 x 148 mm', '25.5 | 105'],
  ],
};

describe.each(Object.entries(HAND))('%s at its default and at the ends of its parameters', (id, rows) => {
  const fold = kind(id);
  it.each(rows)('%s, %s: %s', (given, system, sheet, bands) => {
    const asked: Asked = given === '' ? {} : { given };
    const [piece] = cardOf(fold, system, asked).pieces;
    if (piece === undefined) throw new Error('no piece');
    expect(formatSize(piece.width, piece.height, system)).toBe(sheet);
    expect(printed(piece.columns.length > 1 ? piece.columns : piece.rows, system)).toBe(bands);
  });
});

describe('the recipes that stand beside the kinds', () => {
  // Seen in several tutorials each; common practice, no source.
  it.each([
    ['side-fold', { cut: '8 1/2 x 5 1/2 in', score: '4 1/4' }],
    ['top-fold', { cut: '4 1/4 x 11 in', score: '5 1/2' }],
    ['gate', { cut: '8 1/2 x 5 1/2 in', score: '2 1/8, 6 3/8' }],
    ['short-front', { cut: '7 1/4 x 5 1/2 in', score: '3' }],
  ])('%s prints back as makers say it', (id, line) => {
    expect(recipeOf(cardOf(kind(id), 'inch'))).toEqual([line]);
  });

  it.each([
    ['10 x 7 from a 5 in side fold', 'side-fold', '{ width: 5, height: 7 }', { cut: '10 x 7 in', score: '5' }],
    ['12 x 4 for a 6 x 4 gate', 'gate', '{ width: 6, height: 4 }', { cut: '12 x 4 in', score: '3, 9' }],
  ])('%s', (_, id, given, line) => {
    expect(recipeOf(cardOf(kind(id), 'inch', { given }))).toEqual([line]);
  });

  it('half an A4 sheet is an A6 card: 148 x 210 mm scored at 105 (ISO 216)', () => {
    const card = cardOf(kind('side-fold'), 'metric', { own: '{ width: 105 mm, height: 148 mm }' });
    expect(recipeOf(card)).toEqual([{ cut: '210 x 148 mm', score: '105' }]);
  });

  it('puts the kind’s own recipe beside the card at the defaults, in its own system only', () => {
    const lesson = cardOf(kind('gate'), 'inch').lesson.map(({ along, scores }) => ({
      along,
      scores: scores.map(({ at }) => formatNumber(at, 'inch')),
    }));
    expect(lesson).toEqual([{ along: 'across', scores: ['2 1/8', '6 3/8'] }]);
    expect(cardOf(kind('gate'), 'metric').lesson).toEqual([]);
    expect(cardOf(kind('gate'), 'inch', { given: 'width: 5' }).lesson).toEqual([]);
  });
});

describe('a size outside its range', () => {
  it.each([
    ['width: 1 15/16', 'inch', 'from 2 in to 8 in', 'Make `width` at least 2 in.', '1:8'],
    ['width: 8 1/16', 'inch', 'from 2 in to 8 in', 'Make `width` at most 8 in.', '1:8'],
    ['width: 8 1/16', 'metric', 'from 50.8 mm to 203.2 mm', 'Make `width` at most 203.2 mm.', '1:8'],
    ['{ height: 5, width: 12 in }', 'inch', 'from 2 in to 8 in', 'Make `width` at most 8 in.', '1:21'],
  ] as const)('%s in the %s edition', (given, system, range, remedy, at) => {
    const { card, problems } = make(kind('side-fold'), system, { given });
    expect(card).toBeUndefined();
    expect(problems).toHaveLength(1);
    const [problem] = problems;
    expect(problem?.takes).toBe(`\`width\` (Width of the closed card) ${range}`);
    expect(problem?.remedy).toBe(remedy);
    expect(`${problem?.place.line}:${problem?.place.column}`).toBe(at);
    expect(problem?.place.file).toBe('post.md');
  });

  it('takes 2 in, which is 50.8 mm and printed as 51 mm, where the limit is 2 in', () => {
    const fold = kind('gate');
    const asked = { given: '{ width: 4, overlap: 2 }' };
    const [, , overlap] = cardOf(fold, 'metric', asked).parameters;
    // The limit is half of 4 in: 2 in, 51 mm on the nearest mark, though half of 101.5 mm is only 50.75 mm.
    expect(overlap?.value).toMatchObject({ mm: { n: 51n, d: 1n } });
    expect(make(fold, 'inch', asked).problems).toEqual([]);
  });

  it('lets a size in the other system pass a limit by less than a mark, and no further', () => {
    const fold = kind('side-fold');
    // 8 in is 203.2 mm: the mark above it is 203.5 mm.
    expect(make(fold, 'metric', { own: 'width: 203.5 mm' }).problems).toEqual([]);
    expect(make(fold, 'metric', { own: 'width: 204 mm' }).problems.map(({ code }) => code)).toEqual(['above-range']);
    expect(make(fold, 'metric', { own: 'width: 8 1/64 in' }).problems.map(({ code }) => code)).toEqual(['above-range']);
  });

  it('blames the kind for a default that no longer fits', () => {
    const fold = foldOf(
      'name: Step\nunits: in\nparameters: { width: 4, short: { default: 1 1/4, to: width - 1 } }\npieces: { base: width - short x 4 }',
    );
    const { problems } = make(fold, 'inch', { given: 'width: 2' });
    expect(problems).toHaveLength(1);
    const [problem] = problems;
    expect(problem).toMatchObject({ code: 'above-range', path: 'parameters.short.default', wrote: 'short: 1 1/4' });
    expect(problem?.place.file).toBe('fold.md');
    expect(problem?.remedy).toBe('Give `short` in the post: at most 1 in. Or change its default.');
  });
});
