import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  DEFAULT_MARKS,
  type Fold,
  type Kinds,
  type MapNode,
  makeCard,
  type Problem,
  readFold,
  type SourceNode,
  SYSTEMS,
  withAdditions,
} from '../../../plugins/engine/index.ts';
import { foldOf } from '../support/folds.ts';
import * as FOLDS from '../support/ten-folds.ts';
import { yamlMap } from '../support/yaml-tree.ts';

/** Joins, poses and additions broken at random: there may be problems, but nothing throws, and no card is missing without one. */
const RUNS = 150;

const SEEDS = Object.values(FOLDS).map((yaml) => yamlMap(yaml));
const ADDED = yamlMap(`
pieces: { mat(k): { each: k from 1 to 2, size: width x 2, creases: { half: middle down }, cuts: { slit: { top: 1, from: 0, to: 1 } } } }
joins: [{ glue: mat(1), onto: back of mat(2), match: top-left to half at 1, turn: 30 }, { slot: mat(1).left, into: mat(2).right }]
stack: [mat(1), mat(2)]
poses: { new: { mat: 30, ground: mat(1).left, stands: mat(2).bottom, aside: [mat] } }
fill: { sand: { in: mat(1), full: 1/2 } }
`);
const KINDS: Kinds = {
  find: (id) => (id === 'easel' ? foldOf(FOLDS.EASEL) : id === 'shaker' ? foldOf(FOLDS.SHAKER) : 'unknown'),
  known: ['easel', 'shaker'],
};
const NASTY = [
  ...[
    '',
    ' ',
    '0',
    '-1',
    '1/0',
    '1e400',
    '90',
    '-180 deg',
    '0 x 0',
    '[1, 2]',
    'back of',
    'of',
    'along',
    'x along x',
    'to',
    'at 2',
  ],
  ...[
    '(1)',
    'base.',
    '.left',
    'base.left.top',
    'all',
    'others',
    'yes',
    'flat',
    'solve',
    'start',
    '9'.repeat(60),
    'left along left',
  ],
];

function textsOf(node: SourceNode): string[] {
  if (node.kind === 'text') return [node.text];
  if (node.kind === 'list') return node.items.flatMap(textsOf);
  return node.entries.flatMap(({ key, value }) => [key.text, ...textsOf(value)]);
}

const POOL = [...new Set([...SEEDS, ADDED].flatMap(textsOf)), ...NASTY];

interface Stroke {
  readonly at: number;
  readonly how: 'replace' | 'rename' | 'drop' | 'twice' | 'swap';
  readonly text: string;
}

const strokes = fc.array(
  fc.record({
    at: fc.nat({ max: 400 }),
    how: fc.constantFrom<Stroke['how']>('replace', 'replace', 'rename', 'drop', 'twice', 'swap'),
    text: fc.constantFrom(...POOL),
  }),
  { minLength: 1, maxLength: 4 },
);

/** The tree with one stroke at its `at`-th node. */
function struck(tree: SourceNode, stroke: Stroke): SourceNode {
  let left = stroke.at % Math.max(1, textsOf(tree).length);
  const visit = (node: SourceNode): SourceNode => {
    if (node.kind === 'text')
      return left-- === 0 ? { ...node, text: stroke.how === 'swap' ? stroke.text.slice(1) : stroke.text } : node;
    if (node.kind === 'list') {
      const items = node.items.flatMap((item) => {
        const here = left === 0;
        const next = visit(item);
        return here && stroke.how === 'drop' ? [] : here && stroke.how === 'twice' ? [item, item] : [next];
      });
      return { ...node, items };
    }
    const entries = node.entries.flatMap((entry) => {
      const here = left-- === 0;
      if (here && stroke.how === 'drop') return [];
      const key = here && stroke.how === 'rename' ? { ...entry.key, text: stroke.text } : entry.key;
      return [{ key, value: visit(entry.value) }];
    });
    return { ...node, entries };
  };
  return visit(tree);
}

function check(fold: Fold | undefined, problems: readonly Problem[]): void {
  if (fold === undefined) {
    expect(problems.length).toBeGreaterThan(0);
    return;
  }
  for (const system of SYSTEMS) {
    const request = {
      system,
      mark: DEFAULT_MARKS[system],
      units: 'in' as const,
      parameters: undefined,
      own: undefined,
    };
    const { card, problems: ofCard } = makeCard(fold, { ...request, recipe: [] });
    expect(card !== undefined || ofCard.length > 0).toBe(true);
    for (const join of card?.joins ?? []) {
      if (!('turn' in join)) continue;
      const [cos, sin] = [join.turn.cos.valueOf(), join.turn.sin.valueOf()];
      expect(cos * cos + sin * sin).toBeCloseTo(1, 9);
    }
  }
}

it('never throws, whatever is written', () => {
  fc.assert(
    fc.property(fc.constantFrom(...SEEDS), strokes, (seed, all) => {
      const tree = all.reduce<SourceNode>(struck, seed) as MapNode;
      const { fold, problems } = readFold(tree, { kinds: KINDS });
      check(fold, problems);
    }),
    { numRuns: RUNS, seed: 20261003 },
  );
});

it('nor whatever is added', () => {
  const kinds = [FOLDS.EASEL, FOLDS.EXPLODING_BOX, FOLDS.SLIDER].map((yaml) => foldOf(yaml));
  fc.assert(
    fc.property(fc.constantFrom(...kinds), strokes, (fold, all) => {
      const node = all.reduce<SourceNode>(struck, ADDED);
      check(withAdditions(fold, { node, units: 'in', path: 'add' }), []);
    }),
    { numRuns: RUNS, seed: 20261003 },
  );
});
