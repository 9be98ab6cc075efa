import { describe, expect, it } from 'vitest';
import { orderPlies } from '../../../plugins/engine/layers/index.ts';
import { type Point, poseOf, redrawn, type Sketch, type SketchedHinge } from '../support/sketched-pose.ts';
import { rectangle } from '../support/sketched-shapes.ts';

const SIDE = 40;
const HIGH = 10;

/** An open box from one sheet, with four flaps of a given depth folded in over it; `leave` gives other angles. */
function box(deep: number, turns: Readonly<Record<string, number>> = {}, prefix = '', side = SIDE): Sketch {
  const fold = (a: string, b: string, from: Point, to: Point): SketchedHinge => ({
    between: [prefix + a, prefix + b],
    from,
    to,
    fold: 'valley',
    turn: turns[b] ?? 90,
  });
  const sheet = (name: string, at: Point, size: Point) => rectangle(prefix + name, at, size, `${prefix}box`);
  const far = side + HIGH;
  return {
    panels: [
      sheet('base', [0, 0], [side, side]),
      sheet('left', [-HIGH, 0], [HIGH, side]),
      sheet('right', [side, 0], [HIGH, side]),
      sheet('head', [0, -HIGH], [side, HIGH]),
      sheet('foot', [0, side], [side, HIGH]),
      ...(deep > 0
        ? [
            sheet('left flap', [-HIGH - deep, 0], [deep, side]),
            sheet('right flap', [far, 0], [deep, side]),
            sheet('head flap', [0, -HIGH - deep], [side, deep]),
            sheet('foot flap', [0, far], [side, deep]),
          ]
        : []),
    ],
    hinges: [
      fold('base', 'left', [0, 0], [0, side]),
      fold('base', 'right', [side, 0], [side, side]),
      fold('base', 'head', [0, 0], [side, 0]),
      fold('base', 'foot', [0, side], [side, side]),
      ...(deep > 0
        ? [
            fold('left', 'left flap', [-HIGH, 0], [-HIGH, side]),
            fold('right', 'right flap', [far, 0], [far, side]),
            fold('head', 'head flap', [0, -HIGH], [side, -HIGH]),
            fold('foot', 'foot flap', [0, far], [side, far]),
          ]
        : []),
    ],
  };
}

function inEveryWay(sketch: Sketch): Sketch[] {
  return [sketch, redrawn(sketch, 'turned'), redrawn(sketch, 'mirrored'), redrawn(sketch, 'turned', 25.4)];
}

describe('order of plies of a box', () => {
  it('flaps to the middle overlap at their corners alone, so each corner has two ways; two of the 16 go in a circle', () => {
    for (const sketch of inEveryWay(box(SIDE / 2))) {
      const { orders, count, deepest } = orderPlies(poseOf(sketch));
      expect([count, deepest]).toEqual([16n, 2]);
      expect(orders.filter(({ plies }) => plies === undefined)).toHaveLength(2);
    }
  });

  it('longer flaps meet over one spot and have the orders of four things', () => {
    for (const sketch of inEveryWay(box(30))) {
      const { count, deepest } = orderPlies(poseOf(sketch));
      expect([count, deepest]).toEqual([24n, 4]);
    }
  });

  it('a flap that reaches past a wall lies above the flap of that wall', () => {
    for (const sketch of inEveryWay(box(45, { 'right flap': 0, 'head flap': 0, 'foot flap': 0 }))) {
      expect(orderPlies(poseOf(sketch)).count).toBe(1n);
    }
    const folded = box(45, { 'head flap': 0, 'foot flap': 0 });
    const shorter = folded.panels.map((panel) =>
      panel.name === 'right flap' ? rectangle(panel.name, [SIDE + HIGH, 0], [30, SIDE], 'box') : panel,
    );
    for (const sketch of inEveryWay({ ...folded, panels: shorter })) {
      const { orders, count } = orderPlies(poseOf(sketch));
      expect(count).toBe(1n);
      expect(orders[0]?.pairs).toContainEqual({ over: 'left flap', under: 'right flap' });
    }
  });

  it('two flaps that both reach past the other wall cannot both be shut', () => {
    for (const sketch of inEveryWay(box(45, { 'head flap': 0, 'foot flap': 0 }))) {
      const { obstruction } = orderPlies(poseOf(sketch));
      expect(obstruction).toMatchObject({ is: 'through', piece: 'box' });
    }
  });

  it('of two equal boxes one in the other, the inner base and the inner walls go together', () => {
    const [outer, inner] = [box(0), box(0, {}, 'inner ')];
    const both = (ontoSide: 'face' | 'back'): Sketch => ({
      panels: [...outer.panels, ...inner.panels],
      hinges: [...(outer.hinges ?? []), ...(inner.hinges ?? [])],
      joins: [
        { is: 'glue', part: 'inner base', onto: 'base', partSide: ontoSide === 'face' ? 'back' : 'face', ontoSide },
      ],
    });
    for (const sketch of inEveryWay(both('face'))) {
      const { orders, count } = orderPlies(poseOf(sketch));
      expect(count).toBe(1n);
      expect(orders[0]?.pairs).toContainEqual({ over: 'inner base', under: 'base' });
      // Left and right walls stand square to one axis: on one of them up is in, on the other out.
      const over = (wall: string): boolean =>
        orders[0]?.pairs.some(({ over: upper }) => upper === `inner ${wall}`) ?? false;
      expect(over('left')).not.toBe(over('right'));
      expect(over('head')).not.toBe(over('foot'));
    }
    expect(orderPlies(poseOf(both('back'))).orders[0]?.pairs).toContainEqual({ over: 'base', under: 'inner base' });
  });

  it('without glue either box may be the inner one, all of it', () => {
    const [outer, inner] = [box(0), box(0, {}, 'inner ')];
    const pinned: Sketch = {
      panels: [...outer.panels, ...inner.panels],
      hinges: [...(outer.hinges ?? []), ...(inner.hinges ?? [])],
      joins: [{ is: 'hang', part: 'inner base', onto: 'base' }],
    };
    expect(orderPlies(poseOf(pinned)).count).toBe(2n);
  });
});
