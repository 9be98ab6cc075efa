import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Card,
  DEFAULT_MARKS,
  type Fold,
  formatProblems,
  formatSize,
  Length,
  SYSTEMS,
  type System,
  sayLocalSize,
} from '../../../plugins/engine/index.ts';
import { readFold } from '../../../plugins/engine/spec/index.ts';
import { type Asked, cardOf, foldOf, kind, make } from '../support/folds.ts';
import { only } from '../support/marked.ts';
import { yamlMap } from '../support/yaml-tree.ts';

/*
 * Which size stands for which, worked out here from the sheets: a US Letter sheet (ANSI/ASME Y14.1) halved once and
 * twice, an ISO A4 sheet halved once and twice with the odd millimetre dropped (ISO 216), 12 in and 30 cm squares and
 * their quarters (common practice, no source), and 5 x 7 in, sold as 127 x 178 mm (common practice, no source).
 */
const halve = ([a, b]: readonly [number, number], whole: boolean): [number, number] => {
  const half = whole ? Math.floor(Math.max(a, b) / 2) : Math.max(a, b) / 2;
  return [Math.min(half, a, b), Math.max(half, Math.min(a, b))];
};
const LETTER: [number, number] = [8.5, 11];
const A4: [number, number] = [210, 297];
const PAIRS: readonly (readonly [inch: readonly [number, number], metric: readonly [number, number]])[] = [
  [LETTER, A4],
  [halve(LETTER, false), halve(A4, true)],
  [halve(halve(LETTER, false), false), halve(halve(A4, true), true)],
  [
    [12, 12],
    [300, 300],
  ],
  [
    [6, 6],
    [150, 150],
  ],
  [
    [5, 7],
    [127, 178],
  ],
];

const PLAIN = 'name: Plain\nunits: in\nparameters: { width: 4, height: 4 }\npieces: { base: width x height }';
const sizeOf = (card: Card): string =>
  formatSize(card.pieces[0]?.width ?? Length.zero, card.pieces[0]?.height ?? Length.zero, card.system);
const metricOf = (fold: Fold, asked: Asked = {}): string => sizeOf(cardOf(fold, 'metric', asked));

describe('the table of local sizes', () => {
  it.each(PAIRS)('%j in and %j mm stand for each other, upright and lying', (inch, metric) => {
    const fold = foldOf(PLAIN);
    for (const turned of [false, true]) {
      const [a, b] = turned ? [...inch].reverse() : inch;
      const [c, d] = turned ? [...metric].reverse() : metric;
      const [inInches, inMm] = [`{ width: ${a} in, height: ${b} in }`, `{ width: ${c} mm, height: ${d} mm }`];
      const [wide, high] = [Length.fromInches(a ?? 0), Length.fromInches(b ?? 0)];
      expect(metricOf(fold, { given: inInches })).toBe(`${c} x ${d} mm`);
      expect(sizeOf(cardOf(fold, 'inch', { given: inInches }))).toBe(formatSize(wide, high, 'inch'));
      expect(sizeOf(cardOf(fold, 'inch', { given: inMm }))).toBe(formatSize(wide, high, 'inch'));
      expect(metricOf(fold, { given: inMm })).toBe(`${c} x ${d} mm`);
    }
  });

  it('gives a square by one `side`', () => {
    const fold = foldOf('name: Square\nunits: in\nparameters: { side: 6 }\npieces: { base: 2*side x side }');
    expect(metricOf(fold)).toBe('300 x 150 mm');
    expect(sizeOf(cardOf(fold, 'inch', { given: 'side: 300 mm' }))).toBe('24 x 12 in');
    // 5 1/2 in square is in no table: 139.7 -> 139.5 mm.
    expect(metricOf(fold, { given: 'side: 5 1/2' })).toBe('279 x 139.5 mm');
  });

  it('looks at what comes out, however it is written', () => {
    expect(metricOf(foldOf(PLAIN), { given: '{ width: 8 1/2 in/2, height: width + 1 1/4 in }' })).toBe('105 x 148 mm');
    expect(metricOf(foldOf(PLAIN), { given: '{ width: 4.25, height: 5.5 }' })).toBe('105 x 148 mm');
  });
});

