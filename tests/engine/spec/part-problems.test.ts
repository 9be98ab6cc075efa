import { describe, expect, it } from 'vitest';
import { readFold } from '../../../plugins/engine/index.ts';
import { marked, only } from '../support/marked.ts';
import { yamlMap } from '../support/yaml-tree.ts';

const TRIAL = {
  name: 'Trial',
  units: 'in',
  parameters: '{ width: 4, tilt: 30 deg, layers: 2 in }',
  pieces: `
  base:
    across: [front width, valley spine, back width]
    down: 5
    cuts: { slit: { left: [1, 3], from: 1, to: 3 }, slant: { start: top, off: spine, by: 20 deg, towards: bottom-right, long: 2 } }
    marks: { dash: "[5, 1] to [6, 1]" }
  tag(k): { each: k from 1 to 2, size: 2 x 1, creases: { fold: middle down } }
  strip: { size: 4 x 1 1/2, cuts: { nick: { left: 1, from: 0, to: 1/2 } } }
  frame: { size: 4 x 5, windows: { chamber: { inset: 1/2 } } }
  wheel: { circle: 1 }`,
};

type Row = readonly [code: string, path: string, yaml: string, remedy: string | RegExp];

/** One problem in a fold, at the ». */
function refuses(section: string, rows: readonly Row[], rest: Readonly<Record<string, string>> = {}): void {
  it.each(rows)('%s at %s: %s', (code, path, yaml, remedy) => {
    const lines = Object.entries({ ...TRIAL, ...rest }).map(([key, value]) => `${key}: ${value}`);
    const { text, place } = marked(`${lines.join('\n')}\n${section}: ${yaml}`, 'fold.md');
    const problem = only(readFold(yamlMap(text)).problems);
    expect(problem).toMatchObject({ code, path, place, severity: 'error' });
    if (typeof remedy === 'string') expect(problem.remedy).toBe(remedy);
    else expect(problem.remedy).toMatch(remedy);
  });
}

