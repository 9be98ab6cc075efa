import { describe, expect, test } from 'vitest';
import { readYaml } from '../../plugins/content/reader.ts';
import {
  entryAt,
  type MapNode,
  type SourceNode,
  type TextNode,
  valueAt,
} from '../../plugins/engine/diagnostics/index.ts';
import { only, placesAndCodes } from './support.ts';

function map(text: string, firstLine?: number): MapNode {
  const { tree, problems } = readYaml(text, 'f.yaml', firstLine);
  expect(problems).toEqual([]);
  if (tree?.kind !== 'map') throw new Error('no map');
  return tree;
}

function text(node: SourceNode | undefined): TextNode {
  if (node?.kind !== 'text') throw new Error(`no text but ${node?.kind}`);
  return node;
}

describe('scalars stay the text that was written', () => {
  // What readers of YAML 1.1 (yaml.org/spec/1.1, type repository) and 1.2's core schema make of these: a truth value, a
  // float, a number without its underscores, a number without its zeros, sexagesimal, a date, null, infinity.
  const tricks = [
    'no',
    'on',
    'yes',
    'true',
    '2.54',
    '1_000',
    '010',
    '0x1F',
    '12:30',
    '2026-10-03',
    'null',
    '~',
    '.inf',
    '1e3',
    '+1',
  ];
  test.each(tricks)('%s', (trick) => {
    expect(text(valueAt(map(`a: ${trick}\n`), 'a')).text).toBe(trick);
  });

  test.each(['on', 'no', '1', 'null', 'y'])('%s as a name', (name) => {
    expect(entryAt(map(`${name}: x\n`), name)?.key.text).toBe(name);
  });

  test('an empty value is an empty text, after its name', () => {
    const empty = text(valueAt(map('a:\nb: 1\n'), 'a'));
    expect(empty).toMatchObject({ text: '', quoted: false, place: { line: 1, column: 3 } });
    const inBraces = valueAt(map('a: {b, c: }\n'), 'a') as MapNode;
    expect(inBraces.entries.map(({ value }) => text(value).text)).toEqual(['', '']);
  });

  test('quotes are taken off and remembered', () => {
    expect(text(valueAt(map(`a: "5 1/2"\n`), 'a'))).toMatchObject({
      text: '5 1/2',
      quoted: true,
      place: { column: 4 },
    });
    expect(text(valueAt(map(`a: 'it''s'\n`), 'a'))).toMatchObject({ text: "it's", quoted: true });
    // An inch mark alone is no quote.
    expect(text(valueAt(map('a: 5 1/2"\n'), 'a'))).toMatchObject({ text: '5 1/2"', quoted: false });
  });

  test('texts over several lines', () => {
    const literal = text(valueAt(map('a: |\n  one\n  two\nb: 1\n'), 'a'));
    expect(literal).toMatchObject({ text: 'one\ntwo', place: { line: 2, column: 3 } });
    expect(text(valueAt(map('a: >-\n\n    one\n    two\n'), 'a'))).toMatchObject({ place: { line: 3, column: 5 } });
    expect(text(valueAt(map('a: one\n  two\n'), 'a')).text).toBe('one two');
  });

  test('letters beyond ASCII', () => {
    expect(text(valueAt(map('naïve: Flügel 5½ 🐚\n'), 'naïve')).text).toBe('Flügel 5½ 🐚');
  });
});

describe('places', () => {
  test('of every part of nested groups and lists', () => {
    const tree = map('a: 1\ncards:\n  - name: x\n    stock: { cover: kraft }\n');
    const cards = valueAt(tree, 'cards');
    const card = cards?.kind === 'list' ? (cards.items[0] as MapNode) : undefined;
    expect(cards?.place).toMatchObject({ line: 3, column: 3 });
    expect(card?.place).toMatchObject({ line: 3, column: 5 });
    const stock = card && (valueAt(card, 'stock') as MapNode);
    expect(stock?.place).toMatchObject({ line: 4, column: 12 });
    expect(stock && entryAt(stock, 'cover')?.key.place).toMatchObject({ line: 4, column: 14 });
    expect(stock && valueAt(stock, 'cover')?.place).toMatchObject({ line: 4, column: 21 });
  });

  test('count from the line of the file that the text begins on', () => {
    expect(valueAt(map('a: 1\nb: 2\n', 7), 'b')?.place).toEqual({ file: 'f.yaml', line: 8, column: 4 });
  });

  test.each([
    ['CRLF', 'a: 1\r\nb: 2\r\n'],
    ['CR', 'a: 1\rb: 2\r'],
    ['a byte order mark', '\uFEFFa: 1\nb: 2\n'],
  ])('do not change with %s', (_, written) => {
    const tree = map(written);
    expect(entryAt(tree, 'a')?.key.place).toMatchObject({ line: 1, column: 1 });
    expect(text(valueAt(tree, 'b'))).toMatchObject({ text: '2', place: { line: 2, column: 4 } });
  });
});

