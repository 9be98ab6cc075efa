import { place } from '../../geometry/index.ts';
import type { Obstruction } from '../../layers/index.ts';
import type { ClosedPose } from '../../motion/index.ts';
import type { Card } from '../../spec/index.ts';
import { Length } from '../../units/index.ts';
import { finding } from '../finding.ts';
import { measured } from '../lengths.ts';
import type { Finding, FoldedBody, FoldedCard } from '../types.ts';

/** Whether each body can be folded as it is posted without one panel passing through another. */
export function closesFlat({ card, closed, posted }: FoldedCard): Finding[] {
  return closed.map((body): Finding => {
    const { piece, pose, plies, unsolved } = body;
    const [left] = unsolved;
    if (left) {
      const facts = { piece: piece.name, pose: posted.name, crease: left.crease };
      return finding('closes-flat', 'not-known', { facts, at: posted, witness: left.crease });
    }
    if (pose === undefined) return finding('closes-flat', 'not-scored', { facts: { piece: piece.name }, at: piece });
    if (pose.gaps.length > 0) return finding('closes-flat', 'apart', { facts: { piece: piece.name }, at: piece });
    if (plies?.obstruction) return obstructed(body, plies.obstruction, card);
    const low = lowest(pose);
    if (!pose.flat && posted.ground !== undefined && low.mm < -ON_FLOOR_MM) return belowFloor(body, pose, low, card);
    if (plies?.orders.length === 0) {
      const facts = { piece: piece.name, panels: pose.panels.length };
      return finding('closes-flat', 'too-much', { facts, at: piece, figure: pose.panels.length });
    }
    return closes(body, pose, plies?.deepest ?? 0);
  });
}

/** What is less than this below the floor stands on it. */
const ON_FLOOR_MM = 1e-6;

interface Low {
  readonly panel: string;
  readonly piece: string;
  /** Over the ground panel; less than zero below it. */
  readonly mm: number;
}

/** The panel that reaches furthest down. */
function lowest({ panels, assembly }: ClosedPose): Low {
  let low: Low = { panel: '', piece: '', mm: 0 };
  for (const { panel, piece, placement } of panels) {
    for (const corner of assembly.panels.get(panel)?.outline ?? []) {
      const mm = place(placement, corner).z.valueOf();
      if (mm < low.mm) low = { panel, piece, mm };
    }
  }
  return low;
}

/** What a card stands on is its lowest part, or it would not stand. */
function belowFloor(
  { piece }: FoldedBody,
  { ground, pose }: ClosedPose,
  { panel, piece: of, mm }: Low,
  card: Card,
): Finding {
  const by = measured(-mm);
  const facts = { piece: piece.name, pose, panel, floor: ground, by };
  const at = card.pieces.find(({ name }) => name === of) ?? piece;
  return finding('closes-flat', 'below-floor', { facts, at, figure: by, limit: Length.zero, witness: panel });
}

function closes({ piece, plies: orders }: FoldedBody, pose: ClosedPose, plies: number): Finding {
  const panels = pose.panels.length;
  if (!pose.flat) {
    const deep = Length.fromMm(pose.deep);
    return finding('closes-flat', 'box', { facts: { piece: piece.name, panels, deep }, at: piece, figure: deep });
  }
  if (panels === 1) return finding('closes-flat', 'one-panel', { facts: { piece: piece.name }, at: piece, figure: 1 });
  const facts = { piece: piece.name, plies, panels };
  const witness = orders?.orders[0]?.plies?.join(', ') ?? '';
  return finding('closes-flat', 'flat', { facts, at: piece, figure: plies, witness });
}

function obstructed({ piece, pose }: FoldedBody, obstruction: Obstruction, card: Card): Finding {
  const whole = { piece: piece.name, how: pose?.flat === false ? 'fold up' : 'fold flat' };
  switch (obstruction.is) {
    case 'too-long': {
      const by = measured(obstruction.mm);
      const facts = { piece: obstruction.piece, panel: obstruction.panel, crease: obstruction.crease, by };
      const at = creaseAt(card, obstruction.piece, obstruction.crease) ?? piece;
      const shown = { facts, at, figure: by, limit: Length.zero, witness: obstruction.panel };
      return finding('closes-flat', obstruction.cures ? 'too-long' : 'no-order', shown);
    }
    case 'vertex':
      return atVertex(obstruction, card, piece);
    case 'through': {
      const facts = { ...whole, panel: obstruction.panel, other: obstruction.other, crease: obstruction.crease };
      const at = creaseAt(card, obstruction.piece, obstruction.crease) ?? piece;
      return finding('closes-flat', 'through', { facts, at, witness: obstruction.panel });
    }
    case 'between': {
      const { a, b } = obstruction.joint;
      const at = 'join' in obstruction.joint ? obstruction.joint.join : piece;
      const facts = { ...whole, panel: obstruction.panel, part: a, onto: b };
      return finding('closes-flat', 'between', { facts, at, witness: obstruction.panel });
    }
    case 'circle': {
      const facts = { ...whole, panels: obstruction.panels.join(', ') };
      return finding('closes-flat', 'circle', { facts, at: piece, witness: obstruction.panels[0] ?? '' });
    }
  }
}

const AT_VERTEX = {
  angles: 'point-angles',
  directions: 'point-directions',
  'smallest-sector': 'point-narrowest',
} as const;

function atVertex(obstruction: Obstruction & { is: 'vertex' }, card: Card, whole: FoldedBody['piece']): Finding {
  const creases = [...new Set(obstruction.creases)];
  const [crease = '', other = ''] = creases;
  const piece = card.pieces.find(({ name }) => name === obstruction.piece);
  const at = creaseAt(card, obstruction.piece, crease) ?? whole;
  const shown = { at, witness: crease };
  const isBand = (name: string): boolean => piece?.creases.some((one) => one.name === name) ?? false;
  if (obstruction.why === 'directions' && creases.length === 2 && creases.every(isBand)) {
    return finding('closes-flat', 'crossing', { facts: { piece: obstruction.piece, crease, other }, ...shown });
  }
  const facts = { piece: obstruction.piece, creases: creases.join(', ') };
  return finding('closes-flat', AT_VERTEX[obstruction.why], { facts, ...shown });
}

function creaseAt(card: Card, piece: string, crease: string): Pick<Finding, 'place' | 'path'> | undefined {
  const found = card.pieces.find(({ name }) => name === piece);
  return [...(found?.creases ?? []), ...(found?.lines ?? [])].find(({ name }) => name === crease);
}
