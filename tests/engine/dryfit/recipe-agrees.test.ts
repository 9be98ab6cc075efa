import { describe, expect, it } from 'vitest';
import type { Card, RecipeStep } from '../../../plugins/engine/index.ts';
import { found, outcomes, said } from './found.ts';
import { card, fold, inches, mm, piece, step } from './made-card.ts';

const SIDE_FOLD = card([piece('base', ['front 4 1/4', 'valley spine', 'back 4 1/4'], ['5 1/2'])]);
const TOP_FOLD = card([piece('base', ['4 1/4'], ['front 5 1/2', 'valley spine', 'back 5 1/2'])]);
const GATE = card([
  piece(
    'base',
    ['left-gate 2 1/8', 'valley left-fold', 'back 4 1/4', 'valley right-fold', 'right-gate 2 1/8'],
    ['5 1/2'],
  ),
]);
const Z_FOLD = card([piece('base', ['a 3', 'mountain', 'b 4', 'valley', 'c 4'], ['6'])]);

function taught(made: Card, ...lesson: readonly RecipeStep[]) {
  return fold({ ...made, lesson });
}

const says = (made: Card, ...lesson: readonly RecipeStep[]) => said('recipe-agrees', taught(made, ...lesson));
const judged = (made: Card, ...lesson: readonly RecipeStep[]) => outcomes('recipe-agrees', taught(made, ...lesson));

