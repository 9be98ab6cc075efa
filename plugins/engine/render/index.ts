export * from './pdf.ts';
export * from './pdf-document.ts';
export type { PdfInfo } from './pdf-metadata.ts';
export * from './svg.ts';
