import { describe, expect, test } from 'vitest';
import { readBlog, readFoldFile, readSupply, readTechnique } from '../../plugins/content/index.ts';
import { formatProblem } from '../../plugins/engine/index.ts';
import { BLOG, file, only, page, placesAndCodes, SIDE_FOLD } from './support.ts';

const supply = (text: string) => readSupply(file('content/supplies/x.yaml', text));
const SUPPLY_HEAD = 'name: Ebb ink\ncategory: ink\n';

describe('a blog', () => {
  test('is read, with what is usual where it says nothing', () => {
    const { entry, problems } = readBlog(BLOG);
    expect(problems).toEqual([]);
    expect(entry).toMatchObject({
      title: 'Shingle Press',
      units: 'in',
      language: 'en',
      marks: { inch: '1/16 in', metric: '0.5 mm' },
      sheets: { inch: 'US Letter', metric: 'ISO A4' },
      envelopeClearance: { inch: '1/8 in', metric: '3 mm' },
      invented: false,
    });
  });

  test('loses the slash at the end of its address', () => {
    const text = BLOG.text.replace('.example', '.example/');
    expect(readBlog(file('b', text)).entry?.address).toBe('https://shingle-press.example');
  });

  test('tells every slip at once', () => {
    const text = `title:
address: javascript:alert(1)
units: inch
marks: { inch: 0 in, metric: 0.5 }
language: in English
sheets: { inch: US Leter }
envelope-clearance: 1/8
tagine: x
`;
    expect(placesAndCodes(readBlog(file('b', text)).problems)).toEqual([
      'b:1:1 value-missing',
      'b:1:1 key-missing',
      'b:2:10 address-scheme',
      'b:3:8 word-unknown',
      'b:4:16 length-zero',
      'b:4:30 unit-missing',
      'b:5:11 language-tag',
      'b:6:17 size-unknown',
      'b:7:21 unit-missing',
      'b:8:1 key-unknown',
    ]);
  });
});