describe('recipe-agrees', () => {
  it('leaves the trade recipes alone, the sheet either way round (common practice, no source)', () => {
    expect(judged(SIDE_FOLD, step('8 1/2', '5 1/2', 'across', ['4 1/4']))).toEqual(['agrees base']);
    expect(judged(SIDE_FOLD, step('5 1/2', '8 1/2', 'down', ['4 1/4']))).toEqual(['agrees base']);
    expect(judged(TOP_FOLD, step('4 1/4', '11', 'down', ['5 1/2']))).toEqual(['agrees base']);
    expect(judged(TOP_FOLD, step('11', '4 1/4', 'across', ['5 1/2']))).toEqual(['agrees base']);
    expect(judged(GATE, step('8 1/2', '5 1/2', 'across', ['2 1/8', '6 3/8']))).toEqual(['agrees base']);
  });

  it('leaves scores counted from the other end alone, each with its direction', () => {
    expect(judged(Z_FOLD, step('11', '6', 'across', ['3 mountain', '7']))).toEqual(['agrees base']);
    expect(judged(Z_FOLD, step('11', '6', 'across', ['4', '8 mountain']))).toEqual(['agrees base']);
  });

  it('leaves less than a mark alone', () => {
    expect(judged(SIDE_FOLD, step('8.5', '5.5', 'across', ['4.24']))).toEqual(['agrees base']);
    expect(judged(SIDE_FOLD, step('8.5', '5.5', 'across', ['4 3/16']))).toEqual(['score-position base']);
  });

  it('catches 8 1/2 in scored at 4 1/2, and says what it should be', () => {
    const folded = taught(SIDE_FOLD, step('8 1/2', '5 1/2', 'across', ['4 1/2']));
    expect(found('recipe-agrees', folded)).toMatchObject([
      { state: 'fail', figure: inches('4 1/2'), limit: inches('4 1/4') },
    ]);
    expect(said('recipe-agrees', folded)).toBe(
      'The recipe scores at 4 1/2 in; for this fold it should be 4 1/4 in, 1/4 in less. Score at 4 1/4 in.',
    );
  });

  it('catches a sheet that is too large, and names the side', () => {
    expect(judged(SIDE_FOLD, step('10 1/2', '5 1/2', 'across', ['4 1/4']))).toEqual(['sheet-side base']);
    expect(says(SIDE_FOLD, step('5 1/4', '8 1/2', 'down', ['4 1/4']))).toContain(
      'a side of 5 1/4 in should be 5 1/2 in',
    );
  });

  it('says which of two scores is off', () => {
    const folded = taught(GATE, step('8 1/2', '5 1/2', 'across', ['2 1/8', '6 1/4']));
    expect(found('recipe-agrees', folded)).toMatchObject([{ figure: inches('6 1/4'), limit: inches('6 3/8') }]);
  });

  it('catches a forgotten score, and one too many', () => {
    expect(says(GATE, step('8 1/2', '5 1/2', 'across', ['2 1/8']))).toContain('Score at 2 1/8 in and 6 3/8 in.');
    expect(says(SIDE_FOLD, step('8 1/2', '5 1/2', 'across', ['2', '4 1/4']))).toContain('Score at 4 1/4 in.');
    expect(judged(SIDE_FOLD, step('8 1/2', '5 1/2', 'across', []))).toEqual(['score-count base']);
  });

  it('catches the wrong side, and a side that the sheet does not have', () => {
    expect(says(SIDE_FOLD, step('8 1/2', '5 1/2', 'down', ['4 1/4']))).toContain('`along: 8 1/2 in`');
    const unknown = { ...step('8 1/2', '5 1/2', 'across', ['4 1/4']), alongFits: false, alongText: '5 1/4' };
    expect(judged(SIDE_FOLD, unknown)).toEqual(['side-unknown 5 1/4']);
    expect(says(SIDE_FOLD, unknown)).toContain('the sheet is 8 1/2 x 5 1/2 in and has no such side');
  });

  it('catches scores up to 6 1/4 along a side of 5 1/4', () => {
    const lesson = step('8 1/2', '5 1/4', 'down', ['2 1/8', '6 1/4']);
    const folded = taught(GATE, lesson);
    expect(outcomes('recipe-agrees', folded)).toEqual(['sheet-side base', 'score-beyond']);
    expect(said('recipe-agrees', folded)).toContain('The score at 6 1/4 in lies beyond the 5 1/4 in side');
    expect(said('recipe-agrees', folded)).toContain(
      'The other side is 8 1/2 in long: did you mean to score along that?',
    );
  });

  it('asks about scores that go backwards', () => {
    const folded = taught(GATE, step('8 1/2', '5 1/2', 'across', ['6 3/8', '2 1/8']));
    expect(found('recipe-agrees', folded)).toMatchObject([{ outcome: 'scores-descend', state: 'question' }]);
  });

  it('catches one wrong direction, and asks about all wrong', () => {
    expect(says(Z_FOLD, step('11', '6', 'across', ['3', '7']))).toContain('the score at 3 in as a valley');
    expect(judged(Z_FOLD, step('11', '6', 'across', ['3', '7 mountain']))).toEqual(['other-face base']);
  });

  it('compares step by step, by name or in order, and says what has no piece', () => {
    const two = card([...SIDE_FOLD.pieces, piece('mat', ['4'], ['5 1/4'])]);
    const cover = step('8 1/2', '5 1/2', 'across', ['4 1/4']);
    const mat = step('4', '5 1/4', 'down', []);
    expect(judged(two, cover, mat)).toEqual(['agrees base', 'agrees mat']);
    expect(judged(two, { ...mat, piece: 'mat' })).toEqual(['agrees mat']);
    expect(found('recipe-agrees', taught(SIDE_FOLD, cover, mat))[1]).toMatchObject({
      outcome: 'piece-unknown',
      state: 'untested',
    });
  });

  it('takes two steps for one sheet as its scores both ways', () => {
    const both = card([piece('base', ['a 3', 'valley', 'b 3'], ['c 2', 'mountain', 'd 5'])]);
    const first = { ...step('6', '7', 'across', ['3']), piece: 'base' };
    const second = { ...step('6', '7', 'down', ['2 mountain']), piece: 'base' };
    expect(judged(both, first, second)).toEqual(['agrees base', 'agrees base']);
    expect(judged(both, first)).toEqual(['score-count base']);
  });

  it('works in millimetres as in inches', () => {
    const metric = card([piece('base', ['front 105', 'valley spine', 'back 105'], ['148'], mm)], { system: 'metric' });
    expect(judged(metric, step('148', '210', 'down', ['105'], mm))).toEqual(['agrees base']);
    expect(says(metric, step('210', '148', 'across', ['110'], mm))).toContain('it should be 105 mm, 5 mm less');
  });
});
