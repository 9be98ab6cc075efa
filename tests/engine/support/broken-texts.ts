import fc from 'fast-check';

/** One slip of the hand in a text: where, what, and with which odd thing. Numbers are taken by the remainder. */
interface Slip {
  readonly how: string;
  readonly at: number;
  readonly other: number;
}

/** Amounts that no ruler has, and those that only look like one. */
const AMOUNTS = [
  ...[
    '0',
    '-1',
    '-2 1/2',
    '1/1000000',
    '1/99999999999999999999999999999999',
    '0.0000001',
    '1 1/0',
    '0/0',
    '5-1/2',
    '53/4',
  ],
  ...[
    '9'.repeat(12),
    '9'.repeat(40),
    '9'.repeat(400),
    `0.${'3'.repeat(300)}`,
    '1000000',
    '1e9',
    '1e400',
    '-0',
    '.5',
    '5.',
    '2,5',
    '1_000',
  ],
  ...[
    '1',
    '2',
    '3',
    '4',
    '6',
    '12',
    '40',
    '200',
    '1/2',
    '3/8',
    '4 1/4',
    '180',
    '90',
    '45 deg',
    '181',
    '-180',
    '0 deg',
    '1000000 deg',
  ],
  ...['2 x 3', '5x7', '12 mm', '3 cm', '4"', "2'", '½', '１２', '٣', 'half', 'A4', '0x10'],
];

const WORDS = [
  ...[
    '',
    '~',
    'yes',
    'rest',
    'valley',
    'mountain',
    'both',
    'all',
    'others',
    'flat',
    'shut',
    'solve',
    'keep',
    'face of',
    'back of',
  ],
  ...[
    'left',
    'right',
    'top',
    'bottom',
    'centre',
    'middle',
    'middle down',
    'top-left',
    'width',
    'height',
    'base',
    'card',
    'card.width',
  ],
  ...[
    'smaller of width and height',
    'larger of',
    'base.left.top',
    'disc(k)',
    'disc(1)',
    'k',
    '(s)',
    'k from 1 to 3',
    'k from 1 to 99999',
    's in left right',
  ],
  ...[
    'k from 0 to 0',
    'k from 3 to 1',
    'top to bottom',
    'left to right',
    'spine at 2',
    'corner along left',
    'less 1',
    'base less 1/2',
    'inset: 1',
  ],
  ...[
    '__proto__',
    'constructor',
    'toString',
    'hasOwnProperty',
    'x',
    '.',
    '..',
    '-',
    '>=',
    '!',
    '%',
    '@',
    '\\',
    '\u00a0',
    '\ud83d\ude00',
  ],
];

/** Signs that mean something to YAML, and some that nobody can see. */
const SIGNS = [
  ...[
    '"',
    "'",
    '\t',
    '{',
    '}',
    '[',
    ']',
    '(',
    ')',
    ',',
    ':',
    ': ',
    ' #',
    '- ',
    '? ',
    '| ',
    '> ',
    '& ',
    '* ',
    '!!',
    '%',
    '@',
    '`',
    '---\n',
    '...\n',
  ],
  ...[
    '\n',
    '\r',
    '\n\n',
    '  ',
    '\u0000',
    '\u2028',
    '\ufeff',
    '\u200b',
    '\u202e',
    '\u0301',
    '\ud800',
    '\u{1d535}',
    '½',
    '–',
    '×',
    '’',
    '\\',
  ],
];

/** From a sign that opens and one that closes, with something within: far too deep, or just deep enough. */
const NESTS = [
  ['(', ')'],
  ['[', ']'],
  ['{ size: ', ' }'],
  ['{ each: k from 1 to 3, size: ', ' }'],
  ['1 + ', ''],
  ['-', ''],
  ['smaller of 1 and ', ''],
] as const;
const DEPTHS = [2, 8, 40, 300];

const AMOUNT = /\d+(?: \d+)?(?:[./]\d+)?/gu;
const WORD = /[\p{L}\d]+(?:[-.()\p{L}\d]*[\p{L}\d)])?/gu;

