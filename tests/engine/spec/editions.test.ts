import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEFAULT_MARKS, formatNumber, Length, SYSTEMS } from '../../../plugins/engine/index.ts';
import { type Asked, cardOf, foldOf, kind, printed } from '../support/folds.ts';

/** Sizes a maker may write, in inches down to 1/64 or in millimetres with two decimals, within the ranges of the kinds. */
const written = (least: number, most: number) =>
  fc.oneof(
    fc.integer({ min: least * 64 + 64, max: most * 64 - 64 }).map((n) => `${Math.floor(n / 64)} ${n % 64}/64 in`),
    fc.integer({ min: least * 2540 + 2540, max: most * 2540 - 2540 }).map((n) => `${n / 100} mm`),
  );

describe('in every edition', () => {
  it.each(['side-fold', 'top-fold', 'gate', 'short-front'])('every length of a %s lies on a mark', (id) => {
    const fold = kind(id);
    fc.assert(
      fc.property(written(2, 8), written(2, 8), (width, height) => {
        for (const system of SYSTEMS) {
          const card = cardOf(fold, system, { given: `{ width: ${width}, height: ${height} }` });
          const mark = DEFAULT_MARKS[system];
          const lengths = card.pieces.flatMap((piece) => [
            ...[piece.width, piece.height],
            ...[...piece.columns, ...piece.rows].flatMap(({ start, size }) => [start, size]),
            ...piece.creases.map(({ at }) => at),
          ]);
          expect(lengths.filter((length) => length.per(mark).d !== 1n)).toEqual([]);
          for (const piece of card.pieces) {
            expect(Length.sum(piece.columns.map(({ size }) => size))).toEqual(piece.width);
            expect(Length.sum(piece.rows.map(({ size }) => size))).toEqual(piece.height);
          }
          for (const { measures } of card.equalities) {
            expect(new Set(measures.map(({ exact }) => exact.mm.toFraction())).size).toBe(1);
            expect(new Set(measures.map(({ printed: print }) => print.mm.toFraction())).size).toBe(1);
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  it.each(['inch', 'metric'] as const)('bands equal as written are equal in print: %s', (system) => {
    const size = fc.constantFrom('a', 'b', 'a/3', 'b/3', '(a + b)/7', 'a - b/2', '1 1/3', '2 mm + b', 'rest');
    fc.assert(
      fc.property(written(4, 12), written(2, 4), fc.array(size, { minLength: 2, maxLength: 6 }), (a, b, sizes) => {
        const open = sizes.indexOf('rest');
        const strip = sizes
          .map((text, index) => (text === 'rest' && index !== open ? 'a' : text))
          .map((text, index) => `${index === 0 ? '' : 'valley, '}p${index} ${text}`);
        const across = `across: [${strip.join(', ')}], down: 5`;
        const piece = open < 0 ? `{ ${across} }` : `{ size: 90 x 5, ${across} }`;
        const fold = foldOf(
          `name: F\nunits: in\nparameters: { a: ${a}, b: ${b} }\npieces: { other: { across: a, down: b }, base: ${piece} }`,
        );
        const card = cardOf(fold, system);
        const all = card.pieces.flatMap(({ columns, rows }) => [...columns, ...rows]);
        for (const one of all) {
          for (const two of all) if (one.exact.equals(two.exact)) expect(one.size).toEqual(two.size);
        }
        const declared = card.pieces[1]?.declared;
        if (declared) expect(declared.width).toEqual(card.pieces[1]?.width);
      }),
      { numRuns: 80 },
    );
  });
});

describe('an edition', () => {
  const half = (pieces: string, more = ''): Parameters<typeof cardOf>[0] =>
    foldOf(`name: Half\nunits: in\n${more}\npieces: ${pieces}`);
  const sizes = (fold: Parameters<typeof cardOf>[0], asked: Asked = {}): string[] =>
    cardOf(fold, 'metric', asked).pieces.map(
      ({ columns, rows }) => `${printed(columns, 'metric')} x ${printed(rows, 'metric')}`,
    );

  it('keeps halves equal however the whole is said: 11 in scored at 5 1/2', () => {
    const expected = ['139.5 | 139.5 x 101.5'];
    expect(sizes(half('{ base: { across: [a 5 1/2, valley, b 5 1/2], down: 4 } }'))).toEqual(expected);
    expect(sizes(half('{ base: { size: 11 x 4, across: [a 5 1/2, valley, b rest] } }'))).toEqual(expected);
    expect(
      sizes(half('{ base: { size: 11 x 4, across: [a w, valley, b rest] } }', 'parameters: { w: 5 1/2 }')),
    ).toEqual(expected);
    expect(
      sizes(half('{ base: { size: 2*w x 4, across: [a rest, valley, b w] } }', 'parameters: { w: 5 1/2 }')),
    ).toEqual(expected);
  });

  it('prints the declared size of bands that add up to it as their sum', () => {
    const [piece] = cardOf(half('{ base: { size: 11 x 4, across: [a 5 1/2, valley, b 5 1/2] } }'), 'metric').pieces;
    expect(formatNumber(piece?.declared?.width ?? Length.zero, 'metric')).toBe('279');
    // 1/2 in short of what is declared: 266.7 mm is printed as itself.
    const [slip] = cardOf(half('{ base: { size: 10 1/2 x 4, across: [a 5, valley, b 5] } }'), 'metric').pieces;
    expect(formatNumber(slip?.declared?.width ?? Length.zero, 'metric')).toBe('266.5');
    expect(formatNumber(slip?.width ?? Length.zero, 'metric')).toBe('254');
  });

  it('gives a plain side the printed value of what is as long, before or after it', () => {
    const expected = ['279 x 139.5', '139.5 | 139.5 x 101.5', '279 x 101.5'];
    const pieces = '{ mat: 11 x 5 1/2, base: { across: [a 5 1/2, valley, b 5 1/2], down: 4 }, liner: base.width x 4 }';
    expect(sizes(half(pieces))).toEqual(expected);
  });

  it('makes a mat smaller all round, from the printed panel', () => {
    // 5 1/2 in -> 139.5, 4 in = 101.6 -> 101.5, 1/8 in = 3.175 -> 3 mm a side.
    expect(sizes(half('{ base: { across: [a 5 1/2, valley, b 5 1/2], down: 4 }, mat: base.a less 1/8 in }'))[1]).toBe(
      '133.5 x 95.5',
    );
  });

  it('lets what it is given for itself win', () => {
    const fold = kind('side-fold');
    const asked = { given: '{ width: 4, height: 6 }', own: 'width: 105 mm' };
    // 6 in = 152.4 -> 152.5 mm.
    expect(sizes(fold, asked)).toEqual(['105 | 105 x 152.5']);
  });

  it('keeps what is smaller than half a mark', () => {
    // 0.009 in = 0.2286 mm is nearer to nothing than to 0.5 mm.
    expect(
      sizes(half('{ base: { across: [a 2 + play, valley, b 2], down: 4 } }', 'parameters: { play: 0.009 }')),
    ).toEqual([
      // 2 in -> 51 mm; 51 + 0.5.
      '51.5 | 51 x 101.5',
    ]);
  });

  it('works values out from what is printed', () => {
    // 4 1/4 in -> 108 mm; 1/4 in = 6.35 -> 6.5 mm; (108 + 6.5)/2 = 57.25 -> 57 (114 marks is even).
    const fold = half('{ base: half x 4 }', 'parameters: { w: 4 1/4 }\nvalues: { half: (w + 1/4)/2 }');
    expect(sizes(fold)).toEqual(['57 x 101.5']);
  });

  it('shows a parameter as the paper is cut', () => {
    const card = cardOf(kind('top-fold'), 'metric', { given: 'width: 11' });
    expect(
      card.parameters.map(({ value }) => (value instanceof Length ? formatNumber(value, 'metric') : value)),
    ).toEqual(['279', '139.5']);
  });
});
