import { describe, expect, it } from 'vitest';
import { type Card, type Fold, type Problem, readFold } from '../../../plugins/engine/index.ts';
import { cardOf, foldOf, make, printed } from '../support/folds.ts';
import { marked, only } from '../support/marked.ts';
import { courses } from '../support/one-piece.ts';
import { yamlMap } from '../support/yaml-tree.ts';

const head =
  'name: T\nunits: in\nparameters: { side: 4, step: 1/2, layers: { count: 3, from: 1, to: 5 }, pages: { count: 4, from: 1, to: 24 } }\n';
const fold = (rest: string): Fold => foldOf(head + rest);
const names = (card: Card): string[] => card.pieces.map(({ name }) => name);
const problemsOf = (rest: string): readonly Problem[] => readFold(yamlMap(head + rest)).problems;

describe('each', () => {
  const LAYERS =
    'pieces: { layer(k): { each: k from 1 to layers, size: side - (k - 1)*step x side }, lid: layer(1) less 1/4 }';

  it('repeats a piece as often as a count says, in every card anew', () => {
    const sizes = (given?: string) =>
      cardOf(fold(LAYERS), 'inch', { ...(given && { given }) }).pieces.map(
        ({ name, columns }) => `${name} ${printed(columns, 'inch')}`,
      );
    expect(sizes()).toEqual(['layer(1) 4', 'layer(2) 3 1/2', 'layer(3) 3', 'lid 3 1/2']);
    expect(sizes('layers: 1')).toEqual(['layer(1) 4', 'lid 3 1/2']);
    expect(sizes('{ layers: 5, step: 3/4 }')).toEqual([
      'layer(1) 4',
      'layer(2) 3 1/4',
      'layer(3) 2 1/2',
      'layer(4) 1 3/4',
      'layer(5) 1',
      'lid 3 1/2',
    ]);
  });

  it('repeats lines, windows, shapes and names of panels, by numbers and by words', () => {
    const [piece] = cardOf(
      fold(
        `pieces:
  sheet:
    across: [left side, valley spine, right side]
    down: 6
    marks: { rule(k): { each: k from 1 to 3, top: k*step }, line-(s): { each: s in left right, from: spine at 1, to: bottom-(s) } }
    windows: { hole(k): { each: k from 0 to 1, circle: (k + 1)*step, in: left } }
    panels: { peak: left, field(k): { each: k from 1 to 2, at: [k, 5] } }`,
      ),
      'inch',
    ).pieces;
    expect(courses(piece?.lines ?? [])).toEqual([
      'rule(1): (0, 0.5) (8, 0.5)',
      'rule(2): (0, 1) (8, 1)',
      'rule(3): (0, 1.5) (8, 1.5)',
      'line-left: (4, 1) (0, 6)',
      'line-right: (4, 1) (8, 6)',
    ]);
    expect(piece?.lines.map(({ family }) => family)).toEqual(['rule', 'rule', 'rule', 'line-left', 'line-right']);
    expect(piece?.windows.map(({ name }) => name)).toEqual(['hole(0)', 'hole(1)']);
    expect(piece?.spots.map(({ name, at }) => `${name} ${at.x.div('25.4').toFraction()}`)).toEqual([
      'peak 0',
      'field(1) 1',
      'field(2) 2',
    ]);
  });

  it('repeats the bands of a strip, with creases between them that take turns', () => {
    const strip = (more: string, given?: string) => {
      const [piece] = cardOf(fold(`pieces: { strip: { across: [${more}], down: 4 } }`), 'inch', {
        ...(given && { given }),
      }).pieces;
      return {
        bands: piece?.columns.map(({ name }) => name).join(' '),
        creases: piece?.creases.map(({ name, fold: way }) => `${name} ${way}`).join(', '),
      };
    };
    const each = '{ each: i from 1 to pages, panel: page(i) 3, between: fold(i), in-turn: [valley, mountain] }';
    expect(strip(each)).toEqual({
      bands: 'page(1) page(2) page(3) page(4)',
      creases: 'fold(1) valley, fold(2) mountain, fold(3) valley',
    });
    expect(strip(each, 'pages: 1')).toEqual({ bands: 'page(1)', creases: '' });
    expect(strip('{ each: i from 1 to 2, panel: page(i) 3*i }')).toEqual({
      bands: 'page(1) page(2)',
      creases: 'page(1)|page(2) valley',
    });
    expect(
      strip(`front 2, mountain hinge, ${each}, valley, { each: s in one two, panel: flap-(s) 1, in-turn: mountain }`),
    ).toEqual({
      bands: 'front page(1) page(2) page(3) page(4) flap-one flap-two',
      creases:
        'hinge mountain, fold(1) valley, fold(2) mountain, fold(3) valley, page(4)|flap-one valley, flap-one|flap-two mountain',
    });
  });

  it('within each goes on with the number that it is given', () => {
    const { pieces } = cardOf(
      fold(`pieces:
  sheet(i): { each: i from 1 to 2, size: 8 x 8, marks: { rule(j): { each: j from i to 2, left: i + j/2 }, grid(j): { each: j from 1 to i, left: [i, j] } } }`),
      'inch',
    );
    expect(pieces.map(({ name, lines }) => [name, ...courses(lines)])).toEqual([
      [
        'sheet(1)',
        'rule(1): (1.5, 0) (1.5, 8)',
        'rule(2): (2, 0) (2, 8)',
        'grid(1)(1): (1, 0) (1, 8)',
        'grid(1)(2): (1, 0) (1, 8)',
      ],
      [
        'sheet(2)',
        'rule(2): (3, 0) (3, 8)',
        'grid(1)(1): (2, 0) (2, 8)',
        'grid(1)(2): (1, 0) (1, 8)',
        'grid(2)(1): (2, 0) (2, 8)',
        'grid(2)(2): (2, 0) (2, 8)',
      ],
    ]);
  });

  it('measures members, and compares them', () => {
    const { equalities, requirements } = cardOf(
      fold(
        `${LAYERS}\nsame: [[layer(2).height, layer(3).height]]\nrequire: [{ each: k from 2 to layers, that: layer(k).width <= layer(k - 1).width, else: No. }]`,
      ),
      'inch',
    );
    expect(equalities[0]?.measures.map(({ printed: length }) => length.inches.valueOf())).toEqual([4, 4]);
    expect(requirements.map(({ that, holds }) => [that, holds])).toEqual([
      ['layer(2).width <= layer(1).width', true],
      ['layer(3).width <= layer(2).width', true],
    ]);
  });

  it('leaves words alone in which its letter is only a letter', () => {
    const card = cardOf(
      fold(
        'pieces: { sheet(k): { each: k from 1 to 1, size: side x side, stock: k, marks: { k-line: 1, mark-(k): k } } }',
      ),
      'inch',
    );
    expect(card.pieces[0]?.stock).toBe('k');
    expect(courses(card.pieces[0]?.lines ?? [])).toEqual(['k-line: (1, 0) (1, 4)', 'mark-1: (1, 0) (1, 4)']);
  });

  it('that ends before it begins repeats nothing', () => {
    expect(
      names(
        cardOf(fold('pieces: { base: 4 x 5, layer(k): { each: k from 2 to layers, size: 1 x 1 } }'), 'inch', {
          given: 'layers: 1',
        }),
      ),
    ).toEqual(['base']);
  });

  it('is a problem of the post when a part that it does not repeat is then missing', () => {
    const { card, problems } = make(
      fold('pieces: { layer(k): { each: k from 1 to layers, size: 4 x 4 }, lid: layer(2) less 1/4 }'),
      'inch',
      { given: 'layers: 1' },
    );
    expect(card).toBeUndefined();
    expect(only(problems)).toMatchObject({ code: 'unknown-piece', path: 'pieces.lid', place: { file: 'fold.md' } });
  });
});

