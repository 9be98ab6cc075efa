import { type Assembly, assemble, type Body } from '../assembly/index.ts';
import { type Materials, massOf, orderPlies, thicknessOf, workOrder } from '../layers/index.ts';
import { type ClosedPose, closedPoses, isKnown } from '../motion/index.ts';
import { panelsOf } from '../panels/index.ts';
import type { Card, Piece, Pose } from '../spec/index.ts';
import type { FoldedBody, FoldedCard } from './types.ts';

/** What a post says of paper and envelope for one edition of a card. */
export type PaperInUse = Pick<FoldedCard, 'asked' | 'envelope' | 'clearance' | 'sheets' | 'promised'> & {
  readonly materials?: Materials;
};

/**
 * The card folded in the pose in which it is posted, or with every crease shut when there is no such pose.
 *
 * What folds or is joined is folded; when nothing is, each flat piece is its own closed pose. A piece with a band off its
 * paper is not folded, since it has no panels to speak of; `scores-inside` reports it.
 */
export function foldCard(card: Card, paper: PaperInUse): FoldedCard {
  const panelling = panelsOf(card);
  const assembly = assemble(card, panelling);
  const posted = card.poses.find(({ name }) => name === card.posts) ?? allShut(card);
  const materials = paper.materials ?? {};
  const closed = foldBodies(assembly, posted, materials);
  const made = { mass: massOf(assembly, materials), work: workOrder(assembly, materials) };
  return { card, panelling, assembly, posted, closed, ...made, ...paper, materials };
}

function foldBodies(assembly: Assembly, posted: Pose, materials: Materials): FoldedBody[] {
  const { card, bodies } = assembly;
  const poses = closedPoses(assembly, posted);
  const folding = bodies.filter((body) => body.tree.length > 0 || piecesOf(body, card).some(isFolding));
  const closing = folding.length > 0 ? folding : bodies;
  const folded = closing.flatMap((body): FoldedBody[] => {
    const [piece] = piecesOf(body, card);
    if (piece === undefined) return [];
    const nothing = { piece, body, pose: undefined, unsolved: [], plies: undefined, thickness: undefined };
    if (!piecesOf(body, card).every(isScoredInside)) return [nothing];
    return poses
      .filter((pose) => bodies[pose.body] === body)
      .map((pose) =>
        isKnown(pose) ? { ...nothing, pose, ...pliesOf(pose, materials) } : { ...nothing, unsolved: pose.creases },
      );
  });
  return [...folded, ...card.pieces.filter((piece) => isFolding(piece) && !isIn(piece, bodies)).map(withoutPanels)];
}

function pliesOf(pose: ClosedPose, materials: Materials): Pick<FoldedBody, 'plies' | 'thickness'> {
  const plies = pose.gaps.length === 0 ? orderPlies(pose) : undefined;
  return { plies, thickness: plies && thicknessOf(plies, materials) };
}

function piecesOf(body: Body, card: Card): Piece[] {
  return card.pieces.filter(({ name }) => body.pieces.includes(name));
}

function isIn(piece: Piece, bodies: readonly Body[]): boolean {
  return bodies.some(({ pieces }) => pieces.includes(piece.name));
}

function withoutPanels(piece: Piece): FoldedBody {
  return { piece, body: undefined, pose: undefined, unsolved: [], plies: undefined, thickness: undefined };
}

/** Something on it is creased. */
export function isFolding(piece: Piece): boolean {
  return piece.creases.length > 0 || piece.lines.some(({ does }) => does === 'crease');
}

/** Every panel has some width and height. */
export function isScoredInside(piece: Piece): boolean {
  return [...piece.columns, ...piece.rows].every((band) => band.size.isPositive);
}

function allShut(card: Card): Pose {
  const creasesOf = (piece: Piece): string[] => [
    ...piece.creases.map(({ name }) => name),
    ...piece.lines.filter(({ does }) => does === 'crease').map(({ name }) => name),
  ];
  return {
    name: 'closed',
    turns: card.pieces.flatMap((piece) => creasesOf(piece).map((crease) => ({ piece: piece.name, crease, turn: 180 }))),
    slides: [],
    pins: [],
    ground: undefined,
    stands: [],
    rests: false,
    aside: [],
    place: card.place,
    path: '',
  };
}