describe('a supply', () => {
  test('is read', () => {
    const { entry, problems } = supply(`${SUPPLY_HEAD}gifted: yes\nsheet: 12 x 12 in\nsubstitutes: [a, b]\n`);
    expect(problems).toEqual([]);
    expect(entry).toMatchObject({
      id: 'x',
      gifted: true,
      affiliate: false,
      sheet: { inch: '12 x 12 in', metric: '12 x 12 in' },
      substitutes: ['a', 'b'],
    });
  });

  test('stays the same when written as JSON and read back', () => {
    const { entry } = supply(`${SUPPLY_HEAD}sheet: { inch: US Letter, metric: ISO A4 }\nlinks: []\n`);
    expect(JSON.parse(JSON.stringify(entry))).toEqual({ ...entry, maker: undefined, notes: undefined });
  });

  test.each([
    // RFC 3986, section 3.1: the scheme comes first and does not mind case.
    ['javascript:alert(1)', 'address-scheme'],
    ['JavaScript:alert(1)', 'address-scheme'],
    ['data:text/html,x', 'address-scheme'],
    ['http://shop.example', 'address-scheme'],
    ['shop.example/ink', 'address-scheme'],
    ['//shop.example', 'address-scheme'],
    ['https://', 'address-form'],
    ['https://shop.example/a b', 'address-form'],
    ['https://shop.example/"onclick=', 'address-form'],
    ['https://shop.example/<script>', 'address-form'],
  ])('refuses the link %s', (address, code) => {
    const { problems } = supply(`${SUPPLY_HEAD}links:\n  - { shop: A shop, address: '${address}' }\n`);
    expect(placesAndCodes(problems)).toEqual([`content/supplies/x.yaml:4:30 ${code}`]);
    expect(problems[0]?.path).toBe('links[0].address');
  });

  test('takes a link with a question and a fragment', () => {
    const { entry } = supply(`${SUPPLY_HEAD}links: [{ shop: A, address: "https://shop.example/a?b=c&d=%20#e" }]\n`);
    expect(entry?.links).toEqual([{ shop: 'A', address: 'https://shop.example/a?b=c&d=%20#e' }]);
  });

  test('takes a new category and questions a slip of a known one', () => {
    expect(supply('name: A\ncategory: sealing wax\n').entry?.category).toBe('sealing wax');
    const slip = only(supply('name: A\ncategory: cardstcok\n').problems, 'category-unknown');
    expect(slip).toMatchObject({ place: { line: 2, column: 11 }, path: 'category' });
    expect(slip.remedy).toContain('`cardstock`');
  });

  test.each([
    ['caliper: 0 mm', 'length-zero', '3:10'],
    ['gifted: 1', 'yes-or-no', '3:9'],
    ['grain: lang', 'word-unknown', '3:8'],
    ['links: https://a.example', 'value-shape', '3:8'],
    ['notes: [a]', 'value-shape', '3:8'],
    ['notes: { a }', 'value-shape', '3:8'],
    ['links: [{ shop: A }]', 'key-missing', '3:9'],
    ['nots: x', 'key-unknown', '3:1'],
    ['sheet: 12 x 12', 'unit-missing', '3:8'],
    ['caliper: thick', undefined, '3:10'],
    ['weight: 80 lb', undefined, '3:9'],
  ])('refuses %s', (line, code, where) => {
    const { entry, problems } = supply(`${SUPPLY_HEAD}${line}\n`);
    expect(entry).toBeUndefined();
    expect(problems).toHaveLength(1);
    if (code !== undefined && code !== 'unit-missing') expect(problems[0]?.code).toBe(code);
    expect(placesAndCodes(problems)[0]).toContain(`content/supplies/x.yaml:${where} `);
  });

  test('says what it wants in the words of the house', () => {
    const [problem] = supply(`name: A\ncategory: ink\ntool: yes\nlinks:\n  - { shop: A }\n`).problems;
    expect(problem && formatProblem(problem).split('\n')).toEqual([
      'content/supplies/x.yaml:3:1  tool',
      '  You wrote  tool:',
      expect.stringMatching(/^ {2}It takes {3}the names name, category, maker, /),
      '  Do this    Take `tool` out, or write one of these names.',
    ]);
  });

  test('a missing name points at the group that lacks it, and tells it once when it is only misspelt', () => {
    expect(placesAndCodes(supply('category: ink\n').problems)).toEqual(['content/supplies/x.yaml:1:1 key-missing']);
    expect(placesAndCodes(supply('nmae: A\ncategory: ink\n').problems)).toEqual([
      'content/supplies/x.yaml:1:1 key-unknown',
    ]);
  });

  test.each([
    ['', 'file-empty'],
    ['just words\n', 'not-a-group'],
    ['- a\n- b\n', 'not-a-group'],
  ])('%j is none', (text, code) => {
    expect(placesAndCodes(supply(text).problems)).toEqual([`content/supplies/x.yaml:1:1 ${code}`]);
  });

  test.each(['__proto__: x', 'constructor: x', 'toString: x'])('the name in %s is unknown like any other', (line) => {
    expect(placesAndCodes(supply(`${SUPPLY_HEAD}${line}\n`).problems)).toEqual([
      'content/supplies/x.yaml:3:1 key-unknown',
    ]);
  });
});

describe('a technique', () => {
  test('is read', () => {
    const { entry, problems } = readTechnique(page('content/techniques/scoring.md', 'name: Scoring\nsummary: Press.'));
    expect(problems).toEqual([]);
    expect(entry).toEqual({
      id: 'scoring',
      file: 'content/techniques/scoring.md',
      name: 'Scoring',
      summary: 'Press.',
      invented: false,
    });
  });
});

describe('a fold', () => {
  test('is read, and its rule stays a tree that survives JSON', () => {
    const { entry, problems } = readFoldFile(SIDE_FOLD);
    expect(problems).toEqual([]);
    expect(entry).toMatchObject({ id: 'side-fold', name: 'Side fold', units: 'in', difficulty: undefined });
    expect(JSON.parse(JSON.stringify(entry?.tree))).toEqual(entry?.tree);
  });

  test('tells slips of its page and of its rule together, with places in the file', () => {
    const text = SIDE_FOLD.text
      .replace('units: in', 'units: in\ndifficulty: esy\nsummry: x')
      .replace('back width', 'back widht');
    const { entry, problems } = readFoldFile(file('content/folds/x.md', text));
    expect(entry).toBeUndefined();
    expect(only(problems, 'word-unknown')).toMatchObject({ place: { line: 4, column: 13 }, path: 'difficulty' });
    expect(problems.map(({ place }) => place.line).sort()).toContain(5);
    expect(problems.find(({ place }) => place.line === 10)?.remedy).toContain('width');
  });
});