describe('a local size is not taken', () => {
  it.each([
    ['of a size that is in no row', '{ width: 4 1/4, height: 5 }', '108 x 127 mm'],
    ['of a size that is off by a hair', '{ width: 4 1/4, height: 5 33/64 }', '108 x 140 mm'],
    [
      'of a size that is partly in the system of the edition',
      '{ width: 107.95 mm, height: 5 1/2 in }',
      '108 x 139.5 mm',
    ],
    ['of a size that is in the system of the edition', '{ width: 107.95 mm, height: 139.7 mm }', '108 x 139.5 mm'],
  ])('%s', (_, given, expected) => {
    expect(metricOf(foldOf(PLAIN), { given })).toBe(expected);
  });

  it('where one of the pair is given for this edition alone', () => {
    const given = '{ width: 4 1/4, height: 5 1/2 }';
    expect(metricOf(foldOf(PLAIN), { given, own: 'width: 108 mm' })).toBe('108 x 139.5 mm');
    expect(metricOf(foldOf(PLAIN), { given, own: 'height: 5 1/2 in' })).toBe('108 x 139.5 mm');
  });

  it('but is where only something else is given for it', () => {
    const card = cardOf(kind('short-front'), 'metric', { own: 'short: 30 mm' });
    expect(sizeOf(card)).toBe('180 x 148 mm');
  });

  it('of sizes by other names', () => {
    const fold = foldOf(
      'name: Plain\nunits: in\nparameters: { wide: 4 1/4, tall: 5 1/2 }\npieces: { base: wide x tall }',
    );
    expect(metricOf(fold)).toBe('108 x 139.5 mm');
  });
});

describe('what a kind gives for one edition', () => {
  const OWN = `${PLAIN.replace('width: 4, height: 4', 'width: 4 1/4, height: 5 1/2, gap: 1')}
metric: { width: 110 mm, height: 15 cm }
inch: { gap: 1/2 }`;

  it('beats its defaults and the table', () => {
    expect(metricOf(foldOf(OWN))).toBe('110 x 150 mm');
    expect(cardOf(foldOf(OWN), 'inch').parameters[2]?.value).toEqual(Length.fromInches('1/2'));
    expect(cardOf(foldOf(OWN), 'metric').parameters[2]?.value).toEqual(Length.fromMm('25.5'));
  });

  it('is beaten by what a post gives, for all editions or for this one', () => {
    // What the post gives counts for both, and the table looks at it.
    expect(metricOf(foldOf(OWN), { given: '{ width: 5, height: 7 }' })).toBe('127 x 178 mm');
    expect(metricOf(foldOf(OWN), { given: '{ width: 4 1/4, height: 5 1/2 }' })).toBe('105 x 148 mm');
    expect(metricOf(foldOf(OWN), { own: 'width: 90 mm' })).toBe('90 x 150 mm');
  });

  it.each([
    ['metric: { widht: 105 mm }', 'unknown-parameter', 'metric.widht', 'Did you mean `width`?'],
    ['metric: { width: 105x }', 'unknown-unit', 'metric.width', ''],
    ['metric: [105, 148]', 'wrong-shape', 'metric', ''],
    ['metric: { height: 400 mm }', 'above-range', 'metric.height', 'Make `height` at most 279.4 mm.'],
  ])('is checked with the kind: %s', (own, code, path, remedy) => {
    const parameters = 'parameters: { width: 4 1/4, height: { default: 5 1/2, to: 11 } }';
    const { fold, problems } = readFold(
      yamlMap(`name: Plain\nunits: in\n${parameters}\npieces: { base: width x height }\n${own}`),
    );
    expect(fold).toBeUndefined();
    const problem = problems.find((one) => one.path === path);
    expect(problem?.place.line, formatProblems(problems)).toBe(5);
    if (code !== 'unknown-unit') expect(problem?.code).toBe(code);
    expect(problem?.remedy).toContain(remedy);
  });
});

