import { describe, expect, it } from 'vitest';
import {
  CHECK_LABELS,
  type CheckName,
  type Finding,
  Length,
  OUTCOME_STATES,
  type OutcomeName,
  type Outcomes,
  SYSTEMS,
  sayFinding,
} from '../../../plugins/engine/index.ts';
import { PLACE } from '../dryfit/made-card.ts';

const [a, b, c] = [Length.fromInches('4 1/4'), Length.fromInches('5 1/2'), Length.fromInches('1/8')];
const less = c.negated();
const closed = { piece: 'base', width: a, height: b };
const promised = { ...closed, promisedWidth: b, promisedHeight: b };
const room = { piece: 'base', envelope: 'US A2', along: c, across: c };
const sum = { piece: 'base', side: 'wide' as const, declared: b, total: a, panel: 'back', by: c };
const missed = { part: 'bridge.span', onto: 'base.wing', pose: 'closed', by: b, way: 'left' as const };
const lid = { lid: 'lid.middle', over: 'box', play: c };
const difference = { first: 'base.front', second: 'base.back', firstValue: a, secondValue: b, by: c };

/** Facts for every outcome that a check can return; the compiler asks for each of them, and for its own facts. */
const SAMPLES: { readonly [C in CheckName]: { readonly [O in OutcomeName<C>]: Outcomes[C][O] } } = {
  'closes-flat': {
    flat: { piece: 'base', plies: 2, panels: 3 },
    'one-panel': { piece: 'base' },
    'too-long': { piece: 'base', panel: 'base.foot', crease: 'turn', by: c },
    'no-order': { piece: 'base', panel: 'base.foot', crease: 'turn', by: c },
    crossing: { piece: 'base', crease: 'half', other: 'spine' },
    'point-angles': { piece: 'base', creases: 'half, rising, falling' },
    'point-directions': { piece: 'base', creases: 'half, rising, falling' },
    'point-narrowest': { piece: 'base', creases: 'half, rising, falling' },
    through: { piece: 'base', how: 'fold flat', panel: 'base.foot', other: 'base.back', crease: 'turn' },
    between: { piece: 'base', how: 'fold flat', panel: 'base.foot', part: 'mat', onto: 'base.back' },
    circle: { piece: 'base', how: 'fold flat', panels: 'base.foot, base.back, mat' },
    box: { piece: 'base', panels: 5, deep: b },
    'below-floor': { piece: 'lid', pose: 'boxed', panel: 'lid.left', floor: 'lid.middle', by: c },
    apart: { piece: 'base' },
    'not-known': { piece: 'base', pose: 'closed', crease: 'spine' },
    'not-scored': { piece: 'base' },
    'too-much': { piece: 'base', panels: 200 },
  },
  'lines-on-paper': {
    'on-paper': { piece: 'base', lines: 1 },
    'off-paper': { piece: 'base', line: 'slit' },
    'divides-nothing': { piece: 'base', line: 'half', stretch: 2 },
    'stretch-count': { piece: 'base', line: 'half', wrote: 1, takes: 3 },
    overlap: { piece: 'base', line: 'half', other: 'spine' },
    'window-off': { piece: 'base', line: 'porthole' },
    'window-edge': { piece: 'base', line: 'porthole' },
    'nothing-left': { piece: 'base', line: '' },
    'falls-apart': { piece: 'base', parts: 2 },
    'too-many-panels': { piece: 'base', line: '', count: 600, before: 0, limit: 500 },
  },
  'joins-found': {
    found: { joins: 2 },
    'no-panel': { where: 'mat onto base.front', panel: 'base.front' },
    'which-panel': { where: 'mat onto base.front', panel: 'base.front', choices: 'base.front.1, base.front.2' },
    'to-itself': { where: 'base.front onto base.front', panel: 'base.front' },
  },
  'joins-agree': {
    agree: { piece: 'base', loops: 2, pose: 'closed' },
    misses: missed,
    'wrong-setting': { ...missed, settings: 'inner: flat, corner: flat' },
    'wrong-side': { ...missed, way: 'above', glued: 'bridge.tab', side: 'back' },
    tears: { piece: 'base', crease: 'half', panel: 'base.1', other: 'base.2', by: c, pose: 'closed', settings: '' },
    'foam-in-ring': { part: 'mat', onto: 'base.front', foam: c },
  },
  'lid-goes-over': {
    'goes-over': { ...lid, room: c },
    tight: { ...lid, room: Length.fromInches('1/16') },
    'too-small': { ...lid, room: Length.zero },
  },
  'closed-size': {
    within: { ...closed, cover: 'base.back' },
    'sticks-out': { ...closed, cover: 'base.back', panel: 'base.flap', side: 'left', by: c },
    'turned-over': { ...closed, cover: 'base', panel: 'mat', side: 'left', by: c, part: 'mat', like: 'back' },
    box: { ...closed, deep: b },
    'as-promised': closed,
    turned: promised,
    'not-as-promised': promised,
    'does-not-close': { piece: 'base' },
  },
  'fits-envelope': {
    fits: { ...room, clearance: c },
    tight: { ...room, clearance: c, next: 'US A6' },
    'too-big': { ...room, along: less, next: '' },
    'no-envelope': { next: 'US A2' },
    box: { piece: 'base', deep: b },
    'does-not-close': { piece: 'base' },
  },
  'fits-sheet': {
    fits: { ...closed, sheet: 'US Letter', along: c, across: c },
    'too-big': { ...closed, sheet: 'US Letter', along: less, across: less, instead: 'US Legal' },
    'no-sheet': { ...closed, stock: 'cover', instead: '' },
  },
  'scores-inside': {
    inside: { piece: 'base', scores: 2, panel: 'back', least: a },
    narrow: { piece: 'base', panel: 'spine', size: c, least: a },
    outside: { piece: 'base', crease: 'spine', at: b, side: a },
    'no-room': { piece: 'base', panel: 'spine', size: less },
  },
  'declared-equalities': {
    equal: { measures: 'base.front, base.back', value: a },
    differ: difference,
    'differ-in-print': difference,
  },
  'sum-of-panels': {
    'adds-up': { piece: 'base', side: 'high', total: b, panels: [a, c] },
    short: sum,
    over: { ...sum, declared: c },
    'uneven-halves': { ...sum, half: c },
  },
  'recipe-agrees': {
    agrees: { piece: 'base', width: a, height: b, scores: [c] },
    'sheet-side': { piece: 'base', wrote: a, takes: b, by: c, width: b, height: b },
    'score-position': { piece: 'base', wrote: a, takes: b, by: c, scores: [b] },
    'score-count': { piece: 'base', wrote: [], takes: [a, b] },
    'score-direction': { piece: 'base', at: a, wrote: 'valley', takes: 'mountain' },
    'other-face': { piece: 'base' },
    'other-side': { piece: 'base', wrote: a, takes: b },
    'side-unknown': { side: '5 1/4', width: a, height: b },
    'score-beyond': { at: b, side: a, other: a },
    'scores-descend': { at: a, before: b },
    'piece-unknown': { piece: '', pieces: 'base, mat' },
  },
  requirements: {
    holds: { that: 'width >= depth', left: b, right: a },
    broken: { that: 'width >= depth', otherwise: 'Make it wider.', left: a, right: b },
    'broken-locally': {
      that: 'width >= depth',
      otherwise: 'Make it wider.',
      left: a,
      right: b,
      local: 'ISO A6',
      home: 'US A2',
      parameters: '`width` and `height`',
    },
  },
  thickness: {
    thick: {
      piece: 'base',
      overall: c,
      least: c,
      greatest: c,
      made: 'base.back, mat, base.front',
      gives: c,
      springback: c,
      creases: 2,
      assumed: 'cover, glue',
    },
    unknown: { piece: 'base', stocks: 'cover' },
    'foam-height': { where: 'mat onto base.front', stock: 'foam', high: c, layer: c },
    box: { piece: 'box', deep: a },
    'not-folded': { piece: 'base' },
  },
  weight: {
    weighs: { grams: 12.34, heaviest: 'base', most: 8.1, assumed: '' },
    unknown: { grams: 3.2, stocks: 'beads' },
  },
  shaker: {
    moves: { filling: 'beads', depth: b, bead: c, free: c },
    tight: { filling: 'beads', depth: b, bead: c, free: c, least: c, layer: c, layers: 2, now: 1 },
    jams: { filling: 'beads', depth: c, bead: b, least: c, layer: c, layers: 0, now: 0 },
    'bead-unknown': { filling: 'beads', stock: 'seeds', depth: c },
    closed: { filling: 'beads', floor: 'backing', roof: 'film', wall: c, margin: c },
    'no-chamber': { filling: 'beads', piece: 'ring', window: 'chamber' },
    open: { filling: 'beads', piece: 'ring', side: 'face' },
    'open-in-part': { filling: 'beads', panel: 'film' },
    'narrow-wall': { filling: 'beads', panel: 'ring', wall: c, least: c },
    'narrow-margin': { filling: 'beads', panel: 'film', margin: c, least: c },
    'frame-past-film': { filling: 'beads', panel: 'frame', film: 'film', by: c },
    'in-order': { filling: 'beads', powder: 'pouch', closing: 'film' },
    'no-powder': { filling: 'beads', closing: 'film' },
    'powder-late': { filling: 'beads', powder: 'pouch' },
    'filled-late': { filling: 'beads', closing: 'film' },
  },
  'thickness-in-fold': {
    clear: { crease: 'base.spine', inside: c, least: c, most: c, creases: 3 },
    short: { crease: 'base.spine', inside: c, least: c, most: c, panel: 'base.flap', gap: c, by: c },
    'too-long': { crease: 'base.spine', inside: c, least: c, most: c, panel: 'base.flap', gap: Length.zero, by: c },
    creeps: { crease: 'base.spine', panel: 'inner.right', out: c, least: c, most: c },
    'needs-spine': { crease: 'base.spine', inside: c, least: c, most: c },
    unknown: { crease: 'base.spine', stocks: 'cover' },
  },
  'crease-channel': {
    channel: { stock: 'cover', grams: 270, creases: 2, along: c, across: c },
    'no-channel': { stock: 'pattern', grams: 118, creases: 1 },
    'too-close': { piece: 'base', panel: 'spine', size: c, least: c },
    unknown: { stock: 'cover', creases: 1 },
  },
  grain: {
    along: { piece: 'base', crease: 'spine' },
    across: { piece: 'base', crease: 'spine' },
    'sheet-across': { piece: 'base', crease: 'spine', stock: 'cover', sheet: 'US Letter' },
    'not-known': { piece: 'base', crease: 'spine', stock: 'cover', runs: 'down' },
  },
  'moving-layers': {
    light: { part: 'slider', plies: 1 },
    many: { part: 'slider', plies: 5, most: 3 },
    foam: { part: 'slider', panel: 'boat' },
    'foam-at-slit': { part: 'slider', panel: 'boat', slit: 'slit(1)' },
  },
  'looks-like-half': {
    even: { piece: 'base', half: a, total: b },
    uneven: { piece: 'base', first: 'front', second: 'back', firstSize: a, secondSize: b, half: a, total: b },
  },
};

