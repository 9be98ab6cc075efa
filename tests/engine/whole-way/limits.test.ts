import { describe, expect, it } from 'vitest';
import {
  type Card,
  dryFit,
  foldCard,
  type Problem,
  panelsOf,
  readFold,
  SYSTEMS,
  sayFinding,
  templatePages,
} from '../../../plugins/engine/index.ts';
import { cardOf, foldOf } from '../support/folds.ts';
import { paperFor } from '../support/whole-way.ts';
import { yamlMap } from '../support/yaml-tree.ts';

function problemsOf(body: string): readonly Problem[] {
  return readFold(yamlMap(`name: Limits\nunits: in\n${body}`)).problems;
}

function cardFrom(body: string): Card {
  return cardOf(foldOf(`name: Limits\nunits: in\n${body}`), 'inch');
}

/** As many as are allowed give no problem; one more gives one, which says how many are allowed. */
function expectLimit(body: (count: number) => string, most: number, takes: string): void {
  expect(problemsOf(body(most))).toEqual([]);
  const [problem, ...others] = problemsOf(body(most + 1));
  expect(others).toEqual([]);
  expect(problem?.takes).toContain(takes);
}

const list = (count: number, make: (i: number) => string): string =>
  Array.from({ length: count }, (_, i) => make(i)).join(', ');

describe('a card has', () => {
  it('at most 100 pieces', () => {
    expectLimit((count) => `pieces: { p(k): { each: k from 1 to ${count}, size: 1 x 1 } }`, 100, 'at most 100 pieces');
  });

  it('at most 60 poses, those that it has by itself among them', () => {
    const poses = (count: number): string => list(count, (i) => `pose-${i}: { all: ${i} }`);
    const body = (count: number): string =>
      `pieces: { p: { across: [a 1, valley s, b 1], down: 1 } }\nposes: { ${poses(count - 2)}, open: { all: flat }, closed: {} }`;
    expectLimit(body, 60, 'at most 60 poses');
  });

  it('at most 1000 edges and lines, of which a circle is eight', () => {
    const marks = (count: number): string => `marks: { ${list(count, (i) => `m${i}: { left: ${i + 1}/1000 }`)} }`;
    const body = (count: number): string =>
      `pieces: { p: { size: 9 x 9, windows: { w: { circle: 1, at: [5, 5] } }, ${marks(494)} }, q: { size: 9 x 9, ${marks(count - 494 - 4 - 8 - 4)} } }`;
    expectLimit(body, 1000, 'at most 1000 edges and lines');
  });

  it('no side longer than 400 in, either way, in either system', () => {
    for (const size of [(side: number) => `${side} x 1`, (side: number) => `1 x ${side}`])
      expectLimit((side) => `pieces: { p: ${size(side)} }`, 400, 'at most 400 in a side');
    expect(problemsOf('pieces: { p: 10160 mm x 10 mm }')).toEqual([]);
    expect(problemsOf('pieces: { p: 10161 mm x 10 mm }')).toMatchObject([{ code: 'too-large' }]);
  });

  it('at most 500 panels, counted over its pieces; one that goes beyond stays whole and says so', () => {
    const strip = (name: string): string =>
      `${name}: { across: [${list(199, (i) => `a${i} 1/8, valley c${i}`)}, last 1/8], down: 1 }`;
    const card = cardFrom(`pieces: { ${strip('one')}, ${strip('two')}, ${strip('three')}, four: 1 x 1 }`);
    const { panels, slips } = panelsOf(card);
    expect(['one', 'two', 'three', 'four'].map((name) => panels.filter(({ piece }) => piece === name).length)).toEqual([
      200, 200, 1, 1,
    ]);
    expect(slips).toMatchObject([{ is: 'too-many-panels', piece: 'three', count: 200, before: 400, limit: 500 }]);
    const told = dryFit(foldCard(card, paperFor(card))).filter(({ outcome }) => outcome === 'too-many-panels');
    expect(told.map((finding) => sayFinding(finding, 'inch').says)).toEqual([
      '`three` is divided into 200 panels, the pieces before it into 400; at most 500 can be folded in one card.',
    ]);
  });
});

describe('what is too much work is left open and told', () => {
  it('144 panels that all lie on each other', () => {
    const card = cardFrom(`pieces:
  strip(s): { each: s from 1 to 6, across: [{ each: i from 1 to 24, panel: page(i) 3, between: fold(i), in-turn: [valley, mountain] }], down: 4 }
joins: [{ each: s from 2 to 6, glue: strip(s).page(1), onto: strip(s - 1).page(24) }]
poses: { closed: {} }`);
    const found = dryFit(foldCard(card, paperFor(card))).filter(({ check }) => check === 'closes-flat');
    expect(found).toMatchObject([{ outcome: 'too-much', state: 'untested', figure: 144 }]);
    for (const system of SYSTEMS)
      for (const finding of found) expect(sayFinding(finding, system).says).toContain('its 144 panels');
  });

  it('a template of more pages than anybody tapes together', () => {
    const card = cardFrom('pieces: { banner: 400 x 400, tag: 2 x 2 }');
    const pages = templatePages({
      cards: [{ name: 'Banner', card, panelling: panelsOf(card) }],
      system: 'inch',
      sheet: 'letter',
      title: 'Banner',
    });
    expect(pages).toHaveLength(2);
    expect(pages[0]?.words.join(' ')).toMatch(/It would take \d{4} pages and is not printed here/u);
    expect(pages[1]?.title).toBe('Banner: tag');
  });
});
