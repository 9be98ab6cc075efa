import type Fraction from 'fraction.js';

/**
 * A point of a piece's drawing: millimetres across from the left and down from the top, the face towards the reader.
 *
 * Exact, unless `rounded`: then a coordinate is no fraction (an angle or an arc decided it) and stands on a grid of
 * `GRID_MM`. Exact points are compared exactly, rounded ones by `SNAP`.
 */
export interface Point {
  readonly x: Fraction;
  readonly y: Fraction;
  readonly rounded?: true;
}

/** A point in space, in millimetres: X across to the right, Y up the drawing (its y with the sign turned), Z out of the face. Right-handed. */
export interface SpacePoint {
  readonly x: Fraction;
  readonly y: Fraction;
  readonly z: Fraction;
  readonly rounded?: true;
}

/**
 * A rigid motion from a panel's drawing into space: `q = m p + t`, where `p` is the drawing's point as a `SpacePoint` with
 * z = 0. `m` goes row by row and has determinant 1. Exact unless `rounded`.
 */
export interface Placement {
  readonly m: readonly [Fraction, Fraction, Fraction, Fraction, Fraction, Fraction, Fraction, Fraction, Fraction];
  readonly t: readonly [Fraction, Fraction, Fraction];
  readonly rounded?: true;
}

/** One edge of a path, from point to point. */
export type PathEdge =
  | { readonly is: 'line'; readonly from: Point; readonly to: Point }
  /**
   * Part of a circle (`rx` = `ry`) or of an ellipse that stands square to the drawing. Never a whole turn: a circle is four
   * quarters, so that the middles of its edges are exact points. `clockwise` as seen on the drawing.
   */
  | {
      readonly is: 'arc';
      readonly from: Point;
      readonly to: Point;
      readonly centre: Point;
      readonly rx: Fraction;
      readonly ry: Fraction;
      readonly clockwise: boolean;
    };

/** A closed path without crossings, clockwise on the drawing; each edge begins where the last one ended. */
export type Outline = readonly PathEdge[];
