import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  buildLibrary,
  type ContentFiles,
  computeProject,
  foldFiles,
  projectSummarySchema,
  readDocument,
  readLibrary,
  readYaml,
  reportOf,
  sayReport,
  summarise,
} from '../../plugins/content/index.ts';
import { formatProblems, type Problem, type SourceNode } from '../../plugins/engine/index.ts';
import { BLOG, contentOf, file, POST_HEAD, post, SCORING, SIDE_FOLD, SLATE_CARD } from './support.ts';

/** Characters that mean something in YAML or in measurements come often. */
const scraps = fc.constantFrom(
  ...[
    '\n',
    '\n  ',
    '\n- ',
    ': ',
    ':',
    ' #',
    '"',
    "'",
    '[',
    ']',
    '{',
    '}',
    ',',
    '&a ',
    '*a',
    '!',
    '|',
    '>',
    '---\n',
    '\t',
    '\r\n',
    '\uFEFF',
  ],
  ...[
    'fold',
    'side-fold',
    'gate',
    'width',
    'cards',
    'name',
    'recipe',
    'cut',
    'score',
    'envelope',
    'US A2',
    'sheet',
    'metric',
    'finished',
  ],
  ...[
    '5 1/2',
    '53/4',
    '5½',
    '8 1/2 x 5 1/2',
    'in',
    'mm',
    '0',
    '-1',
    '1e9',
    '(',
    ')',
    '*',
    '/',
    'yes',
    '__proto__',
    '🐚',
    '\u0000',
    '\ud800',
  ],
);
const soup = fc
  .array(fc.oneof(scraps, fc.string({ unit: 'binary', maxLength: 6 })), { maxLength: 40 })
  .map((parts) => parts.join(''));

/** A sound file with a stretch taken out and soup put in its place. */
function spoilt(text: string): fc.Arbitrary<string> {
  return fc
    .tuple(fc.nat(text.length), fc.nat(12), soup)
    .map(([at, gone, put]) => text.slice(0, at) + put + text.slice(at + gone));
}

const SOUND_POST = `---
${POST_HEAD}
techniques: [scoring]
supplies: [{ use: slate-card, for: Base }]
cards:
  - name: One
    fold: { side-fold: { width: 5 in } }
    recipe: [{ cut: 10 x 5 1/2, score: 5 }]
    stock: { cover: slate-card }
    envelope: { inch: US A7, metric: ISO C6 }
    finished: 5 x 5 1/2 in
    metric: { width: 105 mm }
---

Text.
`;

function lineCount(text: string): number {
  return text.split(/\r\n|\r|\n/).length;
}

/** Every problem points into a file that was read and says all three things. */
function expectWellSaid(problems: readonly Problem[], texts: ReadonlyMap<string, string>): void {
  for (const problem of problems) {
    const text = texts.get(problem.place.file);
    expect(text, problem.place.file).toBeDefined();
    expect(problem.place.line).toBeGreaterThanOrEqual(1);
    expect(problem.place.line).toBeLessThanOrEqual(lineCount(text ?? ''));
    expect(problem.place.column).toBeGreaterThanOrEqual(1);
    for (const said of [problem.wrote, problem.takes, problem.remedy]) expect(said).not.toBe('');
  }
}

function parts(node: SourceNode): number {
  if (node.kind === 'text') return 1;
  if (node.kind === 'list') return node.items.reduce((sum, item) => sum + parts(item), 1);
  return node.entries.reduce((sum, { value }) => sum + 1 + parts(value), 1);
}

describe('whatever is written', { timeout: 180_000 }, () => {
  test('the reader does not throw, and has either a tree, nothing, or an error', () => {
    fc.assert(
      fc.property(soup, (text) => {
        const { tree, problems } = readYaml(text, 'f');
        expectWellSaid(problems, new Map([['f', text]]));
        if (tree !== undefined) expect(parts(tree)).toBeLessThanOrEqual(40_000);
        const document = readDocument(file('f', text));
        expectWellSaid(document.problems, new Map([['f', text]]));
      }),
      { numRuns: 600 },
    );
  });

  test.each([
    [
      'post',
      SOUND_POST,
      (text: string): ContentFiles => contentOf([file('content/posts/a/index.md', text), post('b', 'fold: side-fold')]),
    ],
    [
      'fold',
      SIDE_FOLD.text,
      (text: string): ContentFiles =>
        contentOf([post('b', 'fold: side-fold')], { folds: [file(SIDE_FOLD.path, text)] }),
    ],
    [
      'supply',
      `${SLATE_CARD.text}weight: 80 lb cover\ncaliper: 0.011 in\ngives: no\ncaution: Sharp.\nlinks: [{ shop: A, address: https://a.example }]\n`,
      (text: string): ContentFiles =>
        contentOf([post('b', 'fold: side-fold\nstock: { cover: slate-card }')], {
          supplies: [file(SLATE_CARD.path, text)],
        }),
    ],
    [
      'blog',
      `${BLOG.text}marks: { inch: 1/8 in, metric: 1 mm }\nsheets: { inch: US Legal }\nenvelope-clearance: 1/8 in\n`,
      (text: string): ContentFiles =>
        contentOf([post('b', 'fold: side-fold\nenvelope: US A2')], { blog: file(BLOG.path, text) }),
    ],
    [
      'technique',
      SCORING.text,
      (text: string): ContentFiles =>
        contentOf([post('b', 'techniques: [scoring]')], { techniques: [file(SCORING.path, text)] }),
    ],
  ])('a spoilt %s gives problems or a project, and is dry-fitted without a throw', (_, sound, contentWith) => {
    expect(formatProblems(buildLibrary(contentWith(sound)).problems)).toBe('');
    fc.assert(
      fc.property(spoilt(sound), (text) => {
        const content = contentWith(text);
        const files = [content.blog, ...content.posts, ...content.folds, ...content.supplies, ...content.techniques];
        const texts = new Map(files.flatMap((each) => (each === undefined ? [] : [[each.path, each.text] as const])));
        const read = readLibrary(content);
        expectWellSaid(read.problems, texts);
        const { library } = buildLibrary(content);
        for (const found of library?.posts.values() ?? []) {
          const { project, problems } = computeProject(library ?? never(), found);
          expect(problems.filter(({ severity }) => severity === 'error')).toEqual([]);
          expect(project.cards).toHaveLength(found.cards.length);
          projectSummarySchema.parse(JSON.parse(JSON.stringify(summarise(project))));
        }
        const { folded, problems } = foldFiles([...content.posts, ...content.folds], read);
        expectWellSaid(problems, texts);
        expect(sayReport(reportOf(folded, problems))).not.toContain('undefined');
      }),
      { numRuns: 100 },
    );
  });
});

function never(): never {
  throw new Error('no library');
}
