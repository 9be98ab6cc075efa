import type Fraction from 'fraction.js';
import type { FoldDirection } from '../spec/index.ts';

/** An exact point of a piece's drawing: millimetres across from the left and down from the top, face up. */
export interface Point {
  readonly x: Fraction;
  readonly y: Fraction;
}

/** A flat part of a piece, bounded by its edges and creases. */
export interface Panel {
  /** `piece` when the piece is one panel, `piece.band`, or `piece.column.row`. */
  readonly name: string;
  readonly piece: string;
  /** Corners in drawing order, clockwise on the drawing, without repeating the first. */
  readonly outline: readonly Point[];
}

/** A stretch of crease between two panels of one piece. */
export interface Hinge {
  /** Crease name within the piece. A crease that is crossed gives several hinges of one name. */
  readonly crease: string;
  readonly piece: string;
  readonly fold: FoldDirection;
  /** Top to bottom, or left to right. */
  readonly from: Point;
  readonly to: Point;
  /** The panel to the left of, or above, the crease; and the one to the right of, or below, it. */
  readonly before: string;
  readonly after: string;
}

export interface Panelling {
  readonly panels: readonly Panel[];
  readonly hinges: readonly Hinge[];
}
