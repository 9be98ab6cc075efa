import Fraction from 'fraction.js';
import {
  type Card,
  type CreaseFold,
  dryFit,
  type FoldDirection,
  type GlueJoin,
  type Piece,
} from '../../../plugins/engine/index.ts';
import { fold } from '../dryfit/made-card.ts';

/** A card with one thing made wrong. */
export interface Flipped {
  readonly title: string;
  readonly card: Card;
}

/** The card with one crease folded the other way, for each crease, and for each stretch that has a direction of its own. */
export function withOneFoldFlipped(made: Card): Flipped[] {
  return made.pieces.flatMap((piece) => [
    ...piece.creases.map((crease) => {
      const creases = piece.creases.map((one) => (one === crease ? { ...one, fold: otherWay(one.fold) } : one));
      return {
        title: `${piece.name}.${crease.name} folded the other way`,
        card: withPiece(made, { ...piece, creases }),
      };
    }),
    ...piece.lines
      .filter(({ does }) => does === 'crease')
      .flatMap((line) =>
        line.folds.map((_, stretch) => {
          const folds = line.folds.map((one, i): CreaseFold => (i === stretch && one !== 'both' ? otherWay(one) : one));
          const lines = piece.lines.map((one) => (one === line ? { ...one, folds } : one));
          const which = line.folds.length > 1 ? ` (stretch ${stretch + 1})` : '';
          return {
            title: `${piece.name}.${line.name}${which} folded the other way`,
            card: withPiece(made, { ...piece, lines }),
          };
        }),
      ),
  ]);
}

/** The card with one part glued by its other side, for each join of glue, the same line still along the same line. */
export function withOneSideFlipped(made: Card): Flipped[] {
  return made.joins.flatMap((join) => {
    if (join.is !== 'glue') return [];
    const flipped = byOtherSide(join, made);
    const joins = made.joins.map((one) => (one === join ? flipped : one));
    return [{ title: `${join.part.text} glued by its ${flipped.partSide}`, card: { ...made, joins } }];
  });
}

/** What of a card fails or is asked about, as `check outcome witness`. */
export function complaints(made: Card): string[] {
  return dryFit(fold(made))
    .filter(({ state }) => state === 'fail' || state === 'question')
    .map(({ check, outcome, witness }) => `${check} ${outcome} ${witness ?? ''}`);
}

/** Titles of the wrong cards about which nothing is said that is not said of the right one. */
export function silent(wrong: readonly Flipped[], right: Card): string[] {
  const known = complaints(right);
  return wrong.filter(({ card }) => complaints(card).every((one) => known.includes(one))).map(({ title }) => title);
}

/**
 * Creases, as `piece.crease`, that some ring of paper holds: without one of their hinges its two panels still hang together.
 */
export function creasesInRings(made: Card): string[] {
  const { joints } = fold(made).assembly;
  const holding = joints.filter(({ is }) => is !== 'rest' && is !== 'hang');
  const names = holding.flatMap((joint) => {
    if (
      joint.is !== 'hinge' ||
      !together(
        joint,
        holding.filter((one) => one !== joint),
      )
    )
      return [];
    return [`${joint.hinge.piece}.${joint.hinge.crease}`];
  });
  return [...new Set(names)];
}

interface Pair {
  readonly a: string;
  readonly b: string;
}

/** Whether pairs connect the two panels of another. */
function together({ a, b }: Pair, pairs: readonly Pair[]): boolean {
  const reached = new Set([a]);
  for (let before = 0; before < reached.size; ) {
    before = reached.size;
    for (const pair of pairs) {
      if (reached.has(pair.a)) reached.add(pair.b);
      else if (reached.has(pair.b)) reached.add(pair.a);
    }
  }
  return reached.has(b);
}

function otherWay(fold: FoldDirection): FoldDirection {
  return fold === 'valley' ? 'mountain' : 'valley';
}

function withPiece(made: Card, piece: Piece): Card {
  return { ...made, pieces: made.pieces.map((one) => (one.name === piece.name ? piece : one)) };
}

/** A line that lies across the page points the other way once its piece is turned over; one that runs down does not. */
function byOtherSide(join: GlueJoin, made: Card): GlueJoin {
  const partSide = join.partSide === 'face' ? 'back' : 'face';
  const piece = made.pieces.find(({ name }) => name === join.part.piece);
  const called = join.laid?.line;
  const line = piece?.lines.find(({ name }) => name === called);
  const band = piece?.creases.find(({ name }) => name === called);
  const slope = line
    ? Math.atan2(line.to.y.sub(line.from.y).valueOf(), line.to.x.sub(line.from.x).valueOf())
    : undefined;
  const lies = band?.runs === 'across' || called === 'top' || called === 'bottom';
  const before = slope ?? (lies ? 0 : Math.PI / 2);
  // Turned over, a direction `a` becomes `pi - a`; already turned over, it goes back.
  const turned = join.partSide === join.ontoSide ? Math.PI - 2 * before : 2 * before - Math.PI;
  const now = Math.atan2(join.turn.sin.valueOf(), join.turn.cos.valueOf()) + turned;
  const grid = (value: number): Fraction => new Fraction(Math.round(value * 1e12), 1e12);
  const [cos, sin] = [grid(Math.cos(now)), grid(Math.sin(now))];
  const exact = cos.mul(sin).equals(0);
  return { ...join, partSide, turn: exact ? { cos, sin } : { cos, sin, rounded: true } };
}
