import { divide, equal, fraction, multiply } from 'mathjs';
import { describe, expect, it, test } from 'vitest';
import {
  buildLibrary,
  computeProject,
  materialOfSupply,
  materialsOf,
  readSupply,
  type Supply,
  summariseEdition,
} from '../../plugins/content/index.ts';
import { formatProblem, formatProblems } from '../../plugins/engine/index.ts';
import { contentOf, file, only, placesAndCodes, post } from './support.ts';

const read = (text: string) => readSupply(file('content/supplies/x.yaml', `name: X\n${text}\n`));

function supply(text: string): Supply {
  const { entry, problems } = read(text);
  if (entry === undefined) throw new Error(formatProblems(problems));
  return entry;
}

const material = (text: string) => materialOfSupply(supply(text), undefined);

describe('what a supply is to thickness and weight', () => {
  /* Pounds of cover are those of 500 sheets of 20 x 26 in; 1 lb = 453.59237 g, 1 in = 25.4 mm (1959 agreement). */
  const sheet = multiply(multiply(fraction(20), fraction('0.0254')), multiply(fraction(26), fraction('0.0254')));
  const perPound = divide(fraction('453.59237'), multiply(fraction(500), sheet)) as ReturnType<typeof fraction>;

  it.each([
    ['category: cardstock\nweight: 216 gsm', fraction(216)],
    ['category: cardstock\nweight: 80 lb cover', multiply(perPound, fraction(80))],
    ['category: film\nweight: 260 g/m²', fraction(260)],
  ])('%s', (text, grams) => {
    expect(equal(fraction(material(text).grammage?.toFraction() ?? ''), grams)).toBe(true);
  });

  it('a measured caliper beats the published one, which beats what the weight suggests', () => {
    const caliper = (text: string) => material(`category: cardstock\n${text}`).caliper;
    const measured = caliper('weight: 100 lb cover\ncaliper: 0.3 mm');
    expect([measured?.origin, measured?.length.mm.toFraction()]).toEqual(['measured', '3/10']);
    // 11 points of 0.001 in: a published cover guide.
    const table = caliper('weight: 100 lb cover');
    expect([table?.origin, table?.length.inches.toFraction()]).toEqual(['table', '11/1000']);
    expect(caliper('weight: 216 gsm')?.origin).toBe('estimate');
    expect(caliper('gifted: no')).toBeUndefined();
  });

  it('the bulk of paper says nothing of film', () => {
    expect(material('category: film\nweight: 260 gsm').caliper).toBeUndefined();
  });

  it.each([
    ['0.011 in', '11/1000'],
    ['11 pt', '11/1000'],
    ['254 µm', '1/100'],
  ])('a caliper may be written %s', (written, inches) => {
    const { caliper } = material(`category: cardstock\ncaliper: ${written}`);
    expect(caliper?.length.inches.toFraction()).toBe(inches);
  });

  it('foam has a height of a layer, beads a size, ornaments height and mass', () => {
    const foam = material('category: foam\nunits: in\nheight: 1/16\ndensity: 0.1 g/cm³\ngives: yes');
    expect(foam).toMatchObject({ sort: 'foam', compressible: true });
    expect([foam.height?.inches.toFraction(), foam.density?.toFraction()]).toEqual(['1/16', '1/10']);
    const beads = material('category: filler\nbead: 2.1 mm');
    expect([beads.sort, beads.bead?.mm.toFraction()]).toEqual(['filler', '21/10']);
    const button = material('category: ornament\nheight: 2.5 mm\nmass: 600 mg');
    expect([button.sort, button.height?.mm.toFraction(), button.mass?.toFraction()]).toEqual([
      'ornament',
      '5/2',
      '3/5',
    ]);
  });

  it("goes by its figures where the category is the maker's own", () => {
    const sort = (text: string) => material(`category: ${text}`).sort;
    expect(sort('shell grit\nbead: 1 mm')).toBe('filler');
    expect(sort('driftwood\nmass: 1 g')).toBe('ornament');
    expect(sort('sailcloth\nweight: 200 gsm')).toBe('paper');
    expect(sort('stencil')).toBe('other');
  });

  test.each([
    ['category: cardstock\nbead: 2 mm', 3, 'bead', 'filler'],
    ['category: filler\nheight: 2 mm', 3, 'height', '`caliper`'],
    ['category: cardstock\nmass: 3 g', 3, 'mass', '`weight`'],
    ['category: ink\ndensity: 1 g/cm³', 3, 'density', '`density`'],
  ])('a figure that nothing looks at is refused: %s', (text, line, path, says) => {
    const { entry, problems } = read(text);
    expect(entry).toBeUndefined();
    const problem = only(problems, 'figure-misplaced');
    expect(problem).toMatchObject({ place: { line }, path });
    expect(`${problem.takes} ${problem.remedy}`).toContain(says);
  });

  test.each([
    ['category: foam\nheight: 0 in', '3:9 length-zero'],
    ['category: foam\nheight: 1/16', '3:9 unit-missing'],
    ['category: filler\nbead: seed', '3:7 number-missing'],
    ['category: filler\ndensity: 1.5', '3:10 density-unit'],
    ['category: ornament\nmass: 3', '3:7 mass-unit'],
    ['category: cardstock\ncaliper: 0 pt', '3:10 length-zero'],
    ['category: foam\ngives: a little', '3:8 yes-or-no'],
    ['category: foam\ncaution: [a]', '3:10 value-shape'],
  ])('%s', (text, told) => {
    expect(placesAndCodes(read(text).problems)).toEqual([`content/supplies/x.yaml:${told}`]);
  });

  it('says what is wrong in the words of the house', () => {
    const [problem] = read('category: ornament\nmass: 216 gsm').problems;
    expect(problem && formatProblem(problem).split('\n')).toEqual([
      'content/supplies/x.yaml:3:7  mass',
      '  You wrote  216 gsm',
      '  It takes   a mass as a kitchen scale shows it, such as `3 g` or `1/8 oz`',
      expect.stringContaining('stands under `weight`'),
    ]);
  });
});

