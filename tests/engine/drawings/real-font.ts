import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { SceneLabel } from '../../../plugins/engine/index.ts';

/** What is used of a font read by fontkit, the reader inside pdfkit. */
export interface RealFont {
  readonly unitsPerEm: number;
  readonly capHeight: number;
  readonly characterSet: readonly number[];
  hasGlyphForCodePoint(code: number): boolean;
  layout(text: string, features: readonly string[]): RealRun;
}

interface RealRun {
  readonly advanceWidth: number;
  readonly glyphs: readonly {
    readonly id: number;
    readonly advanceWidth: number;
    readonly bbox: { readonly minY: number; readonly maxY: number };
  }[];
}

const FEATURES = ['frac', 'tnum', 'lnum'];

/** A font file of the drawing face, as installed. */
export function realFont(subset: 'latin' | 'latin-ext', weight: 400 | 700): RealFont {
  const require = createRequire(import.meta.url);
  const { create } = createRequire(require.resolve('pdfkit'))('fontkit') as { create(bytes: Buffer): RealFont };
  return create(
    readFileSync(require.resolve(`@fontsource/alegreya-sans/files/alegreya-sans-${subset}-${weight}-normal.woff`)),
  );
}

export function realRun(font: RealFont, text: string): RealRun {
  return font.layout(text, FEATURES);
}

interface Ink {
  readonly rise: number;
  readonly drop: number;
  readonly width: number;
}

/** Outlines are slow to read: each text's are read once. */
const inks = new WeakMap<RealFont, Map<string, Ink>>();

function inkIn(font: RealFont, text: string): Ink {
  const known = inks.get(font) ?? new Map<string, Ink>();
  inks.set(font, known);
  const found = known.get(text);
  if (found !== undefined) return found;
  const { glyphs, advanceWidth } = realRun(font, text);
  const boxes = glyphs.map(({ bbox }) => bbox).filter(({ minY, maxY }) => Number.isFinite(maxY) && maxY > minY);
  const rise = Math.max(...boxes.map(({ maxY }) => maxY));
  const drop = -Math.min(...boxes.map(({ minY }) => minY));
  const ink = { rise, drop, width: advanceWidth };
  known.set(text, ink);
  return ink;
}

export interface RealBox {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly text: string;
}

/** The box of a label's ink in mm, from the outlines of its letters; text that the main file has. */
export function realBox(label: SceneLabel, regular: RealFont, bold: RealFont): RealBox {
  const font = label.role === 'title' ? bold : regular;
  const mm = label.size / font.capHeight;
  const ink = inkIn(font, label.text);
  const [rise, drop, width] = [ink.rise * mm, ink.drop * mm, ink.width * mm];
  const before = { start: 0, middle: width / 2, end: width }[label.anchor];
  const { x, y } = label.at;
  const { text } = label;
  if (label.turn === 90) return { left: x - rise, right: x + drop, top: y + before - width, bottom: y + before, text };
  return { left: x - before, right: x - before + width, top: y - rise, bottom: y + drop, text };
}
