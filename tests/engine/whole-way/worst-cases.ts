/*
 * Folds that ask for far too much, or for just as much as is allowed: what becomes of each, and the code of its first problem.
 */

export interface WorstCase {
  readonly asks: string;
  readonly text: string;
  /** The code of its first problem, or `folded`. */
  readonly ends: string;
}

const times = (count: number, make: (i: number) => string, joint = ', '): string =>
  Array.from({ length: count }, (_, i) => make(i)).join(joint);

/** With at most six digits after the point. */
const place = (value: number): string => String(Number(value.toFixed(6)));

/** Numbers below `most` that look like chance and are always the same. */
const scattered = (i: number, prime: number, most: number): string => place(((i * prime) % 997) * (most / 997));

function fold(pieces: string, rest = '', head = ''): string {
  return `name: Worst\nunits: in\n${head}\npieces:\n  ${pieces}\n${rest}\n`;
}

const counted = (count: number, most: number): string => `parameters: { n: { count: ${count}, from: 1, to: ${most} } }`;

const strip = (count: number, make: (i: number) => string, turn: (i: number) => string, name = 'a'): string =>
  `[${times(count - 1, (i) => `${name}${i} ${make(i)}, ${turn(i)} ${name}-${i}`)}, ${name}-last ${make(count - 1)}]`;

const one = (): string => '1';
const valley = (): string => 'valley';
const inTurn = (i: number): string => (i % 2 === 0 ? 'valley' : 'mountain');

function star(points: number, radius: number): string {
  return times(points, (i) => {
    const angle = (2 * Math.PI * i) / points;
    const reach = i % 2 === 0 ? radius : radius / 2;
    return `[${place(4 + reach * Math.cos(angle))}, ${place(4 + reach * Math.sin(angle))}]`;
  });
}

const circles = (count: number, size: (i: number) => number): string =>
  times(count, (i) => `c${i}: { circle: ${place(size(i))} }`, '\n  ');

const spread = (i: number, across: number, step: number): string =>
  `[${place(1.5 + (i % across) * step)}, ${place(1.5 + Math.floor(i / across) * step)}]`;

const windows = (count: number, make: (i: number) => string): string =>
  `{ size: 8 x 8, windows: { ${times(count, (i) => `w${i}: ${make(i)}`)} } }`;

const creases = (count: number, make: (i: number) => string): string =>
  `p: { size: 4 x 4, creases: { ${times(count, (i) => `l${i}: ${make(i)}`)} } }`;

const accordion = (pages: number, name = 'strip', each = ''): string =>
  `${name}: { ${each}across: [{ each: i from 1 to ${pages}, panel: page(i) 3, between: fold(i), in-turn: [valley, mountain] }], down: 4 }`;

const box = (count: number, corners: string): string =>
  `layer(k): { each: k from 1 to ${count}, across: [left 4, valley, middle 40 - k/2, valley, right 4], down: [head 4, valley, middle 40 - k/2, valley, foot 4], corners: ${corners} }`;

const boxJoins = (count: number): string =>
  `joins: [{ each: k from 2 to ${count}, glue: layer(k).middle.middle, onto: layer(k - 1).middle.middle }]`;

