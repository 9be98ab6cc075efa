import PDFDocument from 'pdfkit';
import { templateFonts } from '../../plugins/astro/template-pdf.ts';
import { PROJECT } from '../../plugins/commands/support/project.ts';
import { buildLibrary, readContent } from '../../plugins/content/index.ts';
import { formatProblems, type PdfDocument, type PdfDocumentOptions, renderPdf } from '../../plugins/engine/index.ts';
import type { GeneratedPost } from './generate-posts.ts';
import { type StageTimes, timeStages } from './stages.ts';

/** Times the stages on generated posts with the project's own folds; the first tenth is run before, to warm up. */
export async function timePostStages(posts: readonly GeneratedPost[]): Promise<StageTimes> {
  const files = posts.map(({ slug, text }) => ({ path: `content/posts/${slug}/index.md`, text }));
  const { library, problems } = buildLibrary({ ...readContent(PROJECT), posts: files });
  if (library === undefined) throw new Error(formatProblems(problems));
  const fonts = await templateFonts();
  const info = { title: 'Bench', language: 'en-GB', author: undefined, created: new Date(0) };
  const newDocument = (options: PdfDocumentOptions) =>
    new PDFDocument(options as unknown as PDFKit.PDFDocumentOptions) as unknown as PdfDocument;
  const input = {
    library,
    makePdf: (pages: Parameters<typeof renderPdf>[0]) => renderPdf(pages, { newDocument, fonts, info }),
  };
  await timeStages({ ...input, files: files.slice(0, Math.ceil(files.length / 10)) });
  return timeStages({ ...input, files });
}
