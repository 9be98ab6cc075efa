import { describe, expect, it } from 'vitest';
import { type Card, type Panelling, panelsOf } from '../../../plugins/engine/index.ts';
import { card, piece } from '../dryfit/made-card.ts';
import { VIEWS } from '../dryfit/views.ts';

const SIDE_FOLD = card([piece('base', ['front 4 1/4', 'valley spine', 'back 4 1/4'], ['5 1/2'])]);
const TOP_FOLD = card([piece('base', ['4 1/4'], ['front 5 1/2', 'valley spine', 'back 5 1/2'])]);
const CROSSED = card([
  piece(
    'sheet',
    ['left 2', 'valley spine', 'middle 3', 'mountain turn', 'right 1'],
    ['top 4', 'valley half', 'foot 5'],
  ),
  piece('mat', ['2'], ['3']),
]);

/** Corners in inches. */
function corners(panelling: Panelling, name: string): number[][] {
  const found = panelling.panels.find((panel) => panel.name === name);
  return (found?.outline ?? []).map(({ x, y }) => [x.div('127/5').valueOf(), y.div('127/5').valueOf()]);
}

function area(outline: readonly { x: { valueOf(): number }; y: { valueOf(): number } }[]): number {
  return outline.reduce((sum, point, i) => {
    const next = outline[(i + 1) % outline.length] ?? point;
    return sum + (point.x.valueOf() * next.y.valueOf() - next.x.valueOf() * point.y.valueOf()) / 2;
  }, 0);
}

describe('panelsOf', () => {
  it('calls the panels of a strip by their bands, and gives them their corners clockwise from the top left', () => {
    const panelling = panelsOf(SIDE_FOLD);
    expect(panelling.panels.map(({ name }) => name)).toEqual(['base.front', 'base.back']);
    expect(corners(panelling, 'base.back')).toEqual([
      [4.25, 0],
      [8.5, 0],
      [8.5, 5.5],
      [4.25, 5.5],
    ]);
  });

  it('gives one hinge for a crease from edge to edge, from top to bottom or from left to right', () => {
    const [side] = panelsOf(SIDE_FOLD).hinges;
    expect(side).toMatchObject({ crease: 'spine', fold: 'valley', before: 'base.front', after: 'base.back' });
    expect([side?.from.x, side?.from.y, side?.to.x, side?.to.y].map(Number)).toEqual([107.95, 0, 107.95, 139.7]);
    const [top] = panelsOf(TOP_FOLD).hinges;
    expect(top).toMatchObject({ before: 'base.front', after: 'base.back' });
    expect([top?.from.x, top?.from.y, top?.to.x, top?.to.y].map(Number)).toEqual([0, 139.7, 107.95, 139.7]);
  });

  it('calls cells by column and row, a plain piece by itself, and gives a crossed crease a hinge a cell', () => {
    const panelling = panelsOf(CROSSED);
    expect(panelling.panels.map(({ name }) => name)).toEqual([
      'sheet.left.top',
      'sheet.middle.top',
      'sheet.right.top',
      'sheet.left.foot',
      'sheet.middle.foot',
      'sheet.right.foot',
      'mat',
    ]);
    expect(panelling.hinges.map(({ crease, before, after }) => `${crease}: ${before} - ${after}`)).toEqual([
      'spine: sheet.left.top - sheet.middle.top',
      'spine: sheet.left.foot - sheet.middle.foot',
      'turn: sheet.middle.top - sheet.right.top',
      'turn: sheet.middle.foot - sheet.right.foot',
      'half: sheet.left.top - sheet.left.foot',
      'half: sheet.middle.top - sheet.middle.foot',
      'half: sheet.right.top - sheet.right.foot',
    ]);
  });

  it.each(VIEWS)('tiles each piece exactly and hinges lie on both their panels: $view', ({ of }) => {
    for (const made of [SIDE_FOLD, TOP_FOLD, CROSSED].map(of)) expectTiling(made);
  });
});

function expectTiling(made: Card): void {
  const { panels, hinges } = panelsOf(made);
  for (const one of made.pieces) {
    const areas = panels.filter((panel) => panel.piece === one.name).map((panel) => area(panel.outline));
    expect(Math.min(...areas)).toBeGreaterThan(0);
    expect(areas.reduce((a, b) => a + b, 0)).toBeCloseTo(one.width.toMm() * one.height.toMm(), 6);
  }
  const key = (point: { x: { toFraction(): string }; y: { toFraction(): string } }): string =>
    `${point.x.toFraction()},${point.y.toFraction()}`;
  for (const hinge of hinges) {
    for (const name of [hinge.before, hinge.after]) {
      const ends = panels.find((panel) => panel.name === name)?.outline.map(key);
      expect(ends).toContain(key(hinge.from));
      expect(ends).toContain(key(hinge.to));
    }
  }
}
