import type { System } from '../units/index.ts';

/** The kinds of line a legend explains. */
export type LegendLine = 'outline' | 'cut' | 'valley' | 'mountain' | 'perforation' | 'hidden' | 'join' | 'grain';

/** What each kind of line asks of the maker, with its form in words for those who do not see it. */
export const LEGEND_WORDS: Readonly<Record<LegendLine, string>> = {
  outline: 'Thick line: the edge. Cut here.',
  cut: 'Thick line within: cut through.',
  valley: 'Dashes: valley fold. Score, then bring the faces together.',
  mountain: 'Dash and two dots: mountain fold. Score, then bring the backs together.',
  perforation: 'Thick dots: perforate.',
  hidden: 'Short dashes: an edge that lies behind.',
  join: 'Dash and one dot: where the next page joins.',
  grain: 'Arrow with two heads: the grain of the paper.',
};

/** What a cutting drawing says of itself under the legend. */
export function drawingNotes(system: System, zeroEdges: readonly string[]): readonly string[] {
  const unit = system === 'inch' ? 'inches' : 'millimetres';
  const zero = zeroEdges.length === 0 ? '' : `, counted from 0 at the ${zeroEdges.join(' and ')}`;
  return [`Seen face up. Figures are ${unit}${zero}.`, 'Drawn smaller than life: the template has the true size.'];
}

/** Title of the drawing of a piece, from its name as read. */
export function drawingTitle(pieceName: string): string {
  return `Cutting drawing: ${pieceName}`;
}

export const GRAIN_WORD = 'grain';
