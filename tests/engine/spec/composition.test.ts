import { describe, expect, it } from 'vitest';
import {
  type Card,
  DEFAULT_MARKS,
  type Fold,
  formatProblems,
  type Kinds,
  makeCard,
  type Problem,
  readFold,
  type System,
  withAdditions,
} from '../../../plugins/engine/index.ts';
import { foldOf, make } from '../support/folds.ts';
import { marked, only } from '../support/marked.ts';
import { EASEL, EXPLODING_BOX, SHAKER, SHAKER_ON_EASEL, SLIDER } from '../support/ten-folds.ts';
import { yamlMap } from '../support/yaml-tree.ts';

const FOLDS: Readonly<Record<string, Fold>> = {
  easel: foldOf(EASEL),
  shaker: foldOf(SHAKER),
  slider: foldOf(SLIDER),
  box: foldOf(EXPLODING_BOX),
  mill: foldOf(`
name: Mill
units: mm
parameters: { size: 40, lean: 45 deg, sails: { count: 2, from: 1, to: 4 }, way: { choose: { left: 1, right: 2 }, default: left } }
pieces:
  base: { size: size x 2*size }
  sail(k): { each: k from 1 to sails, size: size/4 x size, creases: { fold: middle down } }
joins:
  - { each: k from 1 to sails, glue: sail(k).left, onto: base, lay: top along top, after: size*(k - 1)/4 }
poses: { closed: { all: flat }, spread: { sail: lean } }
`),
};

const KINDS: Kinds = { find: (id) => FOLDS[id] ?? 'unknown', known: Object.keys(FOLDS) };

function cardOf(fold: Fold | undefined, problems: readonly Problem[], system: System = 'inch'): Card {
  if (fold === undefined) throw new Error(formatProblems(problems));
  const made = makeCard(fold, {
    ...{ system, mark: DEFAULT_MARKS[system], units: 'in' as const },
    ...{ parameters: undefined, own: undefined, recipe: [] },
  });
  if (made.card === undefined || made.problems.length > 0) throw new Error(formatProblems(made.problems));
  return made.card;
}

function composed(yaml: string, system: System = 'inch'): Card {
  const { fold, problems } = readFold(yamlMap(`name: Composed\nunits: in\n${yaml}`), { kinds: KINDS });
  return cardOf(fold, problems, system);
}

const names = (list: readonly { readonly name: string }[]): string => list.map(({ name }) => name).join(' ');
const joined = ({ joins }: Card): string[] => joins.map(({ is, part, onto }) => `${is} ${part.piece} ${onto.piece}`);

