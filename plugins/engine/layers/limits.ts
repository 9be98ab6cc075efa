/*
 * How much is looked at to find one order of plies. Cards take less than a tenth of each; where that is not enough the question is
 * left open.
 */

/** Segments looked at to see what lies over what. */
export const MOST_LOOKS = 20_000_000;

/** Rules about what lies above what. A hundred panels on one spot make 160,000. */
export const MOST_RULES = 200_000;

/** Rules looked at in a search for orders. */
export const MOST_STEPS = 3_000_000;

/** The same while the reason is sought why there is no order: in one trial, and in all. */
export const MOST_STEPS_IN_TRIAL = 50_000;
export const MOST_STEPS_TO_EXPLAIN = 3_000_000;

/** Work that is left to be done. */
export interface Steps {
  left: number;
}
