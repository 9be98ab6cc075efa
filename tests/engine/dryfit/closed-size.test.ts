import { describe, expect, it } from 'vitest';
import { found, outcomes, said } from './found.ts';
import { card, fold, inches, mm, PLACE, piece, pose } from './made-card.ts';
import { VIEWS } from './views.ts';

const A2 = card([piece('base', ['front 4 1/4', 'valley spine', 'back 4 1/4'], ['5 1/2'])]);
const promised = (width: string, height: string) => ({
  promised: { width: inches(width), height: inches(height), place: PLACE, path: 'finished' },
});

describe('closed-size', () => {
  it('gives the size of a half fold, past whose back nothing sticks out', () => {
    expect(found('closed-size', fold(A2))).toMatchObject([{ outcome: 'within', state: 'pass', witness: 'base.back' }]);
    expect(said('closed-size', fold(A2))).toBe(
      'Closed, `base` is 4 1/4 x 5 1/2 in. Nothing sticks out past `base.back`.',
    );
  });

  it.each(VIEWS)('leaves a graduated pleat alone: $view', ({ of }) => {
    // Panels 1 1/4, 2 1/2, 3 1/2, 4 1/4 fold to 4 1/4 wide: common practice, no source; the sums prove it.
    const bands = ['a 1 1/4', 'valley', 'b 2 1/2', 'mountain', 'c 3 1/2', 'valley', 'd 4 1/4'];
    expect(outcomes('closed-size', fold(of(card([piece('base', bands, ['5 1/2'])]))))).toEqual(['within base.d']);
  });

  it('takes panels with a flat crease between them as one cover', () => {
    const swing = [piece('card', ['flap 2 3/4', 'mountain swing', 'strip 1 3/8', 'valley spine', 'back 4'], ['5 1/2'])];
    const folded = fold(card(swing, { poses: [pose('closed', swing, ['swing'])] }));
    expect(outcomes('closed-size', folded)).toEqual(['within card.flap and card.strip']);
  });

  it.each(VIEWS)('catches a pleat whose last panel reaches past its cover: $view', ({ of, view }) => {
    const pleat = card([piece('base', ['a 4', 'valley', 'b 2', 'mountain', 'c 3'], ['6'])]);
    const folded = fold(of(pleat));
    expect(outcomes('closed-size', folded)).toEqual(['sticks-out base.c']);
    expect(said('closed-size', folded)).toContain(
      view === 'in millimetres' ? '10 mm past `base.a`' : '1 in past `base.a`',
    );
  });

  it('names the side: left or right, top or bottom, seen from the cover', () => {
    const across = ['a 4', 'valley', 'b 2', 'mountain', 'c 3'];
    // Panel a lies from 0 to 4, b comes back to 2, and c goes on from 2 to 5: past the right edge.
    expect(said('closed-size', fold(card([piece('base', across, ['6'])])))).toContain('on the right');
    expect(said('closed-size', fold(card([piece('base', across.toReversed(), ['6'])])))).toContain('on the left');
    expect(said('closed-size', fold(card([piece('base', ['6'], across)])))).toContain('at the bottom');
    expect(said('closed-size', fold(card([piece('base', ['6'], across.toReversed())])))).toContain('at the top');
  });

  it.each(VIEWS)('catches a flap that is wider than the fold behind it: $view', ({ of, view }) => {
    const tuck = card([piece('base', ['a 3', 'valley', 'b 1', 'mountain', 'c 3 1/2'], ['6'])]);
    expect(outcomes('closed-size', fold(of(tuck)))).toEqual(['sticks-out base.a']);
    expect(said('closed-size', fold(of(tuck)))).toContain(view === 'in millimetres' ? '20 mm past' : '2 in past');
  });

  it('keeps a promise, and says which way a broken one is broken', () => {
    expect(outcomes('closed-size', fold(A2, promised('4 1/4', '5 1/2')))).toEqual(['within base.back', 'as-promised']);
    const broken = fold(A2, promised('4 1/2', '5 1/2'));
    expect(outcomes('closed-size', broken)).toEqual(['within base.back', 'not-as-promised width']);
    expect(said('closed-size', broken)).toContain('not the 4 1/2 x 5 1/2 in that is promised: 1/4 in narrower.');
    const higher = fold(A2, promised('4 1/4', '5 1/4'));
    expect(said('closed-size', higher)).toContain('1/4 in higher');
    expect(outcomes('closed-size', fold(A2, promised('5 1/2', '4 1/4')))).toContain('turned');
  });

  it('keeps in millimetres a promise made in inches, to less than a mark', () => {
    const metric = card([piece('base', ['front 127', 'valley spine', 'back 127'], ['178'], mm)], { system: 'metric' });
    expect(outcomes('closed-size', fold(metric, promised('5', '7')))).toContain('as-promised');
    expect(outcomes('closed-size', fold(metric, promised('5', '7 1/16')))).toContain('not-as-promised height');
  });

  it('does not measure what does not close', () => {
    const letter = card([piece('base', ['a 4', 'valley', 'b 3', 'valley', 'c 4'], ['6'])]);
    expect(found('closed-size', fold(letter))).toMatchObject([{ outcome: 'does-not-close', state: 'untested' }]);
  });
});
