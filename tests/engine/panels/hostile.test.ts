import { describe, expect, it } from 'vitest';
import { panelsOf } from '../../../plugins/engine/index.ts';
import { card, line, piece, region, shape } from './paper.ts';
import { expectSound } from './sound.ts';

/** Numbers that look like chance and are always the same. */
function chance(seed: number): () => string {
  let state = seed;
  return () => {
    state = (state * 1_103_515_245 + 12_345) % 2_147_483_648;
    return `${state % 1000}/100`;
  };
}

describe('more than anybody folds', () => {
  it('400 lines across each other end in a count and a limit, soon', () => {
    const next = chance(7);
    const lines = Array.from({ length: 400 }, (_, i) =>
      line('crease', `line(${i})`, [next(), next()], [next(), next()]),
    );
    const start = process.threadCpuUsage().user;
    const { panels, slips } = panelsOf(card(piece('sheet', 10, 10, { lines })));
    expect(process.threadCpuUsage().user - start).toBeLessThan(2_000_000);
    expect(panels).toHaveLength(1);
    expect(slips).toMatchObject([{ is: 'too-many-panels', limit: 500 }]);
    expect(slips[0]?.is === 'too-many-panels' && slips[0].count).toBeGreaterThan(5000);
  });

  it('the panels that may just still be are all there, and one row more is too many', () => {
    const grid = (rows: number) => [
      ...Array.from({ length: 24 }, (_, i) => line('cut', `down(${i})`, [i + 1, 0], [i + 1, 100])),
      ...Array.from({ length: rows - 1 }, (_, i) => line('cut', `across(${i})`, [0, i + 1], [25, i + 1])),
    ];
    expect(panelsOf(card(piece('sheet', 25, 20, { lines: grid(20) }))).panels).toHaveLength(500);
    const { slips } = panelsOf(card(piece('sheet', 25, 21, { lines: grid(21) })));
    expect(slips).toMatchObject([{ is: 'too-many-panels', count: 525 }]);
  });

  it('bands of nothing and of less than nothing end in panels that are paper', () => {
    for (const middle of ['0', '-1', '-3'])
      for (const rows of [5, ['head 2', 'valley', 'none -1', 'valley', 'foot 4']]) {
        const made = card(piece('sheet', ['left 3', 'valley', `middle ${middle}`, 'valley', 'right 4'], rows));
        expect(expectSound(made).panels.length).toBeGreaterThan(1);
      }
  });

  it('many windows in one sheet end soon', () => {
    const windows = Array.from({ length: 100 }, (_, i) =>
      region(`window(${i})`, shape.circle([(i % 10) + 1, Math.floor(i / 10) + 1], '1/2')),
    );
    const start = process.threadCpuUsage().user;
    const { panels } = panelsOf(card(piece('sheet', 11, 11, { windows })));
    expect(process.threadCpuUsage().user - start).toBeLessThan(2_000_000);
    expect(panels[0]?.holes).toHaveLength(100);
  });
});
