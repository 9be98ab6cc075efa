import type { Panelling } from '../panels/index.ts';
import type { Band, Card, Crease, Piece, Region } from '../spec/index.ts';
import { formatLength, formatNumber, formatSize, type System } from '../units/index.ts';
import { formOf } from './drawings-forms.ts';
import { type Hand, measuredLines, type PieceStrokes, strokesOf, type WorkLine } from './drawings-lines.ts';
import { sayList, sayName } from './drawings-names.ts';
import { sayAway, sayForm, sayPath, sayRadius, sayWhere } from './drawings-outlines.ts';
import { sayPartCut } from './drawings-part-cuts.ts';
import { sayOrigin, type Telling, zeroSide } from './drawings-points.ts';
import { isPart, saySlope, sayStraight } from './drawings-scores.ts';

export interface DrawingWordsOptions {
  readonly system: System;
  /** A left-handed maker measures from the right edge. Right by default. */
  readonly hand?: Hand | undefined;
}

/** How many names or positions stand in one sentence, so that none grows past 25 words. */
const NAMES_IN_A_SENTENCE = 6;

/** The cutting drawing of a piece in words: plain sentences of at most 25 words, from which it can be made. */
export function cuttingWords(piece: Piece, panelling: Panelling, options: DrawingWordsOptions): readonly string[] {
  return cuttingParagraphs(piece, panelling, options).flat();
}

type Paragraph = readonly string[];

/**
 * As `cuttingWords`, in paragraphs, in the order of the work: the cut, the scores from each edge, marks, cuts within, what is cut out
 * and away; then the panels and folds.
 */
export function cuttingParagraphs(
  piece: Piece,
  panelling: Panelling,
  { system, hand = 'right' }: DrawingWordsOptions,
): readonly Paragraph[] {
  const telling: Telling = { piece, system, hand };
  const strokes = strokesOf(piece, panelling);
  const doing = (...does: readonly WorkLine['does'][]): readonly WorkLine[] =>
    strokes.lines.filter((line) => does.includes(line.does));
  const paragraphs: readonly Paragraph[] = [
    ...sayOuter(piece, strokes, telling),
    ...sayLines(doing('crease'), strokes, telling),
    ...sayLines(doing('mark'), strokes, telling),
    ...sayLines(doing('cut', 'perforation'), strokes, telling),
    ...sayRegions(piece.shapes, (shape) => sayPartCut(shape, telling), telling),
    ...sayRegions(piece.windows, (window) => sayWindow(window, telling), telling),
    ...sayRegions(piece.away, (region) => sayAway(region, telling), telling),
    [
      ...sayPanels(piece.columns, 'From left to right'),
      ...sayPanels(piece.rows, 'From top to bottom'),
      ...sayFolds(strokes.lines),
    ],
  ];
  return paragraphs.filter((sentences) => sentences.length > 0);
}

/** All pieces of a card in words, in the card's order. */
export function cardWords(
  card: Card,
  panelling: Panelling,
  options: Omit<DrawingWordsOptions, 'system'> = {},
): readonly string[] {
  return card.pieces.flatMap((piece) => cuttingWords(piece, panelling, { ...options, system: card.system }));
}

/** The outer edge, and how the piece lies before the rest is done. */
function sayOuter(piece: Piece, { lines }: PieceStrokes, telling: Telling): readonly Paragraph[] {
  const form = formOf(piece.outline);
  const size = `${formatLength(piece.width, telling.system)} wide and ${formatLength(piece.height, telling.system)} high`;
  const name = sayName(piece.name);
  const round = form.is === 'circle' || form.is === 'ellipse';
  const what = form.is === 'path' ? ` from a piece ${size}` : `, ${round ? sayForm(form, telling) : `a piece ${size}`}`;
  const more = lines.length + piece.windows.length + piece.shapes.length > 0;
  return [
    [
      `Cut the ${name}${what}${form.is === 'rounded' ? ', with round corners' : ''}.`,
      ...sayRadius(form, telling),
      ...sayThickness(piece, telling.system),
      ...sayGrain(piece),
      ...(more ? ['Lay it face up.'] : []),
    ],
    form.is === 'path' ? [sayOrigin(telling), ...sayPath(piece.outline, telling)] : [],
  ];
}

function sayThickness({ stock, thick }: Piece, system: System): readonly string[] {
  return thick === undefined ? [] : [`It is of ${sayName(stock)}, ${formatLength(thick, system)} thick.`];
}

/** Lines that are worked alike: from the side, from the top, then those that slope. */
function sayLines(lines: readonly WorkLine[], strokes: PieceStrokes, telling: Telling): readonly Paragraph[] {
  const straight = (runs: 'down' | 'across', edge: string): Paragraph => {
    const measured = measuredLines(lines, runs, telling.hand);
    if (measured.length === 0) return [];
    const bothWays = measured.some((line) => isPart(line, telling));
    const origin = bothWays ? sayOrigin(telling) : `Measure from the ${edge} edge.`;
    return [origin, ...measured.flatMap((line) => sayStraight(line, bothWays, telling))];
  };
  const sloping = lines.filter(({ runs }) => runs === 'angled');
  return [
    straight('down', zeroSide(telling.hand)),
    straight('across', 'top'),
    sloping.length === 0
      ? []
      : [sayOrigin(telling), ...sloping.flatMap((line) => saySlope(line, strokes.lines, telling))],
  ];
}

function sayRegions<One extends Region>(
  regions: readonly One[],
  say: (region: One) => Paragraph,
  telling: Telling,
): readonly Paragraph[] {
  return regions.length === 0 ? [] : [[sayOrigin(telling), ...regions.flatMap(say)]];
}

function sayWindow({ name, outline }: Region, telling: Telling): Paragraph {
  return [`Cut out the ${sayName(name)}: ${sayForm(formOf(outline), telling)}.`, ...sayWhere(outline, telling)];
}

/** The piece as a recipe is said: cut a size, score at these positions from the left or top end. */
export function recipeWords(piece: Piece, system: System): readonly string[] {
  const both = new Set(piece.creases.map((crease) => crease.runs)).size > 1;
  const scores = (['down', 'across'] as const).flatMap((runs) =>
    inSentences(creasesFrom(piece, runs)).map((creases) => {
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

function creasesFrom(piece: Piece, runs: Crease['runs']): Crease[] {
  return piece.creases.filter((crease) => crease.runs === runs).sort((a, b) => a.at.compare(b.at));
}

function unitOf(system: System): string {
  return system === 'inch' ? 'in' : 'mm';
}

/** One sentence, or none where the grain does not matter. */
export function sayGrain(piece: Piece): readonly string[] {
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

function sayFolds(lines: readonly WorkLine[]): string[] {
  const folds = new Set(lines.map(({ fold }) => fold));
  return [
    ...(folds.has('valley') ? ['A valley fold brings the faces together.'] : []),
    ...(folds.has('mountain') ? ['A mountain fold brings the backs together.'] : []),
    ...(folds.has('both') ? ['A fold worked both ways is folded to and fro.'] : []),
  ];
}

function inSentences<Item>(items: readonly Item[]): Item[][] {
  const sentences: Item[][] = [];
  for (let i = 0; i < items.length; i += NAMES_IN_A_SENTENCE) sentences.push(items.slice(i, i + NAMES_IN_A_SENTENCE));
  return sentences;
}
