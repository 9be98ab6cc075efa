import type { Card } from '../../../plugins/engine/index.ts';
import { card, inches, piece, pose, posed } from '../dryfit/made-card.ts';
import { at, edgeOf, glue, hang, line, pin, ref, slide, slip, withLines } from './made-joins.ts';

/*
 * Cards with joins, written by hand as the fold language would read them. Sizes in inches.
 */

const bridgeBase = piece('base', ['wing 3', 'valley inner', 'side 3', 'valley outer', 'back 6'], ['5']);
const bridgeStrip = piece('bridge', ['tab 3', 'valley corner', 'end 3', 'valley turn', 'span 6'], ['1 1/2']);
const ornament = piece('ornament', ['1 1/2'], ['1 1/2']);

/**
 * A four-bar loop 6-3-6-3: a strip across the top of a base, with an ornament hung from it. It closes with two creases shut
 * and two flat, all four in line: 9 x 5 (common practice, no source; 6 + 3 proves it).
 */
export const BRIDGE: Card = card([bridgeBase, bridgeStrip, ornament], {
  joins: [
    glue([ref('bridge.tab'), at('3', '0')], [ref('base.back'), at('12', '0')]),
    glue([ref('bridge.span'), at('12', '0')], [ref('base.wing'), at('3', '0')]),
    hang([ref('ornament'), at('3/4', '0')], [ref('bridge.span'), at('7 1/2', '1 1/2')], inches('1/2')),
  ],
  poses: [
    pose('closed', [bridgeBase, bridgeStrip], ['inner', 'corner']),
    posed('display', [
      { piece: 'base', crease: 'outer', turn: 90 },
      { piece: 'base', crease: 'inner', turn: 'solve' },
      { piece: 'bridge', crease: 'corner', turn: 'solve' },
      { piece: 'bridge', crease: 'turn', turn: 'solve' },
    ]),
  ],
});

/** The same with every crease shut, as a maker may write it: the strip then reaches 6 past its place. */
export const BRIDGE_ALL_SHUT: Card = {
  ...BRIDGE,
  poses: [pose('all-shut', [bridgeBase, bridgeStrip])],
  posts: 'all-shut',
};

const insertBase = piece('base', ['left 3', 'valley spine', 'right 3'], ['6']);
const insert = withLines(
  piece('insert', ['5 1/2'], ['5 1/2']),
  line('falling', at('0', '0'), at('5 1/2', '5 1/2'), ['valley']),
  line('rising', at('0', '5 1/2'), at('5 1/2', '0'), ['valley']),
  line('half', at('2 3/4', '0'), at('2 3/4', '5 1/2'), ['mountain']),
);

/**
 * A square with both diagonals one way and a half fold the other, two faces glued into a side fold: it collapses to a
 * triangle that is gone in the closed card. Common practice, no source.
 */
export function explosionInsert(left = edgeOf('insert', 'left'), right = edgeOf('insert', 'right')): Card {
  const laid = { line: 'half', along: 'spine', after: inches('1/4') };
  return card([insertBase, insert], {
    joins: [
      glue([left, at('2 3/4', '0')], [ref('base.left'), at('3', '1/4')], { laid }),
      glue([right, at('2 3/4', '0')], [ref('base.right'), at('3', '1/4')], { laid }),
    ],
    poses: [pose('closed', [insertBase, insert])],
  });
}

const boxBase = piece('base', ['left 4', 'valley', 'right 4'], ['6']);
const boxStrip = piece('strip', ['foot 1/2', 'valley', 'wall 1', 'mountain', 'top 2', 'valley', 'toe 1/2'], ['3']);

/**
 * A parallel box pop-up: a strip glued 2 from the spine on one side and 1 on the other, so that 2 + 1 = 1 + 2 lets it shut. Its
 * tabs point away from the spine.
 */
export const POP_UP: Card = card([boxBase, boxStrip], {
  joins: [
    glue([ref('strip.foot'), at('1/2', '0')], [ref('base.left'), at('2', '1')]),
    glue([ref('strip.toe'), at('3 1/2', '0')], [ref('base.right'), at('5', '1')]),
  ],
});

const tray = piece('tray', ['left 3', 'valley', 'middle 4', 'valley', 'right 3'], ['4']);
const sleeve = piece('lid', ['left 1 1/2', 'valley', 'middle 4 1/8', 'valley', 'right 1 1/2'], ['4 1/8']);

/** A tray with two walls, and a lid slipped over it. */
export const LIDDED: Card = card([tray, sleeve], {
  joins: [slip(ref('lid.middle'), ref('tray'))],
  poses: [
    posed(
      'closed',
      [tray, sleeve].flatMap((one) => one.creases.map(({ name }) => ({ piece: one.name, crease: name, turn: 90 }))),
    ),
    posed('lid-off', [], { aside: ['lid'] }),
  ],
});

const spinnerBase = piece('base', ['front 4', 'valley spine', 'back 4'], ['5']);
const arm = piece('arm', ['3'], ['1']);

/** An arm pinned by its left end to a front. */
export const SPINNER: Card = card([spinnerBase, arm], {
  joins: [pin([ref('arm'), at('1/2', '1/2')], [ref('base.front'), at('1', '2 1/2')])],
  poses: [
    pose('closed', [spinnerBase]),
    posed('turned', [], { pins: [{ piece: 'arm', turn: 90 }] }),
    posed('slanting', [], { pins: [{ piece: 'arm', turn: 30 }] }),
  ],
});

const pull = piece('pull', ['3'], ['2']);

/** A strip that slides to the right in a front. */
export const SLIDER: Card = card([spinnerBase, pull], {
  joins: [slide([ref('pull'), at('1 1/2', '1')], [ref('base.front'), at('2', '2')])],
  poses: [pose('closed', [spinnerBase]), posed('pulled', [], { slides: [{ piece: 'pull', at: inches('3/4') }] })],
});
