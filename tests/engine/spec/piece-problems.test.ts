import { describe, expect, it } from 'vitest';
import { readFold } from '../../../plugins/engine/index.ts';
import { marked, only } from '../support/marked.ts';
import { SIZES } from '../support/one-piece.ts';
import { yamlMap } from '../support/yaml-tree.ts';

type Row = readonly [code: string, yaml: string, remedy: string | RegExp];

/** One problem in a piece of 4 x 6, at the ». */
function refuses(rows: readonly Row[], wrap: (yaml: string) => string = (yaml) => yaml): void {
  it.each(rows)('%s: %s', (code, yaml, remedy) => {
    const { text, place } = marked(`name: Trial\nunits: in\n${SIZES}\npieces:\n  sheet: ${wrap(yaml)}`, 'fold.md');
    const problem = only(readFold(yamlMap(text)).problems);
    expect(problem).toMatchObject({ code, place, severity: 'error' });
    if (typeof remedy === 'string') expect(problem.remedy).toBe(remedy);
    else expect(problem.remedy).toMatch(remedy);
  });
}

describe('the shape of a piece', () => {
  refuses([
    ['two-shapes', '»{ circle: 3, size: 4 x 5 }', 'Keep one of `circle` and `size`.'],
    ['two-shapes', '»{ circle: 3, rounded: 4 x 5 }', 'Keep one of `circle` and `rounded`.'],
    ['two-shapes', '»{ ellipse: 3 x 4, across: wide, down: tall }', 'Keep one of `ellipse` and `across`.'],
    ['radius-of-what', '{ circle: 3, radius: »1/4 }', /write `rounded` for `size`/],
    ['radius-too-large', '{ rounded: 3 x 4, radius: »wide }', /^Make the radius smaller/],
    ['size-missing-half', '{ ellipse: »3 }', 'Write both measures with ` x ` between them.'],
    ['size-for-length', '{ circle: 3 »x 4 }', /^Two measures with an x between are a size/],
    ['angle-for-length', '{ circle: »lean }', 'This comes out as an angle. Write a length here.'],
  ]);
  refuses([
    ['wrong-shape', '{ outline: »[[0, 0]] }', /^Write a list of points in order/],
    ['wrong-shape', '{ outline: [[0, 0], »[4], [4, 4]] }', /^Write a corner, an edge/],
    ['point-too-early', '{ outline: [[0, 0], »top-right, [4, 4]] }', /^Write the point as `\[2, 3\]`/],
    ['key-missing', '{ outline: [[0, 0], [4, 0], »{ arc: [4, 4] }] }', /^Add `through:`/],
    [
      'arc-is-straight',
      '{ outline: [[0, 0], [4, 0], »{ arc: [4, 4], through: [4, 2] }, [0, 4]] }',
      /^Write the point alone/,
    ],
    ['point-twice', '{ outline: [[0, 0], [4, 0], »[4, 0], [0, 4]] }', /^Take one of the two points out/],
    [
      'measure-of-itself',
      '{ outline: [[0, 0], [»sheet.width, 0], [0, 4]] }',
      /cannot be measured while it is being made/,
    ],
  ]);
  const named: readonly Row[] = [
    ['outline-crosses', '{ outline: [[0, 0], [4, 4], [4, 0], [0, 4]] }', /^Put its points in order/],
    [
      'outline-crosses',
      '{ outline: [[0, 0], [4, 0], { arc: [4, 4], through: [-1/2, 2] }, [0, 4]] }',
      /^Put its points in order/,
    ],
    ['no-paper', '{ outline: [[0, 0], [4, 0], [2, 0]] }', 'Give it three corners or more.'],
    [
      'outline-not-at-corner',
      '{ outline: [[1, 0], [4, 0], [4, 4]] }',
      'Move all its points by as much as they are off.',
    ],
    ['no-paper', '{ circle: wide - 4 }', 'Change the sizes that `sheet` is made from.'],
    ['no-paper', 'wide - 3.999 in x 5', 'Change the sizes that `sheet` is made from.'],
    ['corners-of-what', '{ size: 4 x 6, corners: away }', /^Give the piece walls on all four sides/],
  ];
  it.each(named)('%s is said of the piece: %s', (code, yaml, remedy) => {
    const head = `name: Trial\nunits: in\n${SIZES}\npieces:\n`;
    const problem = only(readFold(yamlMap(`${head}  sheet: ${yaml}`)).problems);
    expect(problem).toMatchObject({ code, place: { line: 5, column: 3 }, path: 'pieces.sheet' });
    if (typeof remedy === 'string') expect(problem.remedy).toBe(remedy);
    else expect(problem.remedy).toMatch(remedy);
  });
});

