import { describe, expect, test } from 'vitest';
import { render, renderPlain, seen } from './render.ts';

const CARDS = { cards: ['ferry', 'lantern'] };

async function codes(markdown: string, context = {}): Promise<string[]> {
  return (await render(markdown, { ...CARDS, ...context })).problems.map(({ code }) => code);
}

describe('what is placed', () => {
  test.each([
    ['::drawing', '<div data-place="drawing"></div>'],
    ['::supplies', '<div data-place="supplies"></div>'],
    ['::template{card=ferry}', '<div data-place="template" data-card="ferry"></div>'],
    ['::measurements{card="lantern"}', '<div data-place="measurements" data-card="lantern"></div>'],
    ['::dry-fit', '<div data-place="dry-fit"></div>'],
    ['  ::drawing  ', '<div data-place="drawing"></div>'],
  ])('%s', async (line, html) => {
    const rendered = await render(`Before.\n\n${line}\n\nAfter.`, CARDS);
    expect(rendered.problems).toEqual([]);
    expect(rendered.html.split('\n').filter((part) => part !== '')).toEqual(['<p>Before.</p>', html, '<p>After.</p>']);
  });

  test('without empty lines round it', async () => {
    const { html, problems } = await render('Before.\n::drawing\nAfter.', CARDS);
    expect(problems).toEqual([]);
    expect(html).toContain('<p>Before.</p>\n<div data-place="drawing"></div>\n<p>After.</p>');
  });

  test('each card once, and different things of one card', async () => {
    const text = '::drawing{card=ferry}\n\n::drawing{card=lantern}\n\n::template{card=ferry}';
    expect(await codes(text)).toEqual([]);
  });
});

describe('what is refused, and where', () => {
  test.each([
    ['::drawings', 'place-unknown', 'Did you mean ::drawing?'],
    ['::dryfit', 'place-unknown', 'Did you mean ::dry-fit?'],
    ['::Drawing', 'place-unknown', 'Did you mean ::drawing?'],
    ['::gallery', 'place-unknown', 'Use one of these, or take the line out.'],
    [':::drawing\n:::', 'place-wrong-colons', 'Write ::drawing on one line, and nothing to end it.'],
    [':::note\nMind the tide.\n:::', 'place-wrong-colons', 'Take the colons out.'],
    ['::drawing{card=fery}', 'place-unknown-card', 'Did you mean card=ferry?'],
    ['::drawing{card=boathouse}', 'place-unknown-card', 'Name one of these, or leave {card=...} out.'],
    ['::drawing{cards=ferry}', 'place-unknown-attribute', 'Did you mean `card`?'],
    ['::drawing{width=50}', 'place-unknown-attribute', 'Take out `width`.'],
    ['::drawing{#top}', 'place-unknown-attribute', 'Take out `id`.'],
    [
      '::drawing[The drawing]',
      'place-with-label',
      'Take out the square brackets, and write their text as a sentence before or after.',
    ],
    [
      '::drawing {card=ferry}',
      'place-malformed',
      'Write ::drawing alone, or ::drawing{card=name} without spaces before the bracket.',
    ],
    [
      '::drawing{card=}',
      'place-malformed',
      'Write ::drawing alone, or ::drawing{card=name} without spaces before the bracket.',
    ],
    [
      '::drawing here',
      'place-malformed',
      'Write ::drawing alone, or ::drawing{card=name} without spaces before the bracket.',
    ],
    [
      ':: drawing',
      'place-malformed',
      'Write ::drawing alone, or ::drawing{card=name} without spaces before the bracket.',
    ],
  ])('%s', async (line, code, remedy) => {
    const { problems } = await render(`One.\n\n${line}\n`, CARDS);
    expect(problems).toMatchObject([
      { code, remedy, severity: 'error', place: { file: 'post.md', line: 3, column: 1 }, wrote: line.split('\n')[0] },
    ]);
  });

  test.each([
    ['- Cut.\n\n  ::drawing', 3, 3],
    ['> ::drawing', 1, 3],
    ['1. ::drawing', 1, 4],
  ])('nested: %j', async (markdown, line, column) => {
    const { problems } = await render(markdown, CARDS);
    expect(problems).toMatchObject([{ code: 'place-nested', place: { line, column } }]);
  });

  test('in a list and malformed', async () => {
    expect(await codes('- ::drawing of the card')).toEqual(['place-malformed']);
  });

  test('all problems of one line and of all lines', async () => {
    expect(await codes('::drawing[x]{card=fery width=3}\n\ntext\n\n::supplys')).toEqual([
      'place-with-label',
      'place-unknown-attribute',
      'place-unknown-card',
      'place-unknown',
    ]);
  });

  test.each([
    ['::drawing\n\n::drawing', 1],
    ['::drawing{card=ferry}\n\n::drawing', 1],
    ['::drawing\n\n::drawing{card=ferry}', 1],
    ['text\n\n::drawing{card=ferry}\n\n::drawing{card=ferry}', 3],
  ])('placed twice: %j', async (markdown, line) => {
    const { problems } = await render(markdown, CARDS);
    expect(problems).toMatchObject([{ code: 'place-twice', remedy: expect.stringContaining(`line ${line}:`) }]);
  });

  test('a drawing in a post without a card, but not its supplies', async () => {
    expect(await codes('::drawing\n\n::supplies', { cards: [] })).toEqual(['place-without-card']);
    expect(await codes('::drawing{card=ferry}', { cards: [] })).toEqual(['place-unknown-card']);
  });

  test('anything in a text that is no post', async () => {
    expect(await codes('::drawing', { placing: false })).toEqual(['place-outside-post']);
  });

  test('no card is called unknown while the frontmatter cannot be read', async () => {
    expect(await codes('::drawing{card=fery}', { cards: undefined })).toEqual([]);
  });
});

/*
 * Colons in prose are prose. Each of these is compared with what the same Markdown gives without any plugin, so that
 * emphasis and links within them still work.
 */
describe('what stays as it was written', () => {
  test.each([
    'The ferry leaves at 10:30 and at 3:05:20.',
    'Mix it 3:4, then 1:1.',
    'Set it to in:score, out:fold.',
    ':name[x]{y} and a:name[**bold**]{.c}',
    'see:this[a *link*](https://saltmarsh-paper.example)',
    '::10:30',
    '::',
    ':::',
    'note:: this',
    'one ::drawing in a line',
    '\\::drawing',
    '`::drawing` and `:x[y]`',
    '```\n::drawing\n```',
    '    ::drawing',
    '| a | b |\n|---|---|\n| 1:2 | :x |',
    '## Steps: cut:score:fold',
    'Smile :) and :tada: and :-D',
    'http://localhost:3000/a:b',
    'a:b{c} {d} [e]:f',
  ])('%j', async (markdown) => {
    const { html, problems } = await render(markdown, CARDS);
    expect(problems).toEqual([]);
    expect(html).toBe(await renderPlain(markdown));
  });

  test('and still reads as it was written', async () => {
    const { html } = await render('At 10:30, 3:4 of in:score, :name[x]{y}.');
    expect(seen(html)).toBe('At 10:30, 3:4 of in:score, :name[x]{y}.');
  });
});
