import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { orderPlies } from '../../../plugins/engine/layers/index.ts';
import { everyOrder } from '../../oracles/strip-plies.ts';
import { poseOf, redrawn, type Sketch, type SketchedJoin } from '../support/sketched-pose.ts';
import { corners, rectangle, stripSketch } from '../support/sketched-shapes.ts';

/** Orders of plies of a sketch, the same turned, mirrored and in inches as in millimetres. */
function ordersOf(sketch: Sketch): string[] {
  const [first, ...others] = [
    sketch,
    redrawn(sketch, 'turned'),
    redrawn(sketch, 'mirrored'),
    redrawn(sketch, 'turned', 25.4),
  ];
  const found = ordersIn(first ?? sketch);
  for (const other of others) expect(ordersIn(other)).toEqual(found);
  return found;
}

function ordersIn(sketch: Sketch): string[] {
  const pose = poseOf(sketch);
  expect(pose.gaps).toEqual([]);
  const { orders, count } = orderPlies(pose);
  expect(count).toBe(BigInt(orders.length));
  return orders.map(({ plies }) => plies?.join(' ') ?? 'in a circle').sort();
}

function obstructionOf(sketch: Sketch) {
  return orderPlies(poseOf(sketch)).obstruction;
}

const card = stripSketch([100, 100], 'V');
const mat = rectangle('mat', [0, 0], [80, 20]);

function withMat(join: Partial<SketchedJoin>): Sketch {
  const glue: SketchedJoin = { is: 'glue', part: 'mat', onto: '0', p: [40, 10], q: [50, 15], ...join };
  return { ...card, panels: [...card.panels, mat], joins: [glue] };
}

