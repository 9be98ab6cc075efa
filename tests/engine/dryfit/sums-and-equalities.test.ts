import { describe, expect, it } from 'vitest';
import type { Band, Card, CheckedEquality, Length } from '../../../plugins/engine/index.ts';
import { found, outcomes, said } from './found.ts';
import { card, fold, inches, mm, PLACE, piece, type Side } from './made-card.ts';

function declared(across: Side, width: string): Card {
  const one = piece('base', across, ['5 1/2']);
  return card([{ ...one, declared: { width: inches(width), height: inches('5 1/2'), place: PLACE } }]);
}

describe('sum-of-panels', () => {
  it('leaves panels that add up alone, and shows the sum', () => {
    const folded = fold(declared(['front 4 1/4', 'valley', 'back 4 1/4'], '8 1/2'));
    expect(found('sum-of-panels', folded)).toMatchObject([
      { outcome: 'adds-up', state: 'pass', figure: inches('8 1/2') },
    ]);
    expect(said('sum-of-panels', folded)).toContain('4 1/4 in + 4 1/4 in');
  });

  it('leaves a size alone that only rounding has moved', () => {
    // 8 1/2 in is 215.9 mm; halves of 107.95 mm on marks of half a millimetre are 108 mm each.
    const half = (band: Band): Band => ({ ...band, exact: inches('4 1/4') });
    const one = piece('base', ['front 108', 'valley', 'back 108'], ['139.5'], mm);
    const sized = { width: inches('8 1/2'), height: inches('5 1/2'), place: PLACE };
    const metric = card([{ ...one, columns: one.columns.map(half), declared: sized }], { system: 'metric' });
    expect(outcomes('sum-of-panels', fold(metric))).toEqual(['adds-up base']);
  });

  it('has nothing to say where no size is declared', () => {
    expect(found('sum-of-panels', fold(card([piece('base', ['a 4', 'valley', 'b 4'], ['5'])])))).toEqual([]);
  });

  it('catches a 10 1/2 in sheet folded at 5, with the sentence that would have saved the maker', () => {
    const folded = fold(declared(['front 5', 'valley', 'back 5'], '10 1/2'));
    expect(outcomes('sum-of-panels', folded)).toEqual(['uneven-halves back']);
    expect(said('sum-of-panels', folded)).toBe(
      '`base` is 10 1/2 in wide but its panels add up to 10 in; `back` is 1/2 in short. A half fold of 10 1/2 in is scored at 5 1/4 in.',
    );
  });

  it('catches panels that are short, and panels that are over', () => {
    const gates: Side = ['left-gate 2', 'valley', 'back 4 1/4', 'valley', 'right-gate 2'];
    expect(outcomes('sum-of-panels', fold(declared(gates, '8 1/2')))).toEqual(['short right-gate']);
    const over = fold(declared(gates, '8'));
    expect(outcomes('sum-of-panels', over)).toEqual(['over right-gate']);
    expect(said('sum-of-panels', over)).toContain('1/4 in too long');
  });
});

function same(...measures: readonly [text: string, exact: Length, printed?: Length][]): CheckedEquality {
  return {
    measures: measures.map(([text, exact, printed]) => ({ text, exact, printed: printed ?? exact, place: PLACE })),
    place: PLACE,
  };
}

