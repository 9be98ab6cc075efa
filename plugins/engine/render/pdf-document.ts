/** What is asked of a PDF library: the part of pdfkit's document that the renderer uses. Lengths in points. */
export interface PdfDocument {
  /** The catalogue, open for entries that have no method; it has viewer preferences from the start. */
  readonly _root: { readonly data: { readonly ViewerPreferences: { readonly data: ViewerPreferences } } };
  /** Writes the library's own XMP, with texts it does not escape; replaced by the renderer's. */
  _addInfo: () => void;
  appendXML(xml: string): unknown;
  addPage(options: { readonly size: readonly [number, number]; readonly margin: number }): unknown;
  addStructure(element: PdfStructure): unknown;
  struct(type: string, options?: StructureOptions, children?: readonly (() => void)[]): PdfStructure;
  registerFont(name: string, source: unknown): unknown;
  font(name: string, size: number): unknown;
  text(text: string, x: number, y: number, options: TextOptions): unknown;
  save(): unknown;
  restore(): unknown;
  rotate(degrees: number, options: { readonly origin: readonly [number, number] }): unknown;
  lineWidth(width: number): unknown;
  lineCap(cap: 'butt' | 'square'): unknown;
  dash(lengths: readonly number[], options: { readonly phase: number }): unknown;
  undash(): unknown;
  moveTo(x: number, y: number): unknown;
  lineTo(x: number, y: number): unknown;
  bezierCurveTo(x1: number, y1: number, x2: number, y2: number, x: number, y: number): unknown;
  closePath(): unknown;
  polygon(...points: readonly (readonly [number, number])[]): unknown;
  stroke(): unknown;
  fill(rule?: 'even-odd'): unknown;
  fillOpacity(opacity: number): unknown;
  on(event: 'data', listener: (chunk: Uint8Array) => void): unknown;
  on(event: 'end', listener: () => void): unknown;
  on(event: 'error', listener: (error: unknown) => void): unknown;
  end(): unknown;
}

/** ISO 32000-1, 12.2, table 150. */
export interface ViewerPreferences {
  PrintScaling?: 'None' | 'AppDefault';
}

export interface PdfStructure {
  add(child: PdfStructure): unknown;
  end(): unknown;
}

export interface StructureOptions {
  readonly alt?: string;
  readonly bbox?: readonly [number, number, number, number];
}

export interface TextOptions {
  readonly lineBreak: false;
  readonly baseline: 'alphabetic';
  /** OpenType features. */
  readonly features: readonly string[];
}

/** How the document is begun. */
export interface PdfDocumentOptions {
  readonly autoFirstPage: false;
  /** Compressed streams would depend on the zlib at hand: the same bytes everywhere only without. */
  readonly compress: false;
  readonly pdfVersion: '1.7';
  readonly tagged: true;
  readonly displayTitle: true;
  readonly lang: string;
  /** No standard font: everything is set in the fonts given. */
  readonly font: '';
  readonly info: Readonly<Record<string, string | Date>>;
}
