import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  DEFAULT_MARKS,
  type Fold,
  type MapNode,
  makeCard,
  type Problem,
  panelsOf,
  readRecipe,
  recipeFold,
  recipeOf,
  type SourceNode,
  SYSTEMS,
  valueAt,
} from '../../../plugins/engine/index.ts';
import { KINDS, kindTexts } from '../support/kind-texts.ts';
import * as FOLDS from '../support/ten-folds.ts';
import { goFromTree, RUNAWAY_MS, sumOf } from '../support/whole-way.ts';
import { yamlMap } from '../support/yaml-tree.ts';

/*
 * Trees of folds broken at random. With the broken texts in `tests/engine/whole-way` they are 20,000: 6000 here, 7000 each there.
 * A fold may have problems; it may never throw, never be silent and without a card, and whatever it comes to takes a moment.
 */
const RUNS = 6000;

/** For the runner alone, in case a run never ends; many times what the runs need. */
const PATIENCE_MS = 1_800_000;

const SEEDS: readonly MapNode[] = [
  ...[...kindTexts(), ...Object.values(FOLDS)].map((yaml) => yamlMap(yaml)),
  yamlMap(`
name: Everything
units: mm
parameters: { w: { default: 100, from: w/2, to: 2*w }, n: { count: 3, from: 1, to: 9 }, c: { choose: { a: 1, b: w }, default: b } }
values: { v: (w + c)/n, u: smaller of v and 5½ in }
require: [{ that: w >= n*v, else: No. }]
same: [[one.a.width, one.b.width], [w, one.width]]
pieces:
  one: { size: 2*w x 90, across: [a w, valley s, b rest], down: [top 40, mountain, bottom 50], grain: down }
  two: one.a less 3
poses: { half: { s: shut, one.top|bottom: 0, others: keep }, closed: {} }
recipe: [{ piece: one, cut: 200 x 90, score: "100, 50 mountain", along: long side }]`),
  yamlMap(`
name: All that paper does
units: in
parameters: { w: 4, lean: { default: 50 deg, from: 10 deg, to: 80 }, n: { count: 3, from: 1, to: 6 } }
pieces:
  page(k): { each: k from 1 to n, size: w x k + 1, creases: { a: middle down, b(j): { each: j from 1 to k, top: [j/2, j/3], fold: [valley, both] } } }
  card:
    across: [left w, valley spine, right w]
    down: 5
    marks: { line-(s): { each: s in left right, start: spine at 1, off: spine, by: lean, towards: bottom-(s), long: 2 }, c: top-left to centre, d: { from: [1, 2], to: c at 1 } }
    windows: { view: { inset: 1, in: left }, round: { circle: 1, at: [w + 2, 2] }, soft: { rounded: 1 x 2, radius: 1/4, at: c at 3 } }
    shapes: { disc: { ellipse: 1 x 2, at: spine at 3, stays-with: left } }
    panels: { peak: [1, 1] }
  strip: { across: [{ each: i from 1 to n, panel: band(i) w, between: fold(i), in-turn: [valley, mountain] }], down: 2 }
  box: { across: [left 1, valley, middle w, valley, right 1], down: [head 1, valley, middle w, valley, foot 1], corners: tabs, away: [left.middle] }
  tag: { outline: [[0, 1], { arc: [2, 1], through: [1, 0] }, [2, w], [0, w]], thick: 1/8, cuts: { e: { right: 1/2, from: 1, to: 2 } } }
same: [[page(1).width, strip.band(1).width]]
require: [{ each: k from 2 to n, that: page(k).height > page(k - 1).height, else: No. }]`),
];

const TEXTS = [
  ...['', '0', '-1', '1/0', '53/4', '5-1/2', '5x7', '2 x 3', '4 1/4 in', '9'.repeat(60), `${'('.repeat(200)}1`],
  ...['min(a, b)', 'smaller of', 'w', 'v', 'width', 'one.width', 'one.a.b.c.width', 'base less base', 'rest', 'valley'],
  ...[
    'valley x',
    'mountain 3',
    'all',
    'others',
    'flat',
    '90',
    '__proto__',
    'constructor',
    'toString',
    '\u0000',
    '𝔵',
    '½',
  ],
  ...['1 + '.repeat(90), 'a,b,c', 'x', '.', '-', '>=', 'left', 'half 1e9', '\ud800', '  '],
];
const PLACES = [
  ...[
    'k from 1 to n',
    'k from 1 to 99999',
    's in left right',
    'page(k)',
    'page(1)',
    'page(k - 1)',
    '(s)',
    'k',
    'page(',
    ')',
  ],
  ...[
    'middle down',
    'top-left to centre',
    'top to top',
    'spine at 2',
    'c at 1',
    'centre',
    'left',
    '50 deg',
    'lean',
    '-1 deg',
  ],
  ...['[1, 2]', 'left.head', 'tabs', 'both', '1e30 x 1e-30', '9'.repeat(30), '1/999999999999'],
];
const KEYS = [
  ...[
    'each',
    'panel',
    'circle',
    'rounded',
    'outline',
    'inset',
    'at',
    'in',
    'radius',
    'left',
    'top',
    'middle',
    'start',
    'off',
  ],
  ...[
    'by',
    'towards',
    'long',
    'fold',
    'arc',
    'through',
    'corners',
    'away',
    'windows',
    'creases',
    'stays-with',
    'thick',
  ],
  'size',
  'across',
  'down',
  'default',
  'from',
  'to',
  'count',
  'choose',
  'cut',
  'score',
  'along',
  'piece',
  'that',
];

