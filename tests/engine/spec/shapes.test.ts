import { describe, expect, it } from 'vitest';
import { corners, pieceOf, shown } from '../support/one-piece.ts';

const UNITS = ['in', 'mm'] as const;

describe('the edge of a piece', () => {
  it.each(UNITS)('a sheet goes clockwise from its top left corner: %s', (unit) => {
    expect(corners(pieceOf('wide x tall', unit).outline, unit)).toEqual(['(0, 0)', '(4, 0)', '(4, 6)', '(0, 6)']);
    expect(pieceOf('{ across: [a 1, valley, b 3], down: 6 }', unit).outline).toEqual(
      pieceOf('wide x tall', unit).outline,
    );
  });

  it.each(UNITS)('a circle and an ellipse are four quarters: %s', (unit) => {
    const circle = pieceOf('{ circle: 3 }', unit);
    expect(corners(circle.outline, unit)).toEqual([
      '(1.5, 0) round (1.5, 1.5)',
      '(3, 1.5) round (1.5, 1.5)',
      '(1.5, 3) round (1.5, 1.5)',
      '(0, 1.5) round (1.5, 1.5)',
    ]);
    expect(circle.width).toEqual(circle.height);
    const [first] = pieceOf('{ ellipse: wide x tall }', unit).outline;
    expect(first).toMatchObject({ is: 'arc', clockwise: true });
    expect(first?.is === 'arc' && [first.rx.div(first.ry).toFraction(), first.to.x.toFraction()]).toEqual([
      '2/3',
      unit === 'in' ? '508/5' : '4',
    ]);
  });

  it('a piece that is no strip is one column and one row, both without names', () => {
    for (const yaml of ['{ circle: 3 }', '{ rounded: 3 x 4 }', '{ outline: [[0, 0], [4, 0], [0, 3]] }', '3 x 4']) {
      const { columns, rows, width, height } = pieceOf(yaml);
      expect([columns, rows].map((bands) => bands.map(({ name }) => name))).toEqual([[undefined], [undefined]]);
      expect([columns[0]?.size, rows[0]?.size]).toEqual([width, height]);
    }
  });

  it('rounded corners are as round as said, a quarter of an inch unless said, and never rounder than half a side', () => {
    const radius = (yaml: string, system: 'inch' | 'metric' = 'inch'): string | undefined => {
      const arc = pieceOf(yaml, 'in', system).outline.find((edge) => edge.is === 'arc');
      return arc?.is === 'arc' ? arc.rx.div(system === 'inch' ? '127/5' : 1).toFraction(true) : undefined;
    };
    expect(radius('{ rounded: wide x tall, radius: 3/8 }')).toBe('3/8');
    expect(radius('{ rounded: wide x tall }')).toBe('1/4');
    // 6.35 mm on marks of half a millimetre.
    expect(radius('{ rounded: wide x tall }', 'metric')).toBe('6 1/2');
    expect(radius('{ rounded: 1/4 x tall }')).toBe('1/8');
    expect(corners(pieceOf('{ rounded: 2 x 4, radius: 1 }').outline)).toEqual([
      '(1, 0) round (1, 1)',
      '(2, 1)',
      '(2, 3) round (1, 3)',
      '(1, 4) round (1, 3)',
      '(0, 3)',
      '(0, 1) round (1, 1)',
    ]);
  });

  it.each(UNITS)('an outline runs clockwise however it was written: %s', (unit) => {
    const tag = '[0, 1], [1, 0], [2, 1], [2, tall], [0, tall]';
    const other = '[0, tall], [2, tall], [2, 1], [1, 0], [0, 1]';
    const [one, two] = [tag, other].map((points) => pieceOf(`{ outline: [${points}] }`, unit));
    expect(one && corners(one.outline, unit).toSorted()).toEqual(['(0, 1)', '(0, 6)', '(1, 0)', '(2, 1)', '(2, 6)']);
    expect(two && corners(two.outline, unit).toSorted()).toEqual(one && corners(one.outline, unit).toSorted());
    // The shoelace formula, positive for clockwise on a drawing whose y goes down.
    for (const piece of [one, two]) {
      const at = piece?.outline.map(({ from }) => shown(from, unit)) ?? [];
      const sum = at.reduce(
        (total, [x, y], i) => total + x * (at[(i + 1) % at.length]?.[1] ?? 0) - y * (at[(i + 1) % at.length]?.[0] ?? 0),
        0,
      );
      expect(sum / 2).toBeCloseTo(2 * 5 + 1);
    }
  });

  it.each(UNITS)('an arc passes through its point: a tab with a half circle on top: %s', (unit) => {
    const piece = pieceOf('{ outline: [[0, 1], { arc: [2, 1], through: [1, 0] }, [2, 3], [0, 3]] }', unit);
    expect(corners(piece.outline, unit)).toEqual(['(0, 1) round (1, 1)', '(2, 1)', '(2, 3)', '(0, 3)']);
    expect([piece.width, piece.height].map(({ mm }) => mm.div(unit === 'in' ? '127/5' : 1).toFraction())).toEqual([
      '2',
      '3',
    ]);
  });

  it('an arc hollows a piece where its point lies inside', () => {
    const [, , arc] = pieceOf('{ outline: [[0, 0], [4, 0], [4, 3], { arc: [0, 3], through: [2, 2] }] }').outline;
    expect(arc).toMatchObject({ is: 'arc', clockwise: false });
    // By Pythagoras: r = (2^2 + 1^2) / (2 x 1).
    expect(arc?.is === 'arc' && arc.rx.div('127/5').toFraction()).toBe('5/2');
  });

  it('a bulging edge widens the piece by as much as it bulges', () => {
    // A chord of 4 that rises by 1 on the right.
    const piece = pieceOf('{ outline: [[0, 0], [3, 0], { arc: [3, 4], through: [4, 2] }, [0, 4]] }');
    expect(piece.width.inches.toFraction()).toBe('4');
  });

  it('an arc whose point is not its top is still within the piece', () => {
    // The circle round (2, 0) with radius sqrt 5 reaches 2 + sqrt 5 to the right.
    const piece = pieceOf('{ outline: [[0, 0], [3, 0], { arc: [3, 4], through: [4, 1] }, [0, 4]] }');
    const arc = piece.outline.find((edge) => edge.is === 'arc');
    if (arc?.is !== 'arc') throw new Error('no arc');
    const [[x, y], r] = [shown(arc.centre), arc.rx.valueOf() / 25.4];
    expect(Math.hypot(x - 3, y - 0)).toBeCloseTo(r, 9);
    expect(Math.hypot(x - 4, y - 1)).toBeCloseTo(r, 9);
    expect(Math.hypot(x - 3, y - 4)).toBeCloseTo(r, 9);
    expect(piece.width.toMm() / 25.4).toBeCloseTo(x + r, 9);
  });
});

