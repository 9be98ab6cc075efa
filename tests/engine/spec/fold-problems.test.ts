import { describe, expect, it } from 'vitest';
import { readFold } from '../../../plugins/engine/index.ts';
import { marked, only } from '../support/marked.ts';
import { yamlMap } from '../support/yaml-tree.ts';

const PLAIN = {
  parameters: '{ width: 4 1/4, height: 5 1/2, pages: { count: 4 } }',
  pieces: '{ base: { across: [front width, valley spine, back width], down: height } }',
};

type Row = readonly [code: string, path: string, yaml: string, remedy: string | RegExp];

/** One problem in a fold, at the ». `section` is the key of the fold that the rows write. */
function refuses(section: string, rows: readonly Row[], rest: Readonly<Record<string, string>> = {}): void {
  it.each(rows)('%s at %s: %s', (code, path, yaml, remedy) => {
    const others = Object.entries({ ...PLAIN, ...rest }).filter(([key]) => key !== section);
    const head = ['name: Trial', 'units: in', ...others.map(([key, value]) => `${key}: ${value}`)].join('\n');
    const { text, place } = marked(`${head}\n${section}: ${yaml}`, 'fold.md');
    const problem = only(readFold(yamlMap(text)).problems);
    expect(problem).toMatchObject({ code, path, place, severity: 'error' });
    if (typeof remedy === 'string') expect(problem.remedy).toBe(remedy);
    else expect(problem.remedy).toMatch(remedy);
  });
}

const strip = (across: string): string => `{ base: { across: ${across}, down: height } }`;

