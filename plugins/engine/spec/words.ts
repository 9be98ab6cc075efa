import type { Unit } from '../units/index.ts';

/** Letters, digits and hyphens; a letter first, and no hyphen at the end. */
const NAME = /^\p{L}[\p{L}\p{N}]*(?:-[\p{L}\p{N}]+)*$/u;

/** Words of expressions and strips, which therefore cannot name anything. */
const RESERVED = new Set([
  ...['in', 'inch', 'inches', 'mm', 'cm', 'deg', 'x', 'of', 'and', 'smaller', 'larger', 'less', 'rest', 'at', 'to'],
  ...['valley', 'mountain', 'both', 'all', 'others', 'width', 'height', 'min', 'max'],
]);

/** Parameters are commonly called `width` and `height`; a piece, band or crease of that name could not be measured. */
const MEASURES = new Set(['width', 'height']);

/** Words for the edges of a piece. A band may have one when it lies on that edge. */
export const EDGES = ['left', 'right', 'top', 'bottom'] as const;

export const CORNERS = ['top-left', 'top-right', 'bottom-left', 'bottom-right'] as const;

/** Words for places of a piece, which no line, shape or panel of it may be called. */
const PLACES: ReadonlySet<string> = new Set([...EDGES, ...CORNERS, 'centre', 'center']);

export function isPlaceWord(name: string): boolean {
  return PLACES.has(name);
}

/** A name, or that of a member of a family: `disc(1)`, `cell(2)(3)`. */
export function isMember(text: string): boolean {
  return isName(text.replace(/(?:\(\d{1,6}\)){1,2}$/u, ''));
}

export function isName(text: string): boolean {
  return NAME.test(text);
}

/** A word that the language keeps for itself. `sizes` tells that a size is being named, which may be `width`. */
export function isReserved(name: string, sizes: boolean): boolean {
  return RESERVED.has(name.replace(/\(.*$/u, '')) && !(sizes && MEASURES.has(name));
}

const UNIT_WORDS: ReadonlyMap<string, Unit> = new Map([
  ...['in', 'inch', 'inches'].map((word) => [word, 'in'] as const),
  ...['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'].map((word) => [word, 'mm'] as const),
  ...['cm', 'centimetre', 'centimetres', 'centimeter', 'centimeters'].map((word) => [word, 'cm'] as const),
]);

/** The unit that a word of an expression or of `units:` means. */
export function unitOfWord(word: string): Unit | undefined {
  return UNIT_WORDS.get(word);
}

/** A name as words: `left-gate` is "left gate". */
export function spaced(name: string): string {
  return name.replaceAll('-', ' ');
}
