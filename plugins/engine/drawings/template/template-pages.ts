import type { Panelling } from '../../panels/index.ts';
import type { Card } from '../../spec/index.ts';
import type { System } from '../../units/index.ts';
import { legendOf } from '../legend.ts';
import { instructionPages } from './instruction-pages.ts';
import type { DraftPage, PageScene } from './page-scene.ts';
import { pageFoot } from './page-text.ts';
import { piecePages } from './piece-pages.ts';
import { pageFormat, SHEET_FORMATS, type SheetFormat } from './sheet-format.ts';

export interface TemplateCard {
  /** As the reader knows it; stands at the head of its pages when there are several cards. */
  readonly name: string;
  /** The edition to print: its lengths are those on the page. */
  readonly card: Card;
  readonly panelling: Panelling;
}

export interface TemplateInput {
  /** All of one edition, in the order of the project. */
  readonly cards: readonly TemplateCard[];
  readonly system: System;
  readonly sheet: SheetFormat;
  /** Name of the project, as the reader knows it. */
  readonly title: string;
  /** Web address of the project, when it has one. */
  readonly address?: string | undefined;
}

/** Pages with pieces in one template: more than anybody prints and tapes together. */
export const MOST_PIECE_PAGES = 120;

/**
 * The template of a project's cards at true size, page by page: instructions with squares to measure first, then each
 * piece, on several pages with join marks where it is larger than one. A piece for which no pages are left is told in words and
 * figures alone.
 */
export function templatePages(input: TemplateInput): readonly PageScene[] {
  const { cards, sheet, system, title } = input;
  const several = cards.length > 1;
  let room = MOST_PIECE_PAGES;
  const pieces = cards.flatMap(({ name, card, panelling }) =>
    card.pieces.map((piece, i) => {
      const made = piecePages({ piece, panelling, sheet, system, title: several ? name : title }, room);
      room -= made.drafts.length;
      return { piece, panelling, heading: several && i === 0 ? name : undefined, ...made };
    }),
  );
  const legend = legendOf({ items: pieces.flatMap(({ drafts }) => drafts.flatMap((draft) => draft.items)) });
  const instructions = (before: number): readonly DraftPage[] => {
    let next = before + 1;
    return instructionPages({
      title,
      system,
      sheetName: SHEET_FORMATS[sheet].name,
      address: input.address,
      sheet,
      legend,
      pieces: pieces.map(({ drafts, ...entry }) => ({ ...entry, pages: drafts.map(() => next++) })),
    });
  };
  // The list of pieces names their pages, which follow the list: so the list is laid out once to count its own.
  const first = instructions(instructions(1).length);
  const drafts = [...first, ...pieces.flatMap((entry) => entry.drafts)];
  return drafts.map((draft, i) => {
    const format = pageFormat(sheet, draft.width > draft.height);
    const foot = pageFoot(format, title, i + 1, drafts.length);
    return { ...draft, items: [...draft.items, ...foot], page: i + 1, pages: drafts.length };
  });
}
