import type { FlatPose, Obstruction } from '../../assembly/index.ts';
import type { Piece } from '../../spec/index.ts';
import { Length } from '../../units/index.ts';
import { pieceOf, thickestPile } from '../closed-shape.ts';
import { finding } from '../finding.ts';
import { closingPieces } from '../fold-card.ts';
import type { Finding, FoldedCard } from '../types.ts';

/** Whether each piece can be folded shut without one panel passing through another. */
export function closesFlat({ card, closed }: FoldedCard): Finding[] {
  return closingPieces(card).map((piece) => {
    const pose = closed.find((one) => pieceOf(one) === piece.name);
    if (pose === undefined) return finding('closes-flat', 'not-scored', { facts: { piece: piece.name }, at: piece });
    if (pose.obstruction) return obstructed(piece, pose.obstruction);
    return flat(piece, pose);
  });
}

function flat(piece: Piece, pose: FlatPose): Finding {
  if (piece.creases.length === 0) {
    return finding('closes-flat', 'one-panel', { facts: { piece: piece.name }, at: piece, figure: 1 });
  }
  const plies = thickestPile(pose);
  const facts = { piece: piece.name, plies, panels: pose.panels.length };
  return finding('closes-flat', 'flat', { facts, at: piece, figure: plies, witness: pose.plies?.join(', ') ?? '' });
}

function obstructed(piece: Piece, obstruction: Obstruction): Finding {
  const crease = piece.creases.find(({ name }) => name === obstruction.crease);
  const at = crease ?? piece;
  switch (obstruction.kind) {
    case 'crossing': {
      const facts = { piece: piece.name, crease: obstruction.crease, other: obstruction.other };
      return finding('closes-flat', 'crossing', { facts, at, witness: obstruction.crease });
    }
    case 'gap': {
      const facts = { piece: piece.name, panel: obstruction.panel, crease: obstruction.crease };
      return finding('closes-flat', 'gap', { facts, at, witness: obstruction.panel });
    }
    case 'too-long': {
      const by = Length.fromMm(obstruction.by);
      const facts = { piece: piece.name, panel: obstruction.panel, crease: obstruction.crease, by };
      const shown = { facts, at, figure: by, limit: Length.zero, witness: obstruction.panel };
      return finding('closes-flat', obstruction.cures ? 'too-long' : 'no-order', shown);
    }
  }
}
