import { readdirSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Card,
  DEFAULT_MARKS,
  formatNumber,
  formatProblems,
  formatSize,
  Length,
  makeCard,
  type RecipeLine,
  readRecipe,
  recipeFold,
  recipeOf,
  recipeText,
  type SourceNode,
  type System,
  type Unit,
  valueAt,
} from '../../../plugins/engine/index.ts';
import { cardOf, foldOf, kind, make, printed } from '../support/folds.ts';
import { yamlMap, yamlTree } from '../support/yaml-tree.ts';

const PLACE = { file: 'post.md', line: 1, column: 1 };

function cardFrom(tree: SourceNode, system: System, units: Unit | undefined): Card {
  const { steps, problems } = readRecipe(tree, units);
  const { card, problems: more } = makeCard(recipeFold('Lesson', steps, PLACE), {
    system,
    mark: DEFAULT_MARKS[system],
    units,
    parameters: undefined,
    own: undefined,
    recipe: [],
  });
  if (card === undefined || problems.length > 0) throw new Error(formatProblems([...problems, ...more]));
  return card;
}

function lesson(yaml: string, system: System = 'inch', units: Unit | undefined = 'in'): Card {
  return cardFrom(yamlTree(yaml), system, units);
}

/** Every sheet with its bands across and down, as a maker reads them. */
function sheets(card: Card): string[] {
  return card.pieces.map(({ name, width, height, columns, rows }) => {
    const size = formatSize(width, height, card.system);
    return `${name}: ${size}; ${printed(columns, card.system)}; ${printed(rows, card.system)}`;
  });
}

function creases(card: Card): string[] {
  return card.pieces.flatMap((piece) =>
    piece.creases.map(({ name, runs, at, fold }) => `${name} ${runs} at ${formatNumber(at, card.system)} ${fold}`),
  );
}

describe('a recipe as makers say it', () => {
  // Sheets and scores as tutorials give them: common practice, no source.
  it('scores along the long side, valleys unless said', () => {
    const card = lesson('- cut: 5 1/2 x 11 in\n  score: 2 3/4 mountain, 5 1/2');
    expect(sheets(card)).toEqual(['base: 5 1/2 x 11 in; 5 1/2; 2 3/4 | 2 3/4 | 5 1/2']);
    expect(creases(card)).toEqual(['score-1 across at 2 3/4 mountain', 'score-2 across at 5 1/2 valley']);
    expect(card.poses.map(({ name }) => name)).toEqual(['open', 'closed']);
  });

  it.each([
    [
      'along the width when it is the long side',
      '{ cut: 8 1/2 x 5 1/2, score: 4 1/4 }',
      'score-1 down at 4 1/4 valley',
    ],
    ['across when it is square', '{ cut: 6 x 6, score: 3 }', 'score-1 down at 3 valley'],
    ['along a side by its length', '{ cut: 5 1/4 x 11, along: 5 1/4, score: 2 }', 'score-1 down at 2 valley'],
    ['along the short side by a word', '{ cut: 5 1/4 x 11, along: short side, score: 2 }', 'score-1 down at 2 valley'],
    ['along the long side by a word', '{ cut: 5 1/4 x 11, along: long side, score: 2 }', 'score-1 across at 2 valley'],
    ['down a square by a word', '{ cut: 6 x 6, along: down, score: 3 }', 'score-1 across at 3 valley'],
  ])('scores %s', (_, yaml, crease) => {
    expect(creases(lesson(yaml))).toEqual([crease]);
  });

  it('takes scores as a list and in any order', () => {
    expect(sheets(lesson('{ cut: 12 x 4, score: [9, 3] }'))).toEqual(['base: 12 x 4 in; 3 | 6 | 3; 4']);
  });

  it('lets the unit of the cut serve the scores, also where the file has another', () => {
    expect(sheets(lesson('{ cut: 148 x 210 mm, score: 105 }', 'metric', 'in'))).toEqual([
      'base: 148 x 210 mm; 148; 105 | 105',
    ]);
  });

  it('takes two steps for one piece as two scorings of one sheet', () => {
    const yaml = `
- { piece: lid, cut: 7 x 7, score: "1 1/2, 5 1/2" }
- { piece: lid, cut: 7 x 7, along: down, score: "1 1/2, 5 1/2" }
- { cut: 4 x 5 }`;
    const card = lesson(yaml);
    expect(sheets(card)).toEqual(['lid: 7 x 7 in; 1 1/2 | 4 | 1 1/2; 1 1/2 | 4 | 1 1/2', 'piece-3: 4 x 5 in; 4; 5']);
    expect(creases(card).map((crease) => crease.split(' ')[0])).toEqual(['score-1', 'score-2', 'score-3', 'score-4']);
  });

  it('keeps the halves of 11 in equal in millimetres: not 139.5 and 140', () => {
    expect(sheets(lesson('{ cut: 4 1/4 x 11, score: 5 1/2 }', 'metric'))).toEqual([
      'base: 108 x 279 mm; 108; 139.5 | 139.5',
    ]);
  });

  it('reads a score that lies off the sheet, for the dry fit to find', () => {
    // A slip seen in print: "score the 5 1/4 side" with scores up to 6 1/4.
    const card = lesson('{ cut: 5 1/4 x 11, along: 5 1/4, score: "2, 6 1/4" }');
    expect(creases(card)).toEqual(['score-1 down at 2 valley', 'score-2 down at 6 1/4 valley']);
    expect(card.pieces[0]?.columns.map(({ size }) => formatNumber(size, 'inch'))).toEqual(['2', '4 1/4', '−1']);
  });

  it('may stand for the pieces of a kind', () => {
    const fold = foldOf('name: Plain\nunits: in\nrecipe: [{ cut: 8 1/2 x 5 1/2, score: 4 1/4 }]');
    expect(sheets(cardOf(fold, 'inch'))).toEqual(['base: 8 1/2 x 5 1/2 in; 4 1/4 | 4 1/4; 5 1/2']);
  });
});

