import { describe, expect, it } from 'vitest';
import type { Outline, PathEdge, Point } from '../../../plugins/engine/geometry/index.ts';
import {
  type Card,
  cardWords,
  cuttingWords,
  type Piece,
  panelsOf,
  recipeWords,
  type System,
} from '../../../plugins/engine/index.ts';
import { everyKind } from '../drawings/every-kind.ts';
import { cardOf, inches, millimetres, pieceOf } from '../drawings/pieces.ts';
import { SHAPED } from '../drawings/shaped-pieces.ts';
import { type MadeLine, type MadePoint, makeFrom } from './made-from-words.ts';

function wordsOf(piece: Piece, system: System, hand?: 'left' | 'right'): readonly string[] {
  return cuttingWords(piece, panelsOf(cardOf(system, piece)), { system, hand });
}

function expectShort(words: readonly string[]): void {
  for (const sentence of words) {
    expect(sentence.split(/\s+/).length, sentence).toBeLessThanOrEqual(25);
    expect(sentence).toMatch(/^[A-Z].*\.$/);
  }
}

/** What is made from the words is what is on the piece. */
function expectMade(card: Card, piece: Piece, words: readonly string[]): void {
  const made = makeFrom(words);
  expect([made.width, made.height].map(mm)).toEqual([piece.width.toMm(), piece.height.toMm()].map(mm));
  const strokes = panelsOf(card).strokes.filter((stroke) => stroke.piece === piece.name);
  const shapes = new Set(piece.shapes.map(({ name }) => name));
  const lines = strokes.filter(({ does, name }) => does !== 'edge' && !shapes.has(name));
  const left = [...made.lines];
  for (const { does, fold, edge } of lines) {
    const at = left.findIndex((line) => line.does === does && line.fold === fold && sameEnds(line, edge));
    expect(at, `${does} ${fold} ${[edge.from, edge.to].map(({ x, y }) => `${x} ${y}`)}`).toBeGreaterThanOrEqual(0);
    left.splice(at, 1);
  }
  expect(left).toEqual([]);
  const regions = [...piece.windows, ...piece.shapes, ...piece.away];
  expect(made.regions.map(({ box }) => box.map(mm)).sort()).toEqual(
    regions.map(({ outline }) => boxOf(outline).map(mm)).sort(),
  );
  expect(made.regions.map(({ does }) => does)).toEqual([
    ...piece.shapes.map(() => 'cut round'),
    ...piece.windows.map(() => 'cut out'),
    ...piece.away.map(() => 'cut away'),
  ]);
  if (made.path !== undefined) {
    const corners = piece.outline.map(({ from }) => `${mm(from.x.valueOf())} ${mm(from.y.valueOf())}`);
    expect(made.path.map(({ x, y }) => `${mm(x)} ${mm(y)}`)).toEqual(corners);
  }
}

/** To a hundredth of a millimetre; a little is added, since marks lie half way between two of those. */
function mm(value: number): string {
  return (Math.round((value + 0.0013) * 100) / 100).toFixed(2);
}

/** A measure that is said to be about so much is right to half of the finest part of a ruler: 1/64 in or 0.1 mm. */
function sameEnds({ from, to }: MadeLine, edge: PathEdge): boolean {
  const near = (a: MadePoint, b: Point): boolean =>
    [a.x - b.x.valueOf(), a.y - b.y.valueOf()].every((off) => Math.abs(off) <= (a.about ? 25.4 / 128 + 1e-9 : 1e-6));
  return (near(from, edge.from) && near(to, edge.to)) || (near(from, edge.to) && near(to, edge.from));
}

/** Left, top, width and height of an outline, which reaches beyond its corners only where an arc is half a circle or more. */
function boxOf(outline: Outline): readonly number[] {
  const points = outline.flatMap((edge) => {
    const ends = [edge.from, edge.to].map(({ x, y }) => [x.valueOf(), y.valueOf()] as const);
    return ends;
  });
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  return [left, top, Math.max(...xs) - left, Math.max(...ys) - top];
}