describe('a strip', () => {
  refuses('pieces', [
    [
      'crease-divides-nothing',
      'pieces.base.across[0]',
      strip('[»valley, front width]'),
      'Put a band before it, or take it out.',
    ],
    [
      'crease-divides-nothing',
      'pieces.base.across[1]',
      strip('[front width, »valley]'),
      'Put a band after it, or take it out.',
    ],
    [
      'two-bands',
      'pieces.base.across[1]',
      strip('[front width, »back width]'),
      'Put `valley` or `mountain` between `front` and `back`, or make them one band.',
    ],
    [
      'two-creases',
      'pieces.base.across[2]',
      strip('[front width, valley, »mountain fold-2, back width]'),
      'Put a band between the two creases, or take one of them out.',
    ],
    [
      'unknown-word',
      'pieces.base.across[1]',
      strip('[front width, »valey spine, back width]'),
      'Did you mean `valley spine`?',
    ],
    [
      'unknown-word',
      'pieces.base.across[1]',
      strip('[front width, »Mountain, back width]'),
      'Did you mean `mountain`?',
    ],
    [
      'band-without-name',
      'pieces.base.across[0]',
      strip('[»4 1/4, valley, back width]'),
      'Give the band a name: `front 4 1/4`.',
    ],
    [
      'band-without-size',
      'pieces.base.across[0]',
      strip('[»front, valley, back width]'),
      'Give `front` its size: `front 4 1/4`, or `front rest` for what is left.',
    ],
    [
      'crease-with-size',
      'pieces.base.across[1]',
      strip('[front width, valley »2, back width]'),
      /^A crease has no size of its own/,
    ],
    [
      'both-in-strip',
      'pieces.base.across[1]',
      strip('[front width, »both, back width]'),
      /^Between bands a crease folds one way.*under `creases`/,
    ],
    [
      'wrong-shape',
      'pieces.base.across[0]',
      strip('[»{ each: i from 1 to 1, band: page(i) width }]'),
      /^Write a band as `front 4 1\/4`/,
    ],
    [
      'split-by-comma',
      'pieces.base.across[0]',
      strip('[»front min(width, height), valley, back width]'),
      'Inside [ ] or { } a comma starts a new item. Put the whole value in quotes.',
    ],
    [
      'strip-without-brackets',
      'pieces.base.down',
      '\n  base:\n    across: width\n    down: »front 4, valley, back 4',
      'Put brackets round the strip: `[front 4, valley, back 4]`.',
    ],
    [
      'edge-name',
      'pieces.base.across[0]',
      strip('[»right width, valley, back width]'),
      'This band does not lie on the right edge. Give it another name.',
    ],
    [
      'edge-name',
      'pieces.base.across[0]',
      strip('[»top width, valley, back width]'),
      'This band does not lie on the top edge. Give it another name.',
    ],
    [
      'edge-name',
      'pieces.base.across[1]',
      strip('[front width, »valley left, back width]'),
      'A crease never lies on the left edge. Give it another name.',
    ],
    [
      'rest-of-what',
      'pieces.base.across[0]',
      strip('[»front rest, valley, back width]'),
      'Add `size: A x B` to `base`, or give `front` its size.',
    ],
    [
      'two-rests',
      'pieces.base.across[2]',
      '{ base: { size: 9 x 5, across: [front rest, valley, »back rest] } }',
      'Give one of the two bands its size.',
    ],
    [
      'reserved-name',
      'pieces.base.across[0]',
      strip('[»width 4, valley, back 4]'),
      '`width` is a word of the fold language. Choose another name, as `width-1`.',
    ],
    [
      'name-clash',
      'pieces.base.across[2]',
      strip('[front 4, valley, »front 4]'),
      'Give one of the two another name, as `front-2`.',
    ],
    [
      'name-clash',
      'pieces.base.across[3]',
      strip('[a 1, valley s, b 1, »valley s, c 1]'),
      'Give one of the two another name, as `s-2`.',
    ],
    [
      'name-clash',
      'pieces.base.across[1]',
      strip('[a 1, »valley a, b 1]'),
      'Give one of the two another name, as `a-2`.',
    ],
    [
      'name-clash',
      'pieces.base.across[1]',
      strip('[a 1, »valley base, b 1]'),
      'Give one of the two another name, as `base-2`.',
    ],
    [
      'measure-of-itself',
      'pieces.base.across[2]',
      strip('[front width, valley, back »base.width]'),
      /^`base` cannot be measured while it is being made/,
    ],
    [
      'measure-of-itself',
      'pieces.base.across[2]',
      strip('[front width, valley, back »front.width]'),
      '`front` cannot be measured while its piece is being made. Use its size: `width`.',
    ],
    [
      'number-for-length',
      'pieces.base.across[0]',
      strip('[front »pages, valley, back width]'),
      'This comes out as a plain number. Multiply it by a length.',
    ],
  ]);

  it('may name its first and last band after the edges', () => {
    const yaml =
      'name: T\nunits: in\npieces: { base: { across: [left 1, valley, middle 2, valley, right 1], down: [top 1, valley, bottom 1] } }';
    expect(readFold(yamlMap(yaml)).problems).toEqual([]);
  });

  it('is told everything at once', () => {
    const yaml =
      'name: T\nunits: in\npieces: { base: { across: [valley, a 1, b x, valey, 3, valley, c 1], down: 5 6 } }';
    expect(readFold(yamlMap(yaml)).problems.map(({ code, place }) => `${place.column} ${code}`)).toEqual([
      '43 out-of-place',
      '46 unknown-word',
      '53 band-without-name',
      '28 crease-divides-nothing',
      '78 operator-missing',
    ]);
  });
});