const SLIPS: Readonly<Record<string, (text: string, slip: Slip) => string>> = {
  'drop line': (text, { at }) => inLines(text, (lines) => lines.splice(at % lines.length, 1)),
  'double line': (text, { at }) =>
    inLines(text, (lines) => lines.splice(at % lines.length, 0, lines[at % lines.length] ?? '')),
  'swap lines': (text, { at, other }) =>
    inLines(text, (lines) => {
      const [i, j] = [at % lines.length, other % lines.length];
      [lines[i], lines[j]] = [lines[j] ?? '', lines[i] ?? ''];
    }),
  'indent line': (text, { at, other }) =>
    inLines(text, (lines) => {
      const i = at % lines.length;
      lines[i] = other % 2 === 0 ? ` ${lines[i]}` : (lines[i] ?? '').replace(/^ {1,2}/u, '');
    }),
  'other amount': (text, { at, other }) => replacedAt(text, AMOUNT, at, () => pick(AMOUNTS, other)),
  'other word': (text, { at, other }) => replacedAt(text, WORD, at, () => pick(WORDS, other)),
  'word from elsewhere': (text, { at, other }) => {
    const words = text.match(WORD) ?? [''];
    return replacedAt(text, WORD, at, () => pick(words, other));
  },
  'swap words': (text, { at, other }) => {
    const words = text.match(WORD) ?? [''];
    const [one, two] = [pick(words, at), pick(words, other)];
    return replacedAt(
      replacedAt(text, WORD, at, () => two),
      WORD,
      other,
      () => one,
    );
  },
  'drop word': (text, { at }) => replacedAt(text, WORD, at, () => ''),
  'double word': (text, { at }) => replacedAt(text, WORD, at, (word) => `${word} ${word}`),
  'quote word': (text, { at, other }) =>
    replacedAt(text, WORD, at, (word) => (other % 2 === 0 ? `"${word}"` : `'${word}`)),
  'odd sign': (text, { at, other }) => {
    const i = at % (text.length + 1);
    return `${text.slice(0, i)}${pick(SIGNS, other)}${text.slice(i)}`;
  },
  'drop sign': (text, { at }) => `${text.slice(0, at % text.length)}${text.slice((at % text.length) + 1)}`,
  nest: (text, { at, other }) => {
    const [open, close] = pick(NESTS, other);
    const depth = pick(DEPTHS, Math.floor(other / NESTS.length));
    return replacedAt(text, WORD, at, (word) => `${open.repeat(depth)}${word}${close.repeat(depth)}`);
  },
  alias: (text, { at, other }) =>
    replacedAt(
      replacedAt(text, WORD, at, (word) => `&a ${word}`),
      WORD,
      other,
      () => '*a',
    ),
  'cut short': (text, { at }) => text.slice(0, at % text.length),
};

function inLines(text: string, work: (lines: string[]) => void): string {
  const lines = text.split('\n');
  work(lines);
  return lines.join('\n');
}

function pick<T>(list: readonly T[], number: number): T {
  return list[number % list.length] as T;
}

/** One of what a pattern finds, by the remainder, made into something else. */
function replacedAt(text: string, pattern: RegExp, number: number, make: (found: string) => string): string {
  const found = [...text.matchAll(pattern)];
  const { index, 0: match } = found[number % Math.max(1, found.length)] ?? { index: 0, 0: '' };
  return `${text.slice(0, index)}${make(match)}${text.slice(index + match.length)}`;
}

/** Slips that leave the YAML whole are the more frequent, so that many texts go far. */
const OFTEN = [
  'other amount',
  'other amount',
  'other amount',
  'other word',
  'word from elsewhere',
  'swap words',
  'drop line',
] as const;

const slip = fc.record<Slip>({
  how: fc.constantFrom(...Object.keys(SLIPS), ...OFTEN, ...OFTEN),
  at: fc.nat(2 ** 20),
  other: fc.nat(2 ** 20),
});

/** A text of the seeds with one to so many slips in it. */
export function brokenText(seeds: readonly string[], most = 3): fc.Arbitrary<string> {
  return fc
    .tuple(fc.constantFrom(...seeds), fc.array(slip, { minLength: 1, maxLength: most }))
    .map(([seed, slips]) =>
      slips.reduce((text, one) => (text === '' ? text : (SLIPS[one.how]?.(text, one) ?? text)), seed),
    );
}