describe('a line', () => {
  refuses(
    [
      ['unknown-name', '{ a: »midle }', /^Nothing here is called `midle`/],
      ['operator-missing', '{ a: middle »up }', /^Put one of/],
      ['unknown-point', '{ a: »tpo-left to bottom }', 'Did you mean `top-left`?'],
      ['unknown-point', '{ a: »b to bottom, b: 1 }', 'Write `b at 2` for a point on it.'],
      ['unknown-line', '{ a: »edge at 2 to bottom }', '`sheet` has no line called `edge`.'],
      ['unknown-line', '{ a: »fodl at 2 to bottom, fold: 1 }', 'Did you mean `fold`?'],
      ['several-lines', '{ a: »b at 2 to top, b: { left: [1, 2] } }', 'Write `b(1)` or `b(2)`.'],
      ['circle', '{ »a: b at 1 to top, b: a at 1 to bottom }', /^Begin one of them at a corner/],
      ['circle', '{ »a: a at 1 to top }', /^Begin one of them at a corner/],
      ['two-lines', '{ a: »{ left: 1, top: 2 } }', /^Keep one of `left` and `top`/],
      ['unknown-key', '{ a: { left: 1, »form: 2 } }', 'Did you mean `from`?'],
      ['unknown-key', '{ a: { »lfet: 1, from: top, to: left } }', 'Did you mean `left`?'],
      ['line-unfinished', '{ a: »{ from: top } }', 'Add `to:`.'],
      ['line-unfinished', '{ a: »{ start: top, off: left, by: 30 deg } }', 'Add `towards:`.'],
      ['unknown-word', '{ a: { middle: »sideways } }', /^Write one of down, across/],
      ['unknown-word', '{ a: { start: top, off: left, by: 30 deg, towards: »left } }', /^Write one of top-left/],
      ['unknown-word', '{ a: { left: 1, fold: »vally } }', 'Did you mean `valley`?'],
      ['unknown-word', '{ a: { left: 1, fold: [valley, »up] } }', /^Write one of valley, mountain, both/],
      ['wrong-shape', '{ a: »[1, 2] }', /^Write a measure from the left/],
      ['wrong-shape', '{ a: { left: »[] } }', 'Write at least one measure here.'],
      [
        'no-angle',
        '{ a: { start: top, off: left, by: »2 in, towards: bottom-left } }',
        'Write an angle in degrees, as `50 deg`.',
      ],
      [
        'angle-range',
        '{ a: { start: top, off: left, by: »120 deg, towards: bottom-left } }',
        /at most 90 deg, and name the corner/,
      ],
      [
        'angle-range',
        '{ a: { start: top, off: left, by: »0, towards: bottom-left } }',
        /at most 90 deg, and name the corner/,
      ],
      [
        'towards-unclear',
        '{ »a: { start: top-left, off: left, by: 30 deg, towards: bottom-left } }',
        /Name another corner/,
      ],
      ['no-length', '{ »a: { left: 1, from: 2, to: 2 } }', /^It begins and ends at one point/],
      ['no-length', '{ »a: top to top }', /^It begins and ends at one point/],
      ['edge-name', '{ »top: 1 }', /is a place on every piece/],
      ['edge-name', '{ »bottom-left: 1 }', /is a place on every piece/],
      ['reserved-name', '{ »all: 1 }', /word of the fold language/],
      ['bad-name', '{ »my line: 1 }', 'Write `my-line`.'],
      ['name-clash', '{ »sheet: 1 }', /^Give one of the two another name/],
    ],
    (yaml) => `{ size: wide x tall, creases: ${yaml} }`,
  );
  refuses(
    [
      ['unknown-key', '{ a: { left: 1, »fold: valley } }', /^Write one of: left, from, to/],
      ['name-clash', '{ a: 1 }, marks: { »a: 2 }', 'Give one of the two another name, as `a-2`.'],
      ['name-clash', '{ a: 1 }, windows: { »a: 1 x 1 }', 'Give one of the two another name, as `a-2`.'],
    ],
    (yaml) => `{ size: wide x tall, cuts: ${yaml} }`,
  );
  refuses(
    [
      ['name-clash', '{ »spine: 1 }', 'Give one of the two another name, as `spine-2`.'],
      ['name-clash', '{ »front: 1 }', 'Give one of the two another name, as `front-2`.'],
    ],
    (yaml) => `{ across: [front 2, valley spine, back 2], down: 4, creases: ${yaml} }`,
  );
});

describe('a shape', () => {
  refuses(
    [
      ['shape-missing', 'windows: { a: »{ at: top } }', /^Write a size as `2 x 3`/],
      ['two-shapes', 'windows: { a: »{ circle: 1, inset: 1 } }', 'Keep one of `inset` and `circle`.'],
      ['two-places', 'windows: { a: { inset: 1, at: »top } }', /^Take `at` out/],
      ['unknown-key', 'windows: { a: { circle: 1, »by: 2 } }', /^Write one of: circle/],
      ['unknown-band', 'windows: { a: { inset: 1, in: »frnt } }', 'Did you mean `front`?'],
      ['unknown-point', 'windows: { a: { circle: 1, at: »top-centre } }', 'Did you mean `centre`?'],
      ['no-shape', 'windows: { »a: { inset: 2 } }', 'Change the sizes that it is made from.'],
      ['no-shape', 'windows: { »a: { circle: wide - 4 } }', 'Change the sizes that it is made from.'],
      ['size-missing-half', 'windows: { a: »2 }', 'Write both measures with ` x ` between them.'],
      ['key-missing', 'shapes: { a: »{ circle: 1 } }', /^Add `stays-with:`/],
      ['unknown-band', 'shapes: { a: { circle: 1, stays-with: »bak } }', 'Did you mean `back`?'],
      ['unknown-band', 'away: [»frnt]', 'Did you mean `front`?'],
      ['unknown-band', 'away: [»front.top]', /^Write a band of `sheet`: front, back/],
      ['edge-name', 'panels: { »left: centre }', /is a place on every piece/],
      ['unknown-point', 'panels: { a: »middle }', 'Write `middle at 2` for a point on it.'],
      ['unknown-word', 'corners: »of', /^Write one of away, tabs/],
      ['number-for-length', 'thick: »pages', /Multiply it by a length/],
    ],
    (yaml) => `{ across: [front 2, valley spine, back 2], down: 4, ${yaml} }`,
  );

  it('takes no inset from an outline', () => {
    const yaml = `name: Trial\nunits: in\n${SIZES}\npieces:\n  sheet: { outline: [[0, 0], [4, 0], [0, 4]], windows: { a: { inset: 1 } } }`;
    expect(only(readFold(yamlMap(yaml)).problems)).toMatchObject({
      code: 'inset-of-outline',
      path: 'pieces.sheet.windows.a',
    });
  });
});
