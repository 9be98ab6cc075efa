import type { Assembly, Body } from '../assembly/index.ts';
import type { Place } from '../diagnostics/index.ts';
import type { CardMass, Materials, PlyOrders, Thickness, WorkOrder } from '../layers/index.ts';
import type { ClosedPose } from '../motion/index.ts';
import type { Panelling } from '../panels/index.ts';
import type { Card, Piece, Pose } from '../spec/index.ts';
import type { Length, NamedSize } from '../units/index.ts';

/**
 * - `pass`: it works, with the figure that shows it.
 * - `question`: it can be made, but looks like a slip or is off the maker's usual practice.
 * - `fail`: the card will not work as written.
 * - `untested`: something needed for the check is not stated (no envelope named, say).
 */
export type FindingState = 'pass' | 'question' | 'fail' | 'untested';

/**
 * One answer of the dry fit, as data. `wording` turns it into sentences.
 *
 * `facts` are the figures a sentence needs, by name: lengths stay exact and are formatted for the edition.
 */
export interface Finding {
  /** The check's name: its file name in `dryfit/checks`. */
  readonly check: string;
  /** Which of the check's outcomes this is, kebab-case; a sentence stands for each in `wording`. */
  readonly outcome: string;
  readonly state: FindingState;
  /** The figure that was found and the limit it was held against, when the outcome has them. */
  readonly figure: Length | number | undefined;
  readonly limit: Length | number | undefined;
  /** What shows it: a piece, panel, crease or measure by name. */
  readonly witness: string | undefined;
  readonly facts: Readonly<Record<string, Fact>>;
  /** Where in the maker's file the cure belongs. */
  readonly place: Place;
  readonly path: string;
}

export type Fact = Length | number | string | readonly Length[];

/** Everything a check may look at: one card in one edition, folded, with what the post says of paper and envelope. */
export interface FoldedCard {
  readonly card: Card;
  readonly panelling: Panelling;
  readonly assembly: Assembly;
  /** The pose in which it is posted. */
  readonly posted: Pose;
  /** Where a post asks for this card; undefined for a kind by itself. Cures that belong in the post point there. */
  readonly asked?: { readonly place: Place; readonly path: string } | undefined;
  /** What folds or is joined, as posted, in the order of the bodies; in a card of loose flat pieces, each of them. */
  readonly closed: readonly FoldedBody[];
  readonly envelope: { readonly size: NamedSize; readonly place: Place; readonly path: string } | undefined;
  /** Least total room to be left in an envelope, across and along. */
  readonly clearance: Length;
  /** The sheets the pieces are cut from, by stock role; `''` for the edition's usual sheet. */
  readonly sheets: Readonly<Record<string, SheetInUse>>;
  /** What each stock role is made of, and each supply named under `layers`; where nobody says, what is usual, marked so. */
  readonly materials: Materials;
  readonly mass: CardMass;
  readonly work: WorkOrder;
  /** The closed size the author promises, when she does. */
  readonly promised:
    | { readonly width: Length; readonly height: Length; readonly place: Place; readonly path: string }
    | undefined;
}

/** One body of the card in the pose in which it is posted, or why it could not be folded. */
export interface FoldedBody {
  /** Its first piece, which gives it a name. */
  readonly piece: Piece;
  /** Undefined when no panel is left of the piece. */
  readonly body: Body | undefined;
  /** Undefined when its scores do not divide it, or the pose leaves creases to be solved. */
  readonly pose: ClosedPose | undefined;
  /** Creases that the pose leaves to be solved. */
  readonly unsolved: readonly { readonly piece: string; readonly crease: string }[];
  /** Undefined when the pose is unknown or not flat, or its joins do not meet. */
  readonly plies: PlyOrders | undefined;
  /** Undefined without an order of plies. */
  readonly thickness: Thickness | undefined;
}

export interface SheetInUse {
  readonly name: string;
  readonly width: Length;
  readonly height: Length;
}