describe('glue', () => {
  it('on a face that is folded in, the mat lies inside; on a back, outside', () => {
    expect(ordersOf(withMat({}))).toEqual(['0 mat 1']);
    expect(ordersOf(withMat({ ontoSide: 'back' }))).toEqual(['mat 0 1']);
    expect(ordersOf(withMat({ onto: '1', q: [150, 15] }))).toEqual(['0 mat 1']);
    expect(ordersOf(withMat({ onto: '1', q: [150, 15], ontoSide: 'back' }))).toEqual(['0 1 mat']);
  });

  it('with its face down or up the mat lies on the same side, and on foam too', () => {
    expect(ordersOf(withMat({ partSide: 'face' }))).toEqual(['0 mat 1']);
    expect(ordersOf(withMat({ partSide: 'back', ontoSide: 'back' }))).toEqual(['mat 0 1']);
    expect(ordersOf(withMat({ foam: 3 }))).toEqual(['0 mat 1']);
  });

  it('lets nothing lie between: a pleat whose ends are stuck to each other', () => {
    const pleat = stripSketch([100, 100, 100], 'VM');
    const glue: SketchedJoin = { is: 'glue', part: '2', onto: '0', p: [250, 15], q: [50, 15] };
    const obstruction = obstructionOf({ ...pleat, joins: [glue] });
    expect(obstruction).toMatchObject({ is: 'between', panel: '1', joint: { is: 'glue', a: '2', b: '0' } });
    expect(obstructionOf({ ...pleat, joins: [{ ...glue, foam: 2 }] })?.is).toBe('between');
  });

  it('decides where a loose end goes', () => {
    const roll = stripSketch([100, 100, 100], 'VV');
    expect(ordersOf(roll)).toEqual(['0 2 1', '2 0 1']);
    const middle: SketchedJoin = { is: 'glue', part: '1', onto: '0', p: [150, 15], q: [50, 15], partSide: 'face' };
    expect(ordersOf({ ...roll, joins: [middle] })).toEqual(['2 0 1']);
    expect(ordersOf({ ...roll, joins: [{ is: 'glue', part: '2', onto: '0', p: [250, 15], q: [50, 15] }] })).toEqual([
      '0 2 1',
    ]);
  });

  it('of two glued to one panel, either may lie over the edge of the other; the later one does first', () => {
    const banner = rectangle('banner', [0, 0], [60, 10]);
    const onto = (part: string, q: readonly [number, number], ontoSide: 'face' | 'back'): SketchedJoin => ({
      is: 'glue',
      part,
      onto: '0',
      q,
      partSide: ontoSide === 'face' ? 'back' : 'face',
      ontoSide,
    });
    for (const side of ['face', 'back'] as const) {
      const joins = [onto('mat', [10, 5], side), onto('banner', [5, 10], side)];
      const sketch = { ...card, panels: [...card.panels, mat, banner], joins };
      expect(ordersOf(sketch)).toHaveLength(2);
      const [first] = orderPlies(poseOf(sketch)).orders;
      expect(first?.plies?.join(' ')).toBe(side === 'face' ? '0 mat banner 1' : 'banner mat 0 1');
    }
  });

  it('but none lies under the whole of another, where no glue is left', () => {
    const small = rectangle('small', [0, 0], [20, 10]);
    const joins: SketchedJoin[] = [
      { is: 'glue', part: 'small', onto: '0', q: [30, 10] },
      { is: 'glue', part: 'mat', onto: '0', q: [10, 5] },
    ];
    expect(ordersOf({ ...card, panels: [...card.panels, mat, small], joins })).toEqual(['0 small mat 1']);
    const same = { ...small, outline: mat.outline };
    const alike = joins.map((join) => ({ ...join, q: [10, 5] as const }));
    expect(obstructionOf({ ...card, panels: [...card.panels, mat, same], joins: alike })?.is).toBe('between');
  });

  it('agrees with trying all orders of rolls and pleats, two of whose panels are stuck', () => {
    const cases = fc.integer({ min: 3, max: 6 }).chain((panels) =>
      fc.record({
        folds: fc.string({ unit: fc.constantFrom('V', 'M'), minLength: panels - 1, maxLength: panels - 1 }),
        stuck: fc.uniqueArray(fc.integer({ min: 0, max: panels - 1 }), { minLength: 2, maxLength: 2 }),
        side: fc.constantFrom('face' as const, 'back' as const),
      }),
    );
    let folding = 0;
    let all = 0;
    fc.assert(
      fc.property(cases, ({ folds, stuck: [part = 0, onto = 1], side }) => {
        const lengths = [...folds, ''].map(() => 20);
        // Panels of unlike parity look opposite ways, so that like sides of theirs meet.
        const other = side === 'face' ? 'back' : 'face';
        const partSide = (part + onto) % 2 === 0 ? other : side;
        const at = (panel: number) => [20 * panel + 10, 15] as const;
        const glue: SketchedJoin = {
          is: 'glue',
          part: `${part}`,
          onto: `${onto}`,
          p: at(part),
          q: at(onto),
          partSide,
          ontoSide: side,
        };
        const above = (onto % 2 === 0) === (side === 'face') ? 1 : -1;
        const wanted = everyOrder({ lengths, folds }).filter(
          (order) => order.indexOf(part) - order.indexOf(onto) === above,
        );
        const found = ordersIn({ ...stripSketch(lengths, folds), joins: [glue] });
        expect(found).toEqual(wanted.map((order) => order.join(' ')).sort());
        all++;
        if (found.length > 0) folding++;
      }),
      { numRuns: 150 },
    );
    expect(folding).toBeGreaterThan(20);
    expect(folding).toBeLessThan(all - 20);
  });
});

describe('pins', () => {
  const roll = stripSketch([100, 100, 100], 'VV');
  const pin: SketchedJoin = { is: 'pin', part: '1', onto: '0', p: [150, 15], q: [50, 15], partSide: 'face' };
  const holed = (hole: readonly [number, number]): Sketch => ({
    ...roll,
    panels: roll.panels.map((panel) => (panel.name === '2' ? { ...panel, holes: [corners(hole, [10, 10])] } : panel)),
    joins: [pin],
  });

  it('let only that lie between which has a hole where the pin is', () => {
    expect(ordersOf({ ...roll, joins: [pin] })).toEqual(['2 0 1']);
    expect(ordersOf(holed([245, 10]))).toEqual(['0 2 1', '2 0 1']);
    expect(ordersOf(holed([225, 10]))).toEqual(['2 0 1']);
  });

  it('let pass what does not reach them', () => {
    const short = stripSketch([100, 100, 40], 'VV');
    expect(ordersOf({ ...short, joins: [pin] })).toEqual(['0 2 1', '2 0 1']);
  });

  it('hold several on one pin in any order among themselves', () => {
    const discs = ['a', 'b'].map((name) => rectangle(name, [0, 0], [30, 30]));
    const joins = ['a', 'b'].map((part): SketchedJoin => ({ is: 'pin', part, onto: '0', p: [15, 15], q: [50, 15] }));
    expect(ordersOf({ ...card, panels: [...card.panels, ...discs], joins })).toEqual(['0 a b 1', '0 b a 1']);
  });
});

