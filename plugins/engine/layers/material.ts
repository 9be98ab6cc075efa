import type Fraction from 'fraction.js';
import type { Caliper, Length } from '../units/index.ts';

/** What a supply is as far as thickness and weight go. */
export type MaterialSort = 'paper' | 'film' | 'foam' | 'board' | 'filler' | 'ornament' | 'ink' | 'adhesive' | 'other';

/**
 * What a card is made of, as a plain value by stock role. A figure that is not known is undefined, and whatever depends on it
 * is then not tested.
 */
export interface Material {
  /** As the maker knows it. */
  readonly name: string;
  readonly sort: MaterialSort;
  /** How thick one sheet or one coat is. A coat without one (ink, foil) counts as nothing. */
  readonly caliper?: Caliper | undefined;
  /** Grams per square metre, exactly. */
  readonly grammage?: Fraction | undefined;
  /** Grams per cubic centimetre of what is measured by its volume: foam and board with their air, filler as it is poured. */
  readonly density?: Fraction | undefined;
  /** Of filler: the largest measure of the largest bead or grain. */
  readonly bead?: Length | undefined;
  /** Of foam or board the height of one layer; of an ornament its height as measured. */
  readonly height?: Length | undefined;
  /** Of one ornament, in grams, as weighed. */
  readonly mass?: Fraction | undefined;
  /** Gives when it is pressed. Unless said, foam and filler do and nothing else does. */
  readonly compressible?: boolean | undefined;
  /** Along which side of its sheet the grain runs. */
  readonly grain?: 'long' | 'short' | undefined;
  readonly sheet?: { readonly width: Length; readonly height: Length } | undefined;
  /** Nobody named a supply: a usual one stands in, and every figure that comes of it is marked so. */
  readonly assumed?: true | undefined;
}

/** Materials by stock role; those of `layers` by the name that stands after `with`. */
export type Materials = Readonly<Record<string, Material>>;

export function isCompressible({ sort, compressible }: Material): boolean {
  return compressible ?? (sort === 'foam' || sort === 'filler');
}
