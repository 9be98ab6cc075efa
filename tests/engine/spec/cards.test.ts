import { describe, expect, it } from 'vitest';
import { formatNumber, Length, type System } from '../../../plugins/engine/index.ts';
import { type Asked, cardOf, foldOf, make } from '../support/folds.ts';
import { marked, only } from '../support/marked.ts';

const BRIDGE = `
name: Bridge wings
units: in
parameters:
  width: { default: 6, from: 2, to: 12, label: Width of the back }
  depth: 3
  strip: 1 1/2
  level: { choose: { top: 0, centre: (width - strip)/2, foot: width - strip }, default: top }
  pages: { count: 4, from: 2, to: 24 }
values:
  wing: depth/pages
require:
  - { that: width >= 2*depth, else: The two ends would overlap. Make the width at least twice the depth. }
  - { that: pages <= 6, else: Too many pages. }
pieces:
  base: { across: [wing wing, mountain, back width - wing], down: 5 + level, stock: heavy, grain: down }
`;

describe('a card', () => {
  const fold = foldOf(BRIDGE);
  const sizes = (asked: Asked = {}, system: System = 'inch'): string[] => {
    const [piece] = cardOf(fold, system, asked).pieces;
    return [...(piece?.columns ?? []), ...(piece?.rows ?? [])].map(({ size }) => formatNumber(size, system));
  };

  it('takes sizes, counts and words', () => {
    expect(sizes()).toEqual(['3/4', '5 1/4', '5']);
    expect(sizes({ given: '{ pages: 6, level: foot }' })).toEqual(['1/2', '5 1/2', '9 1/2']);
    expect(sizes({ given: 'level: centre' })).toEqual(['3/4', '5 1/4', '7 1/4']);
  });

  it('takes a size in terms of another', () => {
    expect(sizes({ given: '{ width: 2*depth + 1, depth: 2 }' })).toEqual(['1/2', '4 1/2', '5']);
  });

  it('says what was chosen, and within what', () => {
    const { parameters } = cardOf(fold, 'inch', { given: '{ level: foot, pages: 5 }' });
    expect(parameters.map(({ name, label }) => `${name}: ${label}`)).toEqual([
      'width: Width of the back',
      'depth: depth',
      'strip: strip',
      'level: level',
      'pages: pages',
    ]);
    expect(parameters[3]).toMatchObject({ word: 'foot', value: Length.fromInches('9/2') });
    expect(parameters[4]).toMatchObject({ value: 5, from: 2, to: 24, word: undefined });
    expect(parameters[0]).toMatchObject({ from: Length.fromInches(2), to: Length.fromInches(12) });
    expect(parameters[4]?.place.file).toBe('post.md');
    expect(parameters[0]?.place).toEqual({ file: 'fold.md', line: 5, column: 21 });
  });

  it('carries the stock and the grain of its pieces', () => {
    expect(cardOf(fold, 'inch').pieces[0]).toMatchObject({ stock: 'heavy', grain: 'down', name: 'base' });
  });

  it('works its requirements out with both sides, as printed', () => {
    const requirements = (asked: Asked, system: System) =>
      cardOf(fold, system, asked).requirements.map(({ holds, left, right }) => [
        holds,
        ...[left, right].map((side) => (side instanceof Length ? formatNumber(side, system) : side)),
      ]);
    expect(requirements({}, 'inch')).toEqual([
      [true, '6', '6'],
      [true, 4, 6],
    ]);
    expect(requirements({ given: '{ width: 5 15/16, pages: 7 }' }, 'inch')).toEqual([
      [false, '5 15/16', '6'],
      [false, 7, 6],
    ]);
    // 6 in = 152.4 -> 152.5 mm, twice 3 in = 76.2 -> 76 mm.
    expect(requirements({}, 'metric')[0]).toEqual([true, '152.5', '152']);
  });

  it.each([
    ['unknown-parameter', '»widht: 5', 'Did you mean `width`?'],
    ['unknown-parameter', '»colour: 5', 'Use one of width, depth, strip, level, pages.'],
    ['unknown-word', 'level: »fot', 'Did you mean `foot`?'],
    ['wrong-shape', 'width: »[5]', 'Write one size, as `4 1/4` here.'],
    ['wrong-shape', 'level: »{ top: 0 }', 'Write one of top, centre, foot here.'],
    ['length-for-number', 'pages: »5 in', 'Write a number without a unit.'],
    ['not-whole', 'pages: »5 1/2', 'Write a whole number.'],
    ['above-range', 'pages: »25', 'Make `pages` at most 24.'],
    ['above-range', 'width: »13', 'Make `width` at most 12 in.'],
    ['unknown-name', 'width: 2*»dpeth', 'Did you mean `depth`?'],
    ['measure-too-early', 'width: »base.width', /^Pieces are made from these sizes/],
    ['circle', '{ width: »2*depth, depth: width }', 'Give one of them a size of its own.'],
    ['hyphen-in-number', 'width: »5-1/2', 'Write `5 1/2` for one number, or `5 - 1/2` to subtract.'],
  ])('refuses %s in a post: %s', (code, yaml, remedy) => {
    const { text, place } = marked(yaml, 'post.md');
    const { card, problems } = make(fold, 'inch', { given: text });
    expect(card).toBeUndefined();
    const problem = only(problems);
    expect(problem).toMatchObject({ code, place });
    if (typeof remedy === 'string') expect(problem.remedy).toBe(remedy);
    else expect(problem.remedy).toMatch(remedy);
  });

  it('reports all slips of a post together, those for one edition too', () => {
    const { problems } = make(fold, 'metric', { given: '{ widht: 5, width: 1, level: fot }', own: '{ depth: 5 x }' });
    expect(problems.map(({ code, path }) => `${path} ${code}`)).toEqual([
      'widht unknown-parameter',
      'level unknown-word',
      'metric.depth size-for-length',
      'width below-range',
    ]);
  });

  it('needs units for the post’s own bare numbers, whatever the kind’s are', () => {
    expect(sizes({ given: 'width: 140', units: 'mm' }, 'metric')[1]).toBe('121');
    expect(make(fold, 'inch', { given: 'width: 140 mm' }).problems).toEqual([]);
  });
});
