import { describe, expect, it } from 'vitest';
import {
  cardWords,
  cuttingWords,
  Length,
  type Piece,
  panelsOf,
  recipeWords,
  type System,
} from '../../../plugins/engine/index.ts';
import { everyKind } from '../drawings/every-kind.ts';
import { cardOf, inches, millimetres, pieceOf } from '../drawings/pieces.ts';

function wordsOf(piece: Piece, system: System, hand?: 'left' | 'right'): readonly string[] {
  return cuttingWords(piece, panelsOf(cardOf(system, piece)), { system, hand });
}

interface Made {
  readonly width: Length;
  readonly height: Length;
  /** Each crease as made: which way it runs and folds, and how far from the left or top edge, in mm. */
  readonly creases: readonly string[];
}

/** Makes the piece from the sentences alone, as somebody does who does not see the drawing. */
function make(words: readonly string[]): Made {
  let [width, height] = [Length.zero, Length.zero];
  let edge = '';
  const creases: string[] = [];
  for (const sentence of words) {
    const cut = /^Cut the .+, a piece (.+) wide and (.+) high\.$/.exec(sentence);
    if (cut) [width, height] = [measured(cut[1]), measured(cut[2])];
    edge = /^Measure from the (left|right|top) edge\.$/.exec(sentence)?.[1] ?? edge;
    const score = /^Score a (valley|mountain) fold.*, at (.+), from (top to bottom|left to right)\.$/.exec(sentence);
    if (!score) continue;
    const at = measured(score[2]);
    const runs = score[3] === 'top to bottom' ? 'down' : 'across';
    expect(edge).toBe(runs === 'down' ? edge.replace('top', '?') : 'top');
    creases.push(`${score[1]} ${runs} ${(edge === 'right' ? width.minus(at) : at).toMm()}`);
  }
  return { width, height, creases: creases.sort() };
}

/** `5 1/2 in` or `139.5 mm`, read without the project's reader. */
function measured(text: string | undefined): Length {
  const [, whole = '0', over = '0', under = '1', unit] =
    /^(\d+(?:\.\d+)?)?(?: ?(\d+)\/(\d+))? (in|mm)$/.exec(text ?? '') ?? [];
  const value = Number(whole) + Number(over) / Number(under);
  return unit === 'in' ? Length.fromInches(value) : Length.fromMm(value);
}

function expectMade(piece: Piece, words: readonly string[]): void {
  const made = make(words);
  expect([made.width.toMm(), made.height.toMm()]).toEqual([piece.width.toMm(), piece.height.toMm()]);
  expect(made.creases).toEqual(piece.creases.map(({ fold, runs, at }) => `${fold} ${runs} ${at.toMm()}`).sort());
}

function expectShort(words: readonly string[]): void {
  for (const sentence of words) {
    expect(sentence.split(/\s+/).length, sentence).toBeLessThanOrEqual(25);
    expect(sentence).toMatch(/^[A-Z].*\.$/);
  }
}

describe.each(everyKind())('$name', ({ system, card }) => {
  it('can be made from the words, by either hand, in sentences of at most 25 words', () => {
    for (const piece of card.pieces) {
      for (const hand of ['right', 'left'] as const) {
        const words = cuttingWords(piece, panelsOf(card), { system, hand });
        expectMade(piece, words);
        expectShort(words);
        expect(words.some((sentence) => sentence.startsWith('The grain of the paper runs'))).toBe(
          piece.grain !== undefined,
        );
      }
    }
    expectShort(card.pieces.flatMap((piece) => recipeWords(piece, system)));
  });
});

describe('the words of a piece', () => {
  const lid = pieceOf(
    'box-lid',
    [
      ['left', inches('3/2')],
      ['middle', inches('65/16')],
      ['right', inches('3/2'), 'mountain'],
    ],
    [
      ['head', inches('3/2')],
      ['middle', inches('65/16'), 'mountain', 'crown'],
    ],
    'across',
  );

  it('say a piece that is scored both ways', () => {
    expect(wordsOf(lid, 'inch')).toEqual([
      'Cut the box lid, a piece 7 1/16 in wide and 5 9/16 in high.',
      'The grain of the paper runs from left to right.',
      'Lay it face up.',
      'Measure from the left edge.',
      'Score a valley fold between left and middle, at 1 1/2 in, from top to bottom.',
      'Score a mountain fold between middle and right, at 5 9/16 in, from top to bottom.',
      'Measure from the top edge.',
      'Score a mountain fold, the crown, at 1 1/2 in, from left to right.',
      'From left to right the panels are left, middle and right.',
      'From top to bottom the panels are head and middle.',
      'A valley fold brings the faces together.',
      'A mountain fold brings the backs together.',
    ]);
    expectMade(lid, wordsOf(lid, 'inch', 'left'));
  });

  it('say a recipe as makers do', () => {
    expect(recipeWords(lid, 'inch')).toEqual([
      'Cut 7 1/16 x 5 9/16 in.',
      'Score along the width at 1 1/2 and 5 9/16 (mountain) in.',
      'Score along the height at 1 1/2 (mountain) in.',
    ]);
    expect(recipeWords(pieceOf('mat', millimetres('100'), millimetres('120')), 'metric')).toEqual([
      'Cut 100 x 120 mm.',
    ]);
  });

  it('stay short however many creases there are', () => {
    const strip = (system: System): Piece =>
      pieceOf(
        'strip',
        Array.from({ length: 24 }, (_, i) => [
          `page-${i + 1}`,
          system === 'inch' ? inches('37/16') : millimetres('58.5'),
        ]),
        inches('4'),
      );
    for (const system of ['inch', 'metric'] as const) {
      expectShort(wordsOf(strip(system), system));
      expectShort(recipeWords(strip(system), system));
      expect(
        recipeWords(strip(system), system)
          .join(' ')
          .match(/\d+(?: \d+\/16|\.5)?(?=[, ])/g)?.length,
      ).toBeGreaterThanOrEqual(23);
    }
  });

  it('say every piece of a card in its order', () => {
    const card = cardOf('metric', pieceOf('mat', millimetres('100'), millimetres('120')), lid);
    const words = cardWords(card, panelsOf(card));
    expect(words.filter((sentence) => sentence.startsWith('Cut'))).toEqual([
      'Cut the mat, a piece 100 mm wide and 120 mm high.',
      'Cut the box lid, a piece 179.39 mm wide and 141.29 mm high.',
    ]);
  });
});