describe('declared-equalities', () => {
  const halves = (equality: CheckedEquality) =>
    fold(card([piece('base', ['front 4', 'valley', 'back 4'], ['5'])], { equalities: [equality] }));

  it('leaves equal measures alone, two or three of them', () => {
    const two = halves(same(['base.front.width', inches('4 1/4')], ['base.back.width', inches('17/4')]));
    expect(found('declared-equalities', two)).toMatchObject([
      { outcome: 'equal', state: 'pass', figure: inches('4 1/4') },
    ]);
    expect(outcomes('declared-equalities', halves(same(['a', mm(3)], ['b', mm(3)], ['c', mm(3)])))).toEqual([
      'equal a',
    ]);
  });

  it('catches measures that differ by a hair', () => {
    const folded = halves(same(['base.front.width', inches('4 1/4')], ['base.back.width', inches('4 17/64')]));
    expect(outcomes('declared-equalities', folded)).toEqual(['differ base.back.width']);
    expect(said('declared-equalities', folded)).toContain('1/64 in apart');
  });

  it('catches equal measures that would be printed differently', () => {
    // 11 in scored in half is 139.7 mm and 139.7 mm, never 139.5 and 140.
    const folded = halves(same(['front', inches('5 1/2'), mm('139.5')], ['back', inches('5 1/2'), mm(140)]));
    expect(outcomes('declared-equalities', folded)).toEqual(['differ-in-print back']);
  });

  it('names the third of three', () => {
    expect(outcomes('declared-equalities', halves(same(['a', mm(3)], ['b', mm(3)], ['c', mm(4)])))).toEqual([
      'differ c',
    ]);
  });
});

describe('requirements', () => {
  const asking = (holds: boolean) =>
    fold(
      card([piece('base', ['4'], ['5'])], {
        requirements: [
          {
            that: 'width >= 2*depth',
            otherwise: 'The two ends would overlap. Make the width at least twice the depth.',
            holds,
            left: inches('5'),
            right: inches(holds ? '4' : '6'),
            place: PLACE,
          },
        ],
      }),
    );

  it('leaves what holds alone, with the figures', () => {
    expect(found('requirements', asking(true))).toMatchObject([
      { outcome: 'holds', state: 'pass', figure: inches('5') },
    ]);
  });

  it('says what the fold says when it does not', () => {
    expect(outcomes('requirements', asking(false))).toEqual(['broken width >= 2*depth']);
    expect(said('requirements', asking(false))).toContain('Make the width at least twice the depth.');
    expect(said('requirements', asking(false))).toContain('5 in against 6 in');
  });
});

describe('looks-like-half', () => {
  it('passes an exact half', () => {
    const half = fold(card([piece('base', ['front 4 1/4', 'valley spine', 'back 4 1/4'], ['5 1/2'])]));
    expect(found('looks-like-half', half)).toMatchObject([{ outcome: 'even', figure: inches('4 1/4') }]);
  });

  it('leaves a plainly uneven fold alone, and one with two creases', () => {
    expect(found('looks-like-half', fold(card([piece('base', ['flap 2', 'valley', 'back 5'], ['5'])])))).toEqual([]);
    const gates = card([piece('base', ['a 2', 'valley', 'b 4', 'valley', 'c 2 1/4'], ['5'])]);
    expect(found('looks-like-half', fold(gates))).toEqual([]);
  });

  it('leaves a short front alone, since a parameter says how short it is', () => {
    const pieces = [piece('base', ['front 3 3/4', 'valley spine', 'back 4 1/4'], ['5 1/2'])];
    const short = {
      name: 'short',
      label: 'Short',
      value: inches('1/2'),
      word: undefined,
      from: undefined,
      to: undefined,
      place: PLACE,
    };
    expect(found('looks-like-half', fold(card(pieces, { parameters: [short] })))).toEqual([]);
    const other = { ...short, value: inches('3/4') };
    expect(outcomes('looks-like-half', fold(card(pieces, { parameters: [other] })))).toEqual(['uneven spine']);
  });

  it('asks about 8 1/2 in scored at 4 1/2', () => {
    const folded = fold(card([piece('base', ['front 4 1/2', 'valley spine', 'back 4'], ['5 1/2'])]));
    expect(found('looks-like-half', folded)).toMatchObject([
      { state: 'question', figure: inches('4 1/2'), limit: inches('4 1/4') },
    ]);
    expect(said('looks-like-half', folded)).toContain('If you meant a half fold of 8 1/2 in, score at 4 1/4 in.');
  });

  it('asks about 21 cm scored at 11 cm, from top to bottom', () => {
    const folded = fold(
      card([piece('base', ['148'], ['front 110', 'mountain', 'back 100'], mm)], { system: 'metric' }),
    );
    expect(said('looks-like-half', folded)).toContain('score at 105 mm');
  });
});
