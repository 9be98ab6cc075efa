import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import PDFDocument from 'pdfkit';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { templateFonts, templatePdf } from '../../../plugins/astro/template-pdf.ts';
import { buildLibrary, computeProject, readContent } from '../../../plugins/content/index.ts';
import {
  type PageScene,
  type PdfDocument,
  panelsOf,
  renderPdf,
  type SheetFormat,
  templatePages,
} from '../../../plugins/engine/index.ts';
import { readPdf } from '../../oracles/pdf-lines.ts';
import { cardOf, inches, pieceOf } from '../drawings/pieces.ts';

const MM_PER_POINT = 25.4 / 72;
/** What home printers leave white, in mm. */
const MARGIN = 6.35;
const FOOT = 12.7;

const strip = pieceOf(
  'strip',
  [
    ['tab', inches('1/2')],
    ['front', inches('35/16'), 'mountain', 'hinge'],
    ['back', inches('35/16'), 'valley', 'spine'],
  ],
  inches('21/4'),
  'across',
);

function pagesOf(sheet: SheetFormat, title: string): readonly PageScene[] {
  const card = cardOf('inch', strip);
  return templatePages({ cards: [{ name: 'Strip', card, panelling: panelsOf(card) }], system: 'inch', sheet, title });
}

async function print(pages: readonly PageScene[], title: string, author?: string): Promise<Uint8Array> {
  return renderPdf(pages, {
    newDocument: (options) => new PDFDocument(options as never) as unknown as PdfDocument,
    fonts: await templateFonts(),
    info: { title, language: 'en-GB', author, created: new Date(Date.UTC(2026, 9, 3)) },
  });
}

async function open(bytes: Uint8Array) {
  return getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
}

describe('a PDF read back by pdfjs', () => {
  it('draws mountains dash, dot, dot and valleys dashed, in narrow lines of half the edge', async () => {
    const { pages } = await readPdf(await print(pagesOf('letter', 'Strip'), 'Strip'));
    const lines = pages[1]?.segments ?? [];
    const tall = lines.filter(({ y1, y2 }) => Math.abs(Math.abs(y2 - y1) - 5.25 * 25.4) < 0.01);
    const forms = tall.map(({ weight, dash }) => [weight.toFixed(3), ...dash.map((part) => part.toFixed(3))].join(' '));
    expect(forms.sort()).toEqual(['0.250 3.000 0.750', '0.250 6.000 0.750 0.250 0.750 0.250 0.750', '0.500', '0.500']);
  });

  it.each(['letter', 'a4'] as const)('keeps every letter within the printable part of %s', async (sheet) => {
    const document = await open(await print(pagesOf(sheet, 'A long title '.repeat(12)), 'Strip'));
    for (let n = 1; n <= document.numPages; n++) {
      const page = await document.getPage(n);
      const [, , width = 0, height = 0] = page.view.map((points) => points * MM_PER_POINT);
      const { items } = await page.getTextContent();
      for (const item of items) {
        if (!('str' in item) || item.str.trim() === '') continue;
        const [a = 0, b = 0, , , x = 0, y = 0] = item.transform.map((points: number) => points * MM_PER_POINT);
        const length = item.width * MM_PER_POINT;
        const [endX, endY] = Math.abs(a) > Math.abs(b) ? [x + length, y] : [x, y + length];
        expect(Math.min(x, endX), item.str).toBeGreaterThanOrEqual(MARGIN - 0.05);
        expect(Math.max(x, endX), item.str).toBeLessThanOrEqual(width - MARGIN + 0.05);
        expect(Math.min(y, endY), item.str).toBeGreaterThanOrEqual(FOOT);
        expect(Math.max(y, endY), item.str).toBeLessThanOrEqual(height - MARGIN);
      }
    }
  });

  it('sets letters of both font files, and every glyph has a shape and a meaning', async () => {
    const title = 'Święta „5 1/2”, 15/16 & ½';
    const document = await open(await print(pagesOf('a4', title), title));
    const page = await document.getPage(1);
    const { fnArray, argsArray } = await page.getOperatorList();
    const glyphs = fnArray.flatMap((operator, i) =>
      operator === OPS.showText ? (argsArray[i]?.[0] as unknown[]) : [],
    );
    const shown = glyphs.filter(
      (glyph): glyph is { unicode: string; isInFont: boolean } => typeof glyph === 'object' && glyph !== null,
    );
    expect(shown.length).toBeGreaterThan(200);
    for (const { unicode, isInFont } of shown) {
      if (unicode.trim() !== '') expect(isInFont, unicode).toBe(true);
      expect(unicode).toMatch(/^[^\p{Cc}\ufffd]+$/u);
    }
    const { items } = await page.getTextContent();
    const text = items.map((item) => ('str' in item ? item.str : '')).join('');
    expect(text.normalize('NFKC')).toContain('Święta „5 1⁄2”, 15⁄16 & 1⁄2');
  });

  it('is tagged: headings, paragraphs and a described figure on each page', async () => {
    const document = await open(await print(pagesOf('letter', 'Strip'), 'Strip'));
    expect(new Map((await document.getMarkInfo()) as never).get('Marked')).toBe(true);
    const page = await document.getPage(2);
    const tree = JSON.stringify(await page.getStructTree());
    expect(tree).toContain('"role":"Figure"');
    expect(tree).toContain('Score a mountain fold, the hinge, at 1/2 in, from top to bottom.');
    expect(JSON.stringify(await (await document.getPage(1)).getStructTree())).toContain('"role":"H1"');
  });

  it.each(['Tide & <Lantern> "night"', "</rdf:li><evil/>'", 'a\u0007b'])(
    'says its title whatever that holds: %j',
    async (title) => {
      const { info, metadata } = await (
        await open(await print(pagesOf('letter', title), title, 'A & B'))
      ).getMetadata();
      expect(info).toMatchObject({
        Title: title,
        Author: 'A & B',
        Language: 'en-GB',
        CreationDate: 'D:20261003000000Z',
      });
      expect(metadata.get('dc:title')).toBe(title.replace('\u0007', '\ufffd'));
    },
  );
});

describe('the template of a project', () => {
  afterEach(() => {
    vi.unstubAllEnvs();
  });

  async function made(): Promise<Uint8Array> {
    const { library } = buildLibrary(readContent('.'));
    const post = [...(library?.posts.values() ?? [])].find(({ cards }) => cards.length > 1);
    if (library === undefined || post === undefined) throw new Error('the demo blog has a post of two cards');
    return templatePdf({ project: computeProject(library, post).project, blog: library.blog, sheet: 'letter' });
  }
  const creationDate = async (bytes: Uint8Array): Promise<unknown> =>
    new Map(Object.entries((await readPdf(bytes)).info)).get('CreationDate');

  it('bears the date of SOURCE_DATE_EPOCH, else of the post, and never the clock', async () => {
    vi.stubEnv('SOURCE_DATE_EPOCH', '1700000000');
    expect(await creationDate(await made())).toBe('D:20231114221320Z');
    vi.stubEnv('SOURCE_DATE_EPOCH', undefined);
    expect(await creationDate(await made())).toMatch(/^D:20\d{6}000000Z$/);
    vi.useFakeTimers({ now: new Date(Date.UTC(2031, 0, 1)), toFake: ['Date'] });
    const later = await made();
    vi.useRealTimers();
    expect(Buffer.compare(later, await made())).toBe(0);
  });

  it('has a heading and pages for each of its cards', async () => {
    const { pages } = await readPdf(await made());
    expect(pages.length).toBeGreaterThanOrEqual(3);
    expect(pages[1]?.text).toContain(': base');
  });
});
