import type { Joint } from '../assembly/index.ts';
import type { ClosedPose } from '../motion/index.ts';

/** One way in which the panels of a flat pose can lie on each other. */
export interface PlyOrder {
  /** Panel names from the bottom to the top, seen with the ground's face up. Where overlaps go in a circle (four flaps tucked in turn, a woven slider), undefined. */
  readonly plies: readonly string[] | undefined;
  /** Pairs that overlap: `over` lies above `under`. What is slid or slotted may lie both above and below one panel. */
  readonly pairs: readonly { readonly over: string; readonly under: string }[];
}

export interface PlyOrders {
  readonly pose: ClosedPose;
  /** Up to `limit` orders, in a fixed sequence; the first is the one that is drawn. */
  readonly orders: readonly PlyOrder[];
  /** How many there are; undefined when there are more than were counted. */
  readonly count: bigint | undefined;
  /** When there is no order: why. With neither orders nor an obstruction, finding out would have taken too much work. */
  readonly obstruction: Obstruction | undefined;
  /** Most panels over one spot. */
  readonly deepest: number;
}

/**
 * Why there is no order of plies, as the smallest set of facts found that contradict each other.
 *
 * - `too-long`: in a strip, `panel` has to lie inside the fold of the panel beyond `crease` and is longer by `mm`; `cures` when
 *   taking off just that much makes the strip fold.
 * - `vertex`: at a point of uncut paper where creases meet, no flat folding exists: the reason after the theorem that says so.
 * - `through`: `panel` would have to pass through `other`, at `crease`: a crease, or a cut that one is slid or slotted through.
 * - `between`: `panel` would have to lie between two that are glued to each other.
 * - `circle`: no single pair is to blame.
 */
export type Obstruction =
  | {
      readonly is: 'too-long';
      readonly piece: string;
      readonly panel: string;
      readonly crease: string;
      readonly mm: number;
      readonly cures: boolean;
    }
  | {
      readonly is: 'vertex';
      readonly piece: string;
      readonly creases: readonly string[];
      readonly why: 'angles' | 'directions' | 'smallest-sector';
    }
  | {
      readonly is: 'through';
      readonly panel: string;
      readonly other: string;
      readonly piece: string;
      readonly crease: string;
    }
  | { readonly is: 'between'; readonly panel: string; readonly joint: Joint }
  | { readonly is: 'circle'; readonly panels: readonly string[] };
