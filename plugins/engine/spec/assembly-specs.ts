import type Fraction from 'fraction.js';
import type { TextNode } from '../diagnostics/index.ts';
import type { Origin, PaperSide } from './card-types.ts';
import type { Expression } from './expression.ts';
import type { PointSpec } from './point-spec.ts';

/*
 * The parts of a fold beyond its pieces, read and placed. What their names mean is asked of the pieces when those have been made,
 * since counts decide which pieces there are.
 */
export interface AssemblyParts {
  readonly joins: readonly JoinSpec[];
  /** From the lowest piece to the topmost. */
  readonly stack: readonly RefSpec[];
  readonly fillings: readonly FillingSpec[];
  readonly poses: readonly PoseSpec[];
  readonly motions: readonly MotionSpec[];
  readonly actsAs: TextNode | undefined;
  readonly posts: TextNode | undefined;
  readonly closesWithin: readonly RefSpec[];
}

export const NO_PARTS: AssemblyParts = {
  joins: [],
  stack: [],
  fillings: [],
  poses: [],
  motions: [],
  actsAs: undefined,
  posts: undefined,
  closesWithin: [],
};

/** A panel, edge, corner or piece by its name, and the side of the paper that is meant. */
export interface RefSpec {
  /** The name alone, without `back of` and the like. */
  readonly node: TextNode;
  readonly side: PaperSide | undefined;
  readonly path: string;
}

/** A line by its name within its own piece. */
export interface LineWord {
  readonly node: TextNode;
  readonly path: string;
}

/** `LINE along LINE`. */
export interface LaySpec {
  readonly line: LineWord;
  readonly along: LineWord;
}

interface TwoSpec extends Origin {
  readonly part: RefSpec;
  readonly onto: RefSpec;
}

export interface GlueSpec extends TwoSpec {
  readonly is: 'glue';
  readonly lay: LaySpec | undefined;
  readonly after: Expression | undefined;
  /** Point on point; `to` undefined when both have the same name. */
  readonly match: { readonly point: PointSpec; readonly to: PointSpec | undefined } | undefined;
  readonly turn: Expression | undefined;
  readonly foam: FoamSpec | undefined;
}

/** `foam: 1/8`, or `foam: { of: foam-tape, high: 1/16, layers: 2 }`. */
export interface FoamSpec extends Origin {
  readonly stock: string;
  readonly high: Expression;
  readonly layers: Expression | undefined;
}

export interface PinSpec extends TwoSpec {
  readonly is: 'pin';
  /** On the receiver. */
  readonly at: PointSpec | undefined;
  /** On the pinned piece; its centre unless said. */
  readonly by: PointSpec | undefined;
  readonly turn: Expression | undefined;
}

export interface SlideSpec extends TwoSpec {
  readonly is: 'slide';
  readonly through: readonly LineWord[];
  readonly shows: 'between' | 'outside';
  readonly keep: Expression | undefined;
  readonly turn: Expression | undefined;
}

export interface SlipSpec extends TwoSpec {
  readonly is: 'slip';
  readonly play: Expression | undefined;
}

export interface SlotSpec extends TwoSpec {
  readonly is: 'slot';
  readonly lay: LaySpec | undefined;
}

export interface RestSpec extends TwoSpec {
  readonly is: 'rest';
  readonly from: LineWord | undefined;
  readonly away: Expression | undefined;
}

export interface HangSpec extends TwoSpec {
  readonly is: 'hang';
  readonly after: Expression | undefined;
  readonly thread: Expression | undefined;
}

export type JoinSpec = GlueSpec | PinSpec | SlideSpec | SlipSpec | SlotSpec | RestSpec | HangSpec;

export interface FillingSpec extends Origin {
  readonly name: string;
  /** `piece.window`. */
  readonly inside: TextNode;
  readonly stock: string;
  readonly full: Expression | undefined;
  /** Grams. */
  readonly mass: Fraction | undefined;
}

/** What one thing does in a pose: a word, or how many degrees or how far. */
export type Setting =
  | { readonly is: 'word'; readonly word: 'flat' | 'shut' | 'keep' | 'solve' | 'start' | 'middle' | 'end' }
  | { readonly is: 'amount'; readonly amount: Expression };

export interface PoseSpec extends Origin {
  readonly name: string;
  readonly settings: readonly {
    readonly target: TextNode;
    readonly setting: Setting;
    readonly node: TextNode;
    readonly path: string;
  }[];
  readonly ground: RefSpec | undefined;
  readonly stands: readonly RefSpec[];
  readonly rests: boolean | readonly RefSpec[];
  readonly aside: readonly RefSpec[];
}

export interface MotionSpec extends Origin {
  readonly name: string;
  readonly poses: readonly { readonly node: TextNode; readonly path: string }[];
}