describe('joins', () => {
  refuses('joins', [
    ['wrong-shape', 'joins', '»{ glue: strip, onto: base.front }', /^Write a list of joins/],
    ['wrong-shape', 'joins[0]', '[»strip]', /^Write a join/],
    ['unknown-join', 'joins[0]', '[{ »gleu: strip, onto: base.front }]', 'Did you mean `glue`?'],
    ['unknown-join', 'joins[0]', '[{ »sew: strip, onto: base.front }]', /^Write `\{ glue:/],
    ['two-joins', 'joins[0]', '[{ glue: strip, »pin: wheel, onto: base.front }]', /^Write two joins/],
    ['key-missing', 'joins[0]', '[»{ glue: strip }]', 'Add `onto:` with a piece or one of its bands.'],
    ['unknown-key', 'joins[0].ontop', '[{ glue: strip, onto: base.front, »ontop: 2 }]', 'Did you mean `onto`?'],
    ['unknown-piece', 'joins[0].glue', '[{ glue: »strap, onto: base.front }]', 'Did you mean `strip`?'],
    ['unknown-piece', 'joins[0].onto', '[{ glue: strip, onto: »frnot }]', 'Did you mean `front`?'],
    ['unknown-panel', 'joins[0].onto', '[{ glue: strip, onto: »base.bakc }]', 'Did you mean `back`?'],
    ['unknown-panel', 'joins[0].onto', '[{ glue: strip, onto: »base.front.back }]', /no panel called/],
    ['ambiguous-panel', 'joins[0].glue', '[{ glue: »tag, onto: base.front }]', 'Write `tag(1)` or `tag(2)`.'],
    ['unknown-word', 'joins[0].onto', '[{ glue: strip, onto: »bakc of base.front }]', 'Did you mean `back`?'],
    ['bad-reference', 'joins[0].onto', '[{ glue: strip, onto: »base front }]', /^Write one name/],
    ['joined-to-itself', 'joins[0].onto', '[{ glue: strip, onto: »strip }]', /^`strip` cannot hold itself/],
    ['bad-lay', 'joins[0].lay', '[{ glue: strip, onto: base.front, lay: »top to spine }]', /`fold along spine`/],
    [
      'unknown-line',
      'joins[0].lay',
      '[{ glue: strip, onto: base.front, lay: top along »spien }]',
      'Did you mean `spine`?',
    ],
    [
      'unknown-line',
      'joins[0].lay',
      '[{ glue: strip, onto: base.front, lay: »seam along spine }]',
      /^`strip` has no line/,
    ],
    [
      'ambiguous-line',
      'joins[0].lay',
      '[{ glue: strip, onto: base.front, lay: left along »slit }]',
      'Write `slit(1)` or `slit(2)`.',
    ],
    ['key-missing', 'joins[0].after', '[{ glue: strip, onto: base.front, »after: 2 }]', /^Add `lay:`/],
    [
      'laid-twice',
      'joins[0].match',
      '[{ glue: strip, onto: base, lay: top along spine, »match: top }]',
      /^Keep `lay` or `match`/,
    ],
    [
      'laid-twice',
      'joins[0].turn',
      '[{ glue: strip, onto: base, lay: top along spine, »turn: 90 }]',
      /^Keep `lay` or `turn`/,
    ],
    [
      'unknown-point',
      'joins[0].match',
      '[{ glue: strip, onto: base.front, match: »topleft }]',
      'Did you mean `top-left`?',
    ],
    [
      'unknown-line',
      'joins[0].match',
      '[{ glue: strip, onto: base.front, match: top to »spien at 2 }]',
      'Did you mean `spine`?',
    ],
    ['no-centre', 'joins[0].onto', '[{ glue: strip, onto: »base.top-left }]', /`lay: LINE along LINE` or `match/],
    ['unknown-name', 'joins[0].foam', '[{ glue: strip, onto: base.front, foam: »heigth }]', /heigth/],
    ['angle-for-length', 'joins[0].foam', '[{ glue: strip, onto: base.front, foam: »tilt }]', /length/],
    ['no-angle', 'joins[0].turn', '[{ glue: strip, onto: base.front, turn: »width }]', /deg/],
    [
      'glued-twice',
      'joins[1]',
      '[{ glue: strip, onto: base.front }, { »glue: strip, onto: front, match: top }]',
      'Keep one of the two joins.',
    ],
    [
      'key-missing',
      'joins[0]',
      '[»{ slide: strip, in: base.front }]',
      'Add `through:` with the cuts that it goes through.',
    ],
    [
      'unknown-line',
      'joins[0].through',
      '[{ slide: strip, in: base.front, through: »slot(1) slit(2) }]',
      'Did you mean `slit(1)`?',
    ],
    ['not-a-cut', 'joins[0].through', '[{ slide: strip, in: base.front, through: »dash }]', /^`dash` is a mark/],
    ['not-a-cut', 'joins[0].through', '[{ slide: strip, in: base.front, through: »spine }]', /^`spine` is no cut/],
    [
      'slits-askew',
      'joins[0].through',
      '[{ slide: strip, in: base.front, through: »slit(1) slant }]',
      /^`slant` runs another way/,
    ],
    [
      'unknown-word',
      'joins[0].shows',
      '[{ slide: strip, in: base.front, through: slit, shows: »betwen }]',
      'Did you mean `between`?',
    ],
    ['not-an-edge', 'joins[0].rest', '[{ rest: »strip, upon: base.back }]', /`strip.top`/],
    ['key-missing', 'joins[0].away', '[{ rest: strip.bottom, upon: base.back, »away: 2 }]', /^Add `from:`/],
    ['not-an-edge', 'joins[0].from', '[{ hang: wheel.top, from: »base.front }]', /`base.top`/],
    ['which-slit', 'joins[0].into', '[{ slot: strip, into: »base.front }]', /^Say which: `lay/],
    [
      'not-a-half-slit',
      'joins[0].lay',
      '[{ slot: base.front, into: base.back, lay: »slit(1) along slant }]',
      /does not reach the edge/,
    ],
  ]);
});

describe('a stack', () => {
  refuses('stack', [
    ['stack-of-one', 'stack', '[»strip]', 'Name at least two pieces, or leave `stack` out.'],
    ['unknown-piece', 'stack[1]', '[frame, »strop]', 'Did you mean `strip`?'],
    ['wrong-shape', 'stack', '»{ a: b }', /^Write pieces from the lowest/],
  ]);
});

describe('a filling', () => {
  refuses('fill', [
    ['key-missing', 'fill.beads', '{ beads: »{ stock: beads } }', /^Add `in:`/],
    ['unknown-window', 'fill.beads.in', '{ beads: { in: »frame.chmber } }', 'Did you mean `frame.chamber`?'],
    ['unknown-window', 'fill.beads.in', '{ beads: { in: »strip } }', 'Add a window under `windows` of `strip`.'],
    ['unknown-piece', 'fill.beads.in', '{ beads: { in: »frmae.chamber } }', 'Did you mean `frame`?'],
    ['share-out-of-range', 'fill.beads.full', '{ beads: { in: frame, full: »3/2 } }', /`1\/3` for a third/],
  ]);
});

describe('poses', () => {
  refuses(
    'poses',
    [
      ['unknown-crease', 'poses.half.spin', '{ half: { »spin: shut } }', 'Did you mean `spine`?'],
      ['unknown-word', 'poses.half.spine', '{ half: { spine: »solv } }', 'Did you mean `solve`?'],
      ['fold-too-far', 'poses.half.spine', '{ half: { spine: »-190 } }', /^Write at most 180/],
      ['wrong-amount', 'poses.half.spine', '{ half: { spine: »width } }', 'Write degrees, as `60`.'],
      ['wrong-amount', 'poses.half.strip', '{ half: { strip: »tilt } }', /^Write a distance from the middle/],
      ['unknown-name', 'poses.half.spine', '{ half: { spine: »titl } }', 'Did you mean `tilt`?'],
      ['not-a-slider', 'poses.half.spine', '{ half: { spine: »end } }', /^`spine` does not slide/],
      [
        'nothing-to-fold',
        'poses.half.strip',
        '{ half: { strip: »flat } }',
        /^Write `start`, `middle`, `end` or a distance/,
      ],
      ['nothing-to-fold', 'poses.half.frame', '{ half: { frame: »90 } }', /^`frame` has no crease/],
      ['nothing-to-fold', 'poses.half.wheel', '{ half: { wheel: »shut } }', /^Write degrees, clockwise/],
      ['keep-one', 'poses.half.spine', '{ half: { spine: »keep } }', /^Leave `spine` out/],
      ['crease-twice', 'poses.half.base.spine', '{ half: { spine: shut, »base.spine: flat } }', /are the same crease/],
      ['all-and-others', 'poses.half.others', '{ half: { all: flat, »others: shut } }', /^Keep one of the two/],
      ['unknown-panel', 'poses.half.ground', '{ half: { ground: »base.bakc } }', 'Did you mean `back`?'],
      [
        'not-an-edge',
        'poses.half.stands',
        '{ half: { stands: base.bottom »frame } }',
        'Name an edge: `frame.bottom`, say.',
      ],
      ['unknown-piece', 'poses.half.aside', '{ half: { aside: »wheeel } }', 'Did you mean `wheel`?'],
      ['unknown-piece', 'poses.half.rests', '{ half: { rests: »yse } }', /./],
      ['wrong-shape', 'poses.half', '{ half: »shut }', /^Write creases and what they do/],
    ],
    { joins: '[{ slide: strip, in: base.front, through: slit }, { pin: wheel, to: base.back }]' },
  );
});

describe('what a fold says of itself', () => {
  refuses('motion', [
    ['unknown-pose', 'motion[1]', '[open, »cloesd]', 'Did you mean `closed`?'],
    ['wrong-shape', 'motion.once', '{ once: »[open] }', /at least two/],
  ]);
  refuses('posts', [['unknown-pose', 'posts', '»standing', /add `standing` under `poses`/]]);
  refuses('acts-as', [['unknown-piece', 'acts-as', '»bsae', 'Did you mean `base`?']]);
  refuses('closes-within', [['unknown-panel', 'closes-within[1]', '[base.front, »base.bakc]', 'Did you mean `back`?']]);
});
