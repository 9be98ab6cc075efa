import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Card,
  DEFAULT_MARKS,
  Length,
  makeCard,
  type Problem,
  readFold,
  SYSTEMS,
} from '../../../plugins/engine/index.ts';
import { foldOf, make } from '../support/folds.ts';
import { yamlMap, yamlTree } from '../support/yaml-tree.ts';

const SHAKER = `
name: Shaker
units: in
pieces:
  base: { across: [front 4, valley spine, back 4], down: 5 }
  ring: { size: 3 x 4, windows: { chamber: { inset: 1/2 } }, stock: foam, thick: 1/8 }
  film: { size: 3 x 4, stock: film }
joins:
  - { glue: ring, onto: base.front }
  - { glue: film, onto: ring }
fill: { beads: { in: ring.chamber, stock: beads } }
`;

function withLayers(layers: string, system: (typeof SYSTEMS)[number] = 'inch'): ReturnType<typeof makeCard> {
  return makeCard(foldOf(SHAKER), {
    ...{ system, mark: DEFAULT_MARKS[system], units: 'in', parameters: undefined, own: undefined, recipe: [] },
    layers: { node: yamlTree(layers, 'post.md'), path: 'layers' },
  });
}

function sound(layers: string, system?: (typeof SYSTEMS)[number]): Card {
  const { card, problems } = withLayers(layers, system);
  expect(problems).toEqual([]);
  if (card === undefined) throw new Error('no card');
  return card;
}

function only(problems: readonly Problem[]): Problem {
  expect(problems).toHaveLength(1);
  const [problem] = problems;
  if (problem === undefined) throw new Error('no problem');
  return problem;
}

describe('layers of a post', () => {
  const WHOLE = `
- on: base.front
  lay:
    - { with: dusk-ink, as: ink, note: a pale wash over the upper half }
    - { with: reed-stencil, through: true, and: sand-ink, as: ink }
    - { with: low-sun-foil, as: foil }
    - { with: drift-paste, as: paste, thick: 0.3 mm }
- { on: back of film, lay: [{ with: pouch, as: anti-static }] }
- fill: beads
- glue: film
`;

  it.each(SYSTEMS)('keep the order in which they are laid down: %s', (system) => {
    const { coats, work } = sound(WHOLE, system);
    const [panel, film] = coats;
    expect(panel?.on.text).toBe('base.front');
    expect(panel?.items.map((item) => item.with)).toEqual(['dusk-ink', 'sand-ink', 'low-sun-foil', 'drift-paste']);
    expect(panel?.items.map(({ through }) => through)).toEqual([undefined, 'reed-stencil', undefined, undefined]);
    expect(panel?.items[0]?.note).toBe('a pale wash over the upper half');
    // A thickness is no length of the card: it is not put on the marks of a ruler.
    expect(panel?.items[3]?.thick?.equals(Length.fromMm('0.3'))).toBe(true);
    expect([panel?.side, film?.side]).toEqual(['face', 'back']);
    expect(work.map(({ is }) => is)).toEqual(['coat', 'coat', 'fill', 'glue']);
  });

  it('are none when a post has none', () => {
    const { card } = make(foldOf(SHAKER), 'inch');
    expect([card?.coats, card?.work]).toEqual([[], []]);
  });

  it('say where in the post they stand', () => {
    const { coats } = sound(WHOLE);
    expect(coats[0]?.items[2]).toMatchObject({
      path: 'layers[0].lay[2]',
      place: { file: 'post.md', line: 6, column: 7 },
    });
  });

  it.each([
    [
      'a panel that is not there',
      '- { on: base.fornt, lay: [{ with: a }] }',
      'unknown-panel',
      'layers[0].on',
      /Did you mean `front`/,
    ],
    [
      'a piece that is not there',
      '- { on: bsae, lay: [{ with: a }] }',
      'unknown-piece',
      'layers[0].on',
      /Did you mean `base`/,
    ],
    ['nothing to lay on', '- { lay: [{ with: a }] }', 'key-missing', 'layers[0]', /Add `on:`/],
    ['nothing laid', '- { on: film }', 'key-missing', 'layers[0]', /Add `lay:`/],
    ['a coat of nothing', '- { on: film, lay: [{ as: ink }] }', 'key-missing', 'layers[0].lay[0]', /Add `with:`/],
    [
      'a word for no kind of coat',
      '- { on: film, lay: [{ with: a, as: foli }] }',
      'unknown-word',
      'layers[0].lay[0].as',
      /Did you mean `foil`/,
    ],
    [
      'a stencil that nothing goes through',
      '- { on: film, lay: [{ with: a, through: true }] }',
      'key-missing',
      'layers[0].lay[0]',
      /Add `and:`/,
    ],
    [
      'what goes through no stencil',
      '- { on: film, lay: [{ with: a, and: b }] }',
      'key-missing',
      'layers[0].lay[0]',
      /Add `through:`/,
    ],
    [
      'a stencil by its name after through',
      '- { on: film, lay: [{ with: a, through: b, and: c }] }',
      'unknown-word',
      'layers[0].lay[0].through',
      /through: true/,
    ],
    [
      'a thickness without a unit',
      '- { on: film, lay: [{ with: a, thick: 3 }] }',
      'unit-missing',
      'layers[0].lay[0].thick',
      /./,
    ],
    ['a filling that is not there', '- { fill: beds }', 'unknown-filling', 'layers[0].fill', /Did you mean `beads`/],
    ['a piece to glue that is not there', '- { glue: flim }', 'unknown-piece', 'layers[0].glue', /Did you mean `film`/],
    [
      'a slip in a key',
      '- { on: film, lya: [{ with: a }], lay: [] }',
      'unknown-key',
      'layers[0].lya',
      /Did you mean `lay`/,
    ],
    ['no list', '{ on: film, lay: [] }', 'wrong-shape', 'layers', /./],
    ['a text for a coat', '- { on: film, lay: [ink] }', 'wrong-shape', 'layers[0].lay[0]', /./],
  ])('tell of %s', (_what, layers, code, path, remedy) => {
    const { card, problems } = withLayers(layers);
    const problem = only(problems);
    expect(problem).toMatchObject({ code, path, place: { file: 'post.md' } });
    expect(problem.remedy).toMatch(remedy);
    expect(card).toBeUndefined();
  });
});