describe('shapes upon a piece', () => {
  const windows = (yaml: string, sheet = 'size: wide x tall', unit: 'in' | 'mm' = 'in') =>
    pieceOf(`{ ${sheet}, windows: ${yaml} }`, unit).windows.map(
      ({ name, outline }) => `${name} ${corners(outline, unit).join(' ')}`,
    );

  it.each(UNITS)('lie at the centre unless said: %s', (unit) => {
    expect(windows('{ a: 2 x 3 }', undefined, unit)).toEqual(['a (1, 1.5) (3, 1.5) (3, 4.5) (1, 4.5)']);
    expect(windows('{ a: { size: 2 x 3, at: [1, 2] } }', undefined, unit)).toEqual([
      'a (0, 0.5) (2, 0.5) (2, 3.5) (0, 3.5)',
    ]);
    expect(windows('{ a: { circle: 1, at: top-left } }', undefined, unit)[0]).toMatch(/^a \(0, -0\.5\) round \(0, 0\)/);
    expect(windows('{ a: { size: sheet less 1/2 in } }', undefined, 'in')).toEqual([
      'a (0.5, 0.5) (3.5, 0.5) (3.5, 5.5) (0.5, 5.5)',
    ]);
  });

  it('lie in a band when they name one', () => {
    const sheet = 'across: [front 4, valley, back 4], down: 6';
    expect(windows('{ a: { inset: 1, in: back } }', sheet)).toEqual(['a (5, 1) (7, 1) (7, 5) (5, 5)']);
    expect(windows('{ a: { size: 1 x 1, in: front } }', sheet)).toEqual([
      'a (1.5, 2.5) (2.5, 2.5) (2.5, 3.5) (1.5, 3.5)',
    ]);
  });

  it('an inset has the shape of its piece', () => {
    expect(windows('{ a: { inset: 1/2 } }')).toEqual(['a (0.5, 0.5) (3.5, 0.5) (3.5, 5.5) (0.5, 5.5)']);
    expect(windows('{ a: { inset: 1/2 } }', 'circle: 3')[0]).toMatch(
      /^a \(1\.5, 0\.5\) round \(1\.5, 1\.5\) \(2\.5, 1\.5\)/,
    );
    expect(windows('{ a: { inset: 1/2 } }', 'rounded: 4 x 6, radius: 3/4')[0]).toMatch(
      /^a \(0\.75, 0\.5\) \(3\.25, 0\.5\) round \(3\.25, 0\.75\)/,
    );
    // The corner is less round than the border is wide: the window has square corners.
    expect(windows('{ a: { inset: 1 } }', 'rounded: 4 x 6, radius: 3/4')).toEqual(['a (1, 1) (3, 1) (3, 5) (1, 5)']);
  });

  it('an outline lies where its points are, words for places among them', () => {
    expect(windows('{ a: { outline: [centre, top-right, [3, 4]] } }')).toEqual(['a (2, 3) (4, 0) (3, 4)']);
  });

  it('a shape that swings says with which band', () => {
    const { shapes } = pieceOf(
      '{ across: [flap 2 3/4, mountain, strip 1 3/8, valley, back 4 1/8], down: 5 1/2, shapes: { disc: { circle: 2 1/2, at: [2 3/4, 2 3/4], stays-with: strip } } }',
    );
    expect(shapes.map(({ name, staysWith }) => [name, staysWith])).toEqual([['disc', 'strip']]);
    expect(corners(shapes[0]?.outline ?? [])[0]).toBe('(2.75, 1.5) round (2.75, 2.75)');
  });
});