describe('a piece', () => {
  refuses('pieces', [
    ['size-without-spaces', 'pieces.mat', '{ mat: 4 1/4 »x5 }', 'Write `4 1/4 x 5`.'],
    ['size-with-by', 'pieces.mat', '{ mat: 4 1/4 »by 5 }', 'Write `x` for `by`.'],
    ['size-missing-half', 'pieces.mat', '{ mat: »width }', 'Write both measures with ` x ` between them.'],
    ['unfinished', 'pieces.mat', '{ mat: width »x }', 'Finish the expression.'],
    ['side-missing', 'pieces.mat', '{ mat: »{ across: width } }', 'Add `down`: the other side of the piece.'],
    ['side-missing', 'pieces.mat', '{ mat: »{ stock: cover } }', 'Add `size`, or `across` and `down`.'],
    ['unknown-key', 'pieces.mat.stok', '{ mat: { size: 4 x 5, »stok: cover } }', 'Did you mean `stock`?'],
    ['unknown-key', 'pieces.mat.window', '{ mat: { size: 4 x 5, »window: { a: 1 } } }', 'Did you mean `windows`?'],
    ['unknown-word', 'pieces.mat.grain', '{ mat: { size: 4 x 5, grain: »downn } }', 'Did you mean `down`?'],
    ['unknown-piece', 'pieces.mat', '{ base: 4 x 5, mat: »bsae less 1/8 }', 'Did you mean `base`?'],
    [
      'unknown-band',
      'pieces.mat',
      '{ base: { across: [front 4, valley, back 4], down: 5 }, mat: »base.frnt less 1/8 }',
      'Did you mean `front`?',
    ],
    ['measure-too-early', 'pieces.mat', '{ mat: »base less 1/8, base: 4 x 5 }', 'Put `base` before this piece.'],
    ['unknown-name', 'pieces.mat', '{ base: 4 x 5, mat: base less »marign }', /^Nothing here is called `marign`/],
    ['bad-name', 'pieces.my mat', '{ »my mat: 4 x 5 }', 'Write `my-mat`.'],
    ['bad-name', 'pieces.2nd', '{ »2nd: 4 x 5 }', 'Begin the name with a letter.'],
    ['number-missing', 'pieces.layer(k)', '{ »layer(k): 4 x 5 }', /^Only a number may stand in the brackets.*`each: k/],
    ['edge-name', 'pieces.left', '{ »left: 4 x 5 }', 'Call it `left-piece`, say.'],
    ['reserved-name', 'pieces.all', '{ »all: 4 x 5 }', /^`all` is a word of the fold language/],
    ['wrong-shape', 'pieces.mat', '{ mat: »[4, 5] }', /^Write a size as/],
    ['wrong-shape', 'pieces', '»4 x 5', 'Write a group of pieces by name here.'],
    ['name-clash', 'pieces.pages', '{ »pages: 4 x 5 }', 'Give one of the two another name, as `pages-2`.'],
    ['no-paper', 'pieces.mat', '{ mat: »width - 5 x height }', 'Change the sizes that `mat` is made from.'],
  ]);
});

describe('parameters and values', () => {
  const pieces = { pieces: '{ base: 4 x 5 }' };
  refuses(
    'parameters',
    [
      ['circle', 'parameters.a', '{ »a: b, b: c + 1, c: 2*a }', 'Give one of them a size of its own.'],
      ['default-missing', 'parameters.a', '{ a: »{ from: 1 } }', /^Add `default:`/],
      ['unknown-key', 'parameters.a.too', '{ a: { default: 3, from: 1, »too: 5 } }', 'Did you mean `to`?'],
      [
        'unknown-word',
        'parameters.a.default',
        '{ a: { choose: { low: 1, high: 2 }, default: »hihg } }',
        'Did you mean `high`?',
      ],
      ['default-missing', 'parameters.a', '{ a: »{ choose: { low: 1, high: 2 } } }', /^Add `default: low`/],
      [
        'mixed-choice',
        'parameters.a',
        '{ pages: { count: 2 }, »a: { choose: { low: 1, high: pages }, default: low } }',
        'Multiply the plain numbers by a length.',
      ],
      ['reserved-name', 'parameters.in', '{ »in: 4 }', /word of the fold language/],
      [
        'below-range',
        'parameters.a.default',
        '{ a: { default: »1, from: 2 } }',
        'Give `a` in the post: at least 2 in. Or change its default.',
      ],
      ['above-range', 'parameters.a.count', '{ a: { count: »300 } }', /at most 200/],
      ['below-range', 'parameters.a.count', '{ a: { count: »0 } }', /at least 1/],
      ['not-whole', 'parameters.a.count', '{ a: { count: »2 1/2 } }', 'Write a whole number.'],
      ['empty-range', 'parameters.a.default', '{ a: { default: »3, from: 4, to: 2 } }', /has no room at all/],
      ['length-for-number', 'parameters.a.count', '{ a: { count: »4 in } }', 'Write a number without a unit.'],
      ['split-by-comma', 'parameters.a.b)', '{ a: { default: 4, »b): 5 } }', /a comma starts a new item/],
      ['wrong-shape', 'parameters.a', '{ a: »[4] }', /^Write a size as/],
      ['wrong-shape', 'parameters.a', '{ a: »}', /^Write a size or an expression/],
      ['wrong-shape', 'parameters', '»4', /^Write a group of names/],
    ],
    pieces,
  );
  refuses(
    'values',
    [
      ['name-clash', 'values.a', '{ »a: 4 }', 'Give one of the two another name, as `a-2`.'],
      ['circle', 'values.b', '{ »b: c, c: b }', 'Give one of them a size of its own.'],
      ['circle', 'values.b', '{ »b: b + a }', 'Give one of them a size of its own.'],
    ],
    { parameters: '{ a: 1 }', ...pieces },
  );
});

describe('conditions', () => {
  refuses('require', [
    ['unknown-name', 'require[0].that', '[{ that: width >= 2*»dept, else: Wider. }]', /^Nothing here is called `dept`/],
    [
      'number-for-length',
      'require[0].that',
      '[{ that: width > »pages, else: Wider. }]',
      'This comes out as a plain number. Multiply it by a length.',
    ],
    ['double-equals', 'require[0].that', '[{ that: width »== 2, else: Wider. }]', 'Write a single `=`.'],
    [
      'condition-missing',
      'require[0].that',
      '[{ that: »width, else: Wider. }]',
      /^Say what must hold between two measures/,
    ],
    ['key-missing', 'require[0]', '[»{ that: width > 2 }]', 'Add `else:` with what the maker should do then.'],
    ['wrong-shape', 'require[0]', '[»width > 2]', /^Write `\{ that: CONDITION, else: ADVICE \}` here/],
    ['unknown-key', 'require[0].els', '[{ that: width > 2, else: Wider., »els: b }]', 'Did you mean `else`?'],
  ]);
  refuses('same', [
    ['too-few', 'same[0]', '[»[base.front.width]]', 'Name at least two measures.'],
    ['unknown-band', 'same[0][1]', '[[base.front.width, »base.bakc.width]]', 'Did you mean `back`?'],
    ['unknown-piece', 'same[0][1]', '[[base.front.width, »bsae.width]]', 'Did you mean `base`?'],
    [
      'measure-without-side',
      'same[0][0]',
      '[[»base.front, base.back.width]]',
      'Write `base.front.width` or `base.front.height`.',
    ],
    [
      'wrong-shape',
      'same[0]',
      '[»base.front.width, [base.width, width]]',
      'Write a list of two or more measures here.',
    ],
  ]);
});

describe('poses', () => {
  const two = {
    pieces:
      '{ base: { across: [a 4, valley spine, b 4], down: 5 }, lid: { across: [c 1, valley spine, d 1, valley, e 1], down: 4 } }',
  };
  refuses(
    'poses',
    [
      ['unknown-crease', 'poses.half.spin', '{ half: { »spin: shut } }', 'Did you mean `spine`?'],
      ['ambiguous-crease', 'poses.half.spine', '{ half: { »spine: shut } }', 'Write `base.spine` or `lid.spine`.'],
      [
        'crease-twice',
        'poses.half.lid.d|e',
        '{ half: { d|e: shut, »lid.d|e: flat } }',
        '`d|e` and `lid.d|e` are the same crease. Keep one of them.',
      ],
      ['fold-too-far', 'poses.half.all', '{ half: { all: »270 } }', /^Write at most 180/],
      ['not-an-edge', 'poses.half.stands', '{ half: { stands: »base.a } }', 'Name an edge: `base.bottom`, say.'],
      ['unknown-word', 'poses.half.all', '{ half: { all: »flta } }', 'Did you mean `flat`?'],
      ['all-and-others', 'poses.half.others', '{ half: { all: flat, »others: shut } }', /^Keep one of the two/],
      ['wrong-shape', 'poses.half', '{ half: »shut }', /^Write creases and what they do/],
    ],
    two,
  );
});

describe('a recipe', () => {
  refuses('recipe', [
    [
      'split-by-comma',
      'recipe[0].score',
      '[{ cut: 8 x 5, score: »4 1/4, 6 }]',
      'Inside { } a comma starts a new item. Write `score: [4 1/4, 6]`.',
    ],
    ['cut-missing', 'recipe[0]', '[»{ score: 5 }]', 'Add `cut:` with the size of the sheet.'],
    ['unknown-word', 'recipe[0].score', '[{ cut: 8 x 5, score: "2, »3 mountian" }]', 'Did you mean `mountain`?'],
    [
      'direction-first',
      'recipe[0].score',
      '[{ cut: 8 x 5, score: »mountain 4 }]',
      'Write the position first: `4 mountain`.',
    ],
    [
      'and-between-scores',
      'recipe[0].score',
      '[{ cut: 8 x 5, score: »2 1/8 and 6 3/8 }]',
      'Put a comma between the scores: `2 1/8, 6 3/8`.',
    ],
    [
      'comma-in-number',
      'recipe[0].score',
      '[{ cut: 8 x 5, score: "3»,4" }]',
      /^For two scores put a space after the comma/,
    ],
    [
      'nothing-written',
      'recipe[0].score',
      '[{ cut: 8 x 5, score: "3, 4,»" }]',
      'Write a position, or take the comma out.',
    ],
    ['unknown-key', 'recipe[0].pice', '[{ cut: 8 x 5, »pice: base }]', 'Did you mean `piece`?'],
    ['unknown-name', 'recipe[0].along', '[{ cut: 8 x 5, along: »longest }]', /^Nothing here is called `longest`/],
    [
      'two-cuts',
      'recipe[1].cut',
      '[{ piece: a, cut: 8 x 5 }, { piece: a, cut: »8 x 6 }]',
      'Cut `a` alike in both steps, or give the second sheet another name.',
    ],
    ['wrong-shape', 'recipe[0]', '[»cut]', /^Write a list of steps/],
    ['size-spaces', 'recipe[0].cut', '[{ cut: »8x5 }]', 'For a size write `8 x 5`, with spaces round the x.'],
  ]);
});

describe('a file', () => {
  it.each([
    ['unknown-key', 'peices', 'name: T\n»peices: 4\npieces: { a: 4 in x 5 in }', 'Did you mean `pieces`?'],
    ['key-missing', '', '»pieces: { a: 4 in x 5 in }', 'Add `name:` with what makers call this fold.'],
    ['key-missing', '', '»name: T', 'Add `pieces:` with the sheets of the card, or a `recipe:`.'],
    ['unknown-unit', 'units', 'name: T\nunits: »inchs\npieces: { a: 4 in x 5 in }', 'Did you mean `inches`?'],
  ])('%s: %s', (code, path, yaml, remedy) => {
    const { text, place } = marked(yaml, 'fold.md');
    const problem = only(readFold(yamlMap(text)).problems);
    expect(problem).toMatchObject({ code, path, place });
    if (typeof remedy === 'string') expect(problem.remedy).toBe(remedy);
    else expect(problem.remedy).toMatch(remedy);
  });

  it('leaves keys alone that belong to somebody else', () => {
    const tree = yamlMap('name: T\nsummary: Plain.\npieces: { a: 4 in x 5 in }');
    expect(readFold(tree).problems.map(({ code }) => code)).toEqual(['unknown-key']);
    expect(readFold(tree, { alsoAllowed: ['summary'] }).problems).toEqual([]);
  });
});
