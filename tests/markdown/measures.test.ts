import { describe, expect, test } from 'vitest';
import { Length } from '../../plugins/engine/index.ts';
import { render, renderPlain, seen } from './render.ts';

const THIN = '\u2009';
const FIVE_AND_A_HALF = `5${THIN}1⁄2 in (139.5 mm)`;

/*
 * Conversions by hand: 1 in = 25.4 mm exactly (international yard and pound agreement, 1959), then to the nearest mark of
 * 1/16 in or 0.5 mm, an exact half to the even mark.
 *   5 1/2 in = 139.7 mm, nearest 0.5: 139.5      4 1/4 in = 107.95: 108     8 1/2 in = 215.9: 216    11 in = 279.4: 279.5
 *   140 mm = 5.5118 in = 88.19 sixteenths: 88 = 5 1/2 in                     105 mm = 66.14: 66 = 4 1/8    148 mm = 93.23: 93 = 5 13/16
 */
describe('both systems, the written one first', () => {
  test.each([
    ['Cut it 5 1/2 in wide.', `Cut it ${FIVE_AND_A_HALF} wide.`],
    ['Cut it 5½ in wide.', `Cut it ${FIVE_AND_A_HALF} wide.`],
    ['Cut it 5-1/2 in wide.', `Cut it ${FIVE_AND_A_HALF} wide.`],
    ['Score at 140 mm.', `Score at 140 mm (5${THIN}1⁄2 in).`],
    ['Score at 14 cm.', `Score at 140 mm (5${THIN}1⁄2 in).`],
    ['A sheet of 8 1/2 x 11 in.', `A sheet of 8${THIN}1⁄2 × 11 in (216 × 279.5 mm).`],
    ['It is 105 x 148 mm.', `It is 105 × 148 mm (4${THIN}1⁄8 × 5${THIN}13⁄16 in).`],
    ['5 1/2 in', FIVE_AND_A_HALF],
    ['A box of 4 x 4 x 2 in.', 'A box of 4 × 4 × 2 in (101.5 × 101.5 × 51 mm).'],
    ['First 4 1/4 in, then 5 1/2 in.', `First 4${THIN}1⁄4 in (108 mm), then ${FIVE_AND_A_HALF}.`],
    ['Cut it 5\u00a01/2\u00a0in wide.', `Cut it ${FIVE_AND_A_HALF} wide.`],
    ['Cut it 5&nbsp;1/2&nbsp;in wide.', `Cut it ${FIVE_AND_A_HALF} wide.`],
    ['Cut it 5&frac12; in wide.', `Cut it ${FIVE_AND_A_HALF} wide.`],
  ])('%j', async (markdown, words) => {
    const { html, problems } = await render(markdown);
    expect(problems).toEqual([]);
    expect(seen(html)).toBe(words);
  });

  test('an inch mark at the end of a sentence stays an inch mark', async () => {
    const { html } = await render('She said "cut it 5 1/2" wide" and went.');
    expect(seen(html)).toBe(`She said “cut it ${FIVE_AND_A_HALF} wide” and went.`);
  });

  test('marks of the blog', async () => {
    const marks = { inch: Length.fromInches('1/8'), metric: Length.fromMm(1) };
    // 139.7 mm: 140. 92 mm = 3.622 in = 28.98 eighths: 29 = 3 5/8.
    const { html } = await render('5 1/2 in, 92 mm', { marks });
    expect(seen(html)).toBe(`5${THIN}1⁄2 in (140 mm), 92 mm (3${THIN}5⁄8 in)`);
  });

  test('where the marks are too coarse the number is given more finely', async () => {
    // 0.3 mm = 0.0118 in; on sixteenths it would be nothing. 1/32 in = 0.794 mm; on half millimetres it would be 1.
    const { html } = await render('Card of 0.3 mm and a gap of 1/32 in.');
    expect(seen(html)).toBe('Card of 0.3 mm (0.012 in) and a gap of 1⁄32 in (0.79 mm).');
  });

  test('a decimal comma where the language has one', async () => {
    const { html } = await render('Es sind 13,97 cm.', { decimalComma: true });
    expect(seen(html)).toContain('139.7 mm');
  });
});

