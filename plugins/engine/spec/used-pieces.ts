import type { Fold, PieceSpec } from './types.ts';

/**
 * The pieces that a fold has from the kinds that it uses, by the names that it has for them (see `makeUsed`), as their default counts have
 * them: for checking what may be measured.
 */
export function usedPieces(fold: Fold): PieceSpec[] {
  const pieces = new Map<string, PieceSpec>();
  for (const { id, fold: kind } of fold.uses ?? []) {
    for (const piece of [...usedPieces(kind), ...kind.pieces]) {
      const name = pieces.has(piece.name) ? `${id}-${piece.name}` : piece.name;
      pieces.set(name, { ...piece, name });
    }
  }
  return [...pieces.values()];
}
