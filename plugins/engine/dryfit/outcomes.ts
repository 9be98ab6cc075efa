import type { FoldDirection } from '../spec/index.ts';
import type { Length } from '../units/index.ts';
import type { FindingState } from './types.ts';

/** Which side of the closed card, seen from its cover. */
export type Side = 'left' | 'right' | 'top' | 'bottom';

type Closed = { piece: string; width: Length; height: Length };
type Promised = Closed & { promisedWidth: Length; promisedHeight: Length };
/** Room left (less than zero: lacking) along the envelope's long and short sides. */
type Room = { piece: string; envelope: string; along: Length; across: Length };
type Cut = { piece: string; width: Length; height: Length };
type Difference = { first: string; second: string; firstValue: Length; secondValue: Length; by: Length };
type Sum = { piece: string; side: 'wide' | 'high'; declared: Length; total: Length; panel: string; by: Length };

/**
 * Every answer that each check can give, with the facts that its sentence needs. An empty string stands for a name
 * that there is none of. `wording` holds a sentence for each, which the compiler checks.
 */
export interface Outcomes {
  'closes-flat': {
    flat: { piece: string; plies: number; panels: number };
    'one-panel': { piece: string };
    'too-long': { piece: string; panel: string; crease: string; by: Length };
    'no-order': { piece: string; panel: string; crease: string; by: Length };
    crossing: { piece: string; crease: string; other: string };
    gap: { piece: string; panel: string; crease: string };
    'not-scored': { piece: string };
  };
  'closed-size': {
    within: Closed & { cover: string };
    'sticks-out': Closed & { cover: string; panel: string; side: Side; by: Length };
    'as-promised': Closed;
    turned: Promised;
    'not-as-promised': Promised;
    'does-not-close': { piece: string };
  };
  'fits-envelope': {
    fits: Room & { clearance: Length };
    tight: Room & { clearance: Length; next: string };
    'too-big': Room & { next: string };
    'no-envelope': { next: string };
    'does-not-close': { piece: string };
  };
  'fits-sheet': {
    fits: Cut & { sheet: string; along: Length; across: Length };
    'too-big': Cut & { sheet: string; along: Length; across: Length; instead: string };
    'no-sheet': Cut & { stock: string; instead: string };
  };
  'scores-inside': {
    inside: { piece: string; scores: number; panel: string; least: Length };
    narrow: { piece: string; panel: string; size: Length; least: Length };
    outside: { piece: string; crease: string; at: Length; side: Length };
    'no-room': { piece: string; panel: string; size: Length };
  };
  'declared-equalities': {
    equal: { measures: string; value: Length };
    differ: Difference;
    'differ-in-print': Difference;
  };
  'sum-of-panels': {
    'adds-up': { piece: string; side: 'wide' | 'high'; total: Length; panels: readonly Length[] };
    short: Sum;
    over: Sum;
    'uneven-halves': Sum & { half: Length };
  };
  'recipe-agrees': {
    agrees: { piece: string; width: Length; height: Length; scores: readonly Length[] };
    'sheet-side': { piece: string; wrote: Length; takes: Length; by: Length; width: Length; height: Length };
    'score-position': { piece: string; wrote: Length; takes: Length; by: Length; scores: readonly Length[] };
    'score-count': { piece: string; wrote: readonly Length[]; takes: readonly Length[] };
    'score-direction': { piece: string; at: Length; wrote: FoldDirection; takes: FoldDirection };
    'other-face': { piece: string };
    'other-side': { piece: string; wrote: Length; takes: Length };
    'side-unknown': { side: string; width: Length; height: Length };
    'score-beyond': { at: Length; side: Length; other: Length };
    'scores-descend': { at: Length; before: Length };
    'piece-unknown': { piece: string; pieces: string };
  };
  requirements: {
    holds: { that: string; left: Length | number; right: Length | number };
    broken: { that: string; otherwise: string; left: Length | number; right: Length | number };
  };
  'looks-like-half': {
    even: { piece: string; half: Length; total: Length };
    uneven: {
      piece: string;
      first: string;
      second: string;
      firstSize: Length;
      secondSize: Length;
      half: Length;
      total: Length;
    };
  };
}

export type CheckName = keyof Outcomes;
export type OutcomeName<C extends CheckName> = keyof Outcomes[C] & string;

/** How each outcome weighs. */
export const OUTCOME_STATES: { readonly [C in CheckName]: { readonly [O in OutcomeName<C>]: FindingState } } = {
  'closes-flat': {
    flat: 'pass',
    'one-panel': 'pass',
    'too-long': 'fail',
    'no-order': 'fail',
    crossing: 'fail',
    gap: 'fail',
    'not-scored': 'untested',
  },
  'closed-size': {
    within: 'pass',
    'sticks-out': 'question',
    'as-promised': 'pass',
    turned: 'question',
    'not-as-promised': 'fail',
    'does-not-close': 'untested',
  },
  'fits-envelope': {
    fits: 'pass',
    tight: 'question',
    'too-big': 'fail',
    'no-envelope': 'untested',
    'does-not-close': 'untested',
  },
  'fits-sheet': { fits: 'pass', 'too-big': 'fail', 'no-sheet': 'untested' },
  'scores-inside': { inside: 'pass', narrow: 'question', outside: 'fail', 'no-room': 'fail' },
  'declared-equalities': { equal: 'pass', differ: 'fail', 'differ-in-print': 'fail' },
  'sum-of-panels': { 'adds-up': 'pass', short: 'fail', over: 'fail', 'uneven-halves': 'fail' },
  'recipe-agrees': {
    agrees: 'pass',
    'sheet-side': 'fail',
    'score-position': 'fail',
    'score-count': 'fail',
    'score-direction': 'fail',
    'other-face': 'question',
    'other-side': 'fail',
    'side-unknown': 'fail',
    'score-beyond': 'fail',
    'scores-descend': 'question',
    'piece-unknown': 'untested',
  },
  requirements: { holds: 'pass', broken: 'fail' },
  'looks-like-half': { even: 'pass', uneven: 'question' },
};
