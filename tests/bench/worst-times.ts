import { goTheWholeWay } from '../engine/support/whole-way.ts';
import { WORST_CASES } from '../engine/whole-way/worst-cases.ts';

/** The longest leg of a file's way: its reading, one edition up to its dry fit, or the drawings of one. */
export interface WorstTime {
  readonly asks: string;
  readonly leg: string;
  /** Of the processor. */
  readonly ms: number;
}

/** Files that ask for far too much, the slowest first. */
export function timeWorstCases(): WorstTime[] {
  return WORST_CASES.map(({ asks, text }): WorstTime => {
    const legs = Object.entries(goTheWholeWay(text, { draws: true }).ms).map(([leg, ms]) => ({ asks, leg, ms }));
    return legs.reduce((worst, one) => (one.ms > worst.ms ? one : worst));
  }).sort((a, b) => b.ms - a.ms);
}