const text = fc.oneof(fc.constantFrom(...TEXTS, ...PLACES, ...KEYS), fc.string({ unit: 'grapheme', maxLength: 12 }));
const place = { file: 'fuzz.md', line: 1, column: 1 };
const leaf = (value: string): SourceNode & { kind: 'text' } => ({ kind: 'text', text: value, place, quoted: false });

/** A change of one node, picked by a number: another text, a list, a group, nothing, a copy of a neighbour. */
interface Change {
  readonly at: number;
  readonly how: 'text' | 'splice' | 'key' | 'list' | 'map' | 'drop' | 'double';
  readonly text: string;
}
const change: fc.Arbitrary<Change> = fc.record({
  at: fc.nat(200),
  how: fc.constantFrom('text', 'splice', 'key', 'list', 'map', 'drop', 'double'),
  text,
});

function changed(tree: SourceNode, { at, how, text: value }: Change): SourceNode {
  let count = 0;
  const walk = (node: SourceNode): SourceNode => {
    const here = count++ === at;
    if (here && how === 'text') return leaf(value);
    if (here && how === 'list') return { kind: 'list', items: [node, leaf(value)], place };
    if (here && how === 'map') return { kind: 'map', entries: [{ key: leaf(value), value: node }], place };
    if (node.kind === 'text') {
      return here && how === 'splice' ? { ...node, text: node.text.replace(/[^ ]+/u, () => value) } : node;
    }
    if (node.kind === 'list') {
      const items = node.items.map(walk);
      if (here && how === 'drop') return { ...node, items: items.slice(1) };
      return here && how === 'double' ? { ...node, items: [...items, ...items] } : { ...node, items };
    }
    const entries = node.entries.map((entry) => ({ ...entry, value: walk(entry.value) }));
    if (here && how === 'drop') return { ...node, entries: entries.slice(1) };
    if (here && how === 'double') return { ...node, entries: [...entries, ...entries] };
    if (here && how === 'key') {
      return {
        ...node,
        entries: entries.map((entry, index) => (index === 0 ? { ...entry, key: leaf(value) } : entry)),
      };
    }
    return { ...node, entries };
  };
  return walk(tree);
}

function sound(problems: readonly Problem[]): void {
  for (const { code, takes, remedy, wrote, place: at } of problems) {
    if (!code || !takes || !remedy || !wrote || at.line < 1 || at.column < 1)
      throw new Error(`a dumb problem: ${code}`);
  }
}

/** The lesson's recipe made into a fold, as far as a card. */
function useRecipe(fold: Fold): void {
  for (const system of SYSTEMS) {
    const request = {
      system,
      mark: DEFAULT_MARKS[system],
      units: 'in',
      parameters: undefined,
      own: undefined,
    } as const;
    const { card, problems } = makeCard(fold, { ...request, recipe: fold.recipe });
    sound(problems);
    expect(card === undefined).toBe(problems.some(({ severity }) => severity === 'error'));
    if (card === undefined) continue;
    recipeOf(card);
    panelsOf(card);
  }
}

it('survives every broken fold, post and recipe', { timeout: PATIENCE_MS }, () => {
  let folded = 0;
  fc.assert(
    fc.property(
      fc.constantFrom(...SEEDS),
      fc.array(change, { minLength: 1, maxLength: 4 }),
      text,
      (seed, changes, given) => {
        const tree = changes.reduce(changed, seed as SourceNode);
        const { steps, problems: slips } = readRecipe(tree, 'in');
        sound(slips);
        useRecipe(recipeFold('Fuzz', steps, place));
        if (tree.kind !== 'map') return;
        const parameters = valueAt(tree, 'parameters');
        const name = (parameters?.kind === 'map' && parameters.entries[0]?.key.text) || 'width';
        const entries = changes.length % 2 === 0 ? [] : [{ key: leaf(name), value: leaf(given) }];
        const { end, ms } = goFromTree(tree, { kinds: KINDS, given: { kind: 'map', place, entries } });
        expect(sumOf(ms)).toBeLessThan(RUNAWAY_MS);
        if (end === 'folded') folded++;
      },
    ),
    { numRuns: RUNS },
  );
  // Most changes break a fold; the others must go all the way.
  expect(folded).toBeGreaterThan(RUNS / 10);
});
