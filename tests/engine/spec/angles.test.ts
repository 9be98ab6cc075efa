import { describe, expect, it } from 'vitest';
import { readFold } from '../../../plugins/engine/index.ts';
import { type Asked, cardOf, foldOf, make } from '../support/folds.ts';
import { marked, only } from '../support/marked.ts';
import { yamlMap } from '../support/yaml-tree.ts';

const FOLD = `
name: Leaning
units: in
parameters:
  alpha: { default: 50 deg, from: 20 deg, to: 80, label: Lean }
  beta: 2*alpha - 30 deg
  side: { choose: { low: 30°, high: alpha }, default: low }
  width: 4
values: { gamma: smaller of alpha and 45, share: alpha/beta, wide: width*(alpha/beta) }
require:
  - { that: alpha + 10 <= 90 deg, else: Lean less. }
pieces: { base: { across: [a width, valley, b wide], down: width } }
`;

describe('an angle', () => {
  const fold = foldOf(FOLD);
  const values = (asked: Asked = {}) =>
    Object.fromEntries(
      cardOf(fold, 'inch', asked).parameters.map(({ name, value, angle }) => [name, angle ? value : 'a length']),
    );

  it('is a parameter in degrees, and so is what is made from one', () => {
    expect(values()).toEqual({ alpha: 50, beta: 70, side: 30, width: 'a length' });
    expect(fold.parameters.map(({ name, type }) => `${name} ${type}`)).toEqual([
      'alpha angle',
      'beta angle',
      'side choice',
      'width length',
    ]);
  });

  it.each([
    ['{ alpha: 60 deg }', { alpha: 60, beta: 90 }],
    ['{ alpha: 60 }', { alpha: 60, beta: 90 }],
    ['{ alpha: 22½° }', { alpha: 22.5, beta: 15 }],
    ['{ alpha: 60 degrees, beta: alpha/4 + 1, side: high }', { alpha: 60, beta: 16, side: 60 }],
    ['{ alpha: (100 deg)/2 - 10 }', { alpha: 40, beta: 50 }],
  ])('is given by a post: %s', (given, expected) => {
    expect(values({ given })).toMatchObject(expected);
  });

  it('over an angle is a plain number', () => {
    const [piece] = cardOf(fold, 'inch').pieces;
    // 4 in x 50/70.
    expect(piece?.columns[1]?.exact.inches.toFraction()).toBe('20/7');
  });

  it('has its limits in degrees, and is no rounder in the other edition', () => {
    const [alpha] = cardOf(fold, 'metric', { given: '{ alpha: 33.3 deg }' }).parameters;
    expect(alpha).toMatchObject({ value: 33.3, from: 20, to: 80 });
  });

  it('is compared in a condition', () => {
    const [condition] = cardOf(fold, 'inch', { given: '{ alpha: 80 }' }).requirements;
    expect(condition).toMatchObject({ holds: true, left: 90, right: 90 });
  });

  it.each([
    ['above-range', 'alpha: »81 deg', 'Make `alpha` at most 80 deg.'],
    ['below-range', 'alpha: »19', 'Make `alpha` at least 20 deg.'],
    ['no-angle', 'alpha: »4 in', 'Write an angle in degrees, as `50 deg`.'],
    ['angle-for-length', 'width: »50 deg', 'This comes out as an angle. Write a length here.'],
    ['angle-for-length', 'width: »alpha', 'This comes out as an angle. Write a length here.'],
  ])('refuses %s in a post: %s', (code, yaml, remedy) => {
    const { text, place } = marked(yaml, 'post.md');
    expect(only(make(fold, 'inch', { given: text }).problems)).toMatchObject({ code, place, remedy });
  });
});

describe('an expression with an angle', () => {
  const problemIn = (expression: string) => {
    const head =
      'name: T\nunits: in\nparameters: { alpha: 50 deg, width: 4, pages: { count: 4 } }\npieces: { base: 4 x 5 }\nvalues:';
    const { text, place } = marked(`${head}\n  a: ${expression}`, 'fold.md');
    return { problem: only(readFold(yamlMap(text)).problems), place };
  };

  it.each([
    ['angle-mixed', '»alpha + width', /^An angle is added to/],
    ['angle-mixed', '»larger of width and alpha', /^An angle is added to/],
    ['angle-mixed', '»pages - alpha', /^An angle is added to/],
    ['angle-times', '»alpha*alpha', /by a plain number only/],
    ['angle-times', '»width*alpha', /by a plain number only/],
    ['angle-times', '»width/alpha', /by a plain number only/],
    ['angle-times', '»2/alpha', /by a plain number only/],
    ['divided-by-zero', 'alpha/»(pages - 4)', /comes out as zero/],
    ['operator-missing', '50 »degs', /^Write `50\*degs` to multiply/],
  ])('%s: %s', (code, expression, remedy) => {
    const { problem, place } = problemIn(expression);
    expect(problem).toMatchObject({ code, place, path: 'values.a' });
    expect(problem.remedy).toMatch(remedy);
  });

  it.each([
    ['angle-for-number', '{ pages: { count: »50 deg } }', 'Write a number without `deg`.'],
    ['no-angle', '{ a: { default: 50 deg, from: »2 in } }', 'Write an angle in degrees, as `50 deg`.'],
    ['mixed-choice', '{ »a: { choose: { low: 2, high: 3 deg }, default: low } }', /^Multiply the plain numbers/],
    [
      'above-range',
      '{ a: { default: »50 deg, to: 40 } }',
      'Give `a` in the post: at most 40 deg. Or change its default.',
    ],
  ])('%s in parameters: %s', (code, yaml, remedy) => {
    const { text, place } = marked(`name: T\nunits: in\npieces: { base: 4 x 5 }\nparameters: ${yaml}`, 'fold.md');
    const problem = only(readFold(yamlMap(text)).problems);
    expect(problem).toMatchObject({ code, place });
    if (typeof remedy === 'string') expect(problem.remedy).toBe(remedy);
    else expect(problem.remedy).toMatch(remedy);
  });

  it('is no size of a piece', () => {
    const { text, place } = marked(
      'name: T\nunits: in\nparameters: { alpha: 50 deg }\npieces: { base: »alpha x 5 }',
      'fold.md',
    );
    expect(only(readFold(yamlMap(text)).problems)).toMatchObject({ code: 'angle-for-length', place });
  });
});
