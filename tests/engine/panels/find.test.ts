import { describe, expect, it } from 'vitest';
import { type PanelPart, panelsOf } from '../../../plugins/engine/index.ts';
import { at, card, line, piece, region, shape, spot } from './paper.ts';

const MADE = panelsOf(
  card(
    piece('base', ['front 2', 'valley spine', 'back 2'], ['head 1', 'valley half', 'foot 3'], {
      windows: [region('window', shape.circle([3, '5/2'], 1))],
    }),
    piece('disc', 2, 2, { outline: shape.circle([1, 1], 2), lines: [line('crease', 'fold', [1, 0], [1, 2])] }),
    piece('mat', 3, 3),
    piece('cross', 4, 4, {
      lines: [line('crease', 'falling', [0, 0], [4, 4]), line('crease', 'rising', [0, 4], [4, 0])],
      spots: [spot('crown', [2, 1])],
    }),
    piece('corners', 4, 4, {
      lines: [line('crease', 'down', [2, 0], [2, 4]), line('crease', 'across', [0, 2], [4, 2])],
    }),
    piece('strip', ['front 2', 'valley spine', 'back 2'], 4, { lines: [line('cut', 'slit', [0, 2], [2, 2])] }),
  ),
);

function found(piece: string, part: PanelPart): string[] {
  return MADE.find(piece, part).map(({ name }) => name);
}

describe('names', () => {
  it('are the cell, the spot, the edge, the corner, or a number', () => {
    expect(MADE.panels.map(({ name }) => name)).toEqual([
      ...['base.front.head', 'base.back.head', 'base.front.foot', 'base.back.foot'],
      ...['disc.left', 'disc.right', 'mat'],
      ...['cross.crown', 'cross.left', 'cross.right', 'cross.bottom'],
      ...['corners.top-left', 'corners.top-right', 'corners.bottom-left', 'corners.bottom-right'],
      ...['strip.top-left', 'strip.back', 'strip.bottom-left'],
    ]);
  });
});

describe('find', () => {
  it('a piece of one panel by its name alone, and all panels of another', () => {
    expect(found('mat', { is: 'whole' })).toEqual(['mat']);
    expect(found('disc', { is: 'whole' })).toEqual(['disc.left', 'disc.right']);
    expect(found('nothing', { is: 'whole' })).toEqual([]);
  });

  it('cells by column, row, or both', () => {
    expect(found('base', { is: 'cell', column: 'back', row: 'foot' })).toEqual(['base.back.foot']);
    expect(found('base', { is: 'cell', column: 'back', row: undefined })).toEqual(['base.back.head', 'base.back.foot']);
    expect(found('base', { is: 'cell', column: undefined, row: 'head' })).toEqual([
      'base.front.head',
      'base.back.head',
    ]);
    expect(found('strip', { is: 'cell', column: 'front', row: undefined })).toEqual([
      'strip.top-left',
      'strip.bottom-left',
    ]);
  });

  it('edges and corners; a circle is touched on its left by one half and at its top by both', () => {
    expect(found('disc', { is: 'edge', edge: 'left' })).toEqual(['disc.left']);
    expect(found('disc', { is: 'edge', edge: 'top' })).toEqual(['disc.left', 'disc.right']);
    expect(found('disc', { is: 'corner', corner: 'top-left' })).toEqual([]);
    expect(found('cross', { is: 'edge', edge: 'top' })).toEqual(['cross.crown']);
    expect(found('corners', { is: 'edge', edge: 'top' })).toEqual(['corners.top-left', 'corners.top-right']);
    expect(found('corners', { is: 'corner', corner: 'bottom-left' })).toEqual(['corners.bottom-left']);
  });

  it('spots: one inside, several on a crease, none in a window', () => {
    expect(found('cross', { is: 'spot', at: at([2, 3]) })).toEqual(['cross.bottom']);
    expect(found('cross', { is: 'spot', at: at([1, 1]) })).toEqual(['cross.crown', 'cross.left']);
    expect(found('base', { is: 'spot', at: at([3, '5/2']) })).toEqual([]);
  });
});
