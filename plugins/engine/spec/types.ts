import type { MapNode, Place, SourceNode, TextNode } from '../diagnostics/index.ts';
import type { Outline } from '../geometry/index.ts';
import type { Length, System, Unit } from '../units/index.ts';
import type { AssemblyParts } from './assembly-specs.ts';
import type {
  ActsAs,
  Coat,
  Filling,
  Join,
  Line,
  Motion,
  Origin,
  PanelRef,
  PartCut,
  Pose,
  Region,
  Spot,
  WorkStep,
} from './card-types.ts';
import type { Amount } from './evaluate.ts';
import type { Expression } from './expression.ts';
import type { FoldDirection } from './fold-direction.ts';
import type { AwaySpec, FormSpec, LineSpec, ShapeSpec, SpotSpec } from './piece-specs.ts';

export type { FoldDirection };

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
  readonly parts: AssemblyParts;
  /** Where something is repeated by `each`; undefined where nothing is. */
  readonly repeats: Repeats | undefined;
  /** The kinds that it is made of, the host first, and the pieces of theirs that give way to others. */
  readonly uses?: readonly UseSpec[];
  readonly replaces?: readonly ReplaceSpec[];
  /** What a post adds. */
  readonly additions?: Additions;
  /** The recipe beside the kind, as makers say it; it must give the same sheet and scores as the pieces. */
  readonly recipe: readonly RecipeStepSpec[];
  /** Parameters that the kind gives for one edition alone, name to text, in place of their defaults. */
  readonly own?: Readonly<Partial<Record<System, MapNode>>>;
  readonly place: Place;
}

/** A file with `each` in it is read again for every card whose counts are other than the default ones. */
export interface Repeats {
  /** The file as written. */
  readonly tree: MapNode;
  /** The sizes that the counts are made from, by default; the fold's pieces are as these have it. */
  readonly counts: ReadonlyMap<string, Amount>;
}

/** A kind that another kind is made of, with what is given for its parameters. */
export interface UseSpec extends Origin {
  readonly id: string;
  readonly fold: Fold;
  /** Parameter to text, in the sizes of the kind that uses it. */
  readonly given: MapNode | undefined;
}

/** A piece of a used kind that gives way to another used kind. */
export interface ReplaceSpec extends Origin {
  readonly name: TextNode;
  readonly by: TextNode;
}

/** What a post adds to a kind, as written: pieces, joins, a stack, poses and fillings. */
export interface Additions {
  readonly node: SourceNode;
  readonly units: Unit | undefined;
  /** Where it stands in the frontmatter. */
  readonly path: string;
}

export interface Parameter {
  readonly name: string;
  readonly label: string;
  readonly type: 'length' | 'count' | 'choice' | 'angle';
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
  /** Its edge, where it is no plain sheet. A circle, an ellipse and a rounded sheet have their `size` as well. */
  readonly form: FormSpec | undefined;
  readonly lines: readonly LineSpec[];
  readonly windows: readonly ShapeSpec[];
  readonly shapes: readonly ShapeSpec[];
  /** Trimmed off, beside what `corners` says. */
  readonly away: readonly AwaySpec[];
  /** The four corner cells trimmed off, or cut loose along one side and glued as tabs. */
  readonly corners: 'away' | 'tabs' | undefined;
  readonly spots: readonly SpotSpec[];
  readonly thick: Expression | undefined;
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
  /** The post's `layers`, and where they stand. */
  readonly layers?: { readonly node: SourceNode; readonly path: string } | undefined;
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
  /** In file order; those that `stack` and `corners: tabs` bring stand where these stand. */
  readonly joins: readonly Join[];
  readonly fillings: readonly Filling[];
  readonly poses: readonly Pose[];
  readonly motions: readonly Motion[];
  readonly actsAs: ActsAs | undefined;
  /** Name of the pose in which it is posted: `closed` unless the kind says. */
  readonly posts: string;
  /** The panels that must cover everything when closed; none for the usual: the first piece. */
  readonly closesWithin: readonly PanelRef[];
  /** Inks, foils and whatever else is laid on panels, in the order of work. */
  readonly coats: readonly Coat[];
  /** The post's `layers` as written, coats among them; what they do not speak of is done in the order of the file. */
  readonly work: readonly WorkStep[];
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
  /** A length, a count, or an angle in degrees. */
  readonly value: Length | number;
  readonly angle?: true | undefined;
  /** For a choice: the chosen word. */
  readonly word: string | undefined;
  readonly from: Length | number | undefined;
  readonly to: Length | number | undefined;
  /** Where the value was written: the post, or the kind for a default. */
  readonly place: Place;
  /** Present when the value is not as written but the local size for it, from the table in `local-sizes.ts`. */
  readonly local?: LocalUse;
}

/** A local size by its name, and the size of the other edition that it stands for: `ISO A6` for `US A2`. */
export interface LocalUse {
  readonly name: string;
  readonly for: string;
  /** For another size, which beside the local one would leave its range: it is the least or the most that there is. */
  readonly limit?: 'least' | 'most';
}

/**
 * A piece of paper. Its bands and their creases run from edge to edge; all other lines and shapes lie upon them.
 *
 * Drawing frame: origin at the top left corner of the smallest rectangle around it, x across to the right, y down the page,
 * face up.
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
  /** Its edge, before anything is taken away. */
  readonly outline: Outline;
  /** Every other crease, and cuts, perforations and marks. */
  readonly lines: readonly Line[];
  /** Cut out of the middle. */
  readonly windows: readonly Region[];
  /** Cut away, from the edge or a corner: what is left is the piece. */
  readonly away: readonly Region[];
  readonly shapes: readonly PartCut[];
  readonly spots: readonly Spot[];
  readonly stock: string;
  /** Height, for foam and board; undefined for paper, whose thickness the stock decides. */
  readonly thick: Length | undefined;
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
