import { describe, expect, it } from 'vitest';
import { foldFiles, readLibrary } from '../../plugins/content/index.ts';
import { FOLD_PAGE_KEYS } from '../../plugins/content/schemas/fold.ts';
import { readReference } from '../../site/lib/reference/reference.ts';
import { codesIn, filesThatCheckKeys, readerFiles, wordsOf } from './reader-source.ts';
import { contentOf, page, post, SIDE_FOLD } from './support.ts';

const reference = readReference();

/** All that is written as it stands in a file, in the running text of the page. */
const explained = wordsWithin(
  reference.chapters.flatMap(({ says = '', steps }) => [
    says,
    ...steps.flatMap(({ step }) => [step.says, step.after ?? '']),
  ]),
);
/** The words of the list at the end of the page, and those that their meanings name. */
const listed = wordsWithin(
  reference.words.flatMap(({ words }) =>
    Object.entries(words).flatMap(([word, said]) => [`\`${word}\``, typeof said === 'string' ? said : said.means]),
  ),
);

function wordsWithin(texts: readonly string[]): ReadonlySet<string> {
  const code = texts.flatMap((text) => [...text.matchAll(/`([^`]+)`/gu)].map((match) => match[1] ?? ''));
  return new Set(code.flatMap((text) => [text, ...text.split(/[^\p{L}\p{N}-]+/u)]).filter((word) => word !== ''));
}

const notExplained = (words: readonly string[]): readonly string[] => words.filter((word) => !explained.has(word));
const notListed = (words: readonly string[]): readonly string[] => words.filter((word) => !listed.has(word));

/** Slips that no fold leads to: one cannot be written in a file that is read, the others need words nobody would write. */
const BEYOND = ['too-deep', 'yaml-syntax', 'alias-inside-itself', 'alias-too-much'];

describe('every error', () => {
  const codes = codesIn(readerFiles());
  const shown = new Set(reference.slips.flatMap(({ slips }) => slips.map(({ slip }) => slip.code)));

  it('that the readers can tell is on the page', () => {
    expect(codes.size).toBeGreaterThan(150);
    const missing = [...codes].filter(([code]) => !shown.has(code) && !BEYOND.includes(code));
    expect(missing).toEqual([]);
  });

  it('is found in the source however it is written there', () => {
    // One for each way: plainly, by a choice, as a constant, and through a function that takes it.
    for (const code of [
      'two-bands',
      'shape-missing',
      'operator-missing',
      'below-range',
      'bad-each',
      'colon-in-value',
    ]) {
      expect([...codes.keys()]).toContain(code);
    }
  });

  it('that is left out is still told by the readers', () => {
    for (const code of BEYOND) expect([...codes.keys()]).toContain(code);
  });
});

/** A place where names are read: the file that reads them, and a fold with a name there that nothing knows. */
const PLACES: readonly (readonly [file: string, where: string, fold: string])[] = [
  ['read-fold.ts', 'at the top', 'pieces: { a: 4 x 5 }\nzz: 1'],
  ['read-parameters.ts', 'in a size', 'parameters: { p: { default: 1, zz: 1 } }\npieces: { a: 4 x 5 }'],
  ['read-parameters.ts', 'in a count', 'parameters: { p: { count: 1, zz: 1 } }\npieces: { a: 4 x 5 }'],
  [
    'read-parameters.ts',
    'in a choice',
    'parameters: { p: { choose: { b: 1 }, default: b, zz: 1 } }\npieces: { a: 4 x 5 }',
  ],
  ['read-pieces.ts', 'in a piece', 'pieces: { a: { size: 4 x 5, zz: 1 } }'],
  [
    'read-forms.ts',
    'in an arc',
    'pieces: { a: { outline: [[0, 0], [4, 0], { arc: [4, 4], through: [5, 2], zz: 1 }] } }',
  ],
  ['read-shapes.ts', 'in a window', 'pieces: { a: { size: 4 x 5, windows: { w: { circle: 1, zz: 1 } } } }'],
  [
    'read-shapes.ts',
    'in a shape that swings',
    'pieces: { a: { across: [b 2, valley, c 2], down: 5, shapes: { s: { circle: 1, stays-with: b, zz: 1 } } } }',
  ],
  [
    'read-courses.ts',
    'in a crease',
    'pieces: { a: { size: 4 x 5, creases: { c: { zz: 1, from: top, to: bottom } } } }',
  ],
  ['read-courses.ts', 'in a line from an edge', 'pieces: { a: { size: 4 x 5, cuts: { c: { left: 1, zz: 1 } } } }'],
  [
    'read-courses.ts',
    'in a slanted line',
    'pieces: { a: { size: 4 x 5, marks: { m: { start: top, off: left, by: 30 deg, towards: bottom-left, zz: 1 } } } }',
  ],
  [
    'each-strip.ts',
    'in repeated panels',
    'pieces: { a: { across: [{ each: k from 1 to 2, panel: b(k) 1, zz: 1 }], down: 5 } }',
  ],
  ...['onto', 'to', 'in', 'over', 'into', 'upon', 'from'].map((receiver, index) => {
    const way = ['glue', 'pin', 'slide', 'slip', 'slot', 'rest', 'hang'][index] ?? '';
    return [
      'read-joins.ts',
      `in ${way}`,
      `pieces: { a: 4 x 5, b: 1 x 1 }\njoins: [{ ${way}: b, ${receiver}: a, zz: 1 }]`,
    ] as const;
  }),
  [
    'read-foam.ts',
    'in foam',
    'pieces: { a: 4 x 5, b: 1 x 1 }\njoins: [{ glue: b, onto: a, foam: { high: 1/16, zz: 1 } }]',
  ],
  [
    'read-assembly-parts.ts',
    'in a filling',
    'pieces: { a: { size: 4 x 5, windows: { w: { inset: 1 } } } }\nfill: { beads: { in: a, zz: 1 } }',
  ],
  ['read-conditions.ts', 'in a condition', 'pieces: { a: 4 x 5 }\nrequire: [{ that: 2 > 1, else: No., zz: 1 }]'],
  ['read-recipe.ts', 'in a recipe', 'pieces: { a: 4 x 5 }\nrecipe: [{ cut: 4 x 5, zz: 1 }]'],
];

/** The same of a post's card. */
const POST_PLACES: readonly (readonly [file: string, where: string, card: string])[] = [
  ['additions.ts', 'in what a post adds', 'fold: side-fold\nadd: { zz: 1 }'],
  ['read-layers.ts', 'in a layer', 'fold: side-fold\nlayers: [{ on: base.front, lay: [{ with: slate-card }], zz: 1 }]'],
  [
    'read-layers.ts',
    'in what is laid on',
    'fold: side-fold\nlayers: [{ on: base.front, lay: [{ with: slate-card, zz: 1 }] }]',
  ],
];

/** Kinds say themselves which parameters they have. */
const OF_KINDS = ['use-parameters.ts'];

const LIBRARY = readLibrary(contentOf([]));

function problemsOf(file: ReturnType<typeof page>) {
  return foldFiles([file], LIBRARY).problems;
}

const trial = (fold: string) => page('content/folds/trial.md', `name: Trial\nunits: in\n${fold}`);

/** The names that a place takes, as it says itself when it meets one that it does not know. */
function takenAt(file: ReturnType<typeof page>): readonly string[] {
  const unknown = problemsOf(file).find(({ code }) => code === 'unknown-key');
  if (unknown === undefined) throw new Error('the name was not refused');
  return unknown.takes.split(', ');
}

describe('every name', () => {
  it.each(PLACES)('%s, %s', (_file, where, fold) => {
    const names = takenAt(trial(fold));
    expect({ where, notExplained: notExplained(names), notListed: notListed(names) }).toEqual({
      where,
      notExplained: [],
      notListed: [],
    });
  });

  it.each(POST_PLACES)('%s, %s', (_file, where, card) => {
    const names = takenAt(post('trial', card));
    expect({ where, notExplained: notExplained(names), notListed: notListed(names) }).toEqual({
      where,
      notExplained: [],
      notListed: [],
    });
  });

  it('of the lines that are for readers', () => {
    expect([...notExplained(FOLD_PAGE_KEYS), ...notListed(FOLD_PAGE_KEYS)]).toEqual([]);
  });

  it('is asked for in every file that knows names', () => {
    expect([...new Set([...[...PLACES, ...POST_PLACES].map(([file]) => file), ...OF_KINDS])].sort()).toEqual(
      filesThatCheckKeys(),
    );
  });
});

describe('every word', () => {
  it.each([
    ['read-poses.ts', 'WORDS'],
    ['read-poses.ts', 'POSE_KEYS'],
    ['read-assembly-parts.ts', 'PART_KEYS'],
    ['read-references.ts', 'SIDES'],
    ['read-lines.ts', 'LINE_KEYS'],
    ['read-forms.ts', 'FORM_KEYS'],
    ['words.ts', 'EDGES'],
    ['words.ts', 'CORNERS'],
  ])('of %s, %s, is explained and listed', (file, constant) => {
    const words = wordsOf(file, constant).filter((word) => !/^(?:crease|cut|perforation|mark)$/u.test(word));
    expect(words.length).toBeGreaterThan(2);
    expect({ notExplained: notExplained(words), notListed: notListed(words) }).toEqual({
      notExplained: [],
      notListed: [],
    });
  });

  it.each([
    ['words.ts', 'RESERVED'],
    ['words.ts', 'PLACES'],
    ['read-lines.ts', 'FOLDS'],
    ['read-recipe.ts', 'SIDES'],
    ['card-types.ts', 'COAT_SORTS'],
    ['point-spec.ts', 'WORDS'],
  ])('of %s, %s, is explained', (file, constant) => {
    expect(notExplained(wordsOf(file, constant).filter((word) => !/^(?:long|short)$/u.test(word)))).toEqual([]);
  });

  it('for a unit is explained, but for other spellings and plurals', () => {
    const usual = (word: string): string => word.replace(/meter/u, 'metre').replace(/metres$/u, 'metre');
    expect(notExplained(wordsOf('words.ts', 'UNIT_WORDS').map(usual))).toEqual([]);
  });

  it.each([
    ['corners', 'pieces: { a: { size: 4 x 5, corners: zz } }'],
    ['grain', 'pieces: { a: { size: 4 x 5, grain: zz } }'],
    ['middle', 'pieces: { a: { size: 4 x 5, marks: { m: { middle: zz } } } }'],
    ['towards', 'pieces: { a: { size: 4 x 5, marks: { m: { start: top, off: left, by: 30 deg, towards: zz } } } }'],
    ['fold', 'pieces: { a: { size: 4 x 5, creases: { c: { left: 1, fold: zz } } } }'],
    [
      'shows',
      'pieces: { a: { size: 4 x 5, cuts: { c: { left: 1, from: 1, to: 2 } } }, b: 3 x 1 }\njoins: [{ slide: b, in: a, through: c, shows: zz }]',
    ],
    ['in-turn', 'pieces: { a: { across: [{ each: k from 1 to 2, panel: b(k) 1, in-turn: zz }], down: 5 } }'],
  ])('that `%s` takes is explained', (_key, fold) => {
    const unknown = problemsOf(trial(fold)).find(({ code }) => code === 'unknown-word');
    const takes = unknown?.takes ?? '';
    const words = /^one of /u.test(takes)
      ? takes.replace('one of ', '').split(', ')
      : [...takes.matchAll(/`([^`]+)`/gu)].map((match) => match[1] ?? '');
    expect(words.length).toBeGreaterThan(1);
    expect(notExplained(words)).toEqual([]);
  });
});

describe('every join, and every way to say where', () => {
  it('stands in an example', () => {
    const written = reference.chapters.flatMap(({ steps }) => steps.map(({ step }) => step.example ?? '')).join('\n');
    const own = ['receiver', 'more', 'form'];
    const words = wordsOf('join-ways.ts', 'WAYS').filter((word) => /^[a-z]+$/u.test(word) && !own.includes(word));
    expect(words.length).toBeGreaterThan(15);
    expect(words.filter((word) => !new RegExp(`\\b${word}: `, 'u').test(written))).toEqual([]);
  });

  it('keeps its kind: a side fold is read beside the trials', () => {
    expect(problemsOf(SIDE_FOLD)).toEqual([]);
  });
});