/** A tree of words that may or may not mean something. */
const { node } = fc.letrec<{ node: string }>((tie) => ({
  node: fc.oneof(
    { maxDepth: 4 },
    fc.constantFrom('film', 'base.front', 'back of film', 'true', 'ink', '0.2 mm', "''", '12', 'beads', 'with', '~'),
    fc.array(tie('node'), { maxLength: 3 }).map((items) => `[${items.join(', ')}]`),
    fc
      .uniqueArray(
        fc.tuple(fc.constantFrom('on', 'lay', 'with', 'as', 'through', 'and', 'thick', 'fill', 'glue'), tie('node')),
        {
          selector: ([key]) => key,
          maxLength: 4,
        },
      )
      .map((entries) => `{ ${entries.map(([key, value]) => `${key}: ${value}`).join(', ')} }`),
  ),
}));

describe('layers written at random', () => {
  it('are either taken or told of, and never stop the reading', () => {
    fc.assert(
      fc.property(node, (layers) => {
        const { card, problems } = withLayers(`[${layers}]`);
        expect(card === undefined).toBe(problems.some(({ severity }) => severity === 'error'));
        for (const { place, path, wrote, takes, remedy } of problems) {
          expect(place.file).toBe('post.md');
          expect([path, wrote, takes, remedy].every((text) => text !== '')).toBe(true);
        }
      }),
      { numRuns: 400, seed: 1607 },
    );
  });
});

describe('foam in layers', () => {
  const mounted = (foam: string): string => `
name: Mounted
units: in
parameters: { high: 1/16, many: { count: 2, from: 1, to: 4 } }
pieces: { base: 4 x 5, tile: 2 x 2 }
joins: [{ glue: tile, onto: base, foam: ${foam} }]
`;
  const joinOf = (foam: string) => make(foldOf(mounted(foam)), 'inch').card?.joins[0];

  it('is as high as its layers together', () => {
    for (const foam of ['{ of: tape, high: 1/16, layers: 2 }', '{ of: tape, high: high, layers: many }']) {
      const join = joinOf(foam);
      expect(join).toMatchObject({ tape: { stock: 'tape', layers: 2 } });
      expect(join?.is === 'glue' && join.foam?.equals(Length.fromInches('1/8'))).toBe(true);
    }
    expect(joinOf('1/8')).toMatchObject({ tape: { stock: 'foam', layers: 1 } });
  });

  it.each([
    ['half a layer', '{ high: 1/16, layers: 1/2 }', 'not-whole', 'joins[0].foam.layers'],
    ['no layer', '{ high: 1/16, layers: 0 }', 'not-whole', 'joins[0].foam.layers'],
    ['no height', '{ of: tape, layers: 2 }', 'key-missing', 'joins[0].foam'],
    ['a slip in a key', '{ hihg: 1/16, high: 1/16 }', 'unknown-key', 'joins[0].foam.hihg'],
    ['a list', '[1/16, 2]', 'wrong-shape', 'joins[0].foam'],
  ])('tells of %s', (_what, foam, code, path) => {
    const { fold, problems } = readFold(yamlMap(mounted(foam)));
    expect(fold).toBeUndefined();
    expect(only(problems)).toMatchObject({ code, path });
  });
});

describe('a filling by its mass', () => {
  const filled = (mass: string) => make(foldOf(SHAKER.replace('stock: beads', `stock: beads, mass: ${mass}`)), 'inch');

  it('is exact in grams, from ounces too', () => {
    expect(filled('3 g').card?.fillings[0]?.mass?.toString()).toBe('3');
    expect(filled('1/10 oz').card?.fillings[0]?.mass?.toString()).toBe('2.8349523125');
  });

  it.each([
    ['3', 'mass-unit'],
    ['0 g', 'mass-zero'],
    ['9 kg', 'mass-range'],
    ['a lot', 'number-missing'],
  ])('refuses %s', (mass, code) => {
    const { problems } = readFold(yamlMap(SHAKER.replace('stock: beads', `stock: beads, mass: ${mass}`)));
    expect(only(problems)).toMatchObject({ code, path: 'fill.beads.mass' });
  });
});