describe('what is cut away', () => {
  const box = 'across: [left 1, valley, middle 2, valley, right 1], down: [head 1, valley, middle 4, valley, foot 2]';
  const away = (yaml: string, sheet = box) =>
    pieceOf(`{ ${sheet}, ${yaml} }`).away.map(({ name, outline }) => `${name} ${corners(outline).join(' ')}`);

  it('are the four corner cells', () => {
    expect(away('corners: away')).toEqual([
      'left.head (0, 0) (1, 0) (1, 1) (0, 1)',
      'right.head (3, 0) (4, 0) (4, 1) (3, 1)',
      'left.foot (0, 5) (1, 5) (1, 7) (0, 7)',
      'right.foot (3, 5) (4, 5) (4, 7) (3, 7)',
    ]);
  });

  it('are cells, bands and shapes by name or number', () => {
    expect(away('away: [left.head, foot, { size: 1 x 1, at: top-right }, 1 x 1]')).toEqual([
      'left.head (0, 0) (1, 0) (1, 1) (0, 1)',
      'foot (0, 5) (4, 5) (4, 7) (0, 7)',
      'away(3) (3.5, -0.5) (4.5, -0.5) (4.5, 0.5) (3.5, 0.5)',
      'away(4) (1.5, 3) (2.5, 3) (2.5, 4) (1.5, 4)',
    ]);
    expect(away('away: { notch: { circle: 1, at: left } }')[0]).toMatch(/^notch \(0, 3\) round/);
  });
});

describe('tabs at the corners', () => {
  const made = pieceOf(
    '{ across: [left 1, valley, middle 2, valley, right 1], down: [head 1, valley, middle 4, valley, foot 2], corners: tabs }',
  );

  it('are cut from the walls at head and foot, along the crease that runs down', () => {
    expect(made.away).toEqual([]);
    const cuts = made.lines.map(
      ({ name, does, from, to }) => `${does} ${name} ${shown(from).join(',')} ${shown(to).join(',')}`,
    );
    expect(cuts).toEqual([
      'cut left.head 1,0 1,1',
      'cut right.head 3,0 3,1',
      'cut left.foot 1,5 1,7',
      'cut right.foot 3,5 3,7',
    ]);
  });
});

it('names panels by a point, and says how thick its board is', () => {
  const { spots, thick } = pieceOf('{ size: wide x tall, panels: { peak: [1, 1/2], base: bottom }, thick: 1/8 }');
  expect(spots.map(({ name, at }) => [name, shown(at)])).toEqual([
    ['peak', [1, 0.5]],
    ['base', [2, 6]],
  ]);
  expect(thick?.inches.toFraction()).toBe('1/8');
});
