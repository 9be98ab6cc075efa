import type Fraction from 'fraction.js';
import type { Point } from '../panels/index.ts';

/**
 * An exact rigid motion of the plane, from a panel's drawing to the closed card seen from the ground panel's face:
 * `x' = a x + b y + e`, `y' = c x + d y + f`. `faceUp` is false when the panel lies with its back up.
 */
export interface Placement {
  readonly a: Fraction;
  readonly b: Fraction;
  readonly c: Fraction;
  readonly d: Fraction;
  readonly e: Fraction;
  readonly f: Fraction;
  readonly faceUp: boolean;
}

export interface PlacedPanel {
  readonly panel: string;
  readonly piece: string;
  readonly placement: Placement;
  /** The panel's corners where they lie in the closed card. */
  readonly outline: readonly Point[];
}

/** A flat pose of one piece or assembly, exact. */
export interface FlatPose {
  readonly pose: string;
  /** The panel that stays put; its placement is the identity. */
  readonly ground: string;
  readonly panels: readonly PlacedPanel[];
  /**
   * An order of plies from the bottom (away from the viewer) to the top, by panel name, in which no panel passes
   * through another; undefined when there is none.
   */
  readonly plies: readonly string[] | undefined;
  /** When there is no order of plies: the panels and crease that cannot be. */
  readonly obstruction: Obstruction | undefined;
  /** Bounding box of the placed panels. */
  readonly box: {
    readonly left: Fraction;
    readonly top: Fraction;
    readonly right: Fraction;
    readonly bottom: Fraction;
  };
}

/**
 * Why a piece cannot be folded flat.
 *
 * - `too-long`: `panel`, at the end of the strip, has to lie inside the fold of the panel beyond `crease` and is longer
 *   than that by `by` (millimetres). `cures` when taking off just that much makes the whole strip fold.
 * - `crossing`: `crease` and `other` cross in uncut paper and both shut, each with one direction along its whole length.
 * - `gap`: `panel` reached over `crease` does not lie where it does by another way round: the paper would tear.
 */
export type Obstruction =
  | {
      readonly kind: 'too-long';
      readonly panel: string;
      readonly crease: string;
      readonly by: Fraction;
      readonly cures: boolean;
    }
  | { readonly kind: 'crossing'; readonly panel: string; readonly crease: string; readonly other: string }
  | { readonly kind: 'gap'; readonly panel: string; readonly crease: string };
