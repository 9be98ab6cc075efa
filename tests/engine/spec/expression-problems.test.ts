import { describe, expect, it } from 'vitest';
import { readFold } from '../../../plugins/engine/index.ts';
import { marked, only } from '../support/marked.ts';
import { yamlMap } from '../support/yaml-tree.ts';

/** The expression as a value of a fold that has `width`, `height`, `depth` and the count `pages`. */
function problemsIn(expression: string, units = 'units: in'): ReturnType<typeof readFold>['problems'] {
  const yaml = `name: Trial
${units}
parameters: { width: 4 1/4 in, height: 5 1/2 in, depth: 1 in, pages: { count: 4 } }
values:
  gate: ${expression}
pieces: { base: { across: [front width, valley spine, back width], down: height } }`;
  return readFold(yamlMap(yaml)).problems;
}

/** Code, the text with a » where the problem stands, and what to do. */
const REFUSED: readonly (readonly [code: string, expression: string, remedy: string | RegExp])[] = [
  // Kinds.
  [
    'length-times-length',
    '»width*height',
    'Multiply by a number without a unit: a length times a length would be an area.',
  ],
  ['length-times-length', '»2 in*3 in', /would be an area/],
  ['number-over-length', '1 + »2/width', 'Turn the division round, or divide by a number without a unit.'],
  ['length-with-count', '»width + pages', '`pages` is a plain number. Multiply it by a length first.'],
  ['length-with-count', '»smaller of pages and width', '`pages` is a plain number. Multiply it by a length first.'],
  // A minus without its spaces.
  [
    'minus-in-name',
    '2*»width-1',
    'A name may hold a hyphen, so this is read as one name. To subtract, write `width - 1`.',
  ],
  ['minus-in-name', '»width-depth', /write `width - depth`/],
  ['minus-without-spaces', 'width »-1', 'Write `width - 1`.'],
  ['minus-without-spaces', 'width»- 1', 'Write `width - 1`.'],
  ['minus-without-spaces', '(width)»-1', 'Write `(width) - 1`.'],
  ['minus-without-spaces', '5»-1', 'Write `5 - 1`.'],
  ['hyphen-in-number', 'width + »5-1/2', 'Write `5 1/2` for one number, or `5 - 1/2` to subtract.'],
  ['hyphen-in-number', '»5-½', 'Write `5 ½` for one number, or `5 - ½` to subtract.'],
  // Names.
  ['unknown-name', 'width + »heigth', 'Did you mean `height`?'],
  ['unknown-name', '»foo', 'Nothing here is called `foo`. Add it under `parameters` or `values`.'],
  ['size-without-spaces', '»widthxheight', 'Put a space each side of the x: `width x height`.'],
  ['measure-too-early', 'width + »base.width', /^Pieces are made from these sizes/],
  ['measure-without-side', '»base.front.widht', 'Did you mean `base.front.width`?'],
  ['measure-without-side', '»base.front', 'Write `base.front.width` or `base.front.height`.'],
  // What does not fit together.
  ['operator-missing', '5 »3', 'Put one of + - * / between `5` and `3`, or take one of them out.'],
  ['operator-missing', '2»width', 'Write `2*width` to multiply. A unit is written in, mm or cm.'],
  ['operator-missing', '5 »feet', /A unit is written in, mm or cm\./],
  ['operator-missing', '2»(width + 1)', 'Write `2*(` to multiply.'],
  ['operator-missing', '(width »height)', /^Put one of \+ - \* \/ between `width` and `height`/],
  ['unfinished', 'width »+', 'Finish the expression.'],
  ['out-of-place', 'width + »/2', 'Write a number or a name before `/`.'],
  ['bracket', '2*»(width', /^Close the bracket with `\)`\..*inside \[ \] or \{ \} a comma starts a new item/],
  ['bracket', 'width»)', /^Take the `\)` out.*inside \[ \] or \{ \} a comma starts a new item/],
  ['call', '»min(width, height)', 'Write `smaller of A and B` for `min(A, B)`.'],
  ['call', '2 + »max(width, height)', 'Write `larger of A and B` for `max(A, B)`.'],
  ['call', '»panel(2)', 'Write `panel*(` to multiply.'],
  ['choice-unfinished', '»smaller width', 'Write `smaller of A and B`.'],
  ['choice-unfinished', '2 + »larger of width', 'Write `larger of A and B`.'],
  ['comma-in-expression', 'width», height', /^One value stands here, so take the comma out\./],
  ['strange-character', 'width »? 2', 'Take the `?` out.'],
  ['strange-character', 'width »÷ 2', 'Write `/` to divide.'],
  ['size-for-length', 'width »x 2', /^Two measures with an x between are a size\./],
  ['relation', 'width »>= 2', 'Conditions belong under `require`. Write a size here.'],
  // Numbers that units refuses.
  ['number-comma', 'width + »10,5', /^Write `10\.5` with a point\./],
  // What shows only when it is worked out.
  ['divided-by-zero', 'width/»0', '`0` comes out as zero. Change it, or the sizes it is made from.'],
  [
    'divided-by-zero',
    'width/»(pages - 4)',
    '`(pages - 4)` comes out as zero. Change it, or the sizes it is made from.',
  ],
  ['too-many-digits', `»${'999999999*'.repeat(5)}width`, /more than forty digits/],
  ['too-long', `»${'1 + '.repeat(101)}width`, /^Put a part of it under `values`/],
];

describe('an expression that cannot be read', () => {
  it.each(REFUSED)('%s: %s', (code, expression, remedy) => {
    const { text, place } = marked(`  gate: ${expression}`, 'fold.md');
    const problem = only(problemsIn(text.slice('  gate: '.length)));
    expect(problem).toMatchObject({ code, severity: 'error', path: 'values.gate' });
    expect(problem.place).toEqual({ ...place, line: 5 });
    if (typeof remedy === 'string') expect(problem.remedy).toBe(remedy);
    else expect(problem.remedy).toMatch(remedy);
  });

  it('is found inside quotes, where the first character stands one column later', () => {
    const problem = only(problemsIn("'width + heigth'"));
    expect(problem.place).toEqual({ file: 'fold.md', line: 5, column: 18 });
  });

  it.each([
    ['»4', '4 in'],
    ['width + »1/4', '1/4 in'],
    ['larger of »2 and width', '2 in'],
  ])('needs the unit of bare numbers: %s', (expression, written) => {
    const { text, place } = marked(`  gate: ${expression}`, 'fold.md');
    const problem = only(problemsIn(text.slice('  gate: '.length), 'family: none'));
    expect(problem).toMatchObject({ code: 'no-unit', place: { ...place, line: 5 } });
    expect(problem.remedy).toContain(`Write \`${written}\``);
  });

  it('needs no unit for a scalar', () => {
    expect(problemsIn('2*width/3', 'family: none')).toEqual([]);
  });

  it('asks about 53/4 and reads it', () => {
    const problem = only(problemsIn('53/4'));
    expect(problem).toMatchObject({ severity: 'warning', place: { line: 5, column: 9 } });
    expect(problem.remedy).toContain('Did you mean `5 3/4`?');
  });

  it('is told all its slips at once', () => {
    expect(problemsIn('5-1/2 + heigth-1 + depht -1').map(({ code, place }) => `${place.column} ${code}`)).toEqual([
      '9 hyphen-in-number',
      '34 minus-without-spaces',
    ]);
  });
});
