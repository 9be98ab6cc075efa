import type { Corner, CreaseFold, Edge, LineWork, Origin } from './card-types.ts';
import type { Expression } from './expression.ts';
import type { PointSpec } from './point-spec.ts';

/*
 * Lines and shapes of a piece as rules: read, placed, not yet given their sizes.
 */

export interface LineSpec extends Origin {
  readonly name: string;
  readonly does: LineWork;
  readonly course: Course;
  /** For a crease: one for the whole of it, or one for each stretch. */
  readonly folds: readonly CreaseFold[];
}

/** Where a line runs. */
export type Course =
  /** So far from an edge, and as that edge runs: from its top or left end, between `start` and `end`. */
  | {
      readonly is: 'square';
      readonly edge: Edge;
      readonly at: readonly Expression[];
      /** Written as a list, whose members are `name(1)`, `name(2)`. */
      readonly listed: boolean;
      readonly start: Expression | undefined;
      readonly end: Expression | undefined;
    }
  | {
      readonly is: 'middle';
      readonly runs: 'down' | 'across';
      readonly start: Expression | undefined;
      readonly end: Expression | undefined;
    }
  | { readonly is: 'points'; readonly from: PointSpec; readonly to: PointSpec }
  /** From a point, at an angle to another line, in the quarter in which the corner lies. */
  | {
      readonly is: 'angle';
      readonly start: PointSpec;
      readonly off: LineName;
      readonly by: Expression;
      readonly towards: Corner;
      /** Undefined for as far as the paper reaches. */
      readonly long: Expression | undefined;
    };

export interface LineName extends Origin {
  readonly line: string;
}

/** A part of a path: straight on to a point, or along an arc to it through another. */
export interface PathStep extends Origin {
  readonly to: PointSpec;
  readonly through: PointSpec | undefined;
}

/** How the edge of a piece or of a shape is given, but for a plain rectangle's place. */
export type FormSpec =
  | {
      readonly is: 'rectangle' | 'circle' | 'ellipse' | 'rounded';
      readonly width: Expression;
      readonly height: Expression;
      /** Of rounded corners; undefined for the usual one. */
      readonly radius: Expression | undefined;
    }
  | { readonly is: 'outline'; readonly path: readonly PathStep[] }
  /** The edge of the piece, or of a band, moved inwards. */
  | { readonly is: 'inset'; readonly by: Expression };

/** A closed shape on a piece. */
export interface ShapeSpec extends Origin {
  readonly name: string;
  readonly form: FormSpec;
  /** Where its centre lies; undefined for the centre of what it lies in. */
  readonly at: PointSpec | undefined;
  /** The column or row that an inset or a centre is counted in; undefined for the whole piece. */
  readonly within: LineName | undefined;
  /** For a shape that swings: the band that it stays with. */
  readonly staysWith: LineName | undefined;
}

/** What is trimmed away: the cell of a column and a row, a whole column or row, or a shape. */
export type AwaySpec =
  | ({ readonly is: 'cell'; readonly parts: readonly string[] } & Origin)
  | ({ readonly is: 'shape'; readonly shape: ShapeSpec } & Origin);

/** A name for the panel that a point lies in. */
export interface SpotSpec extends Origin {
  readonly name: string;
  readonly at: PointSpec;
}
