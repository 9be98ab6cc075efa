import { describe, expect, it } from 'vitest';
import { found, outcomes, said } from './found.ts';
import { card, fold, inches, mm, piece } from './made-card.ts';
import { VIEWS } from './views.ts';

describe('scores-inside', () => {
  it.each(VIEWS)('leaves gates alone, and names the narrowest panel: $view', ({ of }) => {
    const gates = card([piece('base', ['left-gate 2', 'valley', 'back 4 1/4', 'valley', 'right-gate 2 1/4'], ['5'])]);
    expect(found('scores-inside', fold(of(gates)))).toMatchObject([
      { outcome: 'inside', state: 'pass', witness: 'left-gate' },
    ]);
  });

  it('leaves a panel of just an eighth alone', () => {
    const spine = card([piece('base', ['front 4', 'valley', 'spine 1/8', 'valley', 'back 4'], ['5'])]);
    expect(found('scores-inside', fold(spine))).toMatchObject([{ outcome: 'inside', figure: inches('1/8') }]);
  });

  it('has nothing to say of a piece without scores', () => {
    expect(found('scores-inside', fold(card([piece('card', ['4'], ['6'])])))).toEqual([]);
  });

  it.each(VIEWS)('asks about a sliver: $view', ({ of }) => {
    const sliver = card([piece('base', ['front 4', 'valley', 'spine 1/16', 'valley', 'back 4'], ['5'])]);
    expect(outcomes('scores-inside', fold(of(sliver)))).toEqual(['narrow spine']);
  });

  it('catches a score past the edge', () => {
    const past = card([piece('base', ['front 6 1/4', 'valley spine', 'back -1'], ['4'])]);
    const folded = fold(past);
    expect(found('scores-inside', folded)).toMatchObject([
      { outcome: 'outside', state: 'fail', witness: 'spine', limit: inches('5 1/4') },
    ]);
    expect(said('scores-inside', folded)).toContain('`spine` at 6 1/4 in does not cross `base`, which is 5 1/4 in');
  });

  it('catches a score on the edge itself', () => {
    const onEdge = card([piece('base', ['4'], ['front 0', 'valley spine', 'back 148'], mm)], { system: 'metric' });
    expect(outcomes('scores-inside', fold(onEdge))).toEqual(['outside spine']);
  });

  it.each(VIEWS)('catches two scores in one place, and two in the wrong order: $view', ({ of }) => {
    const twice = card([piece('base', ['front 4', 'valley', 'spine 0', 'valley', 'back 4'], ['5'])]);
    expect(outcomes('scores-inside', fold(of(twice)))).toEqual(['no-room spine']);
    const crossed = card([piece('base', ['front 4', 'valley', 'spine -1', 'valley', 'back 4'], ['5'])]);
    expect(outcomes('scores-inside', fold(of(crossed)))).toEqual(['no-room spine']);
  });
});
