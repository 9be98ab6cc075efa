import { describe, expect, test } from 'vitest';
import { buildLibrary, computeKind, computeProject, type Library, type Project } from '../../plugins/content/index.ts';
import { formatProblems, type System } from '../../plugins/engine/index.ts';
import { contentOf, file, page, post } from './support.ts';

const ROLL = file('content/supplies/roll.yaml', 'name: Roll\ncategory: cardstock\nsheet: { metric: 200 x 150 mm }\n');

const TWO_PAPERS = page(
  'content/folds/lined.md',
  `name: Lined
units: in
pieces:
  base: { across: [front 4 1/4, valley spine, back 4 1/4], down: 5 1/2 }
  lining: { size: 4 x 5 1/4, stock: pattern }
`,
);

function libraryOf(frontmatter: string, more: Parameters<typeof contentOf>[1] = {}): Library {
  const base = contentOf([post('ferry', frontmatter)]);
  const { library, problems } = buildLibrary({ ...base, supplies: [...base.supplies, ROLL], ...more });
  if (library === undefined) throw new Error(formatProblems(problems));
  return library;
}

function projectOf(frontmatter: string, more: Parameters<typeof contentOf>[1] = {}): Project {
  const library = libraryOf(frontmatter, more);
  const found = library.posts.get('ferry');
  if (found === undefined) throw new Error('no post');
  const { project, problems } = computeProject(library, found);
  expect(problems.filter(({ severity }) => severity === 'error')).toEqual([]);
  return project;
}

/** Closed width and height of the first piece in millimetres. */
function closedSize(project: Project, system: System): readonly number[] {
  const box = project.cards[0]?.editions[system].closed[0]?.box;
  return box === undefined ? [] : [box.right.sub(box.left).valueOf(), box.bottom.sub(box.top).valueOf()];
}

describe('a project', () => {
  test('without a card has none', () => {
    expect(projectOf('supplies: [roll]')).toMatchObject({
      slug: 'ferry',
      cards: [],
      supplies: [{ supply: { name: 'Roll' } }],
    });
  });

  test('has its card in both editions, each on its own marks', () => {
    const project = projectOf('fold: side-fold');
    // 4 1/4 x 5 1/2 in is a US A2 card from US Letter (common practice). Converted it would be 108 x 139.5 mm, which suits no
    // metric sheet or envelope: the metric card is ISO A6 from ISO A4 (ISO 216).
    expect(closedSize(project, 'inch')).toEqual([107.95, 139.7]);
    expect(closedSize(project, 'metric')).toEqual([105, 148]);
    const { inch, metric } = project.cards[0]?.editions ?? {};
    expect([inch?.sheetName, metric?.sheetName]).toEqual(['US Letter', 'ISO A4']);
    for (const edition of [inch, metric]) {
      expect(edition?.findings.filter(({ check }) => check === 'fits-sheet').map(({ state }) => state)).toEqual([
        'pass',
      ]);
    }
  });

  test('of another size is put on the marks of each edition', () => {
    // 4 1/4 x 5 in is in no table: 107.95 -> 108 mm, 127 mm.
    const project = projectOf('fold: { side-fold: { height: 5 } }');
    expect(closedSize(project, 'metric')).toEqual([108, 127]);
  });

  test('gives an edition its own parameters: half an A4 sheet is an A6 card (ISO 216)', () => {
    expect(closedSize(projectOf('fold: side-fold\nmetric: { width: 105 mm, height: 148 mm }'), 'metric')).toEqual([
      105, 148,
    ]);
  });

  test('made of a recipe alone has no kind and closes as the recipe says', () => {
    // 10 x 7 scored at 5 makes a 5 x 7 card (common practice, no source).
    const project = projectOf('recipe: [{ cut: 10 x 7, score: 5 }]');
    expect(project.cards[0]?.kind).toBeUndefined();
    expect(closedSize(project, 'inch')).toEqual([127, 177.8]);
    expect(project.cards[0]?.name).toBe('Ferry');
  });

  test('with several cards keeps their order and keys', () => {
    const project = projectOf(
      'cards:\n  - { name: Zinc, fold: side-fold }\n  - { name: Ash, fold: { side-fold: { width: 5 } } }',
    );
    expect(project.cards.map(({ key, name }) => [key, name])).toEqual([
      ['zinc', 'Zinc'],
      ['ash', 'Ash'],
    ]);
  });
});

