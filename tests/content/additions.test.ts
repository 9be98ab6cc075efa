import { describe, expect, it } from 'vitest';
import { buildLibrary, computeKind, computeProject, readLibrary } from '../../plugins/content/index.ts';
import { formatProblems } from '../../plugins/engine/index.ts';
import { contentOf, only, page, post, SIDE_FOLD, SLATE_CARD } from './support.ts';

const GATE = page(
  'content/folds/gate.md',
  `name: Gate
units: in
parameters: { width: { default: 4, from: 2, to: 8 }, height: { default: 5, from: 2, to: 9 } }
pieces:
  gate: { across: [left width/4, valley, middle width/2, valley, right width/4], down: height }
`,
);

const BOTH = page(
  'content/folds/gate-in-a-card.md',
  `name: Gate in a card
units: in
parameters: { width: { default: 4 1/4, from: 3, to: 6 }, height: { default: 5 1/2, from: 3, to: 8 } }
use:
  side-fold: { width: width, height: height }
  gate: { width: width - 1/4, height: height - 1/4 }
joins:
  - { glue: gate.middle, onto: base.back }
poses: { open: { gate: shut } }
`,
);

const ADDED = `fold: side-fold
add:
  pieces:
    mat: { size: front less 1/8, stock: pattern }
  joins:
    - { glue: mat, onto: outside of front }
  poses:
    ajar: { spine: 150 }
stock: { cover: slate-card, pattern: slate-card }`;

describe('what a post adds to its fold', () => {
  it('is part of the card in both editions, with papers of its own', () => {
    const { library, problems } = buildLibrary(contentOf([post('mat', ADDED)]));
    if (library === undefined) throw new Error(formatProblems(problems));
    const { project, problems: ofCards } = computeProject(library, library.posts.get('mat') ?? fail());
    expect(ofCards).toEqual([]);
    const [card] = project.cards;
    for (const edition of [card?.editions.inch, card?.editions.metric]) {
      expect(edition?.card.pieces.map(({ name, stock }) => `${name} of ${stock}`)).toEqual([
        'base of cover',
        'mat of pattern',
      ]);
      expect(edition?.card.joins).toMatchObject([{ is: 'glue', partSide: 'back', ontoSide: 'back' }]);
      expect(edition?.card.poses.map(({ name }) => name)).toEqual(['open', 'closed', 'ajar']);
    }
    const mat = card?.editions.inch.card.pieces[1];
    expect([mat?.width.inches.toFraction(), mat?.height.inches.toFraction()]).toEqual(['4', '21/4']);
  });

  it('may go with each of several cards', () => {
    const cards = `cards:
  - { name: One, fold: side-fold, stock: { cover: slate-card } }
  - name: Two
    fold: { side-fold: { width: 5 } }
    add: { pieces: { tag: 1 x 1 }, joins: [{ glue: tag, onto: front }] }
`;
    const { library } = buildLibrary(contentOf([post('two', cards)]));
    const { project } = computeProject(library ?? fail(), library?.posts.get('two') ?? fail());
    expect(project.cards.map(({ editions }) => editions.metric.card.pieces.map(({ name }) => name))).toEqual([
      ['base'],
      ['base', 'tag'],
    ]);
  });

  it.each([
    ['joins: [{ glue: mta, onto: front }]', 'unknown-piece', 'add.joins[0].glue', 12],
    ['pieces: { base: 4 x 4 }', 'redefined', 'add.pieces.base', 12],
    ['peices: { tag: 1 x 1 }', 'unknown-key', 'add.peices', 3],
  ])('%s', (added, code, path) => {
    const { problems } = buildLibrary(contentOf([post('slip', `fold: side-fold\nadd: { ${added} }`)]));
    const problem = only(problems, code);
    expect(problems).toHaveLength(1);
    expect(problem).toMatchObject({ path, place: { file: 'content/posts/slip/index.md', line: 7 } });
  });

  it('goes with a fold', () => {
    const { problems } = buildLibrary(contentOf([post('none', 'add: { pieces: { tag: 1 x 1 } }')]));
    expect(only(problems, 'card-without-fold')).toMatchObject({ path: 'add' });
  });

  it('a paper that neither the fold nor the post has is unknown', () => {
    const { problems } = buildLibrary(
      contentOf([post('role', ADDED.replace('pattern: slate-card', 'patern: slate-card'))]),
    );
    expect(only(problems, 'stock-role-unknown').remedy).toBe('Did you mean `pattern: slate-card`?');
  });
});

describe('a kind made of others', () => {
  const folds = [BOTH, GATE, SIDE_FOLD];

  it('is read whatever the order of the files, and used by a post', () => {
    const content = contentOf([post('gate', 'fold: { gate-in-a-card: { width: 5 } }\nstock: { cover: slate-card }')], {
      folds,
    });
    const { library, problems } = buildLibrary(content);
    if (library === undefined) throw new Error(formatProblems(problems));
    const { project } = computeProject(library, library.posts.get('gate') ?? fail());
    const card = project.cards[0]?.editions.inch.card;
    expect(card?.pieces.map(({ name, width }) => `${name} ${width.inches.toFraction()}`)).toEqual([
      'base 10',
      'gate 19/4',
    ]);
    const kind = library.folds.get('gate-in-a-card') ?? fail();
    expect(Object.keys(kind.uses).sort()).toEqual(['gate', 'side-fold']);
    // A kind is plain data, and is still whole after a journey through JSON.
    const again = computeKind(library, JSON.parse(JSON.stringify(kind)));
    expect(again.project?.editions.metric.card.pieces.map(({ name }) => name)).toEqual(['base', 'gate']);
  });

  it('says what is wrong once, where it is', () => {
    const broken = { ...GATE, text: GATE.text.replace('middle width/2', 'middle widht/2') };
    const { problems } = readLibrary(contentOf([], { folds: [BOTH, broken, SIDE_FOLD] }));
    expect(problems.map(({ code, place }) => `${place.file} ${code}`)).toEqual(['content/folds/gate.md unknown-name']);
    const circle = { ...GATE, text: GATE.text.replace('pieces:', 'use: { gate-in-a-card: }\npieces:') };
    const both = readLibrary(contentOf([], { folds: [BOTH, circle, SIDE_FOLD] })).problems;
    expect(both.map(({ code, place }) => `${place.file} ${code}`)).toEqual([
      'content/folds/gate-in-a-card.md kind-uses-itself',
      'content/folds/gate.md kind-uses-itself',
    ]);
    const missing = readLibrary(contentOf([], { folds: [BOTH, SIDE_FOLD], supplies: [SLATE_CARD] })).problems;
    expect(only(missing, 'unknown-kind')).toMatchObject({ path: 'use.gate', wrote: 'gate' });
  });
});

function fail(): never {
  throw new Error('not there');
}
