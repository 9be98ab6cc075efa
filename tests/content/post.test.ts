import { describe, expect, test } from 'vitest';
import { type CardSpec, readPost } from '../../plugins/content/index.ts';
import { formatProblem } from '../../plugins/engine/index.ts';
import { file, only, placesAndCodes, post } from './support.ts';

const PATH = 'content/posts/ferry/index.md';

/** Frontmatter lines after the four of `POST_HEAD` begin at line 6 of the file. */
const read = (frontmatter: string) => readPost(post('ferry', frontmatter));

function cards(frontmatter: string): readonly CardSpec[] {
  const { entry, problems } = read(frontmatter);
  expect(problems).toEqual([]);
  return entry?.cards ?? [];
}

function problems(frontmatter: string): string[] {
  return placesAndCodes(read(frontmatter).problems).map((told) => told.replace(`${PATH}:`, ''));
}

describe('a post', () => {
  test('without a card is whole', () => {
    const { entry, problems: told } = read(
      'techniques: [scoring]\nsupplies:\n  - slate-card\n  - { use: ink, for: Sky, amount: 1 pad }\ntools: [Trimmer]',
    );
    expect(told).toEqual([]);
    expect(entry).toEqual({
      slug: 'ferry',
      file: PATH,
      title: 'Ferry',
      summary: 'A card.',
      date: '2026-10-03',
      updated: undefined,
      units: 'in',
      techniques: ['scoring'],
      supplies: [
        { use: 'slate-card', for: undefined, amount: undefined },
        { use: 'ink', for: 'Sky', amount: '1 pad' },
      ],
      tools: ['Trimmer'],
      cards: [],
      invented: false,
    });
  });

  test('with a card survives JSON', () => {
    const { entry } = read(
      'fold: { side-fold: { width: 5 in } }\nrecipe: [{ cut: 10 x 7, score: 5 }]\nenvelope: US A7',
    );
    const plain = JSON.parse(JSON.stringify(entry));
    expect(JSON.parse(JSON.stringify(plain))).toEqual(plain);
    expect(plain.cards[0].parameters).toEqual(entry?.cards[0]?.parameters);
  });

  // Leap years after the rule of the Gregorian calendar: 1900 and 2100 have none, 2000 has (Inter gravissimas, 1582).
  test.each([
    ['2024-02-29', undefined],
    ['2000-02-29', undefined],
    ['1900-02-29', 'date-day'],
    ['2100-02-29', 'date-day'],
    ['2026-02-30', 'date-day'],
    ['2026-04-31', 'date-day'],
    ['2026-12-31', undefined],
    ['2026-13-01', 'date-month'],
    ['2026-00-10', 'date-month'],
    ['2026-10-00', 'date-day'],
    ['2026-10-3', 'date-form'],
    ['3 October 2026', 'date-form'],
    ['2026-10-03T10:00:00Z', 'date-form'],
    ['٢٠٢٦-10-03', 'date-form'],
  ])('dated %s', (date, code) => {
    const { entry, problems: told } = readPost(file('p.md', `---\ntitle: A\nsummary: B\ndate: ${date}\n---\n`));
    expect(placesAndCodes(told)).toEqual(code === undefined ? [] : [`p.md:4:7 ${code}`]);
    expect(entry?.date).toBe(code === undefined ? date : undefined);
  });

  test('with a loose date is shown the strict one', () => {
    expect(readPost(file('p.md', '---\ntitle: A\nsummary: B\ndate: 2026/10/3\n---\n')).problems[0]?.remedy).toBe(
      'Write 2026-10-03.',
    );
  });
});