describe('markup', () => {
  test('is hidden system by system, spoken in words, and holds no white space of its own', async () => {
    const { html } = await render('Cut 5 1/2 in.');
    expect(html).toBe(
      '<p>Cut <span class="measure" data-written="inch">' +
        '<span class="measure-inch"><span class="measure-figure" aria-hidden="true">5\u20091⁄2 in</span>' +
        '<span class="measure-spoken">five and a half inches</span></span>' +
        '<span class="measure-metric"><span class="measure-bracket"> (</span>' +
        '<span class="measure-figure" aria-hidden="true">139.5 mm</span>' +
        '<span class="measure-spoken">139.5 millimetres</span>' +
        '<span class="measure-bracket">)</span></span></span>.</p>',
    );
  });

  test.each([
    ['inch', `Cut 5${THIN}1⁄2 in, then 4${THIN}1⁄8 in.`],
    ['metric', 'Cut 139.5 mm, then 105 mm.'],
  ])('reads well when a reader has chosen %s', async (system, words) => {
    const { html } = await render('Cut 5 1/2 in, then 105 mm.');
    const other = system === 'inch' ? 'metric' : 'inch';
    const bracketless = html.replace(/<span class="measure-bracket">.*?<\/span>/g, '');
    const figure =
      '<span class="measure-figure" aria-hidden="true">[^<]*</span><span class="measure-spoken">[^<]*</span>';
    expect(seen(bracketless.replace(new RegExp(`<span class="measure-${other}">${figure}</span>`, 'g'), ''))).toBe(
      words,
    );
  });

  test.each([
    ['**5 1/2 in**', `<strong><span class="measure"`],
    ['*about 5 1/2 in*', `<em>about <span class="measure"`],
    ['- Cut 5 1/2 in', '<li>Cut <span class="measure"'],
    ['> Cut 5 1/2 in', 'Cut <span class="measure"'],
    ['| a |\n|---|\n| 5 1/2 in |', '<td><span class="measure"'],
    ['A[^1]\n\n[^1]: It is 5 1/2 in.', 'It is <span class="measure"'],
    ['<b>5 1/2 in</b>', '<b><span class="measure"'],
    ['<div>\n\n5 1/2 in\n\n</div>', '<p><span class="measure"'],
    ['1. One\n   - Two\n\n     Cut 5 1/2 in', 'Cut <span class="measure"'],
  ])('within %j', async (markdown, expected) => {
    const { html, problems } = await render(markdown);
    expect(problems).toEqual([]);
    expect(html).toContain(expected);
  });
});

