import type { Hinge, Panel, Panelling, PanelSlip, Stroke } from '../panels/index.ts';
import type {
  Card,
  GlueJoin,
  HangJoin,
  Join,
  PanelRef,
  PinJoin,
  RestJoin,
  SlideJoin,
  SlipJoin,
  SlotJoin,
} from '../spec/index.ts';

/** Two panels and what holds them to each other, by panel name. */
export type Joint = HingeJoint | LaidJoint | SlipJoint | RestJoint | HangJoint;

/** A crease between two panels of one piece: `b` on its left, `a` on its right. */
export interface HingeJoint {
  readonly is: 'hinge';
  readonly a: string;
  readonly b: string;
  readonly hinge: Hinge;
}

/** `a` lies on `b`: glued, pinned, slid in or slotted. */
export interface LaidJoint {
  readonly is: 'glue' | 'pin' | 'slide' | 'slot';
  readonly a: string;
  readonly b: string;
  readonly join: GlueJoin | PinJoin | SlideJoin | SlotJoin;
}

export interface SlipJoint {
  readonly is: 'slip';
  readonly a: string;
  readonly b: string;
  readonly join: SlipJoin;
}

export interface RestJoint {
  readonly is: 'rest';
  readonly a: string;
  readonly b: string;
  readonly join: RestJoin;
}

export interface HangJoint {
  readonly is: 'hang';
  readonly a: string;
  readonly b: string;
  readonly join: HangJoin;
}

/** A join that cannot be made as written: the panel is none, or one of several; or a piece is glued to itself. */
export type JoinSlip =
  | { readonly is: 'no-panel'; readonly join: Join; readonly ref: PanelRef }
  | { readonly is: 'which-panel'; readonly join: Join; readonly ref: PanelRef; readonly choices: readonly string[] }
  | { readonly is: 'to-itself'; readonly join: Join };

/** A card as panels and what holds them: creases and joins alike. */
export interface Assembly {
  readonly card: Card;
  /** By name. */
  readonly panels: ReadonlyMap<string, Panel>;
  readonly strokes: readonly Stroke[];
  readonly joints: readonly Joint[];
  /**
   * Pieces that hang together, in file order of their first piece; the first holds the card's first piece. A piece with no
   * join is one by itself.
   */
  readonly bodies: readonly Body[];
  readonly slips: { readonly panels: readonly PanelSlip[]; readonly joins: readonly JoinSlip[] };
  /** Panels that a name means, as in the panelling. */
  readonly find: Panelling['find'];
}

export interface Body {
  readonly pieces: readonly string[];
  readonly panels: readonly string[];
  /** Joints inside it: those of the spanning tree, breadth first from `ground`, and those that close loops. */
  readonly tree: readonly Joint[];
  readonly loops: readonly Joint[];
  /** The usual ground: the largest panel of its first piece; of several alike the last. */
  readonly ground: string;
}
