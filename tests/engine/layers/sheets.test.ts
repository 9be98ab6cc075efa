import { describe, expect, it } from 'vitest';
import { orderPlies } from '../../../plugins/engine/layers/index.ts';
import { type Creased, flatFoldings } from '../../oracles/flat-foldings.ts';
import { poseOf, redrawn, type Sketch, type SketchedJoin } from '../support/sketched-pose.ts';
import { draws, foldedByLines, mapOf, mutated, rerouted, sketchOf, soundMapOf } from './creased-sheets.ts';

/** Sheets with more orders than this are compared by whether they fold alone. */
const MOST = 24;

/** Compares all orders with those of the oracle; whether there are any. */
function expectAgreement(sheet: Creased, sketch: Sketch = sketchOf(sheet)): boolean {
  const pose = poseOf(sketch);
  expect(pose.gaps).toEqual([]);
  const { orders, count, obstruction } = orderPlies(pose, { limit: MOST });
  const foldings = flatFoldings(sheet, MOST + 1);
  expect(obstruction === undefined).toBe(foldings.length > 0);
  expect(count === undefined ? MOST + 1 : Math.min(Number(count), MOST + 1)).toBe(foldings.length);
  if (foldings.length > MOST) return true;
  const found = orders.map(({ pairs }) =>
    pairs
      .map(({ over, under }) => (+over > +under ? `${under},${over} true` : `${over},${under} false`))
      .sort()
      .join(';'),
  );
  const wanted = foldings.map((folding) =>
    [...folding]
      .map(([pair, above]) => `${pair} ${above}`)
      .sort()
      .join(';'),
  );
  expect(found.sort()).toEqual(wanted.sort());
  return foldings.length > 0;
}

function drawsFor(seed: number): () => number {
  const draw = draws(seed * 7919);
  for (let i = 0; i < 5; i++) draw();
  return draw;
}

describe('order of plies of a creased sheet', () => {
  const seeds = Array.from({ length: 16 }, (_, i) => i + 1);

  it('agrees with a solver for statements on sheets folded by random lines, which all fold', () => {
    for (const seed of seeds) {
      const draw = drawsFor(seed);
      expect(expectAgreement(foldedByLines(draw, 2 + Math.floor(draw() * 3))), `seed ${seed}`).toBe(true);
    }
  });

  it('agrees on such sheets with creases turned round, singly or along a walk', () => {
    let folding = 0;
    for (const seed of seeds) {
      const draw = drawsFor(seed + 100);
      const sheet = foldedByLines(draw, 2 + Math.floor(draw() * 3));
      if (expectAgreement(seed % 4 ? rerouted(sheet, draw) : mutated(sheet, draw, 0.15))) folding++;
    }
    expect(folding).toBeGreaterThan(2);
    expect(folding).toBeLessThan(seeds.length - 2);
  });

  it('agrees on maps of equal cells', () => {
    let folding = 0;
    for (const seed of seeds) {
      const draw = drawsFor(seed + 200);
      const [columns, rows] = [2 + Math.floor(draw() * 3), 3 + Math.floor(draw() * 2)];
      if (expectAgreement(soundMapOf(columns, rows, draw))) folding++;
    }
    expect(folding).toBeGreaterThan(2);
    expect(folding).toBeLessThan(seeds.length - 2);
  });

  it('agrees on maps two cells of which are stuck to each other', () => {
    let folding = 0;
    const glued = Array.from({ length: 24 }, (_, i) => i);
    for (const seed of glued) {
      const draw = drawsFor(seed + 500);
      const columns = 2 + Math.floor(draw() * 2);
      const sheet = soundMapOf(columns, 2, draw);
      const part = Math.floor(draw() * sheet.panels.length);
      const onto = (part + 1 + Math.floor(draw() * (sheet.panels.length - 1))) % sheet.panels.length;
      const middle = (cell: number) => [20 * (cell % columns) + 10, 20 * Math.floor(cell / columns) + 10] as const;
      const [odd, otherRow] = [part, onto].reduce(
        ([sum, rows], cell) => [sum + (cell % columns) + Math.floor(cell / columns), rows + Math.floor(cell / columns)],
        [0, 0],
      );
      const glue: SketchedJoin = {
        is: 'glue',
        part: `${part}`,
        onto: `${onto}`,
        p: middle(part),
        q: middle(onto),
        turn: (otherRow ?? 0) % 2 ? 180 : 0,
        partSide: (odd ?? 0) % 2 ? 'face' : 'back',
      };
      if (expectAgreement({ ...sheet, glued: [[part, onto]] }, { ...sketchOf(sheet), joins: [glue] })) folding++;
    }
    expect(folding).toBeGreaterThan(2);
    expect(folding).toBeLessThan(glued.length - 2);
  });

  it('agrees when creases may go either way', () => {
    for (const seed of seeds.slice(0, 6)) {
      const draw = drawsFor(seed + 300);
      expectAgreement(mapOf(2, 2, () => 'VMB'[Math.floor(draw() * 3)] ?? 'B'));
    }
  });

  it('agrees turned by a quarter, mirrored, and in other units', () => {
    for (const seed of seeds.slice(0, 8)) {
      const draw = drawsFor(seed + 400);
      const sheet = seed % 2 ? soundMapOf(3, 2, draw) : rerouted(foldedByLines(draw, 3), draw);
      for (const drawn of [redrawn(sketchOf(sheet), 'turned'), redrawn(sketchOf(sheet), 'mirrored', 25.4)]) {
        expectAgreement(sheet, drawn);
      }
    }
  });
});
