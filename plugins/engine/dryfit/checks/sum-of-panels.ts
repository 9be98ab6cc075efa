import type { Band, Piece } from '../../spec/index.ts';
import { Length } from '../../units/index.ts';
import { finding } from '../finding.ts';
import type { Finding, FoldedCard } from '../types.ts';

/** Whether the panels of a strip add up to the size declared for the whole piece. Nothing declared, nothing to say. */
export function sumOfPanels({ card }: FoldedCard): Finding[] {
  return card.pieces.flatMap((piece) => {
    if (piece.declared === undefined) return [];
    return [
      ...side(piece, 'wide', piece.columns, piece.declared.width, card.mark),
      ...side(piece, 'high', piece.rows, piece.declared.height, card.mark),
    ];
  });
}

function side(piece: Piece, side: 'wide' | 'high', bands: readonly Band[], declared: Length, mark: Length): Finding[] {
  const last = bands.at(-1);
  if (last === undefined || bands.length < 2) return [];
  const at = { place: piece.declared?.place ?? piece.place, path: `${piece.path}.size` };
  const printed = Length.sum(bands.map((band) => band.size));
  const exact = Length.sum(bands.map((band) => band.exact));
  if (agrees(printed, exact, declared, mark)) {
    const facts = { piece: piece.name, side, total: printed, panels: bands.map((band) => band.size) };
    return [finding('sum-of-panels', 'adds-up', { facts, at, figure: printed, limit: declared, witness: piece.name })];
  }
  const panel = last.name ?? piece.name;
  const facts = { piece: piece.name, side, declared, total: printed, panel, by: declared.minus(printed).abs() };
  const shown = { at, figure: printed, limit: declared, witness: panel };
  const halves = bands.length === 2 && bands.every((band) => band.size.equals(last.size));
  if (halves) {
    return [finding('sum-of-panels', 'uneven-halves', { facts: { ...facts, half: declared.dividedBy(2) }, ...shown })];
  }
  return [finding('sum-of-panels', printed.lessThan(declared) ? 'short' : 'over', { facts, ...shown })];
}

/**
 * The printed panels make the printed size; or the panels made it, to less than a mark, before each was put on the
 * edition's marks.
 */
function agrees(printed: Length, exact: Length, declared: Length, mark: Length): boolean {
  return printed.equals(declared) || exact.minus(declared).abs().lessThan(mark);
}
