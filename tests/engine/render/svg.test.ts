import { describe, expect, it } from 'vitest';
import { cuttingDrawing, panelsOf, renderSvg, type Scene, templatePages } from '../../../plugins/engine/index.ts';
import { everyKind } from '../drawings/every-kind.ts';
import { cardOf, inches, pieceOf } from '../drawings/pieces.ts';

const HOSTILE = [
  '<script>alert(1)</script>',
  '"><img src=x onerror=alert(1)>',
  "' onload='alert(1)",
  ']]><svg onload=alert(1)>',
  '--><style>*{display:none}</style><!--',
  '&lt;b&gt; &amp; &#60;',
  'null\u0000 bell\u0007 escape\u001b',
  '\ud800 lone',
  '\ufffe\uffff',
];

/** Elements and attributes of well-formed XML of the kind the renderer writes; throws on anything else. */
function parse(svg: string): { name: string; attributes: Map<string, string> }[] {
  const elements: { name: string; attributes: Map<string, string> }[] = [];
  const open: string[] = [];
  let rest = svg;
  while (rest !== '') {
    const tag = /^<(\/?)([a-z]+)((?:\s+[a-zA-Z:-]+="[^"<]*")*)\s*(\/?)>/.exec(rest);
    if (tag) {
      const [whole, closing, name = '', attributes = '', empty] = tag;
      if (closing) expect(open.pop()).toBe(name);
      else {
        const pairs = [...attributes.matchAll(/([a-zA-Z:-]+)="([^"]*)"/g)].map(
          ([, key = '', value = '']) => [key, value] as const,
        );
        expect(new Set(pairs.map(([key]) => key)).size).toBe(pairs.length);
        elements.push({ name, attributes: new Map(pairs) });
        if (!empty) open.push(name);
      }
      rest = rest.slice(whole.length);
      continue;
    }
    const text = /^(?:[^<&]|&(?:amp|lt|gt|quot|#39);)+/.exec(rest);
    if (!text) throw new Error(`not well formed at: ${rest.slice(0, 80)}`);
    rest = rest.slice(text[0].length);
  }
  expect(open).toEqual([]);
  return elements;
}

function sceneSaying(text: string): Scene {
  return {
    width: 50,
    height: 20,
    title: text,
    words: [text, text],
    items: [{ kind: 'label', text, at: { x: 1, y: 10 }, size: 2.5, anchor: 'start', turn: 0, role: 'note' }],
  };
}

const ELEMENTS = new Set(['svg', 'title', 'desc', 'path', 'circle', 'text', 'tspan']);

describe('an SVG drawing is safe', () => {
  it.each(HOSTILE)('whatever its texts say: %j', (text) => {
    const svg = renderSvg(sceneSaying(text), { idPrefix: text, className: text });
    const elements = parse(svg);
    expect(elements.map(({ name }) => name)).toEqual(['svg', 'title', 'desc', 'text']);
    for (const { attributes } of elements) {
      for (const key of attributes.keys()) expect(key).not.toMatch(/^on|href|style/i);
    }
    // XML 1.0, production 2: what may stand in a document.
    expect(svg).toMatch(/^[\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]*$/u);
  });

  it.each(HOSTILE)('in the names of pieces, panels and creases, drawing and template: %j', (text) => {
    const piece = pieceOf(
      text,
      [
        [text, inches('4')],
        [text, inches('4'), 'valley', text],
      ],
      inches('5'),
    );
    const card = cardOf('inch', piece);
    const panelling = panelsOf(card);
    const pages = templatePages({
      cards: [{ name: text, card, panelling }],
      system: 'inch',
      sheet: 'letter',
      title: text,
      address: text,
    });
    for (const scene of [cuttingDrawing(piece, panelling, { system: 'inch' }), ...pages]) {
      for (const { name, attributes } of parse(renderSvg(scene, { idPrefix: 'a' }))) {
        expect(ELEMENTS).toContain(name);
        for (const key of attributes.keys()) expect(key).not.toMatch(/^on|href|style/i);
      }
    }
  });

  it('throws on a number that is none, which only a slip in a drawing can make', () => {
    expect(() => renderSvg({ ...sceneSaying('a'), width: Number.NaN }, { idPrefix: 'a' })).toThrow(RangeError);
  });
});

describe('an SVG drawing is for everybody', () => {
  const piece = pieceOf(
    'base',
    [
      ['front', inches('17/4')],
      ['back', inches('17/4'), 'valley', 'spine'],
    ],
    inches('11/2'),
    'down',
  );
  const scene = cuttingDrawing(piece, panelsOf(cardOf('inch', piece)), { system: 'inch' });
  const elements = parse(renderSvg(scene, { idPrefix: 'card inch 1', className: 'drawing' }));
  const svg = elements[0]?.attributes;

  it('is an image with a name and a description (WAI-ARIA 1.2, role img)', () => {
    expect(svg?.get('role')).toBe('img');
    expect(svg?.get('class')).toBe('scene drawing');
    const ids = elements.slice(1, 3).map(({ name, attributes }) => [name, attributes.get('id')]);
    expect(ids).toEqual([
      ['title', svg?.get('aria-labelledby')],
      ['desc', svg?.get('aria-describedby')],
    ]);
    expect(renderSvg(scene, { idPrefix: 'a' })).toContain(scene.words.join(' '));
  });

  it('takes its ink from the page, so that it can be read on dark paper and in print', () => {
    const colours = elements.flatMap(({ attributes }) =>
      ['fill', 'stroke'].flatMap((key) => attributes.get(key) ?? []),
    );
    expect(new Set(colours)).toEqual(new Set(['currentColor', 'none']));
  });

  it('marks each fraction, and nothing else, for the font feature that sets it', () => {
    const marked = [
      ...renderSvg(scene, { idPrefix: 'a' }).matchAll(/<tspan class="scene-fraction">([^<]*)<\/tspan>/g),
    ].map(([, text]) => text);
    expect(marked.sort()).toEqual(['1⁄2', '1⁄2', '1⁄4']);
  });
});

describe.each(everyKind())('$name as SVG', ({ system, card }) => {
  it('is well formed, in known elements, with numbers to 0.001', () => {
    for (const piece of card.pieces) {
      const elements = parse(renderSvg(cuttingDrawing(piece, panelsOf(card), { system }), { idPrefix: 'a' }));
      for (const { name, attributes } of elements) {
        expect(ELEMENTS).toContain(name);
        for (const key of [
          'x',
          'y',
          'd',
          'r',
          'cx',
          'cy',
          'font-size',
          'stroke-width',
          'stroke-dasharray',
          'viewBox',
          'transform',
        ]) {
          expect(attributes.get(key) ?? '').not.toMatch(/\.\d{4}|e-?\d|NaN|Infinity/);
        }
      }
    }
  });
});