describe('a lesson beside a kind', () => {
  const fold = foldOf('name: Half\nunits: in\npieces: { base: { across: [front 4, valley, back 4], down: 5 } }');
  const beside = (yaml: string, system: System, units: Unit | undefined = 'in') => {
    const { steps } = readRecipe(yamlTree(yaml), units);
    const mark = DEFAULT_MARKS[system];
    return makeCard(fold, { system, mark, units, parameters: undefined, own: undefined, recipe: steps }).card?.lesson;
  };

  it('is kept as written, not put on marks', () => {
    expect(beside('{ cut: 8.3 x 5, score: 4.1 }', 'inch')?.[0]).toMatchObject({
      width: Length.fromInches('8.3'),
      along: 'across',
      alongFits: true,
      alongText: undefined,
      scores: [{ at: Length.fromInches('4.1'), fold: 'valley' }],
    });
  });

  it('says when the side it names is none', () => {
    const [step] = beside('{ cut: 8 x 5, along: 7, score: 4 }', 'inch') ?? [];
    expect(step).toMatchObject({ along: 'across', alongFits: false, alongText: '7' });
  });

  it('belongs to the system it is written in', () => {
    expect(beside('{ cut: 210 x 148 mm, score: 105 }', 'inch')).toEqual([]);
    expect(beside('{ cut: 210 x 148 mm, score: 105 }', 'metric')).toHaveLength(1);
    expect(beside('{ cut: 8 x 5, score: 4 }', 'metric')).toEqual([]);
  });
});

/** What a printed recipe looks like as YAML would give it. */
function treeOf(lines: readonly RecipeLine[]): SourceNode {
  const text = (value: string): SourceNode & { kind: 'text' } => ({
    kind: 'text',
    text: value,
    place: PLACE,
    quoted: false,
  });
  return {
    kind: 'list',
    place: PLACE,
    items: lines.map((line) => ({
      kind: 'map',
      place: PLACE,
      entries: Object.entries(line).map(([key, value]) => ({ key: text(key), value: text(String(value)) })),
    })),
  };
}

/** Random cards in whole marks: bands across and down of one to three pieces. */
const bands = fc.array(fc.tuple(fc.integer({ min: 1, max: 200 }), fc.boolean()), { minLength: 1, maxLength: 4 });
const randomCard = fc.array(fc.tuple(bands, bands), { minLength: 1, maxLength: 3 });

