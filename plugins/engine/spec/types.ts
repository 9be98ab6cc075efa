import type { MapNode, Place, TextNode } from '../diagnostics/index.ts';
import type { Length, System, Unit } from '../units/index.ts';
import type { Expression } from './expression.ts';

/** Which way a crease folds, seen from the face: a valley brings the faces together, a mountain the backs. */
export type FoldDirection = 'valley' | 'mountain';

/** A fold kind or a fold written in a post: read, named, placed, not yet given its sizes. */
export interface Fold {
  readonly name: string;
  readonly family: string | undefined;
  /** The unit of bare numbers. Undefined when the file states none, so that a bare number is a located error. */
  readonly units: Unit | undefined;
  readonly parameters: readonly Parameter[];
  readonly values: readonly DerivedValue[];
  readonly require: readonly Requirement[];
  readonly same: readonly EqualitySpec[];
  readonly pieces: readonly PieceSpec[];
  readonly poses: readonly PoseSpec[];
  /** The recipe beside the kind, as makers say it; it must give the same sheet and scores as the pieces. */
  readonly recipe: readonly RecipeStepSpec[];
  readonly place: Place;
}

export interface Parameter {
  readonly name: string;
  readonly label: string;
  readonly type: 'length' | 'count' | 'choice';
  readonly fallback: Expression | undefined;
  readonly from: Expression | undefined;
  readonly to: Expression | undefined;
  /** For a choice: word to value, in file order. */
  readonly choices: readonly { readonly word: string; readonly value: Expression }[];
  /** For a choice: the word taken when none is given. */
  readonly fallbackWord: string | undefined;
  readonly place: Place;
}

export interface DerivedValue {
  readonly name: string;
  readonly value: Expression;
  readonly place: Place;
}

export interface Requirement {
  readonly left: Expression;
  readonly relation: '<' | '<=' | '=' | '>=' | '>';
  readonly right: Expression;
  /** The whole condition as written, for showing. */
  readonly that: string;
  /** What to tell the maker when it does not hold. */
  readonly otherwise: string;
  readonly place: Place;
}

/** Two or more measures that must stay equal, exactly and in print. */
export interface EqualitySpec {
  readonly measures: readonly { readonly expression: Expression; readonly text: string; readonly place: Place }[];
  readonly place: Place;
}

export interface PieceSpec {
  readonly name: string;
  /** A declared overall size: the whole size of a plain piece; for a strip, what the bands must add up to. */
  readonly size: { readonly width: Expression; readonly height: Expression; readonly place: Place } | undefined;
  readonly across: StripSpec | undefined;
  readonly down: StripSpec | undefined;
  /** Role of the paper, bound to a supply by a post. */
  readonly stock: string;
  /** Direction of the paper's grain on the drawing; undefined when the kind does not care. */
  readonly grain: 'across' | 'down' | undefined;
  readonly place: Place;
  readonly path: string;
}

/** A side of a piece: one measure, or bands with creases between them. */
export interface StripSpec {
  readonly bands: readonly BandSpec[];
  /** One fewer than the bands. */
  readonly creases: readonly CreaseSpec[];
  readonly place: Place;
}

export interface BandSpec {
  /** Undefined when the side is one measure. */
  readonly name: string | undefined;
  /** Undefined for `rest`: whatever is left of the declared size. */
  readonly size: Expression | undefined;
  readonly place: Place;
  readonly path: string;
}

export interface CreaseSpec {
  /** Undefined when unnamed; it is then called `bandA|bandB`. */
  readonly name: string | undefined;
  readonly fold: FoldDirection;
  readonly place: Place;
  readonly path: string;
}

export interface PoseSpec {
  readonly name: string;
  /** Crease name (qualified or not), `all` or `others`, to what it does. */
  readonly settings: readonly {
    readonly target: TextNode;
    /** `keep`, for `others` alone: as in the pose before. */
    readonly turn: 'flat' | 'shut' | 'keep';
    readonly path: string;
  }[];
  readonly place: Place;
}

/** One step of a recipe as makers say it: cut a sheet, score it along one side. */
export interface RecipeStepSpec {
  readonly piece: string | undefined;
  readonly cut: { readonly width: Expression; readonly height: Expression; readonly text: string };
  /** The side the scores run along, when the recipe says: a length that must be one of the sides. */
  readonly along: { readonly length: Expression; readonly text: string; readonly place: Place } | undefined;
  /** The same said by a word; undefined when the recipe is silent: the long side, and across when it is square. */
  readonly side: 'across' | 'down' | 'long' | 'short' | undefined;
  readonly scores: readonly {
    readonly at: Expression;
    readonly fold: FoldDirection;
    readonly text: string;
    readonly place: Place;
  }[];
  readonly place: Place;
  readonly path: string;
}