describe('the sheet', () => {
  const sheets = (frontmatter: string): (string | undefined)[] => {
    const card = projectOf(frontmatter).cards[0];
    return [card?.editions.inch.sheetName, card?.editions.metric.sheetName];
  };

  test.each([
    ["is the blog's", 'fold: side-fold', ['US Letter', 'ISO A4']],
    [
      "or that of the card's paper, where it has one",
      'fold: side-fold\nstock: { cover: roll }',
      ['US Letter', '200 x 150 mm'],
    ],
    ['or that of the card', 'fold: side-fold\nstock: { cover: roll }\nsheet: 12 x 12 in', ['12 x 12 in', '12 x 12 in']],
    [
      'which may differ from edition to edition',
      'fold: side-fold\nsheet: { inch: US Legal, metric: ISO A3 }',
      ['US Legal', 'ISO A3'],
    ],
  ])('%s', (_, frontmatter, expected) => {
    expect(sheets(frontmatter)).toEqual(expected);
  });

  test('too small for the piece is a finding', () => {
    const card = projectOf('fold: side-fold\nstock: { cover: roll }').cards[0];
    const states = (system: System) =>
      card?.editions[system].findings.filter(({ check }) => check === 'fits-sheet').map(({ state }) => state);
    expect(states('inch')).toEqual(['pass']);
    expect(states('metric')).toEqual(['fail']);
  });

  test('is told for each paper of the card', () => {
    const project = projectOf('fold: lined\nstock: { pattern: roll }', { folds: [TWO_PAPERS] });
    const facts = project.cards[0]?.editions.metric.findings
      .filter(({ check }) => check === 'fits-sheet')
      .map((finding) => finding.facts);
    expect(facts?.map(({ piece, sheet }) => [piece, sheet])).toEqual([
      ['base', 'ISO A4'],
      ['lining', '200 x 150 mm'],
    ]);
  });
});

describe('envelope and promise', () => {
  const findings = (frontmatter: string, system: System, check: string) =>
    projectOf(frontmatter).cards[0]?.editions[system].findings.filter((finding) => finding.check === check);

  test('are held against the edition that they are given for, and point at their line', () => {
    const frontmatter = 'fold: side-fold\nenvelope: { inch: US A2, metric: ISO C7 }\nfinished: 5 x 5 1/2 in';
    expect(findings(frontmatter, 'inch', 'fits-envelope')).toMatchObject([{ state: 'pass' }]);
    // ISO 269: C7 is 81 x 114 mm.
    expect(findings(frontmatter, 'metric', 'fits-envelope')).toMatchObject([
      {
        outcome: 'too-big',
        path: 'envelope.metric',
        place: { file: 'content/posts/ferry/index.md', line: 7, column: 34 },
      },
    ]);
    expect(findings(frontmatter, 'inch', 'closed-size')?.map(({ outcome }) => outcome)).toContain('not-as-promised');
    expect(findings(frontmatter, 'metric', 'closed-size')?.map(({ outcome }) => outcome)).not.toContain(
      'not-as-promised',
    );
  });

  test('the room that the blog asks for counts', () => {
    const blog = (clearance: string) =>
      file(
        'content/blog.yaml',
        `title: A\nauthor: B\naddress: https://a.example\nunits: in\nenvelope-clearance: ${clearance}\n`,
      );
    const state = (clearance: string) => {
      const project = projectOf('fold: side-fold\nenvelope: 4 3/8 x 5 3/4 in', { blog: blog(clearance) });
      return project.cards[0]?.editions.inch.findings.find(({ check }) => check === 'fits-envelope')?.outcome;
    };
    expect(state('1/8 in')).toBe('fits');
    expect(state('{ inch: 3/16 in, metric: 3 mm }')).toBe('tight');
  });
});

describe('a slip that tutorials print', () => {
  // Seen printed: an 8 1/2 in sheet "scored at 4 1/2" for a half fold; a 10 1/2 in sheet folded at 5.
  test.each([
    ['fold: side-fold\nrecipe: [{ cut: 8 1/2 x 5 1/2, score: 4 1/2 }]', 'recipe-agrees', 'fail', 7],
    ['fold: { side-fold: { width: 5 1/4 } }\nrecipe: [{ cut: 10 1/2 x 5 1/2, score: 5 }]', 'recipe-agrees', 'fail', 7],
    ['recipe: [{ cut: 8 1/2 x 5 1/2, score: 4 1/2 }]', 'looks-like-half', 'question', 6],
  ])('%s', (frontmatter, check, state, line) => {
    const found = projectOf(frontmatter).cards[0]?.editions.inch.findings.find((finding) => finding.check === check);
    expect(found).toMatchObject({ state, place: { line } });
  });
});

test('a kind at its defaults is folded in both editions, and its own recipe compared', () => {
  const withRecipe = file(
    'content/folds/side-fold.md',
    page(
      '',
      'name: S\nunits: in\npieces:\n  base: { across: [a 4 1/4, valley, b 4 1/4], down: 5 1/2 }\nrecipe: [{ cut: 8 1/2 x 5 1/2, score: 4 1/2 }]',
    ).text,
  );
  const library = libraryOf('', { folds: [withRecipe] });
  const kind = library.folds.get('side-fold');
  const { project, problems } = kind === undefined ? { project: undefined, problems: [] } : computeKind(library, kind);
  expect(problems).toEqual([]);
  const outcomes = (system: System) =>
    project?.editions[system].findings.filter(({ check }) => check === 'recipe-agrees').map(({ outcome }) => outcome);
  expect(outcomes('inch')).toEqual(['score-position']);
  expect(outcomes('metric')).toEqual([]);
});