describe('what is woven', () => {
  const slits = [30, 70].map((x, i) => ({
    piece: 'strip',
    name: `slit(${i + 1})`,
    from: [x, 5] as const,
    to: [x, 25] as const,
  }));
  const woven = (long: number, tall: number, shows: 'between' | 'outside' = 'between'): Sketch => ({
    ...card,
    panels: [...card.panels, rectangle('slider', [0, 0], [long, tall])],
    cuts: slits,
    joins: [
      {
        is: 'slide',
        part: 'slider',
        onto: '0',
        p: [long / 2, tall / 2],
        q: [50, 15],
        through: ['slit(1)', 'slit(2)'],
        ontoSide: 'back',
        partSide: 'face',
        shows,
      },
    ],
  });

  it('lies on both sides of the panel that it is slid in', () => {
    for (const sketch of [woven(90, 10), redrawn(woven(90, 10), 'turned'), redrawn(woven(90, 10), 'mirrored')]) {
      const { orders, count } = orderPlies(poseOf(sketch));
      const pairs = orders[0]?.pairs.map(({ over, under }) => `${over} over ${under}`);
      expect(count).toBe(1n);
      expect(pairs?.toSorted()).toEqual([
        '0 over slider',
        '1 over 0',
        '1 over slider',
        '1 over slider',
        '1 over slider',
        'slider over 0',
        'slider over 0',
      ]);
      expect(orders[0]?.plies).toBeUndefined();
    }
  });

  it('shows outside of its slits when it is told to', () => {
    const pairs = orderPlies(poseOf(woven(90, 10, 'outside'))).orders[0]?.pairs;
    expect(pairs?.filter(({ over, under }) => over === '0' && under === 'slider')).toHaveLength(2);
  });

  it('cannot be wider than its slits', () => {
    const obstruction = obstructionOf(woven(90, 26));
    expect(obstruction).toEqual({ is: 'through', panel: 'slider', other: '0', piece: 'strip', crease: 'slit(1)' });
  });

  it('cannot reach through a shut fold', () => {
    expect(obstructionOf(woven(104, 10))).toMatchObject({ is: 'through', panel: 'slider', crease: '0|1' });
  });

  it('two half-slits pushed into each other cross in one of two ways', () => {
    const slotted: Sketch = {
      panels: [rectangle('a', [0, 0], [40, 40]), rectangle('b', [0, 0], [40, 40])],
      cuts: [
        { piece: 'a', name: 'upper', from: [20, 0], to: [20, 20] },
        { piece: 'b', name: 'lower', from: [20, 20], to: [20, 40] },
      ],
      joins: [{ is: 'slot', part: 'a', onto: 'b', p: [20, 20], q: [20, 20], line: 'upper' }],
    };
    const { orders, count } = orderPlies(poseOf(slotted));
    expect(count).toBe(2n);
    for (const { pairs } of orders) expect(pairs.map(({ over }) => over).sort()).toEqual(['a', 'b']);
    const tooShort = { ...slotted, cuts: [{ piece: 'a', name: 'upper', from: [20, 0], to: [20, 10] } as const] };
    expect(obstructionOf(tooShort)?.is).toBe('through');
  });

  it('a sleeve has what it is slipped over inside', () => {
    const sleeve = { ...stripSketch([60, 60], 'V') };
    const sketch: Sketch = {
      panels: [rectangle('tag', [0, 0], [50, 20]), ...sleeve.panels],
      hinges: sleeve.hinges ?? [],
      joins: [{ is: 'slip', part: '0', onto: 'tag', p: [30, 15], q: [25, 10], partSide: 'face', ontoSide: 'back' }],
    };
    expect(ordersOf(sketch)).toEqual(['0 tag 1']);
  });
});
