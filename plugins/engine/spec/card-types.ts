import type Fraction from 'fraction.js';
import type { Place } from '../diagnostics/index.ts';
import type { Outline, Point } from '../geometry/index.ts';
import type { Length } from '../units/index.ts';
import type { FoldDirection } from './fold-direction.ts';

/*
 * The parts of a Card that are more than strips: lines and shapes on a piece, joins between pieces, and poses.
 * Every point is on its piece's own drawing; every length has been put on the edition's marks.
 */

/** Anything that knows where it was written: for problems, findings and cures. */
export interface Origin {
  readonly place: Place;
  readonly path: string;
}

/** What is done along a line. A perforation and a mark part nothing. */
export type LineWork = 'crease' | 'cut' | 'perforation' | 'mark';

/** A straight line on a piece. It may reach past the paper or over windows; the panels stage trims it. */
export interface Line extends Origin {
  /** Unique within its piece, band creases included. Members of a list or family are `name(1)`, `name(2)`. */
  readonly name: string;
  /** The name without its number: what a pose or a join that says `outer` means. */
  readonly family: string;
  readonly does: LineWork;
  /** Top to bottom, left to right, or as written (`POINT to POINT`). Never one point. */
  readonly from: Point;
  readonly to: Point;
  /**
   * For a crease: one direction for the whole of it, or one for each stretch between the lines that cross it, from `from`
   * to `to`. Empty for other work.
   */
  readonly folds: readonly CreaseFold[];
}

/** `both`: the crease is worked both ways and may fold to either side. */
export type CreaseFold = FoldDirection | 'both';

/** A closed region of a piece. */
export interface Region extends Origin {
  /** Unique within its piece. */
  readonly name: string;
  readonly outline: Outline;
}

/**
 * A shape that is cut round only where it leaves the band that it stays with, so that it swings with that band. Creases do
 * not run through it.
 */
export interface PartCut extends Region {
  /** Name of the band, column or row. */
  readonly staysWith: string;
}

/** A name given to the panel that a point lies in. */
export interface Spot extends Origin {
  readonly name: string;
  readonly at: Point;
}

/**
 * Which panel is meant, as far as names go; `panels` finds it.
 *
 * - `whole`: the piece, when it is one panel (or all its panels lie in one).
 * - `cell`: the panel in a column, a row, or both.
 * - `edge` and `corner`: the only panel that has a part of that edge, or that corner.
 * - `spot`: the panel that a point lies in.
 */
export type PanelPart =
  | { readonly is: 'whole' }
  | { readonly is: 'cell'; readonly column: string | undefined; readonly row: string | undefined }
  | { readonly is: 'edge'; readonly edge: Edge }
  | { readonly is: 'corner'; readonly corner: Corner }
  | { readonly is: 'spot'; readonly at: Point };

export type Edge = 'left' | 'right' | 'top' | 'bottom';
export type Corner = 'top-left' | 'top-right' | 'bottom-left' | 'bottom-right';

export interface PanelRef extends Origin {
  readonly piece: string;
  readonly part: PanelPart;
  /** As the maker wrote it: `base.wing`. */
  readonly text: string;
}

export type PaperSide = 'face' | 'back';

/** A turn in the plane of the drawing, clockwise as seen on it: exact for 0, 90, 180 and 270 degrees and where a slope is exact. */
export interface PlaneTurn {
  readonly cos: Fraction;
  readonly sin: Fraction;
  readonly rounded?: true;
}

interface JoinCommon extends Origin {
  /** What is laid, pinned, slid, slipped, rested or hung. */
  readonly part: PanelRef;
  /** What receives it. */
  readonly onto: PanelRef;
  /** True for a join that another construct brings with it (`stack`, `corners: tabs`). */
  readonly implied: boolean;
  /** As a maker reads it: `bridge.tab onto base.back`. */
  readonly text: string;
}

/** Where `part` comes to lie on `onto`: point on point, and a turn. */
export interface Laying {
  /** On the drawing of `part`'s piece. */
  readonly p: Point;
  /** On the drawing of `onto`'s piece. */
  readonly q: Point;
  /** How `part` is turned on `onto`'s drawing, after it has been turned over when like sides meet. */
  readonly turn: PlaneTurn;
  /** The side of `part` that meets `onto`, and the side of `onto` that receives it. Usually `back` and `face`. */
  readonly partSide: PaperSide;
  readonly ontoSide: PaperSide;
}

/** Foam between two panels: so many layers of one height, and the role of the foam that it is cut from. */
export interface FoamTape {
  readonly stock: string;
  readonly layer: Length;
  readonly layers: number;
}

/** Stuck flat, over the whole of where the two panels overlap. */
export interface GlueJoin extends JoinCommon, Laying {
  readonly is: 'glue';
  /** Height of foam or board between them; undefined for glue alone. */
  readonly foam: Length | undefined;
  /** The foam that the join itself brings, where it does; pieces that are `thick` are no part of it. */
  readonly tape?: FoamTape;
  /** A line of `part` and a line of `onto` that were laid on each other, by name; for words. */
  readonly laid: { readonly line: string; readonly along: string; readonly after: Length } | undefined;
}

/** Held at one point, free to turn. `turn` is the turn at rest; a pose may give another. */
export interface PinJoin extends JoinCommon, Laying {
  readonly is: 'pin';
}

/**
 * Slides in its receiver through cuts, square to them. With `at` zero `p` lies on `q`; it then moves along `along`, a unit vector on
 * the receiver's drawing. It lies on `ontoSide` where `shows` says so and on the other side elsewhere.
 */
