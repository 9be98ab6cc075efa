import { describe, expect, it } from 'vitest';
import { NAMED_SIZES, type PaperInUse } from '../../../plugins/engine/index.ts';
import { found, said } from './found.ts';
import { card, fold, inches, mm, PLACE, piece } from './made-card.ts';

function into(name: string): Partial<PaperInUse> {
  const size = NAMED_SIZES.find((one) => one.use === 'envelope' && one.name === name);
  if (!size) throw new Error(`no envelope ${name}`);
  return { envelope: { size, place: PLACE, path: 'envelope' } };
}

const sideFold = (width: string, height: string) =>
  card([piece('base', [`front ${width}`, 'valley spine', `back ${width}`], [height])]);
const metric = (width: string, height: string) =>
  card([piece('base', [`front ${width}`, 'valley spine', `back ${width}`], [height], mm)], { system: 'metric' });

describe('fits-envelope', () => {
  // US A2 is 4 3/8 x 5 3/4 in (published US trade lists) and sold for a card of 4 1/4 x 5 1/2 in.
  it('leaves a US A2 card in its envelope alone, with an eighth across and a quarter along', () => {
    const folded = fold(sideFold('4 1/4', '5 1/2'), into('US A2'));
    const [finding] = found('fits-envelope', folded);
    expect(finding).toMatchObject({ outcome: 'fits', state: 'pass' });
    expect([finding?.figure, finding?.limit]).toEqual([inches('1/8'), inches('1/8')]);
    expect(said('fits-envelope', folded)).toBe(
      'It fits a US A2 envelope with 1/4 in to spare along and 1/8 in across (at least 1/8 in is wanted).',
    );
  });

  it('turns the card: a lying one goes into the same envelope', () => {
    expect(found('fits-envelope', fold(sideFold('5 1/2', '4 1/4'), into('US A2')))).toMatchObject([
      { outcome: 'fits' },
    ]);
  });

  // C6 is 114 x 162 mm (ISO 269), A6 105 x 148 mm (ISO 216).
  it('leaves an A6 card in C6 alone', () => {
    const [finding] = found('fits-envelope', fold(metric('105', '148'), into('ISO C6')));
    expect(finding).toMatchObject({ outcome: 'fits', figure: mm(9) });
  });

  it('catches an A6 card of 148 mm in an envelope 5 3/4 in long, and names the next', () => {
    const folded = fold(metric('105', '148'), into('US A2'));
    expect(found('fits-envelope', folded)).toMatchObject([{ outcome: 'too-big', state: 'fail', figure: mm('-39/20') }]);
    expect(said('fits-envelope', folded)).toContain('1.95 mm too long');
  });

  it('catches a 5 x 7 card in a US A6 envelope, and sends it to US A7', () => {
    const folded = fold(sideFold('5', '7'), into('US A6'));
    expect(found('fits-envelope', folded)).toMatchObject([{ outcome: 'too-big', witness: 'base' }]);
    expect(said('fits-envelope', folded)).toBe(
      'It does not fit a US A6 envelope: 1/2 in too long and 1/4 in too wide. Take a US A7 envelope, or make `base` smaller.',
    );
  });

  it('catches a card as wide as the envelope', () => {
    const folded = fold(sideFold('4 3/8', '5 1/2'), into('US A2'));
    expect(found('fits-envelope', folded)).toMatchObject([{ outcome: 'too-big' }]);
    expect(said('fits-envelope', folded)).toContain('exactly as wide as the envelope');
  });

  it('asks about a card with less room than is wanted', () => {
    const folded = fold(sideFold('4 5/16', '5 1/2'), into('US A2'));
    expect(found('fits-envelope', folded)).toMatchObject([
      { outcome: 'tight', state: 'question', figure: inches('1/16') },
    ]);
    expect(said('fits-envelope', folded)).toContain('or take a US A6 envelope');
  });

  it('puts the room that is wanted on the marks of the edition, so that 1/8 in is 3 mm', () => {
    const folded = fold(metric('108', '139.5'), into('US A2'));
    expect(found('fits-envelope', folded)).toMatchObject([{ outcome: 'fits', figure: mm('25/8'), limit: mm(3) }]);
  });

  it('points at the post that asks for the card, where the cure belongs', () => {
    const asked = { place: { file: 'posts/heron.md', line: 4, column: 1 }, path: 'cards[1]' };
    const [finding] = found('fits-envelope', fold(sideFold('4 1/4', '5 1/2'), { asked }));
    expect(finding).toMatchObject({ outcome: 'no-envelope', ...asked });
  });

  it('tries nothing without an envelope, and suggests the smallest that does', () => {
    const folded = fold(sideFold('4 1/4', '5 1/2'));
    expect(found('fits-envelope', folded)).toMatchObject([{ outcome: 'no-envelope', state: 'untested' }]);
    expect(said('fits-envelope', folded)).toContain('`envelope: US A2`');
    expect(said('fits-envelope', fold(metric('105', '148')))).toContain('`envelope: ISO C6`');
    expect(said('fits-envelope', fold(sideFold('30', '40')))).toContain('no usual one holds the card');
  });
});