describe('a recipe printed and read back', () => {
  it.each(['inch', 'metric'] as const)('gives the same sheets and scores in the %s edition', (system) => {
    const unit = system === 'inch' ? 'in' : 'mm';
    fc.assert(
      fc.property(randomCard, (pieces) => {
        const size = (marks: number): string => formatNumber(DEFAULT_MARKS[system].times(marks), system);
        const strip = (list: readonly (readonly [number, boolean])[]): string =>
          list.length === 1
            ? `${size(list[0]?.[0] ?? 1)}`
            : `[${list
                .map(([marks, mountain], index) =>
                  index === 0 ? `b0 ${size(marks)}` : `${mountain ? 'mountain' : 'valley'}, b${index} ${size(marks)}`,
                )
                .join(', ')}]`;
        const written = pieces.map(
          ([across, down], index) => `p${index}: { across: ${strip(across)}, down: ${strip(down)} }`,
        );
        const card = cardOf(foldOf(`name: Random\nunits: ${unit}\npieces: { ${written.join(', ')} }`), system);
        const lines = recipeOf(card);
        // The file that it is pasted into may be in the other unit.
        const again = cardFrom(treeOf(lines), system, unit === 'in' ? 'mm' : 'in');
        expect(recipeOf(again)).toEqual(lines);
        const bare = ({ pieces: all }: Card) =>
          all.map(({ width, height, creases: list }) => ({
            width,
            height,
            creases: list.map(({ runs, at, fold }) => ({ runs, at, fold })),
          }));
        expect(bare(again)).toEqual(bare(card));
      }),
      { numRuns: 60 },
    );
  });
});

/** Every kind of the content that is made of strips alone, with the names and inch ranges of its lengths. */
const STRIP_KINDS = readdirSync('content/folds')
  .filter((file) => file.endsWith('.md'))
  .flatMap((file) => {
    const fold = kind(file.replace(/\.md$/u, ''));
    const card = cardOf(fold, 'inch');
    const strips = card.pieces.every((piece) => noneOf(piece, ['lines', 'windows', 'away', 'shapes']));
    const lengths = card.parameters.flatMap(({ name, value, from, to }) =>
      value instanceof Length && from instanceof Length && to instanceof Length
        ? [{ name, from: from.inches.valueOf(), to: to.inches.valueOf() }]
        : [],
    );
    return strips ? [{ id: file, fold, lengths }] : [];
  });

function noneOf(piece: object, keys: readonly string[]): boolean {
  return keys.every((key) => ((piece as Record<string, readonly unknown[] | undefined>)[key] ?? []).length === 0);
}

describe('the recipe of a kind, printed and read back', () => {
  it('is tried on the four plain folds at least', () => {
    expect(STRIP_KINDS.map(({ id }) => id)).toEqual(
      expect.arrayContaining(['gate.md', 'short-front.md', 'side-fold.md', 'top-fold.md']),
    );
  });

  it.each(STRIP_KINDS)('gives the same sheets, scores and directions: $id', ({ fold, lengths }) => {
    const parts = fc.array(fc.integer({ min: 0, max: 64 }), { minLength: lengths.length, maxLength: lengths.length });
    fc.assert(
      fc.property(parts, fc.constantFrom<System>('inch', 'metric'), fc.boolean(), (at, system, asIs) => {
        const sizes = lengths.map(({ name, from, to }, index) => {
          const sixteenths = Math.round((from + ((to - from) * (at[index] ?? 0)) / 64) * 16);
          return `${name}: ${sixteenths}/16 in`;
        });
        const { card } = make(fold, system, asIs ? {} : { given: `{ ${sizes.join(', ')} }` });
        // Sizes that do not go together are refused, which is told elsewhere.
        if (card === undefined) return;
        const lines = recipeOf(card);
        const yaml = recipeText(lines, undefined);
        const recipe = valueAt(yamlMap(yaml), 'recipe');
        if (recipe === undefined) throw new Error(yaml);
        const again = cardFrom(recipe, system, system === 'inch' ? 'mm' : 'in');
        const bare = ({ pieces }: Card) =>
          pieces.map(({ width, height, creases: list }) => ({
            width,
            height,
            creases: list.map(({ runs, at: where, fold: way }) => ({ runs, at: where, fold: way })),
          }));
        expect(bare(again)).toEqual(bare(card));
        expect(recipeOf(again)).toEqual(lines);
      }),
      { numRuns: 60 },
    );
  });
});
