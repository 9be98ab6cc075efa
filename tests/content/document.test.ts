import { describe, expect, test } from 'vitest';
import { readDocument } from '../../plugins/content/document.ts';
import { entryAt, type MapNode } from '../../plugins/engine/diagnostics/index.ts';
import { file, placesAndCodes } from './support.ts';

const read = (text: string) => readDocument(file('p.md', text));

describe('a Markdown file', () => {
  test('is split at its frontmatter, and places count in the whole file', () => {
    const { tree, body, bodyLine, problems } = read('---\na: 1\nb: 2\n---\n\nText.\n');
    expect(problems).toEqual([]);
    expect(entryAt(tree as MapNode, 'b')?.key.place).toEqual({ file: 'p.md', line: 3, column: 1 });
    expect(body).toBe('\nText.\n');
    expect(bodyLine).toBe(5);
  });

  test.each([
    ['CRLF', '---\r\na: 1\r\n---\r\nText.\r\n'],
    ['a byte order mark', '\uFEFF---\na: 1\n---\nText.\n'],
    ['spaces after the hyphens', '---  \na: 1\n---\t\nText.\n'],
  ])('may have %s', (_, text) => {
    const { tree, body, bodyLine, problems } = read(text);
    expect(problems).toEqual([]);
    expect(entryAt(tree as MapNode, 'a')?.key.place).toMatchObject({ line: 2, column: 1 });
    expect([body, bodyLine]).toEqual(['Text.\n', 4]);
  });

  test('may begin with empty lines', () => {
    const { tree, bodyLine } = read('\n\n---\na: 1\n---\nText.\n');
    expect(entryAt(tree as MapNode, 'a')?.key.place).toMatchObject({ line: 4 });
    expect(bodyLine).toBe(6);
  });

  test('keeps a rule in its text', () => {
    expect(read('---\na: 1\n---\nOne\n\n---\n\nTwo\n').body).toBe('One\n\n---\n\nTwo\n');
  });

  test.each([
    ['Text.\n', 'p.md:1:1 frontmatter-missing'],
    ['\n\nText.\n', 'p.md:3:1 frontmatter-missing'],
    ['', 'p.md:1:1 frontmatter-missing'],
    ['---\na: 1\n\nText.\n', 'p.md:1:1 frontmatter-not-closed'],
    ['---\n---\nText.\n', 'p.md:1:1 frontmatter-empty'],
    ['---\n# note\n---\nText.\n', 'p.md:1:1 frontmatter-empty'],
    ['---\na: 1\n----\nText.\n', 'p.md:3:1 frontmatter-fence'],
    ['---\na: x: y\n---\n', 'p.md:2:4 colon-in-value'],
  ])('%j is a problem', (text, told) => {
    expect(placesAndCodes(read(text).problems)).toEqual([told]);
  });

  test('says where the text may begin when the frontmatter is not closed', () => {
    expect(read('---\na: 1\nb: 2\n\nText.\n').problems[0]?.remedy).toContain('line 4');
  });
});