describe('ranges beside a local size', () => {
  it('are held against it, and the place where the size was written is told', () => {
    const fold = foldOf(
      'name: Low\nunits: in\nparameters: { width: 4, height: { default: 4, to: 5 3/4 } }\npieces: { base: width x height }',
    );
    const given = '{ width: 4 1/4, height: 5 1/2 }';
    expect(make(fold, 'inch', { given }).problems).toEqual([]);
    const problem = only(make(fold, 'metric', { given }).problems);
    expect(problem).toMatchObject({
      code: 'above-range',
      path: 'height',
      wrote: 'height: 148 mm, the local size ISO A6 for US A2',
      takes: '`height` (height) to 146.05 mm',
      remedy: 'Give this edition sizes of its own under `metric:`, with `height` at most 146.05 mm.',
    });
    expect(problem.place).toMatchObject({ file: 'post.md', line: 1, column: 25 });
    expect(make(fold, 'metric', { given, own: 'height: 146 mm' }).problems).toEqual([]);
  });

  it('a size that was in its range and is no longer goes as far as the range does', () => {
    const given = '{ width: 4 1/4, height: 5 1/2, short: 3 1/4 }';
    const card = cardOf(kind('short-front'), 'metric', { given });
    // 105 mm less 1 in is 79.6 mm: the mark below is 79.5.
    expect(card.parameters.map(({ name, value, local }) => [name, value, local])).toEqual([
      ['width', Length.fromMm(105), { name: 'ISO A6', for: 'US A2' }],
      ['height', Length.fromMm(148), { name: 'ISO A6', for: 'US A2' }],
      ['short', Length.fromMm('79.5'), { name: 'ISO A6', for: 'US A2', limit: 'most' }],
    ]);
    expect(sayLocalSize(card)).toBe(
      'Made in ISO A6, the local size for US A2, and not converted. How much of the back shows beside the front: the most that this size has room for.',
    );
    expect(sayLocalSize(cardOf(kind('short-front'), 'inch', { given }))).toBeUndefined();
  });

  it('so does a count', () => {
    const fold = foldOf(
      'name: Steps\nunits: in\nparameters: { width: 4 1/4, height: 5 1/2, steps: { count: 11, from: 1, to: height/(1/2 in) } }\npieces: { base: width x height }',
    );
    // 139.7 mm hold 11 steps of 12.7 mm going from A2; from A6 back, 148 mm hold more.
    expect(cardOf(fold, 'metric').parameters[2]).toMatchObject({ value: 11 });
    const back = { given: '{ width: 105 mm, height: 5.5 in }' };
    expect(cardOf(fold, 'inch', back).parameters[2]).toMatchObject({ value: 11 });
  });

  it('but a size that was outside from the start is refused', () => {
    const { problems } = make(kind('short-front'), 'metric', { given: 'short: 3 3/8' });
    expect(problems.map(({ code, path }) => [code, path])).toEqual([['above-range', 'short']]);
  });
});

describe('every kind in both editions at every local size that it takes', () => {
  const ids = ['side-fold', 'top-fold', 'gate', 'short-front'] as const;
  const UNIT: Readonly<Record<System, string>> = { inch: 'in', metric: 'mm' };

  it('keeps marks, sums and equalities', () => {
    const extra = fc.constantFrom<readonly [string, string]>(['gate', 'overlap'], ['short-front', 'short'], ['', '']);
    fc.assert(
      fc.property(
        fc.constantFrom(...ids),
        fc.constantFrom(...PAIRS),
        fc.boolean(),
        fc.constantFrom<System>('inch', 'metric'),
        extra,
        fc.integer({ min: 0, max: 16 }),
        (id, pair, turned, written, [owner, name], part) => {
          const fold = kind(id);
          const size = written === 'inch' ? pair[0] : pair[1];
          const [width, height] = turned ? [...size].reverse() : size;
          const unit = UNIT[written];
          const more =
            owner === id ? `, ${name}: ${name === 'short' ? '1/4 in + ' : ''}(width - 1 1/4 in)*${part}/32` : '';
          const given = `{ width: ${width} ${unit}, height: ${height} ${unit}${more} }`;
          const home = make(fold, written, { given });
          if (home.card === undefined) return;
          for (const system of SYSTEMS) {
            const { card, problems } = make(fold, system, { given });
            if (card === undefined) {
              // The only reason is a local size that the kind has no room for.
              expect(problems.map(({ wrote }) => wrote).join()).toContain('the local size');
              continue;
            }
            const mark = DEFAULT_MARKS[system];
            const [piece] = card.pieces;
            if (piece === undefined) throw new Error('no piece');
            expect(Length.sum(piece.columns.map((band) => band.size))).toEqual(piece.width);
            expect(Length.sum(piece.rows.map((band) => band.size))).toEqual(piece.height);
            expect([piece.width, piece.height].every((length) => length.per(mark).d === 1n)).toBe(true);
            for (const { measures } of card.equalities) {
              expect(new Set(measures.map(({ exact }) => exact.mm.toFraction())).size).toBe(1);
              expect(new Set(measures.map(({ printed }) => printed.mm.toFraction())).size).toBe(1);
            }
            const expected = (system === 'inch' ? pair[0] : pair[1]).map((value) =>
              system === 'inch' ? Length.fromInches(value) : Length.fromMm(value),
            );
            const found = card.parameters.slice(0, 2).map(({ value }) => value);
            expect(found).toEqual(turned ? expected.reverse() : expected);
          }
        },
      ),
      { numRuns: 150 },
    );
  });
});
