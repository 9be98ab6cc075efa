import { escapeXml } from './escape.ts';

export interface PdfInfo {
  readonly title: string;
  /** BCP 47 tag of the text's language, as `en-GB`. */
  readonly language: string;
  readonly author?: string | undefined;
  /** The date the document bears; given, never read from a clock. */
  readonly created: Date;
}

/** Says which program made the file. */
export const PRODUCER = 'Creasewright';

/** XMP descriptions of the document, saying what its Info dictionary says (ISO 16684-1: Dublin Core, XMP basic, PDF). */
export function xmpOf(info: PdfInfo): string {
  const date = `${info.created.toISOString().slice(0, 19)}Z`;
  const author =
    info.author === undefined
      ? ''
      : `<dc:creator><rdf:Seq><rdf:li>${escapeXml(info.author)}</rdf:li></rdf:Seq></dc:creator>`;
  return [
    '<rdf:Description rdf:about="" xmlns:xmp="http://ns.adobe.com/xap/1.0/">',
    `<xmp:CreateDate>${date}</xmp:CreateDate><xmp:CreatorTool>${PRODUCER}</xmp:CreatorTool></rdf:Description>`,
    '<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/">',
    `<dc:title><rdf:Alt><rdf:li xml:lang="x-default">${escapeXml(info.title)}</rdf:li></rdf:Alt></dc:title>${author}`,
    `<dc:language><rdf:Bag><rdf:li>${escapeXml(info.language)}</rdf:li></rdf:Bag></dc:language></rdf:Description>`,
    '<rdf:Description rdf:about="" xmlns:pdf="http://ns.adobe.com/pdf/1.3/">',
    `<pdf:Producer>${PRODUCER}</pdf:Producer></rdf:Description>`,
  ].join('');
}
