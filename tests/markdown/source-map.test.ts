import fc from 'fast-check';
import type { Nodes } from 'mdast';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { describe, expect, test } from 'vitest';
import { sourceMap } from '../../plugins/markdown/source-map.ts';

describe('a text beside its source', () => {
  test.each([
    ['a*b', 'a\\*b', [0, 1, 3, 4], [false, true, false]],
    ['\\5', '\\5', [0, 1, 2], [false, false]],
    ['\\5', '\\\\5', [0, 2, 3], [true, false]],
    ['½ &', '&frac12; &amp;', [0, 8, 9, 14], [false, false, false]],
    ['½½', '&#189;&#xBD;', [0, 6, 12], [false, false]],
    ['&nix; & b', '&nix; & b', [0, 1, 2, 3, 4, 5, 6, 7, 8, 9], undefined],
    ['a\nb', 'a  \n > b', [0, 1, 7, 8], undefined],
  ])('%j from %j', (text, source, offsets, escaped) => {
    const map = sourceMap(text, source);
    expect(map?.offsets).toEqual(offsets);
    if (escaped !== undefined) expect(map?.escaped).toEqual(escaped);
  });

  test('texts that do not belong together', () => {
    expect(sourceMap('a b', 'a c')).toBeUndefined();
    expect(sourceMap('a\nb', 'a b')).toBeUndefined();
    expect(sourceMap('ab', 'a')).toBeUndefined();
  });
});

/** What Markdown's own parser makes of anything is the oracle: every text it gives with a place is found at that place. */
test('every text of the parser is mapped, and each plain character stands where the map says', () => {
  const scraps = fc.constantFrom(
    'a',
    '5',
    '\\',
    '*',
    '_',
    '&',
    '&amp;',
    '&frac12;',
    '&#189;',
    '\n',
    '\n> ',
    '- ',
    ' ',
    '  ',
    '|',
    '~',
    '`',
    '<',
    '[',
    ']',
    '(',
    '#',
    '½',
    '🌊',
    '\\*',
    '\\&',
    '\t',
  );
  fc.assert(
    fc.property(fc.array(scraps, { maxLength: 14 }), (parts) => {
      const markdown = parts.join('');
      visitTexts(unified().use(remarkParse).use(remarkGfm).parse(markdown), (text, from, to) => {
        const source = markdown.slice(from, to);
        const map = sourceMap(text, source);
        expect({ markdown, text, mapped: map !== undefined }).toEqual({ markdown, text, mapped: true });
        expect(map?.offsets.length).toBe(text.length + 1);
        for (const [i, character] of [...text].entries()) {
          if (/[a5🌊]/u.test(character) && [...text].slice(0, i).join('').length === i) {
            expect(source.slice(map?.offsets[i]).startsWith(character)).toBe(true);
          }
        }
      });
    }),
    { numRuns: 2000, seed: 20261003 },
  );
});

function visitTexts(node: Nodes, see: (text: string, from: number, to: number) => void): void {
  const from = node.position?.start.offset;
  const to = node.position?.end.offset;
  if (node.type === 'text' && from !== undefined && to !== undefined) see(node.value, from, to);
  if ('children' in node) for (const child of node.children) visitTexts(child, see);
}
