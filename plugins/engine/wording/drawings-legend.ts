import type { System } from '../units/index.ts';

/** The kinds of line a legend explains. */
export type LegendLine =
  | 'outline'
  | 'cut'
  | 'valley'
  | 'mountain'
  | 'both'
  | 'perforation'
  | 'mark'
  | 'hidden'
  | 'join'
  | 'grain'
  | 'hatch';

/** What each kind of line asks of the maker, with its form in words for those who do not see it. */
export const LEGEND_WORDS: Readonly<Record<LegendLine, string>> = {
  outline: 'Thick line: the edge. Cut here.',
  cut: 'Thick line within: cut through.',
  valley: 'Dashes: valley fold. Score, then bring the faces together.',
  mountain: 'Dash and two dots: mountain fold. Score, then bring the backs together.',
  both: 'Long and short dashes: a fold worked both ways. Score, then fold it to either side.',
  perforation: 'Thick dots: perforate.',
  mark: 'Short dashes far apart: draw lightly in pencil.',
  hidden: 'Short dashes: an edge that lies behind.',
  join: 'Dash and one dot: where the next page joins.',
  grain: 'Arrow with two heads: the grain of the paper.',
  hatch: 'Slanting strokes: waste. Cut it out or away.',
};

/** What a cutting drawing says of itself under the legend; `scale` is over 1 where it enlarges the piece. */
export function drawingNotes(system: System, zeroEdges: readonly string[], scale: number): readonly string[] {
  const unit = system === 'inch' ? 'inches' : 'millimetres';
  const zero = zeroEdges.length === 0 ? '' : `, counted from 0 at the ${zeroEdges.join(' and ')}`;
  const size = scale > 1 ? 'larger' : 'smaller';
  return [`Seen face up. Figures are ${unit}${zero}.`, `Drawn ${size} than life: the template has the true size.`];
}

/** Title of the drawing of a piece, from its name as read. */
export function drawingTitle(pieceName: string): string {
  return `Cutting drawing: ${pieceName}`;
}

export const GRAIN_WORD = 'grain';

/** Stands on what is trimmed off a piece. */
export const AWAY_WORDS = 'cut away';

/** A diameter and a radius at the circle, and an angle at its arc. */
export function diameterLabel(figure: string): string {
  return `\u00d8 ${figure}`;
}

export function radiusLabel(figure: string): string {
  return `R ${figure}`;
}

export function angleLabel(degrees: number): string {
  return `${degrees}\u00b0`;
}