export const WORST_CASES: readonly WorstCase[] = [
  // Counts.
  {
    asks: '200 pieces with 200 creases each',
    ends: 'too-many',
    text: fold(
      'p(k): { each: k from 1 to n, size: 4 x 4, creases: { c(j): { each: j from 1 to n, left: j/100 } } }',
      '',
      counted(200, 500),
    ),
  },
  {
    asks: 'bands that repeat bands',
    ends: 'too-many',
    text: fold(
      'p(k): { each: k from 1 to n, across: [{ each: j from 1 to n, panel: b(j) 1 }], down: 1 }',
      '',
      counted(199, 500),
    ),
  },
  {
    asks: 'a million million pieces',
    ends: 'number-long',
    text: fold('p(k): { each: k from 1 to n, size: 4 x 4 }', '', counted(1e12, 1e13)),
  },
  { asks: '101 pieces', ends: 'too-many', text: fold('p(k): { each: k from 1 to 101, size: 4 x 4 }') },
  {
    asks: 'a strip of 2000 bands',
    ends: 'wrong-shape',
    text: fold(`p: { across: ${strip(2000, one, valley)}, down: 1 }`),
  },
  {
    asks: '160,000 panels',
    ends: 'wrong-shape',
    text: fold(`p: { across: ${strip(400, one, valley)}, down: ${strip(400, one, valley, 'b')} }`),
  },
  {
    asks: '40,000 panels',
    ends: 'folded',
    text: fold(`p: { across: ${strip(200, () => '1/8', valley)}, down: ${strip(200, () => '1/8', valley, 'b')} }`),
  },
  {
    asks: '484 panels',
    ends: 'folded',
    text: fold(`p: { across: ${strip(22, one, valley)}, down: ${strip(22, one, valley, 'b')} }`),
  },
  {
    asks: '5000 unknown words',
    ends: 'unknown-key',
    text: fold(
      'p: 4 x 4',
      times(5000, (i) => `x${i}: 1`, '\n'),
    ),
  },
  {
    asks: '3000 values of unknown names',
    ends: 'too-many',
    text: fold('p: 4 x 4', '', `values: { ${times(3000, (i) => `v${i}: q${i} + 1`)} }`),
  },
  {
    asks: '2000 conditions',
    ends: 'folded',
    text: fold('p: 4 x 4', `require: [${times(2000, (i) => `{ that: ${i} < 3000, else: No. }`)}]`),
  },
  {
    asks: '300 poses',
    ends: 'too-many',
    text: fold(
      'p: { across: [a 1, valley b, c 1], down: 3 }',
      `poses: { ${times(300, (i) => `q${i}: { all: ${i % 180} }`)} }`,
    ),
  },
  // Strips and boxes.
  {
    asks: 'a roll of 60 equal panels',
    ends: 'folded',
    text: fold(`p: { across: ${strip(60, one, valley)}, down: 1 }`),
  },
  {
    asks: 'a roll of 60 panels that tightens',
    ends: 'folded',
    text: fold(`p: { across: ${strip(60, (i) => `${1 + i}/16`, valley)}, down: 1 }`),
  },
  {
    asks: 'forty stamps folded at random',
    ends: 'folded',
    text: fold(`p: { across: ${strip(40, one, (i) => ((i * 7919) % 5 < 2 ? 'valley' : 'mountain'))}, down: 1 }`),
  },
  {
    asks: 'a map of 15 by 15',
    ends: 'folded',
    text: fold(`p: { across: ${strip(15, one, inTurn)}, down: ${strip(15, one, inTurn, 'b')} }`),
  },
  {
    asks: 'an accordion of 24 pages with something glued on both sides of each',
    ends: 'folded',
    text: fold(
      `${accordion(24)}\n  mat(k): { each: k from 1 to 24, size: 2 x 3 }\n  tam(k): { each: k from 1 to 24, size: 2 x 3 }`,
      'joins: [{ each: k from 1 to 24, glue: mat(k), onto: strip.page(k) }, { each: k from 1 to 24, glue: face of tam(k), onto: back of strip.page(k) }]\nposes: { closed: {}, display: { all: 90, stands: strip.bottom } }',
    ),
  },
  {
    asks: 'six accordions of 24 pages glued end to end',
    ends: 'folded',
    text: fold(
      accordion(24, 'strip(s)', 'each: s from 1 to 6, '),
      'joins: [{ each: s from 2 to 6, glue: strip(s).page(1), onto: strip(s - 1).page(24) }]\nposes: { closed: {} }',
    ),
  },
  {
    asks: 'a loop of 50 panels',
    ends: 'folded',
    text: fold(
      `p: { across: [tab 1, ${times(50, (i) => `valley c${i}, a${i} 1`)}], down: 1 }`,
      'joins: [{ glue: p.tab, onto: p.a49, match: top-left }]\nposes: { closed: { c25: shut, c49: shut, others: flat } }',
    ),
  },
  {
    asks: 'a loop of 50 folded sheets',
    ends: 'folded',
    text: fold(
      times(50, (i) => `p${i}: { across: [a 1, valley c, b 1], down: 1 }`, '\n  '),
      `joins: [${times(50, (i) => `{ glue: p${i}.b, onto: p${(i + 1) % 50}.a }`)}]\nposes: { closed: {} }`,
    ),
  },
  {
    asks: 'forty boxes in each other',
    ends: 'folded',
    text: fold(box(40, 'away'), `${boxJoins(40)}\nposes: { closed: { all: flat }, boxed: { all: 90 } }`),
  },
  {
    asks: 'thirty lids in each other',
    ends: 'folded',
    text: fold(box(30, 'tabs'), `${boxJoins(30)}\nposes: { boxed: { all: 90 } }\nposts: boxed`),
  },
  // Joins.
  {
    asks: '2000 joins',
    ends: 'too-many',
    text: fold(
      'p(k): { each: k from 1 to 100, size: 4 x 4 }',
      `joins: [${times(2000, (i) => `{ glue: p(${1 + ((i * 7) % 100)}), onto: p(${1 + ((i * 13) % 99)}) }`)}]`,
    ),
  },
  {
    asks: '500 joins of 100 pieces in a tangle',
    ends: 'folded',
    text: fold(
      'p(k): { each: k from 1 to 100, size: 4 x 4 }',
      `joins: [${times(500, (i) => `{ glue: p(${7 + (i % 94)}), onto: p(${6 + (i % 94) - Math.floor(i / 94)}) }`)}]`,
    ),
  },
  {
    asks: 'a stack of 1000',
    ends: 'too-many',
    text: fold(
      times(1000, (i) => `p${i}: 4 x 4`, '\n  '),
      `stack: [${times(1000, (i) => `p${i}`)}]`,
    ),
  },
  {
    asks: 'a stack of 100',
    ends: 'folded',
    text: fold(
      times(100, (i) => `p${i}: 4 x 4`, '\n  '),
      `stack: [${times(100, (i) => `p${i}`)}]`,
    ),
  },
  {
    asks: 'fifty sliders',
    ends: 'folded',
    text: fold(
      `card: { size: 8 x 8, cuts: { ${times(50, (i) => `s${i}: { left: [2, 6], from: ${place(i / 8)}, to: ${place(i / 8 + 0.1)} }`)} } }\n  ${times(50, (i) => `o${i}: 6 x 1/12`, '\n  ')}`,
      `joins: [${times(50, (i) => `{ slide: o${i}, in: card, through: s${i}(1) s${i}(2), shows: between, keep: 1/2 }`)}]`,
    ),
  },
  {
    asks: 'ninety things that hang',
    ends: 'folded',
    text: fold(
      `base: { across: [a 4, valley s, b 4], down: 5 }\n  ${times(90, (i) => `o${i}: 1 x 1`, '\n  ')}`,
      `joins: [${times(90, (i) => `{ hang: o${i}.top, from: base.bottom, after: ${place(i / 30)}, thread: 1/2 }`)}]`,
    ),
  },
  // Round things.
  {
    asks: '300 windows over each other',
    ends: 'too-many',
    text: fold(`p: ${windows(300, (i) => `{ circle: 1, at: ${spread(i, 20, 0.3)} }`)}`),
  },
  {
    asks: '60 round windows over each other',
    ends: 'folded',
    text: fold(`p: ${windows(60, (i) => `{ circle: 1, at: ${spread(i, 8, 0.3)} }`)}`),
  },
  {
    asks: '60 unlike ellipses over each other',
    ends: 'folded',
    text: fold(
      `p: ${windows(60, (i) => `{ ellipse: ${place(1 + i / 64)} x ${1 + (i % 7) / 8}, at: ${spread(i, 8, 0.3)} }`)}`,
    ),
  },
  {
    asks: '100 shapes round one middle',
    ends: 'folded',
    text: fold(
      `p: { across: [a 4, valley s, b 4], down: 8, shapes: { ${times(100, (i) => `w${i}: { circle: ${place((i + 1) / 16)}, at: [4, 4], stays-with: a }`)} } }`,
    ),
  },
  {
    asks: 'a stack of 60 discs',
    ends: 'folded',
    text: fold(
      circles(60, (i) => 2 + i / 100),
      `stack: [${times(60, (i) => `c${i}`)}]`,
    ),
  },
  {
    asks: '30 discs glued over each other',
    ends: 'folded',
    text: fold(
      `base: 8 x 8\n  ${circles(30, (i) => 2 + i / 100)}`,
      `joins: [${times(30, (i) => `{ glue: c${i}, onto: base, match: "centre to ${spread(i, 6, 0.6)}" }`)}]`,
    ),
  },
  {
    asks: 'windows within windows',
    ends: 'folded',
    text: fold(`p: ${windows(100, (i) => `{ inset: ${place(i / 26)} }`)}`),
  },
  {
    asks: 'circles that almost coincide',
    ends: 'folded',
    text: fold(`p: ${windows(20, (i) => `{ circle: 2.00000000${i % 10}, at: [4.00000000${Math.floor(i / 10)}, 4] }`)}`),
  },
  { asks: 'a circle of nothing', ends: 'no-paper', text: fold('p: { circle: 0 }') },
  { asks: 'a window of nothing', ends: 'no-shape', text: fold('p: { size: 4 x 4, windows: { w: { circle: 0 } } }') },
  // Outlines.
  { asks: 'a star of 400 points', ends: 'wrong-shape', text: fold(`p: { outline: [${star(400, 3)}] }`) },
  {
    asks: 'a star of 100 points, creased forty times',
    ends: 'folded',
    text: fold(
      `p: { outline: [${star(100, 4)}], creases: { ${times(40, (i) => `l${i}: { left: ${place(0.5 + i / 8)} }`)} } }`,
    ),
  },
  {
    asks: 'five stars of 100 points glued askew',
    ends: 'folded',
    text: fold(
      times(5, (i) => `s${i}: { outline: [${star(100, 4)}] }`, '\n  '),
      `joins: [${times(4, (i) => `{ glue: s${i + 1}, onto: s0, match: centre, turn: ${7 * (i + 1)} }`)}]`,
    ),
  },
  { asks: 'a bow', ends: 'outline-crosses', text: fold('p: { outline: [[0, 0], [4, 4], [4, 0], [0, 4]] }') },
  {
    asks: 'a scribble of 100 points',
    ends: 'outline-crosses',
    text: fold(`p: { outline: [${times(100, (i) => `[${scattered(i, 7919, 10)}, ${scattered(i, 1429, 10)}]`)}] }`),
  },
  // Lines.
  {
    asks: '400 lines across each other',
    ends: 'folded',
    text: fold(creases(400, (i) => `{ from: [${scattered(i, 7919, 4)}, 0], to: [${scattered(i, 1429, 4)}, 4] }`)),
  },
  {
    asks: '60 lines across each other, in crooked fractions',
    ends: 'folded',
    text: fold(creases(60, (i) => `{ from: [0, ${(i * 7919) % 400}/101], to: [4, ${(i * 1429) % 400}/103] }`)),
  },
  {
    asks: 'lines that begin where others cross',
    ends: 'folded',
    text: fold(
      creases(60, (i) =>
        i === 0
          ? 'top-left to bottom-right'
          : i === 1
            ? 'top-right to bottom-left'
            : `{ from: l${i - 2} at ${1 + (i % 3)}/3, to: l${i - 1} at ${1 + (i % 5)}/7 }`,
      ),
    ),
  },
  {
    asks: 'lines that almost coincide',
    ends: 'folded',
    text: fold(
      creases(30, (i) =>
        i % 2 === 0 ? `{ left: 2.0000000${10 + i} }` : `{ from: [0, 0.0000000${10 + i}], to: [4, 4] }`,
      ),
    ),
  },
  // Texts.
  { asks: 'a file of a million characters', ends: 'too-long', text: fold('p: 4 x 4', `# ${'x'.repeat(1_000_000)}`) },
  { asks: 'ten thousand names on a line', ends: 'colon-in-value', text: fold('a: b: c: '.repeat(10_000)) },
  // Numbers.
  { asks: 'a sum of 10,000 characters', ends: 'too-long', text: fold(`p: { size: ${'1/1000 + '.repeat(1100)}1 x 4 }`) },
  {
    asks: 'a thousand brackets',
    ends: 'too-long',
    text: fold(`p: { size: ${'('.repeat(1000)}1${')'.repeat(1000)} x 4 }`),
  },
  {
    asks: 'a thousand lists in each other',
    ends: 'too-deep',
    text: fold(`p: ${'['.repeat(1000)}1${']'.repeat(1000)}`),
  },
  {
    asks: 'fractions of thirty digits',
    ends: 'number-long',
    text: fold(`p: { size: "1${'3'.repeat(29)}/${'7'.repeat(30)} x 4" }`),
  },
  {
    asks: 'a number that grows with every value',
    ends: 'too-many-digits',
    text: fold(
      'p: { size: w*n20/n20 x 4 }',
      '',
      `parameters: { w: 4, n0: { count: 7, from: 1, to: 9 } }\nvalues: { ${times(20, (i) => `n${i + 1}: n${i}*n${i}/(n${i} + 1)`)} }`,
    ),
  },
  { asks: 'a sheet of 1000 in', ends: 'too-large', text: fold('p: 1000 x 1') },
  {
    asks: 'a sheet as large as may be',
    ends: 'folded',
    text: fold('p: { size: 400 x 400, across: [a 200, valley s, b 200], windows: { w: { circle: 300 } } }'),
  },
];
