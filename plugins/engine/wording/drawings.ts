import type { Band, Card, Crease, Piece } from '../spec/index.ts';
import { formatLength, formatNumber, formatSize, type Length, type System } from '../units/index.ts';
import { isNamed, sayCrease, sayList, sayName } from './drawings-names.ts';

export interface DrawingWordsOptions {
  readonly system: System;
  /** A left-handed maker measures from the right edge. Right by default. */
  readonly hand?: 'left' | 'right' | undefined;
}

/** How many names or positions stand in one sentence, so that none grows past 25 words. */
const NAMES_IN_A_SENTENCE = 6;

/** Where a crease is measured to: from the top edge, or from the left (for the left hand, the right) edge. */
export function measuredAt(crease: Crease, piece: Piece, hand: 'left' | 'right' = 'right'): Length {
  return crease.runs === 'down' && hand === 'left' ? piece.width.minus(crease.at) : crease.at;
}

/** A piece's creases in the order in which they are measured. */
export function measuredCreases(piece: Piece, runs: Crease['runs'], hand: 'left' | 'right' = 'right'): Crease[] {
  return piece.creases
    .filter((crease) => crease.runs === runs)
    .sort((a, b) => measuredAt(a, piece, hand).compare(measuredAt(b, piece, hand)));
}

/** The cutting drawing of a piece in words: plain sentences of at most 25 words, from which it can be made. */
export function cuttingWords(piece: Piece, options: DrawingWordsOptions): readonly string[] {
  return cuttingParagraphs(piece, options).flat();
}

/** As `cuttingWords`, in paragraphs: the cut, the scores from each edge, the panels and folds. */
export function cuttingParagraphs(piece: Piece, options: DrawingWordsOptions): readonly (readonly string[])[] {
  const { system, hand = 'right' } = options;
  const size = `${formatLength(piece.width, system)} wide and ${formatLength(piece.height, system)} high`;
  const score = (crease: Crease, way: string): string =>
    `Score ${sayCrease(crease)} at ${formatLength(measuredAt(crease, piece, hand), system)}, ${way}.`;
  const scores = (runs: Crease['runs'], edge: string, way: string): string[] => {
    const creases = measuredCreases(piece, runs, hand);
    return creases.length === 0
      ? []
      : [`Measure from the ${edge} edge.`, ...creases.map((crease) => score(crease, way))];
  };
  const paragraphs = [
    [
      `Cut the ${sayName(piece.name)}, a piece ${size}.`,
      ...sayGrain(piece),
      ...(piece.creases.length > 0 ? ['Lay it face up.'] : []),
    ],
    scores('down', hand === 'left' ? 'right' : 'left', 'from top to bottom'),
    scores('across', 'top', 'from left to right'),
    [
      ...sayPanels(piece.columns, 'From left to right'),
      ...sayPanels(piece.rows, 'From top to bottom'),
      ...sayFolds(piece),
    ],
  ];
  return paragraphs.filter((sentences) => sentences.length > 0);
}

/** All pieces of a card in words, in the card's order. */
export function cardWords(card: Card, options: Omit<DrawingWordsOptions, 'system'> = {}): readonly string[] {
  return card.pieces.flatMap((piece) => cuttingWords(piece, { ...options, system: card.system }));
}

/** The piece as a recipe is said: cut a size, score at these positions from the left or top end. */
export function recipeWords(piece: Piece, system: System): readonly string[] {
  const both = new Set(piece.creases.map((crease) => crease.runs)).size > 1;
  const scores = (['down', 'across'] as const).flatMap((runs) =>
    inSentences(measuredCreases(piece, runs)).map((creases) => {
      const positions = creases.map((crease) => {
        const at = formatNumber(crease.at, system);
        return crease.fold === 'mountain' ? `${at} (mountain)` : at;
      });
      const side = both ? (runs === 'down' ? ' along the width' : ' along the height') : '';
      return `Score${side} at ${sayList(positions)} ${unitOf(system)}.`;
    }),
  );
  return [`Cut ${formatSize(piece.width, piece.height, system)}.`, ...scores];
}

function unitOf(system: System): string {
  return system === 'inch' ? 'in' : 'mm';
}

function sayGrain(piece: Piece): string[] {
  if (piece.grain === undefined) return [];
  return [`The grain of the paper runs ${piece.grain === 'down' ? 'from top to bottom' : 'from left to right'}.`];
}

function sayPanels(bands: readonly Band[], order: string): string[] {
  const names = bands.flatMap((band) => (band.name === undefined ? [] : [sayName(band.name)]));
  if (bands.length < 2 || names.length < bands.length) return [];
  return inSentences(names).map((some, i) =>
    i === 0 ? `${order} the panels are ${sayList(some)}.` : `Then come ${sayList(some)}.`,
  );
}

function sayFolds(piece: Piece): string[] {
  const folds = new Set(piece.creases.map((crease) => crease.fold));
  return [
    ...(folds.has('valley') ? ['A valley fold brings the faces together.'] : []),
    ...(folds.has('mountain') ? ['A mountain fold brings the backs together.'] : []),
  ];
}

function inSentences<Item>(items: readonly Item[]): Item[][] {
  const sentences: Item[][] = [];
  for (let i = 0; i < items.length; i += NAMES_IN_A_SENTENCE) sentences.push(items.slice(i, i + NAMES_IN_A_SENTENCE));
  return sentences;
}

/** The keys of creases whose names find no room at the crease: "1 is the spine, a valley fold." */
export function sayKey(key: number, crease: Crease): string {
  const name = isNamed(crease) ? `the ${sayName(crease.name)}, ` : '';
  return `${key} is ${name}a ${crease.fold} fold.`;
}
