import { materialOf } from '../../layers/index.ts';
import type { Piece } from '../../spec/index.ts';
import { Length } from '../../units/index.ts';
import { finding } from '../finding.ts';
import { isFolding } from '../fold-card.ts';
import type { Finding, FoldedCard, SheetInUse } from '../types.ts';

type Runs = 'down' | 'across' | 'slanting';

/**
 * Whether the grain runs along the main crease of each creased piece: paper folds cleanly along its grain, and cracks across it
 * (mill guides). The main crease is the longest, of several alike the first.
 */
export function grain(folded: FoldedCard): Finding[] {
  const found = folded.card.pieces.filter(isFolding).flatMap((piece) => ofPiece(piece, folded));
  // What is not known of a stock is asked once.
  const asked = new Set<unknown>();
  return found.filter(({ outcome, facts }) => {
    const again = outcome === 'not-known' && asked.has(facts.stock);
    if (outcome === 'not-known') asked.add(facts.stock);
    return !again;
  });
}

function ofPiece(piece: Piece, { materials, sheets }: FoldedCard): Finding[] {
  const main = mainCrease(piece);
  if (main === undefined) return [];
  const { crease, runs } = main;
  const facts = { piece: piece.name, crease };
  const shown = { at: piece, witness: crease };
  if (piece.grain !== undefined && runs !== 'slanting' && piece.grain !== runs) {
    return [finding('grain', 'across', { facts, ...shown })];
  }
  const { grain: stated, sheet, sort } = materialOf(piece.stock, materials);
  if (sort === 'film') return [];
  const from = sheet ? { name: piece.stock, ...sheet } : (sheets[piece.stock] ?? sheets['']);
  const wanted = piece.grain ?? (runs === 'slanting' ? undefined : runs);
  // Across a slanting fold no sheet's grain is right.
  if (wanted === undefined) return [];
  if (stated === undefined || from === undefined) {
    return [finding('grain', 'not-known', { facts: { ...facts, stock: piece.stock, runs: wanted }, ...shown })];
  }
  if (comesFrom(piece, wanted, from, stated)) return [finding('grain', 'along', { facts, ...shown })];
  // What does not come from the sheet in any way is the fault of its size.
  const other = wanted === 'down' ? 'across' : 'down';
  if (!comesFrom(piece, other, from, stated)) return [];
  return [finding('grain', 'sheet-across', { facts: { ...facts, stock: piece.stock, sheet: from.name }, ...shown })];
}

/** Whether a piece can be cut so that its `down` or its `across` lies along the grain of the sheet. */
function comesFrom(piece: Piece, way: 'down' | 'across', sheet: SheetInUse, stated: 'long' | 'short'): boolean {
  const [long, short] = [Length.larger(sheet.width, sheet.height), Length.smaller(sheet.width, sheet.height)];
  const [along, across] = stated === 'long' ? [long, short] : [short, long];
  const [own, other] = way === 'down' ? [piece.height, piece.width] : [piece.width, piece.height];
  return !own.moreThan(along) && !other.moreThan(across);
}

function mainCrease(piece: Piece): { crease: string; runs: Runs } | undefined {
  const bands = piece.creases.map(({ name, runs }) => ({
    crease: name,
    runs: runs as Runs,
    long: (runs === 'down' ? piece.height : piece.width).toMm(),
  }));
  const lines = piece.lines
    .filter(({ does }) => does === 'crease')
    .map(({ name, from, to }) => {
      const [dx, dy] = [to.x.sub(from.x).valueOf(), to.y.sub(from.y).valueOf()];
      const runs: Runs = dx === 0 ? 'down' : dy === 0 ? 'across' : 'slanting';
      return { crease: name, runs, long: Math.hypot(dx, dy) };
    });
  return [...bands, ...lines].reduce<(typeof bands)[number] | undefined>(
    (best, one) => (best !== undefined && one.long <= best.long + 1e-9 ? best : one),
    undefined,
  );
}