describe('anchors', () => {
  test('repeat a value, which keeps its own place', () => {
    const tree = map('a: &size { width: 5 in }\nb: *size\n');
    expect(valueAt(tree, 'b')).toEqual(valueAt(tree, 'a'));
  });

  test('an alias means the last anchor before it', () => {
    expect(text(valueAt(map('a: &x 1\nb: &x 2\nc: *x\n'), 'c')).text).toBe('2');
  });

  test('nothing is merged: << is a name like any other', () => {
    const tree = map('a: &x { b: 1 }\nc:\n  <<: *x\n');
    expect((valueAt(tree, 'c') as MapNode).entries.map(({ key }) => key.text)).toEqual(['<<']);
  });

  test('of nothing, and of itself', () => {
    expect(placesAndCodes(readYaml('a: &kraft 1\nb: *krafd\n', 'f').problems)).toEqual(['f:2:4 alias-unknown']);
    expect(readYaml('a: &kraft 1\nb: *krafd\n', 'f').problems[0]?.remedy).toContain('*kraft');
    expect(placesAndCodes(readYaml('a: &x [1, *x]\n', 'f').problems)).toEqual(['f:1:11 alias-inside-itself']);
  });

  test('a bomb is refused and takes no time', () => {
    const rows = ['a0: &a0 [x, x, x, x, x, x, x, x, x, x]'];
    for (let i = 1; i < 10; i++)
      rows.push(
        `a${i}: &a${i} [${Array(10)
          .fill(`*a${i - 1}`)
          .join(', ')}]`,
      );
    const start = performance.now();
    const { tree, problems } = readYaml(`${rows.join('\n')}\n`, 'f');
    expect(performance.now() - start).toBeLessThan(10_000);
    expect(tree).toBeUndefined();
    expect(placesAndCodes(problems)).toEqual([expect.stringContaining('alias-too-much')]);
  });
});

describe('names', () => {
  test('that stand twice are told, with the place of the first', () => {
    const { tree, problems } = readYaml('a: 1\nb: 2\na: 3\n', 'f.yaml');
    expect(placesAndCodes(problems)).toEqual(['f.yaml:3:1 key-twice']);
    expect(problems[0]?.wrote).toContain('f.yaml:1:1');
    expect(text(valueAt(tree as MapNode, 'a')).text).toBe('1');
  });

  test('in braces as well, and all of them', () => {
    expect(placesAndCodes(readYaml('a: { b: 1, b: 2 }\nc: { d: 1, d: 2 }\n', 'f').problems)).toEqual([
      'f:1:12 key-twice',
      'f:2:12 key-twice',
    ]);
  });

  test('that are a list, a group or nothing', () => {
    expect(placesAndCodes(readYaml('a: { : 1, "": 2 }\n', 'f').problems)).toEqual([
      'f:1:5 key-not-text',
      'f:1:11 key-not-text',
    ]);
    expect(placesAndCodes(readYaml('? [x]\n: 1\n', 'f').problems)).toEqual(['f:1:3 key-not-text']);
  });

  test.each(['__proto__', 'constructor', 'toString'])('%s is a name like any other', (name) => {
    expect(map(`${name}: 1\n`).entries.map(({ key }) => key.text)).toEqual([name]);
  });
});

test('a # glued to a word is questioned, and the value is kept', () => {
  const { tree, problems } = readYaml('name: Card #5\nnote: x # mine\n', 'f');
  expect(only(problems, 'note-or-text')).toMatchObject({ severity: 'warning', place: { line: 1, column: 12 } });
  expect(problems).toHaveLength(1);
  expect(text(valueAt(tree as MapNode, 'name')).text).toBe('Card');
});

test.each(['', '\n', '# only a note\n'])('nothing but %j is no tree and no problem', (written) => {
  expect(readYaml(written, 'f')).toEqual({ tree: undefined, problems: [] });
});
