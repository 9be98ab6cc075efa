import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { inflateSync } from 'node:zlib';
import PDFDocument from 'pdfkit';
import type { Blog, Project } from '../content/index.ts';
import {
  type PdfDocument,
  type PdfDocumentOptions,
  type PdfFonts,
  renderPdf,
  type SheetFormat,
  type System,
  templatePages,
} from '../engine/index.ts';

/** Which edition is printed on which sheet. */
const EDITION: Readonly<Record<SheetFormat, System>> = { letter: 'inch', a4: 'metric' };

export interface TemplatePdfInput {
  readonly project: Project;
  readonly blog: Blog;
  readonly sheet: SheetFormat;
}

/** The template of all cards of a project as a PDF. The same project gives the same bytes. */
export async function templatePdf({ project, blog, sheet }: TemplatePdfInput): Promise<Uint8Array> {
  const system = EDITION[sheet];
  const { post } = project;
  const pages = templatePages({
    cards: project.cards.map(({ name, editions }) => ({ name, ...editions[system] })),
    system,
    sheet,
    title: post.title,
    address: `${blog.address}/projects/${project.slug}/`,
  });
  return renderPdf(pages, {
    newDocument,
    fonts: await templateFonts(),
    info: { title: post.title, language: blog.language, author: blog.author, created: dateOf(post.date) },
  });
}

/** `SOURCE_DATE_EPOCH` (seconds, reproducible-builds.org) when it is set, else the post's date: never the clock. */
function dateOf(date: string): Date {
  const { SOURCE_DATE_EPOCH: epoch } = process.env;
  return epoch !== undefined && /^\d+$/.test(epoch) ? new Date(Number(epoch) * 1000) : new Date(`${date}T00:00:00Z`);
}

function newDocument(options: PdfDocumentOptions): PdfDocument {
  // pdfkit's types leave out what it takes and has: an empty font, tagged structure, the catalogue.
  return new PDFDocument(options as unknown as PDFKit.PDFDocumentOptions) as unknown as PdfDocument;
}

/** The fonts, read and parsed once a process. */
export const templateFonts: () => Promise<PdfFonts> = once(async () => {
  const [regular, bold, regularExtended, boldExtended] = await Promise.all(
    ['latin-400', 'latin-700', 'latin-ext-400', 'latin-ext-700'].map(openFont),
  );
  return { regular, bold, regularExtended, boldExtended };
});

function once<T>(make: () => Promise<T>): () => Promise<T> {
  let made: Promise<T> | undefined;
  return () => {
    made ??= make();
    return made;
  };
}

/** How many laid-out texts a font remembers: those of a few templates, however many a build makes. */
const MOST_TEXTS = 2000;

interface ParsedFont {
  layout(text: string, features?: unknown): unknown;
}

/** A font parsed by pdfkit itself, so that no document parses it again; it remembers how each text is laid out. */
async function openFont(name: string): Promise<ParsedFont> {
  const file = createRequire(import.meta.url).resolve(
    `@fontsource/alegreya-sans/files/alegreya-sans-${name}-normal.woff`,
  );
  const scratch = new PDFDocument({ autoFirstPage: false }).font(unpackWoff(await readFile(file)));
  const { font } = (scratch as unknown as { _font: { font: ParsedFont } })._font;
  const layout = font.layout.bind(font);
  const known = new Map<string, unknown>();
  font.layout = (text, features) => {
    const key = `${String(features)} ${text}`;
    if (known.has(key)) return known.get(key);
    if (known.size >= MOST_TEXTS) known.clear();
    const laidOut = layout(text, features);
    known.set(key, laidOut);
    return laidOut;
  };
  return font;
}

/**
 * A WOFF file as the font it packs (W3C, WOFF File Format 1.0: header of 44 bytes, then 20 for each table). Left packed,
 * a table would be inflated anew for every letter that is embedded.
 */
function unpackWoff(woff: Buffer): Buffer {
  const count = woff.readUInt16BE(12);
  const directory = Buffer.alloc(12 + 16 * count);
  woff.copy(directory, 0, 4, 8);
  directory.writeUInt16BE(count, 4);
  const parts: Buffer[] = [directory];
  let position = directory.length;
  for (let i = 0; i < count; i++) {
    const entry = 44 + 20 * i;
    const [offset, packed, length] = [4, 8, 12].map((at) => woff.readUInt32BE(entry + at)) as [number, number, number];
    const stored = woff.subarray(offset, offset + packed);
    const table = packed < length ? inflateSync(stored) : stored;
    const at = 12 + 16 * i;
    woff.copy(directory, at, entry, entry + 4);
    woff.copy(directory, at + 4, entry + 16, entry + 20);
    directory.writeUInt32BE(position, at + 8);
    directory.writeUInt32BE(length, at + 12);
    parts.push(table, Buffer.alloc((4 - (length % 4)) % 4));
    position += length + ((4 - (length % 4)) % 4);
  }
  return Buffer.concat(parts);
}
