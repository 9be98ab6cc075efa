import { type Card, type PaperInUse, readSize, type SheetInUse, type System, type Unit } from '../engine/index.ts';
import type { CardSpec, FoldKind, PerEdition, Supply, WrittenText } from './entries/types.ts';
import type { Library } from './library.ts';
import { materialsOf } from './materials.ts';
import { checkedLength, readSheetOrEnvelope } from './measures.ts';

/**
 * Sheets, materials, envelope and promised size of a card in its edition. A sheet is that of the card, else of the supply in its
 * role, else of the kind, else the blog's usual one. Texts that name none are left out: they were told when the file was read.
 *
 * @param spec undefined for a kind at its defaults
 * @param units of bare numbers in the post
 */
export function paperOf(
  card: Card,
  spec: CardSpec | undefined,
  kind: FoldKind | undefined,
  stock: Readonly<Record<string, Supply>>,
  units: Unit | undefined,
  { blog, supplies }: Pick<Library, 'blog' | 'supplies'>,
): PaperInUse {
  const { system } = card;
  const usual = sheetIn(kind?.sheet[system], kind?.units) ?? sheetOf(blog.sheets[system], blog.units);
  const own = sheetIn(spec?.sheet[system], units);
  const sheets: Record<string, SheetInUse> = {};
  for (const role of new Set(card.pieces.map((piece) => piece.stock))) {
    const sheet = own ?? sheetOfSupply(stock[role], system) ?? usual;
    if (sheet !== undefined) sheets[role] = sheet;
  }
  if (usual !== undefined) sheets[''] = own ?? usual;
  return {
    asked: spec && { place: spec.place, path: spec.path },
    envelope: envelopeOf(spec?.envelope[system], units),
    clearance: checkedLength(blog.envelopeClearance[system], blog.units),
    sheets,
    promised: promiseOf(spec?.finished, system, units),
    materials: materialsOf(card, stock, sheets, supplies),
  };
}

function sheetOfSupply(supply: Supply | undefined, system: System): SheetInUse | undefined {
  const text = supply?.sheet[system];
  return text === undefined ? undefined : sheetOf(text, supply?.units);
}

function sheetIn(text: WrittenText | undefined, units: Unit | undefined): SheetInUse | undefined {
  return text === undefined ? undefined : sheetOf(text.text, units);
}

function sheetOf(text: string, units: Unit | undefined): SheetInUse | undefined {
  const { value } = readSheetOrEnvelope(text, 'sheet', units);
  return value && { name: value.name, width: value.width, height: value.height };
}

function envelopeOf(text: WrittenText | undefined, units: Unit | undefined): PaperInUse['envelope'] {
  if (text === undefined) return undefined;
  const { value } = readSheetOrEnvelope(text.text, 'envelope', units);
  return value && { size: value, place: text.place, path: text.path };
}

function promiseOf(
  finished: PerEdition<WrittenText> | undefined,
  system: System,
  units: Unit | undefined,
): PaperInUse['promised'] {
  const text = finished?.[system];
  const size = text === undefined ? undefined : readSize(text.text, { units }).value;
  if (text === undefined || size === undefined) return undefined;
  return { width: size.width, height: size.height, place: text.place, path: text.path };
}