describe.each(everyKind())('$name', ({ system, card }) => {
  it('can be made from the words, by either hand, in sentences of at most 25 words', () => {
    for (const piece of card.pieces) {
      for (const hand of ['right', 'left'] as const) {
        const words = cuttingWords(piece, panelsOf(card), { system, hand });
        expectMade(card, piece, words);
        expectShort(words);
        expect(words.some((sentence) => sentence.startsWith('The grain of the paper runs'))).toBe(
          piece.grain !== undefined,
        );
      }
    }
    expectShort(card.pieces.flatMap((piece) => recipeWords(piece, system)));
  });
});

describe.each(SHAPED)('$name', ({ piece: pieceIn }) => {
  it.each(['inch', 'metric'] as const)('can be made from the words, %s', (system) => {
    const piece = pieceIn(system);
    const card = cardOf(system, piece);
    for (const hand of ['right', 'left'] as const) {
      const words = cuttingWords(piece, panelsOf(card), { system, hand });
      expectMade(card, piece, words);
      expectShort(words);
    }
  });
});

describe('the words of a shaped piece', () => {
  const said = (name: string, hand?: 'left'): readonly string[] => {
    const found = SHAPED.find((one) => one.name === name);
    if (found === undefined) throw new Error(`there is no ${name}`);
    return wordsOf(found.piece('inch'), 'inch', hand);
  };

  it('cut the outline, score, cut inside, then cut away', () => {
    const firsts = said('a notch and a window with a slanting side').filter((sentence) =>
      /^(Cut|Score)/.test(sentence),
    );
    expect(firsts.map((sentence) => /^(Cut out|Cut away|Cut|Score)/.exec(sentence)?.[0])).toEqual([
      'Cut',
      'Score',
      'Cut out',
      'Cut away',
    ]);
  });

  it('say how far a part crease goes, and which way each part folds', () => {
    expect(said('a slit and part creases')).toEqual(
      expect.arrayContaining([
        'Score a valley fold, the outer 1, at 2 in across, from the top edge to 1 1/2 in down.',
        'Score a mountain fold, the outer 1, at 2 in across, from 1 1/2 in to 5 1/2 in down.',
        'Cut a slit, the slit 1, at 1 1/2 in down, from 2 in to 10 in across.',
      ]),
    );
  });

  it('say where a shape that swings is cut and where not', () => {
    expect(said('a circle that swings')).toEqual(
      expect.arrayContaining([
        'The disc is a circle with a diameter of 2 1/2 in.',
        'Its centre is at 2 3/4 in across and 2 3/4 in down.',
        'Cut round it only outside the strip, left of the swing.',
      ]),
    );
    // 8 1/4 less 2 3/4 in from the right.
    expect(said('a circle that swings', 'left')).toContain('Its centre is at 5 1/2 in across and 2 3/4 in down.');
  });

  // 2 in at 50 degrees from the spine: 2 sin 50 = 1.5321 in aside and 2 cos 50 = 1.2856 in down, from 4 1/4 and 2 in.
  it('say an angled line from point to point, with its angle and length', () => {
    const words = said('angled marks');
    const from = words.indexOf('Mark a light line, the line left.');
    expect(words.slice(from, from + 4)).toEqual([
      'Mark a light line, the line left.',
      'It starts at 4 1/4 in across and 2 in down.',
      'It ends at about 2 23/32 in across and about 3 9/32 in down.',
      'It makes an angle of 50 degrees with the spine, and is 2 in long.',
    ]);
  });

  it('say what a ring of foam is made of', () => {
    expect(said('a ring of foam')).toContain('It is of foam, 1/8 in thick.');
  });

  it('say a crease from corner to corner without figures', () => {
    expect(said('creases from corner to corner')).toEqual(
      expect.arrayContaining(['It starts at the top left corner.', 'It ends at the bottom right corner.']),
    );
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
    expectMade(cardOf('inch', lid), lid, wordsOf(lid, 'inch', 'left'));
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
