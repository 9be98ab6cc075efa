import { describe, expect, test } from 'vitest';
import { readYaml } from '../../plugins/content/reader.ts';
import { placesAndCodes } from './support.ts';

/** What is written; where the one problem is; its code; words its remedy must have. */
const SLIPS: readonly (readonly [string, string, string, string])[] = [
  ['title: Lantern: night\n', '1:8', 'colon-in-value', 'title: "Lantern: night"'],
  ['- { a: 1 }\n- b: c: d\n', '2:6', 'colon-in-value', '"c: d"'],
  ['a:\n\tb: 1\n', '2:1', 'tab-indent', 'two spaces'],
  ['ok: 1\na: "x\nb: 2\n', '2:4', 'quote-not-closed', 'put " at the end'],
  ["a: 'x\nb: 2\n", '1:4', 'quote-not-closed', "put ' at the end"],
  ["title: 'It's night'\n", '1:12', 'text-after-value', 'title: "It\'s night"'],
  ['a: "x" y\n', '1:8', 'text-after-value', 'a: \'"x" y\''],
  ['ok: 1\na: [1, 2\nb: 3\n', '2:4', 'bracket-not-closed', 'before line 3'],
  ['a: {x: 1\nb: 3\n', '1:4', 'bracket-not-closed', 'Put }'],
  ['a: {x: 1, y: [2}\n', '1:14', 'bracket-not-closed', 'Put ]'],
  ['cards: [\n', '1:8', 'bracket-not-closed', 'Put ]'],
  ['a: [x, y]]\n', '1:10', 'bracket-too-many', 'Take the ]'],
  ['a: }\n', '1:4', 'bracket-too-many', 'Take the }'],
  ['a:5\nb: 3\n', '1:1', 'colon-without-space', '`a: 5`'],
  ['b: 3\na:5\n', '2:1', 'colon-without-space', '`a: 5`'],
  ['a: {x:1}\n', '1:5', 'colon-without-space', '`x: 1`'],
  ['a: 1\nb\n', '2:1', 'name-without-value', 'colon and a space'],
  ['-a\nb: 1\n', '1:1', 'hyphen-without-space', '`- a`'],
  ['a: - b\n', '1:4', 'list-beside-name', 'next line'],
  ['a: @x\n', '1:4', 'odd-first-character', 'a: "@x"'],
  ['a: `x`\n', '1:4', 'odd-first-character', 'a: "`x`"'],
  ['a: %x\n', '1:4', 'odd-first-character', 'a: "%x"'],
  ['a: !x y\n', '1:4', 'odd-first-character', 'a: "!x y"'],
  ['a: & b\n', '1:4', 'odd-first-character', 'a: "& b"'],
  ['a: *Lantern night*\n', '1:13', 'text-after-value', 'a: "*Lantern night*"'],
  ['a: *x\n', '1:4', 'alias-unknown', '"*x"'],
  ['a: 1\n b: 2\n', '1:4', 'value-and-group', 'Line 2'],
  ['a:\n   b: 1\n  c: 2\n', '3:1', 'uneven-indent', 'begin'],
  ['a:\n  - 1\n - 2\n', '3:1', 'uneven-indent', 'begin'],
  ['a: |\n  text\n more\n', '3:1', 'uneven-indent', 'begin'],
  ['a: | x\n', '1:6', 'text-beside-bar', 'next line'],
  ['a: "\\q"\n', '1:5', 'odd-escape', 'two backslashes'],
  ['a: [x, , y]\n', '1:8', 'comma-in-list', 'comma'],
  ['a: [x y: z w: q]\n', '1:10', 'colon-in-list', 'comma'],
  ['a: 1\n---\nb: 2\n', '2:1', 'second-part', 'Take out'],
];

describe('slips of syntax', () => {
  test.each(SLIPS)('%j', (written, where, code, words) => {
    const { tree, problems } = readYaml(written, 'f');
    expect(placesAndCodes(problems)).toEqual([`f:${where} ${code}`]);
    expect(problems[0]?.remedy).toContain(words);
    expect(problems[0]?.severity).toBe('error');
    expect(problems[0]?.wrote).not.toBe('');
    if (code !== 'alias-unknown' && code !== 'colon-without-space') expect(tree).toBeUndefined();
  });

  test('on several lines are all told, once each', () => {
    const { problems } = readYaml('a: x: y\nb: 1\nc: @z\nd: "e" f\n', 'f');
    expect(placesAndCodes(problems)).toEqual([
      'f:1:4 colon-in-value',
      'f:3:4 odd-first-character',
      'f:4:8 text-after-value',
    ]);
  });

  test('a remedy in quotes can be read', () => {
    for (const [written, , , words] of SLIPS) {
      const cure = /[\w]+: (["']).*\1$/.exec(readYaml(written, 'f').problems[0]?.remedy ?? '');
      if (cure === null || !words.includes(cure[0])) continue;
      expect(readYaml(`${cure[0]}\n`, 'f').problems, cure[0]).toEqual([]);
    }
  });

  test.each([1_000, 50_000])('%i brackets are refused, not a crash', (count) => {
    const { tree, problems } = readYaml('['.repeat(count), 'f');
    expect(tree).toBeUndefined();
    expect(problems).toHaveLength(1);
  });

  test('a very long line is shown in part', () => {
    const { problems } = readYaml(`a: @${'x'.repeat(5000)}\n`, 'f');
    expect(problems[0]?.wrote.length).toBeLessThan(200);
  });
});
