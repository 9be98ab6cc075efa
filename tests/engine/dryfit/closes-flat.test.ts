import { describe, expect, it } from 'vitest';
import { found, outcomes, said } from './found.ts';
import { card, fold, piece } from './made-card.ts';
import { VIEWS } from './views.ts';

const letter = (head: string, middle: string, foot: string) =>
  card([piece('base', [`head ${head}`, 'valley', `middle ${middle}`, 'valley', `foot ${foot}`], ['4'])]);

describe('closes-flat', () => {
  // Printers' letter fold: the end that is tucked in is made shorter, 3 11/16, 3 11/16, 3 5/8 (common practice, no source).
  it.each(VIEWS)('leaves a letter fold with a shorter end alone, and counts its plies: $view', ({ of }) => {
    const folded = fold(of(letter('3 11/16', '3 11/16', '3 5/8')));
    expect(found('closes-flat', folded)).toMatchObject([{ outcome: 'flat', state: 'pass', figure: 3 }]);
    expect(said('closes-flat', folded)).toBe('`base` folds flat: 3 panels, 3 deep at the thickest.');
  });

  it.each(VIEWS)('leaves meeting gates alone, which are two plies deep: $view', ({ of }) => {
    const gates = card([
      piece('base', ['left-gate 2 1/8', 'valley', 'back 4 1/4', 'valley', 'right-gate 2 1/8'], ['5']),
    ]);
    expect(found('closes-flat', fold(of(gates)))).toMatchObject([{ outcome: 'flat', figure: 2 }]);
  });

  it('leaves a flat card alone', () => {
    expect(outcomes('closes-flat', fold(card([piece('card', ['4'], ['6'])])))).toEqual(['one-panel']);
  });

  it.each(VIEWS)('catches an end that is too long to be tucked in: $view', ({ of, view }) => {
    const folded = fold(of(letter('3 11/16', '3 5/8', '3 11/16')));
    const ends = ['too-long base.foot', 'too-long base.head'];
    expect(ends).toContain(outcomes('closes-flat', folded)[0]);
    expect(said('closes-flat', folded)).toMatch(
      view === 'in millimetres' ? /Shorten `base\.\w+` by 0\.62 mm/ : /Shorten `base\.\w+` by 1\/16 in/,
    );
  });

  it.each(VIEWS)('catches a roll of panels that no one cure helps: $view', ({ of }) => {
    const roll = card([
      piece('base', ['a 2', 'valley', 'b 1', 'valley', 'c 2', 'valley', 'd 1', 'valley', 'e 2'], ['6']),
    ]);
    const [finding] = found('closes-flat', fold(of(roll)));
    expect(finding).toMatchObject({ outcome: 'no-order', state: 'fail' });
    expect(['base.a', 'base.e']).toContain(finding?.witness);
  });

  it.each(VIEWS)('catches a half fold scored across another: $view', ({ of }) => {
    const folded = fold(
      of(card([piece('base', ['left 2', 'valley spine', 'right 2'], ['head 3', 'valley half', 'foot 3'])])),
    );
    expect(found('closes-flat', folded)).toMatchObject([{ outcome: 'crossing', state: 'fail' }]);
    expect(said('closes-flat', folded)).toContain('the second crease changes direction where it crosses the first');
  });

  it('says what it could not try', () => {
    const off = card([piece('base', ['front 9', 'valley spine', 'back -1'], ['5'])]);
    expect(found('closes-flat', fold(off))).toMatchObject([{ outcome: 'not-scored', state: 'untested' }]);
  });
});