describe('left alone', () => {
  test.each([
    '`5 1/2 in`',
    '```\n5 1/2 in\n```',
    '    5 1/2 in',
    '[5 1/2 in](https://saltmarsh-paper.example)',
    '[5 1/2 in *wide*][a]\n\n[a]: https://saltmarsh-paper.example',
    '![5 1/2 in](https://saltmarsh-paper.example/a.png)',
    '<code>5 1/2 in</code>',
    '<a href="#x">5 1/2 in</a>',
    '<pre>\n5 1/2 in\n</pre>',
    '<a href="#x">\n\n5 1/2 in\n\n</a>',
    '<kbd>5 in</kbd> <samp>*5 in*</samp>',
    '<script>let a = "5 in";</script>',
    '<!-- 5 1/2 in -->',
    '## Score at 5 1/2 in',
    '### `5 in` and 140 mm',
    'From 10:30 to 11:15 on 2026-10-03, 3:4, in:score.',
    'It is 5 1/2 of them, 24/7, page 3/4, version 1.2.3.',
    'In 5 in every 6 houses',
    '[5 1/2](https://saltmarsh-paper.example) in',
    '`5` 1/2 in',
  ])('%j', async (markdown) => {
    const { html, problems } = await render(markdown);
    expect(problems).toEqual([]);
    expect(html).toBe(await renderPlain(markdown));
  });

  test.each([
    ['Write \\5 1/2 in as it is.', 'Write 5 1/2 in as it is.'],
    ['Write 5 1\\/2 in as it is.', 'Write 5 1/2 in as it is.'],
    ['Write \\5½ in and \\140 mm.', 'Write 5½ in and 140 mm.'],
    ['Write 5\\.5 in.', 'Write 5.5 in.'],
    // Typographic quotes are set after the measures were looked for; before, they would hide how the text was written.
    ['"Go" -- and write 5\\.5 in.', '“Go” — and write 5.5 in.'],
    ['\\53/4 in', '53/4 in'],
    ['**\\5 1/2 in**', '5 1/2 in'],
    ['a\n> b\n> \\5 1/2 in', 'a\n\nb\n5 1/2 in\n'],
    ['&amp; \\* \\5 1/2 in', '& * 5 1/2 in'],
    ['Path \\5 and \\a', 'Path \\5 and \\a'],
  ])('escaped: %j', async (markdown, words) => {
    const { html, problems } = await render(markdown);
    expect(problems).toEqual([]);
    expect(html).not.toContain('class="measure"');
    expect(seen(html).trim()).toBe(words.trim());
  });

  test('a backslash that is itself escaped escapes nothing', async () => {
    const { html } = await render('A \\\\5 1/2 in, and after an escape \\* 5 1/2 in.');
    expect(seen(html)).toBe(`A \\${FIVE_AND_A_HALF}, and after an escape * ${FIVE_AND_A_HALF}.`);
  });

  test('headings keep their addresses', async () => {
    const { headings } = await render('## Score at 5 1/2 in\n\n## Score at 5 1/2 in');
    expect(headings).toEqual([
      { depth: 2, slug: 'score-at-5-12-in', text: 'Score at 5 1/2 in' },
      { depth: 2, slug: 'score-at-5-12-in-1', text: 'Score at 5 1/2 in' },
    ]);
  });

  test('Markdown that is not of the content', async () => {
    const { unified } = await import('@astrojs/markdown-remark');
    const { processorOptions } = await import('../../plugins/astro/markdown-processor.ts');
    const renderer = await unified(processorOptions([], [])).createRenderer({ syntaxHighlight: false });
    expect((await renderer.render('Cut 5 1/2 in.')).code).toBe('<p>Cut 5 1/2 in.</p>');
  });
});

describe('doubtful measures are warnings, with their place in the file', () => {
  test('53/4 in', async () => {
    const { html, problems } = await render('One.\n\nTwo lines of text,\nthen cut 53/4 in off.\n');
    expect(problems).toMatchObject([{ severity: 'warning', place: { file: 'post.md', line: 4, column: 10 } }]);
    expect(problems[0]?.remedy).toContain('5 3/4');
    expect(seen(html)).toContain('then cut 53/4 in off.');
  });

  test.each([
    ['> a\n> b 53/4 in', 2, 5],
    ['- a\n  - b\n    c **53/4 in**', 3, 9],
    ['| a | b |\n|---|---|\n| x \\| y | 53/4 in |', 3, 12],
    ['&frac12; \\* &#42; 53/4 in', 1, 19],
    ['## 53/4 in', 1, 4],
    ['a  \n53/4 in', 2, 1],
    ['tide 🌊 and 53/4 in', 1, 13],
  ])('%j', async (markdown, line, column) => {
    const { problems } = await render(markdown);
    expect(problems).toMatchObject([{ severity: 'warning', place: { line, column } }]);
  });

  test.each([
    ['**5** 1/2 in', 3],
    ['5 *1/2* in', 1],
    ['5<sup>1/2</sup> in', 1],
    ['~~5~~ 1/2 in', 3],
  ])('a measure broken up by emphasis is not half read: %j', async (markdown, column) => {
    const { html, problems } = await render(markdown);
    expect(problems).toMatchObject([{ code: 'measure-split', place: { line: 1, column } }]);
    expect(html).not.toContain('class="measure"');
  });
});