const INK = file('content/supplies/tide-ink.yaml', 'name: Tide ink\ncategory: ink\n');
const STENCIL = file('content/supplies/weed.yaml', 'name: Weed\ncategory: stencil\n');
const GEL = file('content/supplies/foam-gel.yaml', 'name: Foam gel\ncategory: gel\ncaliper: 0.4 mm\n');

function contentWith(frontmatter: string) {
  const base = contentOf([post('ferry', frontmatter)]);
  return { ...base, supplies: [...base.supplies, INK, STENCIL, GEL] };
}

const LAYERED = `fold: side-fold
layers:
  - on: front
    lay:
      - { with: tide-ink, as: ink, note: a pale wash }
      - { with: weed, through: true, and: paste, as: paste }
stock: { cover: slate-card, paste: foam-gel }`;

describe('the layers of a card', () => {
  function projectOf(frontmatter: string) {
    const { library, problems } = buildLibrary(contentWith(frontmatter));
    const found = library?.posts.get('ferry');
    if (library === undefined || found === undefined) throw new Error(formatProblems(problems));
    return { library, project: computeProject(library, found).project };
  }

  it('keep their order in both editions, and name supplies or roles of the stock', () => {
    const { library, project } = projectOf(LAYERED);
    const [card] = project.cards;
    if (card === undefined) throw new Error('no card');
    for (const edition of [card.editions.inch, card.editions.metric]) {
      const [coat, ...others] = edition.card.coats;
      expect(others).toEqual([]);
      expect(coat?.items.map((item) => [item.with, item.through, item.as, item.note])).toEqual([
        ['tide-ink', undefined, 'ink', 'a pale wash'],
        ['paste', 'weed', 'paste', undefined],
      ]);
      const materials = materialsOf(edition.card, card.stock, {}, library.supplies);
      expect(Object.keys(materials)).toEqual(['cover', 'paste', 'tide-ink', 'weed']);
      expect(materials.paste?.caliper?.length.mm.toFraction()).toBe('2/5');
    }
  });

  it('a role of the stock is taken before a supply of the same name', () => {
    const { library, project } = projectOf(LAYERED.replace('paste: foam-gel', 'paste: foam-gel, tide-ink: slate-card'));
    const [card] = project.cards;
    const materials = card && materialsOf(card.editions.inch.card, card.stock, {}, library.supplies);
    expect(materials?.['tide-ink']?.name).toBe('Slate cardstock');
  });

  test.each([
    ['with: tide-ink', 'with: tide-inc', 'supply-unknown', 'layers[0].lay[0].with', '`tide-ink`'],
    ['with: weed', 'with: wed', 'supply-unknown', 'layers[0].lay[1].with', '`weed`'],
    ['and: paste', 'and: pastry', 'supply-unknown', 'layers[0].lay[1].and', 'content/supplies/pastry.yaml'],
    ['on: front', 'on: frnt', 'unknown-piece', 'layers[0].on', 'front'],
  ])('%s -> %s', (right, wrong, code, path, says) => {
    const { problems } = buildLibrary(contentWith(LAYERED.replace(right, wrong)));
    const problem = problems.find((one) => one.path === path);
    expect(problem?.place.file).toBe('content/posts/ferry/index.md');
    if (code === 'supply-unknown') expect(problem?.code).toBe(code);
    expect(`${problem?.takes} ${problem?.remedy}`).toContain(says);
  });

  it('belong to a card', () => {
    const { problems } = buildLibrary(contentWith('layers: [{ on: front, lay: [{ with: tide-ink }] }]'));
    expect(only(problems, 'card-without-fold')).toMatchObject({ path: 'layers' });
  });

  it('stand with each of several cards', () => {
    const { project } = projectOf(`cards:
  - { name: One, fold: side-fold, layers: [{ on: front, lay: [{ with: tide-ink, as: ink }] }] }
  - { name: Two, fold: side-fold }`);
    expect(project.cards.map(({ editions }) => editions.metric.card.coats.length)).toEqual([1, 0]);
  });
});

