import { describe, expect, it } from 'vitest';
import { evaluate, evaluateLength } from '../../../plugins/engine/spec/evaluate.ts';
import {
  lineNamed,
  linesNamed,
  partNames,
  partOf,
  pointOn,
  readPoint,
  type Sizes,
} from '../../../plugins/engine/spec/references.ts';
import { Report } from '../../../plugins/engine/spec/report.ts';
import { pieceOf, shown } from '../support/one-piece.ts';
import { yamlTree } from '../support/yaml-tree.ts';

const PLAIN = { amount: () => undefined, measure: () => undefined, settle: <T>(length: T): T => length };
const sizes: Sizes = {
  length: (expression) => evaluateLength(expression, PLAIN, new Report()),
  height: (expression) => evaluateLength(expression, PLAIN, new Report()),
  angle: () => undefined,
  number: (expression) => {
    const amount = evaluate(expression, 'number', PLAIN, new Report());
    return amount && 'n' in amount ? amount : undefined;
  },
};

const piece = pieceOf(`
    across: [left 1, valley hinge, middle 2, valley, right 1]
    down: [head 1, valley, middle 4]
    marks: { rule: { left: [1/2, 1] }, only: { top: [2] }, tilt: { from: [0, 0], to: [3, 4] } }
    panels: { lid: [2, 1/2] }
    shapes: { disc: { circle: 1, at: [1, 3], stays-with: middle } }`);

describe('a point', () => {
  it.each([
    ['top-left', 0, 0],
    ['bottom-right', 4, 5],
    ['top', 2, 0],
    ['right', 4, 2.5],
    ['centre', 2, 2.5],
    ['hinge at 2', 1, 2],
    ['middle|right at 0', 3, 0],
    ['head|middle at 1', 1, 1],
    ['left at 3', 0, 3],
    ['bottom at 3', 3, 5],
    ['rule(2) at 1', 1, 1],
    ['only at 1', 1, 2],
    // Three, four, five.
    ['tilt at 2 1/2', 1.5, 2],
    ['[1, 2]', 1, 2],
    ["'[ 1 1/2 , 2 ]'", 1.5, 2],
  ])('%s lies at %d, %d', (text, x, y) => {
    const report = new Report();
    const spec = readPoint(yamlTree(text), 'at', 'in', report);
    expect(report.problems).toEqual([]);
    const point = spec && pointOn(piece, spec, sizes);
    expect(point && shown(point)).toEqual([x, y]);
    expect(point?.rounded).toBeUndefined();
  });

  it.each(['rule at 1', 'nothing at 1'])('%s has no place', (text) => {
    const spec = readPoint(yamlTree(text), 'at', 'in', new Report());
    expect(spec && pointOn(piece, spec, sizes)).toBeUndefined();
  });
});

describe('a line by its name', () => {
  const course = (name: string) => {
    const line = lineNamed(piece, name);
    return line && [shown(line.from), shown(line.to)];
  };

  it.each([
    ['left', [0, 0], [0, 5]],
    ['bottom', [0, 5], [4, 5]],
    ['hinge', [1, 0], [1, 5]],
    ['head|middle', [0, 1], [4, 1]],
    ['rule(1)', [0.5, 0], [0.5, 5]],
    ['only', [0, 2], [4, 2]],
    ['tilt', [0, 0], [3, 4]],
  ])('%s', (name, from, to) => expect(course(name)).toEqual([from, to]));

  it('is none where a family has several members, which can be asked for', () => {
    expect(course('rule')).toBeUndefined();
    expect(linesNamed(piece, 'rule').map(({ name }) => name)).toEqual(['rule(1)', 'rule(2)']);
    expect(course('disc')).toBeUndefined();
  });
});

describe('a part by its name', () => {
  it.each([
    [[], { is: 'whole' }],
    [['head'], { is: 'cell', column: undefined, row: 'head' }],
    [['left'], { is: 'cell', column: 'left', row: undefined }],
    [['middle', 'head'], { is: 'cell', column: 'middle', row: 'head' }],
    [['middle', 'middle'], { is: 'cell', column: 'middle', row: 'middle' }],
    [['top'], { is: 'edge', edge: 'top' }],
    [['bottom-left'], { is: 'corner', corner: 'bottom-left' }],
    [['head', 'middle'], undefined],
    [['hed'], undefined],
    [['left', 'head', 'middle'], undefined],
  ])('%s', (parts, part) => expect(partOf(piece, parts)).toEqual(part));

  it('may be a point that was given a name, and a shape is the panel it lies in', () => {
    const [lid, disc] = [partOf(piece, ['lid']), partOf(piece, ['disc'])];
    expect(lid?.is === 'spot' && shown(lid.at)).toEqual([2, 0.5]);
    expect(disc?.is === 'spot' && Math.hypot(shown(disc.at)[0] - 1, shown(disc.at)[1] - 3)).toBeLessThan(0.25);
  });

  it('of a sheet without bands, `left` is the panel at that edge', () => {
    expect(partOf(pieceOf('wide x tall'), ['left'])).toEqual({ is: 'edge', edge: 'left' });
  });

  it('is found by every name that is suggested', () => {
    expect(partNames(piece).filter((name) => partOf(piece, [name]) === undefined)).toEqual([]);
  });
});