describe('one card', () => {
  test('is written at the top', () => {
    const [card, ...others] = cards(`fold: { side-fold: { width: 5 in } }
stock: { cover: slate-card }
envelope: { inch: US A7, metric: ISO C6 }
sheet: US Letter
finished: 5 x 7 in
metric: { width: 105 mm }`);
    expect(others).toEqual([]);
    expect(card).toMatchObject({
      key: 'card',
      name: undefined,
      path: '',
      kind: { text: 'side-fold', place: { line: 6, column: 9 }, path: 'fold' },
      recipe: undefined,
      stock: { cover: { text: 'slate-card', path: 'stock.cover' } },
      envelope: { inch: { text: 'US A7', path: 'envelope.inch' }, metric: { text: 'ISO C6', path: 'envelope.metric' } },
      sheet: { inch: { text: 'US Letter', path: 'sheet' }, metric: { text: 'US Letter', path: 'sheet' } },
    });
    // What is promised in inches says nothing of the metric edition.
    expect(card?.finished).toEqual({ inch: expect.objectContaining({ text: '5 x 7 in' }) });
    expect(Object.keys(card?.own ?? {})).toEqual(['metric']);
    expect(card?.parameters?.entries.map(({ key }) => key.text)).toEqual(['width']);
  });

  test.each(['fold: side-fold', 'fold: { side-fold: }', 'fold: { side-fold: {} }', 'fold:\n  side-fold:'])(
    '%s',
    (written) => {
      expect(cards(written)).toMatchObject([{ kind: { text: 'side-fold' } }]);
    },
  );

  test('named gets a key from its name', () => {
    expect(cards('fold: side-fold\nname: The Ferry card, no. 2')[0]?.key).toBe('the-ferry-card-no-2');
    expect(cards('fold: side-fold\nname: Düne & Möwe')[0]?.key).toBe('dune-mowe');
    expect(cards('fold: side-fold\nname: 灯')[0]?.key).toBe('card');
  });

  test('may be a recipe alone', () => {
    expect(cards('recipe: [{ cut: 10 x 7, score: 5 }]')).toMatchObject([
      { key: 'card', kind: undefined, recipe: { kind: 'list' } },
    ]);
  });

  test.each([
    ['envelope: US A7', '6:1 card-without-fold'],
    ['name: Ferry', '6:1 card-without-fold'],
    ['fold: { side-fold: {}, gate: {} }', '6:7 fold-shape'],
    ['fold: {}', '6:7 fold-shape'],
    ['fold: [side-fold]', '6:7 fold-shape'],
    ['fold: { name: X, pieces: { a: { size: 1 x 1 } } }', '6:7 fold-shape'],
    ['fold: { side-fold: 5 in }', '6:20 parameters-shape'],
    ['fold: side-fold\nmetric: 5 mm', '7:9 parameters-shape'],
    ['recipe: [{ cut: 10 x 7, score: 5 }]\nmetric: { width: 5 mm }', '7:1 own-without-fold'],
    ['fold: side-fold\nenvelope: US A77', '7:11 size-unknown'],
    ['fold: side-fold\nsheet: [US Letter]', '7:8 value-shape'],
    ['fold: side-fold\nstock: slate-card', '7:8 value-shape'],
    ['fold: side-fold\nfinished: { inch: 5 x 7 in, metrc: 105 x 148 mm }', '7:29 key-unknown'],
    ['supplies: [{ for: x }]', '6:12 key-missing'],
    ['supplies: slate-card', '6:11 value-shape'],
    ['supplies:\n  - [a, b]', '7:5 value-shape'],
    ['tools:\n  -', '7:4 value-missing'],
    ['units: mm', '6:1 key-twice'],
  ])('%s', (written, told) => {
    expect(problems(written)).toEqual([told]);
  });

  test('with a questioned notation is kept, and the question is apart', () => {
    const { entry, problems: told } = read('fold: side-fold\nenvelope: 5 1/4 x 53/4 in');
    expect(entry?.cards).toHaveLength(1);
    expect(told).toMatchObject([{ severity: 'warning', path: 'envelope', place: { line: 7, column: 19 } }]);
    expect(told[0]?.remedy).toContain('5 3/4');
  });
});

describe('several cards', () => {
  const two = (first: string, second: string) => `cards:\n  - ${first}\n  - ${second}`;

  test('stand under `cards`, each with its path and key', () => {
    expect(
      cards(two('{ name: The gate, fold: gate }', '{ name: The jetty, fold: side-fold, stock: { cover: x } }')),
    ).toMatchObject([
      { key: 'the-gate', name: 'The gate', path: 'cards[0]', kind: { path: 'cards[0].fold' } },
      { key: 'the-jetty', path: 'cards[1]', stock: { cover: { path: 'cards[1].stock.cover', place: { line: 8 } } } },
    ]);
  });

  test.each([
    [two('{ name: A, fold: gate }', '{ name: a, fold: gate }'), '8:13 card-name-twice'],
    [two('{ name: A, fold: gate }', '{ fold: gate }'), '8:5 card-without-name'],
    [two('{ name: A, fold: gate }', '{ name: B }'), '8:5 card-without-fold'],
    [two('{ name: A, fold: gate }', 'gate'), '8:5 value-shape'],
    [two('{ name: A, fold: gate }', '{ name: B, fodl: gate, fold: gate }'), '8:16 key-unknown'],
    ['fold: gate\ncards: [{ name: A, fold: gate }]', '6:1 card-twice'],
    ['cards: gate', '6:8 value-shape'],
  ])('%s', (written, told) => {
    expect(problems(written)).toEqual([told]);
  });

  test('have each of their errors told with its path', () => {
    const { problems: told } = read(
      two('{ name: A, fold: gate, envelope: A2 }', '{ name: B, fold: gate, stock: { cover: [x] } }'),
    );
    expect(told.map(({ path }) => path)).toEqual(['cards[0].envelope', 'cards[1].stock.cover']);
    const said = only(told, 'value-shape');
    expect(formatProblem(said).split('\n')[0]).toBe(`${PATH}:8:44  cards[1].stock.cover`);
  });
});
