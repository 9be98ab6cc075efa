import type { PathEdge, Point } from '../geometry/index.ts';
import type { CreaseFold, LineWork, PanelPart } from '../spec/index.ts';

/** A flat part of a piece, bounded by its edges, cuts and creases. */
export interface Panel {
  /**
   * Unique in the card. `piece` when the piece is one panel; else the piece and its column, row or both; `piece.spot` where the
   * maker named it; a shape's name for what swings with it alone; `piece.left` and the like where that edge is one panel's;
   * else the piece and a number, counted from the top left.
   */
  readonly name: string;
  readonly piece: string;
  /** Corners in drawing order, clockwise on the drawing, without repeating the first. Arcs are chords (`SAG_MM`). */
  readonly outline: readonly Point[];
  /** Edges of windows and of whatever else is not paper inside it, anticlockwise. */
  readonly holes: readonly (readonly Point[])[];
  /** A point inside its paper, not nearer to an edge than need be. */
  readonly inside: Point;
}

/** A stretch of crease between two panels of one piece. */
export interface Hinge {
  /** Crease name within the piece. A crease that is crossed gives several hinges of one name. */
  readonly crease: string;
  readonly piece: string;
  readonly fold: CreaseFold;
  /** As its crease runs. */
  readonly from: Point;
  readonly to: Point;
  /** The panel on the left, and on the right, when looking along the drawing from `from` to `to`. */
  readonly left: string;
  readonly right: string;
}

/** What is drawn, printed and cut: every line of a piece, trimmed to its paper. Arcs are arcs. */
export interface Stroke {
  readonly piece: string;
  /** `edge` is the outer edge and the edges of windows; everything else is done along it. */
  readonly does: 'edge' | LineWork;
  /** Of the line, window, shape or region; empty for the outer edge. */
  readonly name: string;
  /** For a crease. */
  readonly fold: CreaseFold | undefined;
  readonly edge: PathEdge;
}

/**
 * Why a line or region cannot be as it was written.
 *
 * - `off-paper`: no part of it lies on paper.
 * - `divides-nothing`: a crease (`stretch` from 1) that has the same panel on both sides.
 * - `stretch-count`: a crease with `wrote` directions that is crossed into `takes` stretches.
 * - `overlap`: it lies on `other` for a length, so that one of the two is too many.
 * - `window-off`, `window-edge`: a window that is not on the paper, or breaks through its edge.
 * - `nothing-left`: no paper is left of the piece.
 * - `falls-apart`: cut through, the piece is in `parts` parts.
 * - `too-many-panels`: with `before` in the pieces before it, more than a card may have.
 */
export type PanelSlip = { readonly piece: string; readonly name: string } & (
  | { readonly is: 'off-paper' }
  | { readonly is: 'divides-nothing'; readonly stretch: number }
  | { readonly is: 'stretch-count'; readonly wrote: number; readonly takes: number }
  | { readonly is: 'overlap'; readonly other: string }
  | { readonly is: 'window-off' }
  | { readonly is: 'window-edge' }
  | { readonly is: 'nothing-left' }
  | { readonly is: 'falls-apart'; readonly parts: number }
  | { readonly is: 'too-many-panels'; readonly count: number; readonly before: number; readonly limit: number }
);

export interface Panelling {
  readonly panels: readonly Panel[];
  readonly hinges: readonly Hinge[];
  readonly strokes: readonly Stroke[];
  readonly slips: readonly PanelSlip[];
  /** Panels that a name means: one when it can be used, several or none when the maker must say more. */
  find(piece: string, part: PanelPart): readonly Panel[];
}
