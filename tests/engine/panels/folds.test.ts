import { describe, expect, it } from 'vitest';
import { type Panelling, panelsOf } from '../../../plugins/engine/index.ts';
import { FOLDS } from './folds.ts';
import { expectSound } from './sound.ts';
import { VIEWS } from './views.ts';

function made(fold: string): Panelling {
  const found = FOLDS.find((one) => one.fold === fold);
  if (!found) throw new RangeError(`no fold is called ${fold}`);
  return panelsOf(found.made);
}

describe.each(VIEWS)('panels of the folds, $view', ({ of, perInch }) => {
  it.each(FOLDS)('$fold', ({ made: whole, panels, hinges, area, round }) => {
    const squareMm = area * perInch ** 2;
    const found = expectSound(of(whole), round ? undefined : squareMm);
    expect(found.slips).toEqual([]);
    expect(found.panels).toHaveLength(panels);
    expect(found.hinges).toHaveLength(hinges);
  });
});

describe('names and hinges of the folds', () => {
  it('tri-shutter: the middle bands fold the other way round, and the outer panels go from top to bottom', () => {
    const { hinges } = made('tri-shutter');
    const outer = hinges.filter(({ crease }) => crease === 'outer(1)');
    expect(outer.map(({ fold, right }) => [fold, right])).toEqual([
      ['valley', 'sheet.left'],
      ['mountain', 'sheet.left'],
      ['valley', 'sheet.left'],
    ]);
    expect(new Set(outer.map(({ left }) => left)).size).toBe(3);
  });

  it('V-fold: tabs and faces are called by the corner that is theirs', () => {
    const names = made('V-fold').panels.map(({ name }) => name);
    expect(names).toEqual([
      'base.left',
      'base.right',
      'pop.top-left',
      'pop.top-right',
      'pop.bottom-left',
      'pop.bottom-right',
    ]);
  });

  it('swing card: the crease stops at the die and the die is cut only where it leaves the strip', () => {
    const { hinges, strokes, panels } = made('swing card');
    expect(panels.map(({ name }) => name)).toEqual(['card.flap', 'card.strip', 'card.back']);
    const swing = hinges.filter(({ crease }) => crease === 'swing');
    expect(swing.map(({ from, to }) => [from.y, to.y].map((y) => y.div('127/5').valueOf()))).toEqual([
      [0, 1.5],
      [4, 5.5],
    ]);
    const cut = strokes.filter(({ does }) => does === 'cut');
    expect(cut.map(({ edge }) => edge.is)).toEqual(['arc', 'arc']);
    for (const { edge } of cut) expect(Math.max(edge.from.x.valueOf(), edge.to.x.valueOf())).toBe(2.75 * 25.4);
  });

  it('explosion insert: six panels round one point, named by the edges that are theirs alone', () => {
    const { hinges, panels } = made('explosion insert');
    const inner = hinges.filter(({ piece }) => piece === 'insert');
    const centre = 2.75 * 25.4;
    for (const { from, to } of inner)
      expect([from, to].filter(({ x, y }) => x.valueOf() === centre && y.valueOf() === centre)).toHaveLength(1);
    expect(panels.filter(({ piece }) => piece === 'insert').map(({ name }) => name)).toEqual([
      ...['insert.1', 'insert.left', 'insert.3', 'insert.right', 'insert.5', 'insert.6'],
    ]);
  });

  it('exploding box: five walls without corners; the lid keeps its corners on the side walls, cut from head and foot', () => {
    const { hinges, panels, strokes } = made('exploding box');
    expect(panels.filter(({ piece }) => piece === 'layer').map(({ name }) => name)).toEqual([
      ...['layer.middle.head', 'layer.left.middle', 'layer.middle.middle', 'layer.right.middle', 'layer.middle.foot'],
    ]);
    const corner = hinges.filter(({ left, right }) => [left, right].includes('lid.left.head'));
    expect(corner.map(({ crease, left, right }) => [crease, left, right])).toEqual([
      ['c', 'lid.left.head', 'lid.left.middle'],
    ]);
    expect(strokes.filter(({ piece, name }) => piece === 'layer' && name === 'a')).toHaveLength(1);
  });

  it('shaker front: a window is a hole, with the corners anticlockwise', () => {
    const [frame] = made('shaker front').panels;
    expect(frame?.holes).toHaveLength(1);
    expect(frame?.holes[0]).toHaveLength(4);
  });

  it('pull slider: slits divide nothing, and are cut', () => {
    const { strokes } = made('pull slider');
    expect(strokes.filter(({ does }) => does === 'cut').map(({ name }) => name)).toEqual(['slit(1)', 'slit(2)']);
  });
});
