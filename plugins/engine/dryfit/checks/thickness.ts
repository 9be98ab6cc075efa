import { type Layer, materialOf, type Thickness } from '../../layers/index.ts';
import { Length } from '../../units/index.ts';
import { finding } from '../finding.ts';
import type { Finding, FoldedBody, FoldedCard } from '../types.ts';

/** How thick each closed body is, of what, and whether the foam that is counted is the foam that there is. */
export function thickness(folded: FoldedCard): Finding[] {
  return [...foamHeights(folded), ...folded.closed.map(ofBody)];
}

function ofBody({ piece, pose, thickness: found }: FoldedBody): Finding {
  const at = piece;
  if (pose && !pose.flat && pose.gaps.length === 0) {
    const deep = Length.fromMm(pose.deep);
    return finding('thickness', 'box', { facts: { piece: piece.name, deep }, at, figure: deep });
  }
  if (found === undefined) return finding('thickness', 'not-folded', { facts: { piece: piece.name }, at });
  if (found.unknown.length > 0) {
    const facts = { piece: piece.name, stocks: found.unknown.join(', ') };
    return finding('thickness', 'unknown', { facts, at, witness: found.unknown[0] ?? '' });
  }
  const { overall, least, greatest, compressible, springback } = found;
  const facts = {
    piece: piece.name,
    overall,
    least: least.local,
    greatest: greatest.local,
    made: madeOf(greatest.layers),
    gives: compressible.high,
    springback: springback.high,
    creases: springback.creases.length,
    assumed: assumedIn(found),
  };
  return finding('thickness', 'thick', { facts, at, figure: overall, witness: greatest.panels.join(', ') });
}

/** Panels and what is between them by name; glue goes without saying. */
function madeOf(layers: readonly Layer[]): string {
  const said = layers.filter(({ is, high }) => is === 'ply' || is === 'foam' || (is === 'coat' && high?.isPositive));
  return said.map(({ is, name, role }) => (is === 'ply' ? name : role)).join(', ');
}

function assumedIn({ assumed }: Thickness): string {
  return assumed.map(({ role }) => role).join(', ');
}

/** The height that the card counts on, held against the layer of foam that the supply has. */
function foamHeights({ card, materials }: FoldedCard): Finding[] {
  const ofPieces = card.pieces.flatMap((piece) => {
    const layer = materialOf(piece.stock, materials).height;
    return piece.thick && layer ? [{ at: piece, where: piece.name, stock: piece.stock, high: piece.thick, layer }] : [];
  });
  const ofJoins = card.joins.flatMap((join) => {
    const tape = join.is === 'glue' ? join.tape : undefined;
    const layer = tape && materialOf(tape.stock, materials).height;
    return tape && layer ? [{ at: join, where: join.text, stock: tape.stock, high: tape.layer, layer }] : [];
  });
  const isWhole = (high: Length, layer: Length): boolean => {
    const times = Math.max(1, Math.round(high.per(layer).valueOf()));
    // The edition's marks: foam of 1/8 in is cut as 3 mm, and lies no lower for it.
    return high.minus(layer.times(times)).abs().lessThan(card.mark);
  };
  return [...ofPieces, ...ofJoins]
    .filter(({ high, layer }) => layer.isPositive && !isWhole(high, layer))
    .map(({ at, ...facts }) =>
      finding('thickness', 'foam-height', {
        facts,
        at,
        figure: facts.high,
        limit: facts.layer,
        witness: facts.where,
      }),
    );
}
