import { describe, expect, it } from 'vitest';
import { cardOf, foldOf } from '../support/folds.ts';

/** Every pose as `name: piece.crease turn, ...`. */
function posesOf(poses: string): string[] {
  const fold = foldOf(`name: Z
units: in
pieces:
  base: { across: [left 2, valley, middle 2, mountain outer, right 2], down: 5 }
  lid: { across: 2, down: [head 1, valley inner, foot 1] }
${poses}`);
  return cardOf(fold, 'inch').poses.map(
    ({ name, turns }) => `${name}: ${turns.map(({ piece, crease, turn }) => `${piece}.${crease} ${turn}`).join(', ')}`,
  );
}

const ALL = (turn: string): string => `base.left|middle ${turn}, base.outer ${turn}, lid.inner ${turn}`;

describe('poses', () => {
  it('are open and closed when none are written', () => {
    expect(posesOf('')).toEqual([`open: ${ALL('flat')}`, `closed: ${ALL('shut')}`]);
  });

  it('{} shuts everything; all speaks of everything', () => {
    expect(posesOf('poses: { open: { all: flat }, closed: {}, again: { all: 0 }, over: { all: 180 } }')).toEqual([
      `open: ${ALL('flat')}`,
      `closed: ${ALL('shut')}`,
      `again: ${ALL('flat')}`,
      `over: ${ALL('shut')}`,
    ]);
  });

  it('a crease does as its name says, then as its piece, then as the others', () => {
    expect(
      posesOf('poses: { half: { lid: shut, lid.inner: flat, others: shut }, back: { base: flat, outer: shut } }'),
    ).toEqual([
      `open: ${ALL('flat')}`,
      'half: base.left|middle shut, base.outer shut, lid.inner flat',
      'back: base.left|middle flat, base.outer shut, lid.inner flat',
      `closed: ${ALL('shut')}`,
    ]);
  });

  it('what is not named stays as it was in the pose before, flat before the first', () => {
    expect(posesOf('poses: { one: { outer: shut }, two: { left|middle: shut, others: keep }, closed: {} }')).toEqual([
      `open: ${ALL('flat')}`,
      'one: base.left|middle flat, base.outer shut, lid.inner flat',
      'two: base.left|middle shut, base.outer shut, lid.inner flat',
      `closed: ${ALL('shut')}`,
    ]);
  });
});