describe('a kind made of others', () => {
  it('a kind stands for a piece of the other: with its own back and edges, and its topmost face', () => {
    const { fold, problems } = readFold(yamlMap(SHAKER_ON_EASEL), { kinds: KINDS });
    for (const system of ['inch', 'metric'] as const) {
      const card = cardOf(fold, problems, system);
      expect(names(card.pieces)).toBe('base frame film ring backing');
      expect(joined(card)).toEqual([
        'glue backing base',
        'rest backing base',
        'glue ring backing',
        'glue film ring',
        'glue frame film',
      ]);
      expect(names(card.poses)).toBe('open closed standing');
      expect(card.motions.map(({ poses }) => poses)).toEqual([['closed', 'standing']]);
      expect(card.fillings.map(({ piece, window }) => `${piece}.${window}`)).toEqual(['ring.chamber']);
      const [base, frame] = card.pieces;
      expect(base?.rows[2]?.size.equals(frame?.height ?? base.height)).toBe(true);
    }
  });

  it('what was glued onto the face of the piece is received by the topmost piece', () => {
    const card = composed(`
use: { easel: , shaker: }
replace: { front: shaker }
pieces: { mat: { size: floor less 1/8 }, tag: 1 x 1, dot: { circle: 1 } }
joins:
  - { glue: mat, onto: floor }
  - { glue: tag, onto: front, match: top-left }
  - { glue: face of dot, onto: back of front }
poses: { tilted: { knee: 45 }, standing: { spine: 10 } }
`);
    expect(joined(card).slice(-3)).toEqual(['glue mat base', 'glue tag frame', 'glue dot backing']);
    const mat = card.pieces.find(({ name }) => name === 'mat');
    expect([mat?.width.inches.valueOf(), mat?.height.inches.valueOf()]).toEqual([4, 5.25]);
    expect(names(card.poses)).toBe('open closed standing tilted');
    const standing = card.poses.find(({ name }) => name === 'standing');
    expect(standing?.rests).toBe(false);
    expect(standing?.turns.map(({ crease, turn, said }) => [crease, turn, said])).toEqual([
      ['knee', 180, false],
      ['spine', 10, true],
    ]);
  });

  it('names that are taken get the id of their kind in front; parameters are worked out in the using kind', () => {
    const card = composed(`
parameters: { wide: 3, open: 60 deg, many: { count: 3, from: 1, to: 4 } }
use:
  easel: { width: wide + 1, height: 2*wide }
  mill: { size: wide/2, lean: open/2, sails: many, way: right }
joins: [{ glue: mill-base, onto: front }]
poses: { spread: { sail: 20 }, standing: { sail(2): 30 } }
`);
    expect(names(card.pieces)).toBe('base front mill-base sail(1) sail(2) sail(3)');
    expect(joined(card)).toEqual([
      'glue front base',
      'rest front base',
      'glue sail(1) mill-base',
      'glue sail(2) mill-base',
      'glue sail(3) mill-base',
      'glue mill-base front',
    ]);
    expect(card.pieces[2]?.width.inches.toFraction()).toBe('3/2');
    expect(card.pieces[1]?.width.inches.toFraction()).toBe('4');
    // The poses are the host's; in each, the other kind stands as in its own of that name.
    expect(names(card.poses)).toBe('open closed standing spread');
    const sails = (pose: string): unknown =>
      card.poses
        .find(({ name }) => name === pose)
        ?.turns.flatMap(({ piece, turn }) => (piece.startsWith('sail') ? [turn] : []));
    expect(sails('closed')).toEqual([0, 0, 0]);
    expect(sails('standing')).toEqual([0, 30, 0]);
    expect(sails('spread')).toEqual([20, 20, 20]);
  });

  it('may be made of kinds that are made of others', () => {
    const { fold: inner, problems } = readFold(yamlMap(SHAKER_ON_EASEL), { kinds: KINDS });
    const outerKinds: Kinds = { find: (id) => (id === 'display' ? (inner ?? 'faulty') : KINDS.find(id)), known: [] };
    const outer = readFold(
      yamlMap(
        'name: Outer\nunits: in\nuse: { display: { width: 4, height: 5 }, slider: }\npieces: { tag: 1 x 1 }\njoins: [{ glue: tag, onto: front }]',
      ),
      { kinds: outerKinds },
    );
    const card = cardOf(outer.fold, [...problems, ...outer.problems]);
    expect(names(card.pieces)).toBe('base frame film ring backing card slider tag');
    expect(joined(card).at(-1)).toBe('glue tag frame');
    expect(card.poses.every(({ slides }) => slides.length === 1)).toBe(true);
  });

  const USES = '{ easel: , shaker: }';
  it.each([
    ['unknown-kind', 'use.easle', 'use: { »easle: }', 'Did you mean `easel`?'],
    ['unknown-kind', 'replace.front', `use: ${USES}\nreplace: { front: »shakr }`, 'Did you mean `shaker`?'],
    ['unknown-piece', 'replace.frnot', `use: ${USES}\nreplace: { »frnot: shaker }`, 'Did you mean `front`?'],
    ['unknown-piece', 'replace.ring', `use: ${USES}\nreplace: { »ring: shaker }`, /is a piece of `shaker` itself/],
    ['unknown-key', 'use.easel.widht', 'use: { easel: { »widht: 4 } }', 'Did you mean `width`?'],
    ['unknown-name', 'use.easel.width', 'use: { easel: { width: »wide } }', /wide/],
    ['length-for-number', 'use.mill.sails', 'use: { mill: { sails: »4 in } }', /number/],
    ['unknown-word', 'use.mill.way', 'use: { mill: { way: »rihgt } }', 'Did you mean `right`?'],
    ['no-acts-as', 'replace.front', 'use: { easel: , box: }\nreplace: { front: »box }', /^Add `acts-as:` to `box`/],
    ['circle', 'replace.ring', `use: ${USES}\nreplace: { front: shaker, »ring: easel }`, /^Take one of the two/],
    ['name-clash', 'pieces.front', 'use: { easel: }\npieces: { »front: 4 x 4 }', 'Give it another name, as `front-2`.'],
    ['wrong-shape', 'use.easel', 'use: { easel: »4 }', /easel: \{ width: width \}/],
  ] as const)('%s at %s: %s', (code, path, yaml, remedy) => {
    const { text, place } = marked(`name: Composed\nunits: in\n${yaml}`, 'fold.md');
    const problem = only(readFold(yamlMap(text), { kinds: KINDS }).problems);
    expect(problem).toMatchObject({ code, path, place });
    if (typeof remedy === 'string') expect(problem.remedy).toBe(remedy);
    else expect(problem.remedy).toMatch(remedy);
  });

  it('says nothing more when a kind could not be read, and refuses a kind that uses itself', () => {
    const broken: Kinds = { find: (id) => (id === 'easel' ? 'faulty' : 'circle'), known: ['easel'] };
    const silent = readFold(yamlMap('name: A\nunits: in\nuse: { easel: }\njoins: [{ glue: tag, onto: front }]'), {
      kinds: broken,
    });
    expect([silent.fold, silent.problems]).toEqual([undefined, []]);
    const circle = readFold(yamlMap('name: A\nunits: in\nuse: { shaker: }'), { kinds: broken });
    expect(only(circle.problems)).toMatchObject({ code: 'kind-uses-itself', path: 'use.shaker' });
  });
});