describe('supplies for fillings and foams', () => {
  const SHAKER = `fold: side-fold
add:
  pieces:
    floor: { size: 4 x 5 }
    walls: { size: 4 x 5, windows: { pool: { inset: 1/2 } }, stock: foam, thick: 1/8 }
    lid: { size: 4 x 5, stock: lid }
  stack: [floor, walls, lid]
  joins: [{ glue: floor, onto: outside of front }]
  fill: { beads: { in: walls.pool, stock: beads } }
stock: { cover: slate-card, foam: slate-card, beads: slate-card }`;

  it('go by their roles', () => {
    expect(buildLibrary(contentWith(SHAKER)).problems).toEqual([]);
  });

  const TAPE = file('content/supplies/tape.yaml', 'name: Tape\ncategory: foam\nheight: 1/16 in\ndensity: 0.1 g/cm³\n');
  const BEADS = file('content/supplies/beads.yaml', 'name: Beads\ncategory: filler\nbead: 2 mm\n');

  function shaker(foam: string) {
    const frontmatter = SHAKER.replace('foam: slate-card, beads: slate-card', `foam: ${foam}, beads: beads`);
    const base = contentWith(frontmatter);
    const { library, problems } = buildLibrary({ ...base, supplies: [...base.supplies, TAPE, BEADS] });
    const found = library?.posts.get('ferry');
    if (library === undefined || found === undefined) throw new Error(formatProblems(problems));
    const [card] = computeProject(library, found).project.cards;
    if (card === undefined) throw new Error('no card');
    return card;
  }

  it('foam is bought and not cut: its height is on the marks of neither edition', () => {
    // 1/8 in is 3.175 mm, and metric marks are half a millimetre.
    for (const { card } of Object.values(shaker('tape').editions)) {
      expect(card.pieces.find(({ name }) => name === 'walls')?.thick?.mm.toFraction()).toBe('127/40');
    }
  });

  it('foam without a sheet is tape, which comes from no sheet', () => {
    const sheets = (foam: string) =>
      shaker(foam)
        .editions.inch.findings.filter(({ check }) => check === 'fits-sheet')
        .map(({ witness }) => witness);
    expect(sheets('tape')).toEqual(['base', 'floor', 'lid']);
    expect(sheets('slate-card')).toEqual(['base', 'floor', 'walls', 'lid']);
  });

  it('make up a card in both editions, and its summary tells it', () => {
    const { editions } = shaker('tape');
    for (const edition of [editions.inch, editions.metric]) {
      const { layers, mass, closed } = summariseEdition(edition);
      expect(layers.map(({ is, says }) => `${is}: ${says}`)).toEqual([
        'piece: Floor: Slate cardstock.',
        'piece: Walls: 2 layers of Tape.',
        'join: Stick walls onto floor; the foam holds it.',
        expect.stringMatching(/^fill: .*Beads, 1\/3 full/),
        // Nobody named a supply for the lid.
        'piece: Lid: 100 lb cover.',
        'join: Stick lid onto walls; the foam holds it.',
        'piece: Base: Slate cardstock.',
        expect.stringMatching(/^join: Stick floor onto back of front/),
      ]);
      expect(layers.filter(({ assumed }) => assumed).map(({ says }) => says.split(' ')[0])).toEqual(['Lid:', 'Stick']);
      expect(layers[1]?.adds?.mm).toBe('127/40');
      // Nobody has said how heavy slate cardstock or a bead is: that is told, and not taken for nothing.
      expect(mass.unknown).toEqual(expect.arrayContaining(['cover', 'beads']));
      expect(mass.parts.find(({ name }) => name === 'walls')?.mass?.grams).toMatch(/^\d+/);
      expect(closed[0]?.thickness?.unknown).toEqual(['cover']);
      expect(closed[0]?.thickness?.gives.mm).toBe('127/40');
    }
  });

  it('an unknown role is told, with those there are', () => {
    const { problems } = buildLibrary(contentWith(SHAKER.replace('beads: slate', 'beeds: slate')));
    const problem = only(problems, 'stock-role-unknown');
    expect(problem.takes).toContain('beads, cover, foam, lid');
    expect(problem.remedy).toBe('Did you mean `beads: slate-card`?');
  });
});