const EVERY: Finding[] = Object.entries(SAMPLES).flatMap(([check, outcomes]) =>
  Object.entries(outcomes as Record<string, Finding['facts']>).map(([outcome, facts]) => {
    const states: Readonly<Record<string, Finding['state']>> = OUTCOME_STATES[check as CheckName];
    const state = states[outcome] ?? 'fail';
    return {
      check,
      outcome,
      state,
      figure: undefined,
      limit: undefined,
      witness: undefined,
      facts,
      place: PLACE,
      path: '',
    };
  }),
);

/** Words of geometry that no crafter uses, and signs of a fact that was missing. */
const NEVER =
  /taco|tortilla|kawasaki|maekawa|vertex|obstruction|residual|polygon|undefined|null|NaN|\[object|\s{2}|``/i;

describe('wording of findings', () => {
  it.each(SYSTEMS)('says every outcome in whole sentences, in one system of units: %s', (system) => {
    expect(EVERY.length).toBeGreaterThan(45);
    for (const finding of EVERY) {
      const name = `${finding.check} ${finding.outcome}`;
      const { says, remedy, label } = sayFinding(finding, system);
      expect(label, name).toBe(CHECK_LABELS[finding.check as CheckName]);
      for (const text of [says, ...(remedy === undefined ? [] : [remedy])]) {
        expect(text, name).toMatch(/^[`A-Z].*[.?)]$/s);
        expect(text, name).not.toMatch(NEVER);
        // Names between backticks are the maker's own.
        expect(text.replace(/`[^`]*`/g, ''), name).not.toMatch(
          system === 'inch' ? /\d mm\b/ : /\d in\b(?!\s+(half|place))/,
        );
      }
    }
  });

  it('says what to do wherever something is to be done', () => {
    for (const finding of EVERY.filter(({ state }) => state === 'fail' || state === 'question')) {
      const name = `${finding.check} ${finding.outcome}`;
      expect(sayFinding(finding, 'inch').remedy, name).toMatch(/^[A-Z]/);
    }
  });

  it('gives a figure with every pass, never a bare yes', () => {
    // A card that is one panel and a fold that was found flat are numbers of panels.
    for (const finding of EVERY.filter(({ state }) => state === 'pass')) {
      expect(sayFinding(finding, 'inch').says, finding.outcome).toMatch(/\d|one/);
    }
  });

  it('refuses a finding that no check makes', () => {
    const [first] = EVERY;
    if (!first) throw new Error('there are findings');
    expect(() => sayFinding({ ...first, outcome: 'splendid' }, 'inch')).toThrow(RangeError);
    expect(() => sayFinding({ ...first, check: 'splendid' }, 'inch')).toThrow(RangeError);
  });
});
