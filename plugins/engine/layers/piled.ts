import type { Leaves } from './leaves.ts';
import type { Paper } from './paper.ts';
import type { Pile } from './piles.ts';

/** Every set of leaves that lie over one spot, with the panels that they are there by. */
export interface Spot {
  /** Of one length and in one order; by panel, rising. */
  readonly panels: readonly number[];
  readonly leaves: readonly number[];
}

/** Spots, each once, in the order in which they are met. */
export class Spots {
  readonly list: Spot[] = [];
  private readonly numbers = new Map<string, number>();

  /** The number of a spot. */
  add(panels: readonly number[], leaves: readonly number[]): number {
    const key = String.fromCharCode(...panels, 0xffff, ...leaves);
    const known = this.numbers.get(key);
    if (known !== undefined) return known;
    this.numbers.set(key, this.list.length);
    this.list.push({ panels, leaves });
    return this.list.length - 1;
  }
}

/** Which leaf lies above which: a variable for each two that overlap. */
export class Overlaps {
  private readonly leaves: number;
  /** The variable of two leaves by `lower number * leaves + higher number`, and one more; 0 for none. */
  private readonly variable: Int32Array;
  /** The two leaves of each variable, the lower number first. */
  readonly pairs: (readonly [number, number])[] = [];

  constructor(leaves: number) {
    this.leaves = leaves;
    this.variable = new Int32Array(leaves * leaves);
  }

  add({ leaves }: Spot): void {
    for (const [i, one] of leaves.entries()) {
      for (let j = 0; j < i; j++) {
        const other = leaves[j] ?? one;
        const [low, high] = one < other ? [one, other] : [other, one];
        const slot = low * this.leaves + high;
        if (low === high || this.variable[slot] !== 0) continue;
        this.pairs.push([low, high]);
        this.variable[slot] = this.pairs.length;
      }
    }
  }

  /** The literal that says that `upper` lies above `lower`; -1 when they overlap nowhere. */
  above(upper: number, lower: number): number {
    const [low, high] = upper < lower ? [upper, lower] : [lower, upper];
    const variable = (this.variable[low * this.leaves + high] ?? 0) - 1;
    return variable < 0 ? -1 : 2 * variable + (upper === high ? 0 : 1);
  }
}

/** What is asked all along while rules are gathered. */
export interface Piled {
  readonly paper: Paper;
  readonly piles: readonly Pile[];
  readonly leaves: Leaves;
  readonly spots: Spots;
  readonly overlaps: Overlaps;
}