/** What a post asks of a fold for one edition. */
export interface CardRequest {
  readonly system: System;
  /** The finest mark of this edition's ruler; every printed length of the card is a whole number of these. */
  readonly mark: Length;
  /** The unit of bare numbers in `parameters` and `recipe`. */
  readonly units: Unit | undefined;
  /** Parameters the post gives, as written: name to text. */
  readonly parameters: MapNode | undefined;
  /** Parameters for this edition alone, which win over `parameters`. */
  readonly own: MapNode | undefined;
  /** A lesson's recipe, to be compared with the card. */
  readonly recipe: readonly RecipeStepSpec[];
  /** Where `parameters` and `own` stand in the frontmatter, as `fold.side-fold` and `metric`; for problems. */
  readonly parametersPath?: string | undefined;
  readonly ownPath?: string | undefined;
}

/**
 * A fold with its sizes, in one edition.
 *
 * Every length is exact, and is the number that will be printed: a whole number of the edition's marks. Lengths that
 * are equal as written are equal in print, and a strip's length is the sum of its bands.
 */
export interface Card {
  readonly name: string;
  readonly system: System;
  readonly mark: Length;
  readonly parameters: readonly CardParameter[];
  readonly pieces: readonly Piece[];
  readonly poses: readonly Pose[];
  readonly requirements: readonly CheckedRequirement[];
  readonly equalities: readonly CheckedEquality[];
  /**
   * The lesson's recipe with its sizes, when one stands beside the card: the post's, or with every parameter at its
   * default the kind's own. As written, not put on marks; and only in the system it was written in, since a recipe
   * is not re-applied and so says nothing about the other edition.
   */
  readonly lesson: readonly RecipeStep[];
  readonly place: Place;
}

export interface CardParameter {
  readonly name: string;
  readonly label: string;
  readonly value: Length | number;
  /** For a choice: the chosen word. */
  readonly word: string | undefined;
  readonly from: Length | number | undefined;
  readonly to: Length | number | undefined;
  /** Where the value was written: the post, or the kind for a default. */
  readonly place: Place;
}

/**
 * A rectangular piece of paper with straight creases from edge to edge.
 *
 * Drawing frame: origin at the top left corner, x across to the right, y down the page, face up.
 */
export interface Piece {
  readonly name: string;
  readonly width: Length;
  readonly height: Length;
  /** The overall size its author declared beside the bands, to be compared with their sum. */
  readonly declared: { readonly width: Length; readonly height: Length; readonly place: Place } | undefined;
  /** At least one each. A band whose size is zero or less is read like any other; the dry fit says what is wrong. */
  readonly columns: readonly Band[];
  readonly rows: readonly Band[];
  /** Those that run down, from the left, then those that run across, from the top: one between each two bands. */
  readonly creases: readonly Crease[];
  readonly stock: string;
  readonly grain: 'across' | 'down' | undefined;
  readonly place: Place;
  readonly path: string;
}

/** A column or row of a piece. `start` is its distance from the left or top edge. */
export interface Band {
  readonly name: string | undefined;
  readonly start: Length;
  readonly size: Length;
  /** As written, before anything was put on the edition's marks. Bands equal here are equal in `size`. */
  readonly exact: Length;
  readonly place: Place;
  readonly path: string;
}

export interface Crease {
  /** Unique within its piece. */
  readonly name: string;
  /** `down`: the crease runs from top to bottom, `at` counts from the left. `across`: left to right, from the top. */
  readonly runs: 'down' | 'across';
  readonly at: Length;
  readonly fold: FoldDirection;
  readonly place: Place;
  readonly path: string;
}

export interface Pose {
  readonly name: string;
  /** Piece name and crease name to what the crease does, for every crease of the card. */
  readonly turns: readonly { readonly piece: string; readonly crease: string; readonly turn: 'flat' | 'shut' }[];
}

export interface CheckedRequirement {
  readonly that: string;
  readonly otherwise: string;
  readonly holds: boolean;
  readonly left: Length | number;
  readonly right: Length | number;
  readonly place: Place;
}

export interface CheckedEquality {
  readonly measures: readonly {
    readonly text: string;
    readonly exact: Length;
    readonly printed: Length;
    readonly place: Place;
  }[];
  readonly place: Place;
}

/** A recipe step with its sizes. Scores count from the top or left end of the side they run along. */
export interface RecipeStep {
  readonly piece: string | undefined;
  readonly width: Length;
  readonly height: Length;
  readonly along: 'across' | 'down';
  /** False when the recipe named a side that is neither the width nor the height. */
  readonly alongFits: boolean;
  readonly alongText: string | undefined;
  readonly scores: readonly { readonly at: Length; readonly fold: FoldDirection; readonly place: Place }[];
  readonly place: Place;
  readonly path: string;
}
