import fc from 'fast-check';
import type { Nodes, Root } from 'mdast';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { expect, test } from 'vitest';
import { DEFAULT_MARKS } from '../../plugins/engine/index.ts';
import { asFrontmatter, measures } from '../../plugins/markdown/index.ts';

/** What is likely to be trouble, to be put together at random. */
const SCRAPS = [
  'cut ',
  '5 1/2 in',
  '140 mm',
  ' and ',
  '\\',
  '*',
  '**',
  '`',
  '[',
  '](#a)',
  '![',
  '<b>',
  '</b>',
  '<code>',
  '</code>',
  '<a href="5 in">',
  '</a>',
  '"',
  '\n',
  '\n\n',
  '> ',
  '- ',
  '1. ',
  '# ',
  '10:30',
  '3:4',
  'in:score',
  '&frac12;',
  '&amp;',
  '½',
  '\u00a0',
  ' in',
  '53/4 in',
  '~~',
  '🌊',
  '  ',
  'www.saltmarsh-paper.example ',
  'a@saltmarsh-paper.example',
  '<!-- ',
  ' -->',
  '2 3/4 x 5 1/2 in',
  '| a |\n|---|\n| ',
  ' |',
  '[^1]',
  '\n\n[^1]: ',
  '\t',
  '5',
  '/',
  '1',
  '.',
];

const prose = fc.array(
  fc.oneof({ weight: 6, arbitrary: fc.constantFrom(...SCRAPS) }, { weight: 1, arbitrary: fc.string({ maxLength: 4 }) }),
  {
    maxLength: 16,
  },
);

test('text, structure and addresses outside measures stay as they were', () => {
  let marked = 0;
  fc.assert(
    fc.property(prose, (parts) => {
      const markdown = parts.join('');
      const before = parse(markdown);
      const after = parse(markdown);
      const context = {
        file: 'post.md',
        placing: true,
        cards: [],
        marks: DEFAULT_MARKS,
        decimalComma: false,
        problems: [],
      };
      measures()(after, { data: { astro: { frontmatter: asFrontmatter(context) } }, toString: () => markdown });
      marked += countMeasures(after);
      expect(outline(after)).toEqual(outline(before));
      for (const { place } of context.problems as { place: { line: number; column: number } }[]) {
        expect(markdown.split('\n')[place.line - 1]?.length).toBeGreaterThanOrEqual(place.column);
      }
    }),
    { numRuns: 1500, seed: 20261003 },
  );
  // So that the test cannot pass by finding nothing.
  expect(marked).toBeGreaterThan(150);
});

function parse(markdown: string): Root {
  return unified().use(remarkParse).use(remarkGfm).parse(markdown);
}

function countMeasures(node: Nodes): number {
  if (node.type === 'measure') return 1;
  return 'children' in node ? node.children.reduce((sum, child) => sum + countMeasures(child), 0) : 0;
}

/** A tree as nested lists: type, address, and text with measures as they were written and without escaping backslashes. */
function outline(node: Nodes): unknown {
  if ('children' in node) {
    const parts: unknown[] = [];
    for (const child of node.children) {
      const last = parts.at(-1);
      if (child.type !== 'text' && child.type !== 'measure') parts.push(outline(child));
      else if (typeof last === 'string') parts[parts.length - 1] = last + child.value;
      else parts.push(child.value);
    }
    const texts = parts.map((part) => (typeof part === 'string' ? part.replace(/\\(?=[\p{N}.,])/gu, '') : part));
    return [node.type, 'url' in node ? node.url : '', ...texts];
  }
  return [node.type, 'value' in node ? node.value : ''];
}
