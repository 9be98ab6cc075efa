import { describe, expect, it } from 'vitest';
import { found, said } from './found.ts';
import { card, fold, inches, mm, piece } from './made-card.ts';

const LETTER = { name: 'US Letter', width: inches('8 1/2'), height: inches('11') };
const A4 = { name: 'ISO A4', width: mm(210), height: mm(297) };
const sideFold = (width: string, height: string) =>
  card([piece('base', [`front ${width}`, 'valley spine', `back ${width}`], [height])]);

describe('fits-sheet', () => {
  it('leaves a half Letter sheet alone, and says what is left', () => {
    const folded = fold(sideFold('4 1/4', '5 1/2'), { sheets: { '': LETTER } });
    expect(found('fits-sheet', folded)).toMatchObject([{ outcome: 'fits', state: 'pass', figure: inches('2 1/2') }]);
    expect(said('fits-sheet', folded)).toContain('2 1/2 in left along and 3 in across');
  });

  it('leaves a piece that uses its sheet whole alone, either way round', () => {
    const whole = fold(
      card([piece('base', ['front 148.5', 'valley spine', 'back 148.5'], ['210'], mm)], { system: 'metric' }),
      {
        sheets: { cover: A4 },
      },
    );
    expect(found('fits-sheet', whole)).toMatchObject([{ outcome: 'fits', figure: mm(0) }]);
    expect(said('fits-sheet', whole)).toContain('uses whole');
  });

  it('catches a card too long for its sheet, by how much, and names one that does', () => {
    const folded = fold(sideFold('6', '6'), { sheets: { '': LETTER } });
    expect(found('fits-sheet', folded)).toMatchObject([
      { outcome: 'too-big', state: 'fail', witness: 'base', figure: inches('-1') },
    ]);
    expect(said('fits-sheet', folded)).toBe(
      '`base`, 12 x 6 in, does not come from a US Letter sheet: it is 1 in too long. Cut it from a US Legal sheet, or make `base` smaller.',
    );
  });

  it('catches a sheet that is called 12 inches and sold as 30 cm', () => {
    const thirty = { name: '30 cm square', width: mm(300), height: mm(300) };
    const folded = fold(sideFold('6', '6'), { sheets: { cover: thirty, '': LETTER } });
    expect(found('fits-sheet', folded)).toMatchObject([{ outcome: 'too-big', figure: mm('-24/5') }]);
  });

  it('names a sheet that shops sell, an A3 before a B4', () => {
    const long = card([piece('base', ['front 160', 'valley spine', 'back 160'], ['148'], mm)], { system: 'metric' });
    expect(said('fits-sheet', fold(long, { sheets: { '': A4 } }))).toContain('Cut it from an ISO A3 sheet');
  });

  it('takes the sheet of the piece, before the usual one', () => {
    const mat = { ...piece('mat', ['9'], ['11']), stock: 'pattern' };
    const folded = fold(card([...sideFold('4 1/4', '5 1/2').pieces, mat]), {
      sheets: { '': LETTER, pattern: { name: '12 x 12 in', width: inches('12'), height: inches('12') } },
    });
    expect(found('fits-sheet', folded).map(({ outcome }) => outcome)).toEqual(['fits', 'fits']);
  });

  it('tries nothing without a sheet, and says what would do', () => {
    const folded = fold(sideFold('4 1/4', '5 1/2'));
    expect(found('fits-sheet', folded)).toMatchObject([{ outcome: 'no-sheet', state: 'untested' }]);
    expect(said('fits-sheet', folded)).toContain('US Letter would do');
  });
});
