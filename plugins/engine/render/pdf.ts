import type { PageScene, SceneItem, SceneLabel } from '../drawings/index.ts';
import type { PdfDocument, PdfDocumentOptions, PdfStructure } from './pdf-document.ts';
import { drawItem, fontName, POINTS_PER_MM } from './pdf-items.ts';
import { type PdfInfo, PRODUCER, xmpOf } from './pdf-metadata.ts';

/** The face in two weights and, for each, its file of further Latin letters: bytes, or a font already parsed. */
export interface PdfFonts {
  readonly regular: unknown;
  readonly bold: unknown;
  readonly regularExtended: unknown;
  readonly boldExtended: unknown;
}

export interface PdfMeans {
  /** Begins a pdfkit document; the library is not the engine's. */
  readonly newDocument: (options: PdfDocumentOptions) => PdfDocument;
  readonly fonts: PdfFonts;
  readonly info: PdfInfo;
}

/**
 * Pages as a PDF at true size, 1 mm of the scene 1 mm of paper: tagged, with title and language, asking viewers not to
 * scale in print. The same pages, fonts and info give the same bytes. Rejects when the library fails.
 */
export function renderPdf(pages: readonly PageScene[], { newDocument, fonts, info }: PdfMeans): Promise<Uint8Array> {
  const document = newDocument({
    autoFirstPage: false,
    compress: false,
    pdfVersion: '1.7',
    tagged: true,
    displayTitle: true,
    lang: info.language,
    font: '',
    info: {
      Title: info.title,
      ...(info.author === undefined ? {} : { Author: info.author }),
      Creator: PRODUCER,
      Producer: PRODUCER,
      CreationDate: info.created,
    },
  });
  const bytes = collect(document);
  document._addInfo = () => document.appendXML(xmpOf(info));
  // A hint that viewers may ignore, which is why every page says it in words too.
  document._root.data.ViewerPreferences.data.PrintScaling = 'None';
  document.registerFont(fontName('regular', true), fonts.regular);
  document.registerFont(fontName('regular', false), fonts.regularExtended);
  document.registerFont(fontName('bold', true), fonts.bold);
  document.registerFont(fontName('bold', false), fonts.boldExtended);

  const root = document.struct('Document');
  document.addStructure(root);
  for (const page of pages) drawPage(document, root, page);
  root.end();
  document.end();
  return bytes;
}

function drawPage(document: PdfDocument, root: PdfStructure, page: PageScene): void {
  const size = [page.width * POINTS_PER_MM, page.height * POINTS_PER_MM] as const;
  document.addPage({ size, margin: 0 });
  const paragraphs = paragraphsOf(page.items);
  for (const labels of paragraphs) {
    const tag = labels[0]?.role !== 'title' ? 'P' : labels[0].size >= 5 ? 'H1' : 'H2';
    add(document.struct(tag, {}, [() => draw(labels)]));
  }
  const figure = page.items.filter((item) => item.kind !== 'label' || item.role === 'figure' || item.role === 'name');
  if (figure.length > 0)
    add(document.struct('Figure', { alt: page.figure, bbox: [0, 0, ...size] }, [() => draw(figure)]));

  function add(element: PdfStructure): void {
    root.add(element);
    element.end();
  }
  function draw(items: readonly SceneItem[]): void {
    for (const item of items) drawItem(document, item);
  }
}

/** The page's reading text: titles and notes, the lines of a paragraph together. */
function paragraphsOf(items: readonly SceneItem[]): readonly SceneLabel[][] {
  const paragraphs: SceneLabel[][] = [];
  for (const item of items) {
    if (item.kind !== 'label' || item.role === 'figure' || item.role === 'name') continue;
    const last = paragraphs.at(-1);
    if (item.continues === true && last !== undefined) last.push(item);
    else paragraphs.push([item]);
  }
  return paragraphs;
}

function collect(document: PdfDocument): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    document.on('data', (chunk) => chunks.push(chunk));
    document.on('error', reject);
    document.on('end', () => {
      const bytes = new Uint8Array(chunks.reduce((length, chunk) => length + chunk.length, 0));
      let offset = 0;
      for (const chunk of chunks) {
        bytes.set(chunk, offset);
        offset += chunk.length;
      }
      resolve(bytes);
    });
  });
}
