import type { FoldDirection } from '../spec/index.ts';
import type { Length } from '../units/index.ts';
import type { FindingState } from './types.ts';

/** Which side of the closed card, seen from its cover. */
export type Side = 'left' | 'right' | 'top' | 'bottom';

/** Which way something lies off its place, seen from the cover: `above` is towards the reader. */
export type Way = Side | 'above' | 'below';

type Closed = { piece: string; width: Length; height: Length };
type Out = Closed & { cover: string; panel: string; side: Side; by: Length };
type OnPaper = { piece: string; line: string };
/** `part` lands `by` off its place on `onto`, towards `way`. */
type Missed = { part: string; onto: string; pose: string; by: Length; way: Way };
/** How much wider the lid is than what it goes over, in the tighter of both ways. */
type Over = { lid: string; over: string; room: Length; play: Length };
type Promised = Closed & { promisedWidth: Length; promisedHeight: Length };
/** Room left (less than zero: lacking) along the envelope's long and short sides. */
type Room = { piece: string; envelope: string; along: Length; across: Length };
type Bead = { filling: string; depth: Length; bead: Length };
/** What lies inside a crease, and how much paper the turn round it uses: square corners, and a round bend. */
type InFold = { crease: string; inside: Length; least: Length; most: Length };
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
    'point-angles': { piece: string; creases: string };
    'point-directions': { piece: string; creases: string };
    'point-narrowest': { piece: string; creases: string };
    /** `how`: to `fold flat`, or to `fold up` into a box. */
    through: { piece: string; how: string; panel: string; other: string; crease: string };
    between: { piece: string; how: string; panel: string; part: string; onto: string };
    circle: { piece: string; how: string; panels: string };
    box: { piece: string; panels: number; deep: Length };
    /** In the pose that is posted something goes `by` below the panel that it stands on. */
    'below-floor': { piece: string; pose: string; panel: string; floor: string; by: Length };
    apart: { piece: string };
    'not-known': { piece: string; pose: string; crease: string };
    'not-scored': { piece: string };
    /** Finding an order of plies would take too much work. */
    'too-much': { piece: string; panels: number };
  };
  'lines-on-paper': {
    'on-paper': { piece: string; lines: number };
    'off-paper': OnPaper;
    'divides-nothing': OnPaper & { stretch: number };
    'stretch-count': OnPaper & { wrote: number; takes: number };
    overlap: OnPaper & { other: string };
    'window-off': OnPaper;
    'window-edge': OnPaper;
    'nothing-left': OnPaper;
    'falls-apart': { piece: string; parts: number };
    'too-many-panels': OnPaper & { count: number; before: number; limit: number };
  };
  'joins-found': {
    found: { joins: number };
    'no-panel': { where: string; panel: string };
    'which-panel': { where: string; panel: string; choices: string };
    'to-itself': { where: string; panel: string };
  };
  'joins-agree': {
    agree: { piece: string; loops: number; pose: string };
    misses: Missed;
    'wrong-setting': Missed & { settings: string };
    'wrong-side': Missed & { glued: string; side: string };
    tears: { piece: string; crease: string; panel: string; other: string; by: Length; pose: string; settings: string };
    'foam-in-ring': { part: string; onto: string; foam: Length };
  };
  'lid-goes-over': { 'goes-over': Over; tight: Over; 'too-small': Over };
  'closed-size': {
    within: Closed & { cover: string };
    'sticks-out': Out;
    'turned-over': Out & { part: string; like: string };
    box: Closed & { deep: Length };
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
    box: { piece: string; deep: Length };
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
    /** It fails in an edition whose size comes from the table of local sizes. */
    'broken-locally': {
      that: string;
      otherwise: string;
      left: Length | number;
      right: Length | number;
      local: string;
      home: string;
      parameters: string;
    };
  };
  thickness: {
    thick: {
      piece: string;
      overall: Length;
      least: Length;
      greatest: Length;
      /** What makes the greatest, from the bottom to the top. */
      made: string;
      gives: Length;
      springback: Length;
      creases: number;
      assumed: string;
    };
    unknown: { piece: string; stocks: string };
    'foam-height': { where: string; stock: string; high: Length; layer: Length };
    box: { piece: string; deep: Length };
    'not-folded': { piece: string };
  };
  weight: {
    weighs: { grams: number; heaviest: string; most: number; assumed: string };
    unknown: { grams: number; stocks: string };
  };
  shaker: {
    moves: Bead & { free: Length };
    tight: Bead & { free: Length; least: Length; layer: Length; layers: number; now: number };
    jams: Bead & { least: Length; layer: Length; layers: number; now: number };
    'bead-unknown': { filling: string; stock: string; depth: Length };
    closed: { filling: string; floor: string; roof: string; wall: Length; margin: Length };
    'no-chamber': { filling: string; piece: string; window: string };
    open: { filling: string; piece: string; side: 'back' | 'face' };
    'open-in-part': { filling: string; panel: string };
    'narrow-wall': { filling: string; panel: string; wall: Length; least: Length };
    'narrow-margin': { filling: string; panel: string; margin: Length; least: Length };
    'frame-past-film': { filling: string; panel: string; film: string; by: Length };
    'in-order': { filling: string; powder: string; closing: string };
    'no-powder': { filling: string; closing: string };
    'powder-late': { filling: string; powder: string };
    'filled-late': { filling: string; closing: string };
  };
  'thickness-in-fold': {
    clear: { crease: string; inside: Length; least: Length; most: Length; creases: number };
    short: InFold & { panel: string; gap: Length; by: Length };
    'too-long': InFold & { panel: string; gap: Length; by: Length };
    creeps: { crease: string; panel: string; out: Length; least: Length; most: Length };
    'needs-spine': InFold;
    unknown: { crease: string; stocks: string };
  };
  'crease-channel': {
    channel: { stock: string; grams: number; creases: number; along: Length; across: Length };
    'no-channel': { stock: string; grams: number; creases: number };
    'too-close': { piece: string; panel: string; size: Length; least: Length };
    unknown: { stock: string; creases: number };
  };
  grain: {
    along: { piece: string; crease: string };
    across: { piece: string; crease: string };
    'sheet-across': { piece: string; crease: string; stock: string; sheet: string };
    'not-known': { piece: string; crease: string; stock: string; runs: 'down' | 'across' };
  };
  'moving-layers': {
    light: { part: string; plies: number };
    many: { part: string; plies: number; most: number };
    foam: { part: string; panel: string };
    'foam-at-slit': { part: string; panel: string; slit: string };
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
    'point-angles': 'fail',
    'point-directions': 'fail',
    'point-narrowest': 'fail',
    through: 'fail',
    between: 'fail',
    circle: 'fail',
    box: 'pass',
    'below-floor': 'fail',
    apart: 'untested',
    'not-known': 'untested',
    'not-scored': 'untested',
    'too-much': 'untested',
  },
  'lines-on-paper': {
    'on-paper': 'pass',
    'off-paper': 'fail',
    'divides-nothing': 'fail',
    'stretch-count': 'fail',
    overlap: 'question',
    'window-off': 'fail',
    'window-edge': 'fail',
    'nothing-left': 'fail',
    'falls-apart': 'fail',
    'too-many-panels': 'fail',
  },
  'joins-found': { found: 'pass', 'no-panel': 'fail', 'which-panel': 'fail', 'to-itself': 'fail' },
  'joins-agree': {
    agree: 'pass',
    misses: 'fail',
    'wrong-setting': 'fail',
    'wrong-side': 'fail',
    tears: 'fail',
    'foam-in-ring': 'question',
  },
  'lid-goes-over': { 'goes-over': 'pass', tight: 'question', 'too-small': 'fail' },
  'closed-size': {
    within: 'pass',
    'sticks-out': 'question',
    'turned-over': 'fail',
    box: 'pass',
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
    box: 'untested',
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
  requirements: { holds: 'pass', broken: 'fail', 'broken-locally': 'fail' },
  thickness: {
    thick: 'pass',
    unknown: 'untested',
    'foam-height': 'question',
    box: 'pass',
    'not-folded': 'untested',
  },
  weight: { weighs: 'pass', unknown: 'untested' },
  shaker: {
    moves: 'pass',
    tight: 'question',
    jams: 'fail',
    'bead-unknown': 'untested',
    closed: 'pass',
    'no-chamber': 'fail',
    open: 'fail',
    'open-in-part': 'fail',
    'narrow-wall': 'question',
    'narrow-margin': 'question',
    'frame-past-film': 'fail',
    'in-order': 'pass',
    'no-powder': 'untested',
    'powder-late': 'question',
    'filled-late': 'fail',
  },
  'thickness-in-fold': {
    clear: 'pass',
    short: 'question',
    'too-long': 'fail',
    creeps: 'question',
    'needs-spine': 'question',
    unknown: 'untested',
  },
  'crease-channel': { channel: 'pass', 'no-channel': 'pass', 'too-close': 'question', unknown: 'untested' },
  grain: { along: 'pass', across: 'question', 'sheet-across': 'question', 'not-known': 'untested' },
  'moving-layers': { light: 'pass', many: 'question', foam: 'question', 'foam-at-slit': 'fail' },
  'looks-like-half': { even: 'pass', uneven: 'question' },
};
