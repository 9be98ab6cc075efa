import type { Panelling } from '../../panels/index.ts';
import type { Piece } from '../../spec/index.ts';
import {
  BLADE_WORDS,
  continuedTitle,
  cuttingParagraphs,
  FIRST_PAGE_FIGURE,
  JOIN_WORDS,
  LEGEND_HEADING,
  PIECES_HEADING,
  PRINT_STEPS,
  pieceOnPages,
  SQUARE_WORDS,
  type TemplateFacts,
  templateEdition,
} from '../../wording/index.ts';
import type { LegendEntry } from '../legend.ts';
import type { SceneItem, SceneLabel } from '../scene.ts';
import { type Flowed, legendRows, paragraph } from '../text-column.ts';
import { checkSquares } from './check-squares.ts';
import { fitText } from './fit-text.ts';
import type { DraftPage } from './page-scene.ts';
import { pageFormat, type SheetFormat } from './sheet-format.ts';

const TITLE_SIZE = 5;
/** A title longer than this many lines is cut short. */
const TITLE_LINES = 4;
const HEADING_SIZE = 3.5;
const NOTE_SIZE = 2.5;

type Column = { readonly left: number; readonly top: number; readonly width: number };
/** Something that stands on the page as one, from a top edge downwards. */
type Block = (column: Column) => Flowed;

export interface InstructionInput extends TemplateFacts {
  readonly sheet: SheetFormat;
  readonly legend: readonly LegendEntry[];
  readonly pieces: readonly {
    readonly piece: Piece;
    readonly panelling: Panelling;
    /** Stands before the piece: the name of its card. */
    readonly heading: string | undefined;
    /** None when it takes more pages than are left. */
    readonly pages: readonly number[];
    readonly takes: number;
  }[];
}

/** The first page, and as many more as its text needs: how to print, squares to measure, the lines and the pieces in words. */
export function instructionPages(input: InstructionInput): readonly DraftPage[] {
  const { width, height, clear, printable } = pageFormat(input.sheet, false);
  const pages: DraftPage[] = [];
  let items: readonly SceneItem[] = [];
  let top = printable.top;
  const column = { left: clear.left, width: clear.right - clear.left };
  const finish = (): void => {
    const title = pages.length === 0 ? input.title : continuedTitle(input.title);
    pages.push({
      width,
      height,
      title,
      words: paragraphsIn(items),
      figure: pages.length === 0 ? FIRST_PAGE_FIGURE : '',
      items,
    });
  };
  for (const block of blocks(input, column.width)) {
    let flowed = block({ ...column, top });
    if (flowed.bottom > clear.bottom && items.length > 0) {
      finish();
      const heading = fitText(continuedTitle(input.title), HEADING_SIZE, column.width, 'bold');
      flowed = stacked([text(heading, HEADING_SIZE, 'title', 1), block])({ ...column, top: printable.top });
      items = [];
    }
    items = [...items, ...flowed.items];
    top = flowed.bottom;
  }
  finish();
  return pages;
}

/** The texts of a page, each paragraph in one. */
function paragraphsIn(items: readonly SceneItem[]): readonly string[] {
  const paragraphs: string[] = [];
  for (const item of items) {
    if (item.kind !== 'label') continue;
    if (item.continues === true) paragraphs.push(`${paragraphs.pop() ?? ''} ${item.text}`);
    else paragraphs.push(item.text);
  }
  return paragraphs;
}

function blocks(input: InstructionInput, width: number): readonly Block[] {
  const tiled = input.pieces.some(({ pages }) => pages.length > 1);
  return [
    text(fitText(input.title, TITLE_SIZE, TITLE_LINES * width, 'bold'), TITLE_SIZE, 'title', 1),
    text(templateEdition(input), NOTE_SIZE, 'note', 3),
    ...PRINT_STEPS.map((step, i) => text(`${i + 1}. ${step}`, NOTE_SIZE, 'note', 0.5)),
    withHeading(SQUARE_WORDS.heading, (column) => checkSquares(column)),
    withHeading(LEGEND_HEADING, (column) => legendRows(input.legend, column, NOTE_SIZE)),
    ...(tiled ? JOIN_WORDS.map((words) => text(words, NOTE_SIZE, 'note', 0.5)) : []),
    gap(2),
    text(BLADE_WORDS, NOTE_SIZE, 'note', 0),
    ...input.pieces.flatMap(({ piece, panelling, heading, pages, takes }, i) => {
      const paragraphs = [
        ...cuttingParagraphs(piece, panelling, { system: input.system }),
        [pieceOnPages(pages, takes)],
      ];
      const [first = gap(0), ...rest] = paragraphs.map((sentences) =>
        text(sentences.join(' '), NOTE_SIZE, 'note', 0.5),
      );
      const named = heading === undefined ? stacked([gap(2), first]) : withHeading(heading, first);
      return [i === 0 ? withHeading(PIECES_HEADING, heading === undefined ? first : named) : named, ...rest];
    }),
  ];
}

function text(words: string, size: number, role: SceneLabel['role'], after: number): Block {
  return (column) => {
    const flowed = paragraph(words, column, { size, role });
    return { items: flowed.items, bottom: flowed.bottom + after };
  };
}

function gap(height: number): Block {
  return (column) => ({ items: [], bottom: column.top + height });
}

function withHeading(heading: string, block: Block): Block {
  return stacked([gap(3), text(heading, HEADING_SIZE, 'title', 0.5), block]);
}

/** Blocks that stay together on a page. */
function stacked(parts: readonly Block[]): Block {
  return (column) => {
    const items: SceneItem[] = [];
    let bottom = column.top;
    for (const part of parts) {
      const flowed = part({ ...column, top: bottom });
      items.push(...flowed.items);
      bottom = flowed.bottom;
    }
    return { items, bottom };
  };
}