describe('what a post adds', () => {
  function added(id: string, yaml: string, system: System = 'inch'): ReturnType<typeof makeCard> {
    const fold = withAdditions(FOLDS[id] as Fold, { node: yamlMap(yaml, 'post.md'), units: 'in', path: 'add' });
    return make(fold, system);
  }

  it('sees the pieces, bands, sizes and counts of the kind, and comes after them', () => {
    for (const system of ['inch', 'metric'] as const) {
      const { card, problems } = added(
        'easel',
        `
pieces: { mat: { size: floor less 1/8 in, stock: pattern }, bow: { size: width/2 x 1, creases: { fold: middle down } } }
joins: [{ glue: mat, onto: floor }, { glue: bow.left, onto: mat, match: top }]
poses: { tied: { fold: 90, others: flat } }
`,
        system,
      );
      expect(problems).toEqual([]);
      const floor = card?.pieces[0]?.rows[2]?.size;
      const mat = card?.pieces[2];
      const margin = floor && mat && floor.minus(mat.height).toMm();
      expect(margin).toBeCloseTo(system === 'inch' ? 6.35 : 6, 6);
      expect(mat?.stock).toBe('pattern');
      expect(names(card?.poses ?? [])).toBe('open closed standing tied');
      const turns = card?.poses.map(({ turns: all }) => all.find(({ crease }) => crease === 'fold')?.turn);
      expect(turns).toEqual([0, 180, 0, 90]);
    }
    const box = added(
      'box',
      'pieces: { mat(k): { each: k from 1 to layers, size: 1 x 1 } }\njoins: [{ each: k from 1 to layers, glue: mat(k), onto: layer(k).left.middle }]',
    );
    expect(names(box.card?.pieces ?? [])).toBe('layer(1) layer(2) layer(3) lid mat(1) mat(2) mat(3)');
    expect(box.card?.posts).toBe('boxed');
  });

  it('stacks and fills', () => {
    const { card } = added(
      'easel',
      'pieces: { frame: { size: front less 0, windows: { hole: { inset: 1 } } } }\nstack: [front, frame]\nfill: { sand: { in: frame } }',
    );
    expect(joined(card as Card)).toEqual(['glue front base', 'rest front base', 'glue frame front']);
    expect(card?.fillings).toMatchObject([{ name: 'sand', piece: 'frame', window: 'hole', stock: 'sand' }]);
  });

  it('does not change what the names of the kind mean', () => {
    // The kind says `flap.height` nowhere; but a band of the same name must not make its own joins ambiguous.
    const { card, problems } = added('easel', 'pieces: { box: { across: [flap 1, valley knee, floor 1], down: 1 } }');
    expect(problems).toEqual([]);
    expect(
      card?.poses.find(({ name }) => name === 'standing')?.turns.map(({ piece, crease }) => `${piece}.${crease}`),
    ).toEqual(['base.knee', 'base.spine', 'box.knee']);
  });

  it.each([
    ['redefined', 'add.pieces.front', 'pieces: { »front: 4 x 4 }', /^`front` is a piece of the kind/],
    ['redefined', 'add.poses.standing', 'poses: { »standing: { knee: flat } }', /^`standing` is a pose of the kind/],
    ['unknown-key', 'add.motion', '»motion: [open, closed]', /./],
    [
      'unknown-piece',
      'add.joins[0].onto',
      'pieces: { mat: 4 x 4 }\njoins: [{ glue: mat, onto: »flor }]',
      'Did you mean `floor`?',
    ],
    ['unknown-piece', 'add.pieces.mat.size', 'pieces: { mat: { size: »flor less 1/8 } }', /floor|flor/],
    ['unknown-crease', 'add.poses.tilted.kene', 'poses: { tilted: { »kene: 30 } }', 'Did you mean `knee`?'],
  ] as const)('%s at %s: %s', (code, path, yaml, remedy) => {
    const { text, place } = marked(yaml, 'post.md');
    const problem = only(added('easel', text).problems);
    expect(problem).toMatchObject({ code, path, place });
    if (typeof remedy === 'string') expect(problem.remedy).toBe(remedy);
    else expect(problem.remedy).toMatch(remedy);
  });
});