export interface SlideJoin extends JoinCommon, Laying {
  readonly is: 'slide';
  readonly along: { readonly x: Fraction; readonly y: Fraction; readonly rounded?: true };
  /** Names of the cuts, in the receiver's piece. */
  readonly through: readonly string[];
  readonly shows: 'between' | 'outside';
  /** How much of the slider must stay beyond each slit. */
  readonly keep: Length;
  /** Least and greatest position, so that `keep` stays beyond the outer slits. */
  readonly start: Length;
  readonly end: Length;
}

/** A lid or sleeve slipped over the receiver's whole piece. */
export interface SlipJoin extends JoinCommon {
  readonly is: 'slip';
  readonly play: Length;
}

/** Two half-slits pushed into each other, at right angles or as the pose has it. `line` of `part` comes to lie on `along` of `onto`. */
export interface SlotJoin extends JoinCommon, Laying {
  readonly is: 'slot';
  readonly line: string;
  readonly along: string;
}

/** An edge or point of `part` stands upon the panel `onto`, `away` from a line of it. Poses say when it rests. */
export interface RestJoin extends JoinCommon {
  readonly is: 'rest';
  /** Two points for an edge, one for a point, on the drawing of `part`'s piece. */
  readonly touches: readonly Point[];
  readonly from: { readonly line: string; readonly start: Point; readonly end: Point } | undefined;
  readonly away: Length;
}

/** Hangs by a thread from a point of an edge. It never moves anything. */
export interface HangJoin extends JoinCommon {
  readonly is: 'hang';
  /** On the drawing of `part`'s piece: where the thread holds it. */
  readonly p: Point;
  /** On the drawing of `onto`'s piece: where the thread is fixed. */
  readonly q: Point;
  /** Away from the paper of `onto`, square to the edge `q` lies on: where it lies while everything is flat. */
  readonly away: { readonly x: Fraction; readonly y: Fraction };
  readonly thread: Length;
}

export type Join = GlueJoin | PinJoin | SlideJoin | SlipJoin | SlotJoin | RestJoin | HangJoin;

/**
 * What a crease does in a pose: degrees in its own direction, 0 flat and 180 shut, negative against its score; or `solve`: left to
 * the paper. For a crease worked both ways, valley is positive.
 */
export type TurnOf = number | 'solve';

export interface Pose extends Origin {
  readonly name: string;
  /** For every crease of the card: band creases and lines, by piece and (member) name. */
  readonly turns: readonly {
    readonly piece: string;
    readonly crease: string;
    readonly turn: TurnOf;
    /** False where the pose says nothing of the crease, and `turn` is that of the pose before: the paper may decide. */
    readonly said?: boolean;
  }[];
  /** How far each slider is out, by piece, counted as in `SlideJoin`. */
  readonly slides: readonly { readonly piece: string; readonly at: Length }[];
  /** Clockwise degrees of a pinned piece, beyond its turn at rest. */
  readonly pins: readonly { readonly piece: string; readonly turn: number }[];
  /** The panel that lies as drawn; undefined for the usual one. */
  readonly ground: PanelRef | undefined;
  /** Edges that stand on the table. */
  readonly stands: readonly { readonly piece: string; readonly edge: Edge }[];
  /** Whether things that rest upon others do so in this pose: all, or the pieces named. */
  readonly rests: boolean | readonly string[];
  /** Pieces laid aside, which are not part of this pose. */
  readonly aside: readonly string[];
}

/** A way from pose to pose, in the order in which hands do it. */
export interface Motion extends Origin {
  readonly name: string;
  readonly poses: readonly string[];
}

/** Loose filling in a window of a piece. */
export interface Filling extends Origin {
  readonly name: string;
  readonly piece: string;
  readonly window: string;
  readonly stock: string;
  /** Share of the chamber's depth, over 0 and at most 1. */
  readonly full: Fraction;
  /** Grams, where the maker weighs it; else it is reckoned from `full`. */
  readonly mass?: Fraction;
}

/** What a coat is. `anti-static`: what a pouch of powder leaves, so that nothing clings. */
export const COAT_SORTS = [
  ...['ink', 'paint', 'pencil', 'foil', 'gel', 'paste', 'embossing', 'powder', 'glitter', 'wax', 'glue', 'film'],
  ...['anti-static', 'stamp', 'print', 'other'],
] as const;

/** One layer that is no piece: ink, foil, gel, powder. */
export interface CoatItem extends Origin {
  /** What stays on the paper, as the post names it: a supply or a stock role. */
  readonly with: string;
  /** The word after `as`, one of `COAT_SORTS`. */
  readonly as: string | undefined;
  /** The stencil that it is laid on through, which leaves nothing itself. */
  readonly through: string | undefined;
  /** As written, for this coat; else the supply's own caliper counts, if it has one. */
  readonly thick: Length | undefined;
  readonly note: string | undefined;
}

/** What is laid on one side of a panel or of a whole piece, first first. */
export interface Coat extends Origin {
  readonly on: PanelRef;
  readonly side: PaperSide;
  readonly items: readonly CoatItem[];
}

/** One entry of `layers`, as it stands in the order of work: coats, a chamber filled, a piece stuck down. */
export type WorkStep =
  | { readonly is: 'coat'; readonly coat: Coat }
  | ({ readonly is: 'fill'; readonly filling: string } & Origin)
  | ({ readonly is: 'glue'; readonly piece: string } & Origin);

/** What stands for the whole card when another card uses it as a part. */
export interface ActsAs extends Origin {
  /** The piece whose edges and back it offers. */
  readonly piece: string;
  /** The piece whose face lies on top. */
  readonly top: string;
}