describe('an each that cannot be read', () => {
  it.each([
    ['bad-each', 'layer(k): { each: »k, size: 4 x 4 }', /^Write `k from 1 to 3`, or/],
    ['bad-each', 'layer(k): { each: »k from 1, size: 4 x 4 }', 'Write `k from 1 to 3`.'],
    ['bad-each', 'layer(k): { each: »k-1 from 1 to 2, size: 4 x 4 }', 'Choose a letter such as `k` for it.'],
    ['bad-each', 'layer-(s): { each: »s in left 2in, size: 4 x 4 }', /^Write words with spaces/],
    ['written-twice', 'layer-(s): { each: »s in left left, size: 4 x 4 }', /^Take one of the two `left` out/],
    ['unknown-name', 'layer(k): { each: k from 1 to »layrs, size: 4 x 4 }', 'Did you mean `layers`?'],
    ['length-for-number', 'layer(k): { each: k from 1 to »side, size: 4 x 4 }', 'Write a number without a unit.'],
    ['not-whole', 'layer(k): { each: »k from 1 to layers/2, size: 4 x 4 }', /^Write a whole number/],
    ['name-clash', 'layer(side): { each: »side from 1 to 2, size: 4 x 4 }', /is a size of this fold already/],
    ['each-without-name', '»layer: { each: k from 1 to 2, size: 4 x 4 }', 'Write `layer(k)`.'],
    ['each-without-name', '»layer: { each: s in a b, size: 4 x 4 }', 'Write `layer-(s)`.'],
    ['too-many', 'layer(k): { each: »k from 1 to 201, size: 4 x 4 }', 'Ask for fewer: no card has so many.'],
    ['too-many', 'layer(k): { each: »k from 1 to 999999999, size: 4 x 4 }', 'Ask for fewer: no card has so many.'],
    ['each-without-name', '»layer(j): { each: k from 1 to 1, size: 4 x 4 }', 'Write `layer(j)(k)`.'],
    ['wrong-shape', 'layer(k): { each: »[k], size: 4 x 4 }', /^Write `k from 1 to 3`/],
  ])('%s: %s', (code, yaml, remedy) => {
    const { text, place } = marked(`${head}pieces:\n  ${yaml}\n  base: 4 x 5`, 'fold.md');
    const problem = only(readFold(yamlMap(text)).problems);
    expect(problem).toMatchObject({ code, place });
    if (typeof remedy === 'string') expect(problem.remedy).toBe(remedy);
    else expect(problem.remedy).toMatch(remedy);
  });

  it('is bounded for the whole file', () => {
    const rules = '{ rule(k): { each: k from 1 to 200, left: k*step } }';
    const many = Array.from({ length: 11 }, (_, n) => `  p${n}: { size: 4 x 4, marks: ${rules} }`).join('\n');
    expect(only(problemsOf(`pieces:\n${many}`))).toMatchObject({
      code: 'too-many',
      takes: 'at most 2000 members in one file',
      path: 'pieces.p10.marks.rule(k).each',
    });
  });

  it('a slip inside is told once, where it was written, past what was filled in', () => {
    const { text, place } = marked(
      `${head}pieces:\n  base(k): { each: k from 1 to layers, size: k*side - (k - 1)*step + »setp x side }`,
      'fold.md',
    );
    expect(only(readFold(yamlMap(text)).problems)).toMatchObject({
      code: 'unknown-name',
      place,
      wrote: 'setp',
      remedy: 'Did you mean `step`?',
    });
    const word = marked(
      `${head}pieces:\n  base: { size: side x side, marks: { line-(s): { each: s in left right, start: top-(s), off: »tpo, by: 45 deg, towards: bottom-(s) } } }`,
      'fold.md',
    );
    const found = readFold(yamlMap(word.text)).problems;
    expect(found.map(({ code, place: at }) => [code, at.line, at.column])).toEqual([
      ['unknown-line', word.place.line, word.place.column],
      ['unknown-line', word.place.line, word.place.column],
    ]);
  });

  it.each([
    ['unknown-word', '{ each: i from 1 to 3, panel: page(i) 3, in-turn: [valley, »mountian] }'],
    ['unknown-key', '{ each: i from 1 to 3, panel: page(i) 3, »betwen: fold(i) }'],
    ['name-clash', '{ each: i from 1 to 3, panel: »page 3 }'],
    ['band-without-size', '{ each: i from 1 to 3, panel: »page(i) }'],
    ['not-whole', '{ each: i from 0 to 3, panel: »page(i - 1) 3 }'],
    ['reserved-name', '{ each: i from 1 to 3, panel: page(i) 3, between: »all }'],
  ])('%s in a strip: %s', (code, yaml) => {
    const { text, place } = marked(`${head}pieces: { base: { across: [${yaml}], down: 4 } }`, 'fold.md');
    const problems = readFold(yamlMap(text)).problems;
    expect(problems[0]).toMatchObject({ code, place });
  });
});
