import { describe, expect, it } from 'vitest';
import { orderPlies } from '../../../plugins/engine/layers/index.ts';
import { type Point, poseOf, redrawn, type Sketch } from '../support/sketched-pose.ts';
import { rectangle, stripSketch } from '../support/sketched-shapes.ts';
import { draws, sketchOf, soundMapOf } from './creased-sheets.ts';

/** A round sheet (48 corners, and one at each crease) with creases from the middle at given degrees; one letter for each. */
function fan(degrees: readonly number[], folds: string): Sketch {
  const at = (angle: number): Point => [
    40 * Math.cos((angle * Math.PI) / 180),
    -40 * Math.sin((angle * Math.PI) / 180),
  ];
  const next = (i: number): number => (i + 1 < degrees.length ? (degrees[i + 1] ?? 0) : (degrees[0] ?? 0) + 360);
  return {
    panels: degrees.map((from, i) => {
      const rim = Array.from({ length: 9 }, (_, k) => at(from + (k * (next(i) - from)) / 8));
      return { name: `${i}`, outline: [[0, 0], ...rim.toReversed()] };
    }),
    hinges: degrees.map((angle, i) => ({
      between: [`${(i + degrees.length - 1) % degrees.length}`, `${i}`],
      from: [0, 0],
      to: at(angle),
      fold: folds[i] === 'V' ? 'valley' : folds[i] === 'M' ? 'mountain' : 'both',
      crease: `crease ${i}`,
    })),
  };
}

function inEveryWay(sketch: Sketch): Sketch[] {
  return [sketch, redrawn(sketch, 'turned'), redrawn(sketch, 'mirrored'), redrawn(sketch, 'turned', 25.4)];
}

function obstructionsOf(sketch: Sketch) {
  return inEveryWay(sketch).map((one) => orderPlies(poseOf(one)).obstruction);
}

// Sectors 60, 80, 120, 100: every other one adds up to half a turn.
const SOUND = [0, 60, 140, 260];

describe('a point where creases meet', () => {
  it('folds when its angles and its directions allow', () => {
    for (const sketch of inEveryWay(fan(SOUND, 'VMMM'))) expect(orderPlies(poseOf(sketch)).count).toBe(1n);
    expect(obstructionsOf(fan(SOUND, 'MVVV'))).toEqual([undefined, undefined, undefined, undefined]);
  });

  it('says when its angles do not add up, whether or not they are even in number', () => {
    for (const obstruction of obstructionsOf(fan([0, 60, 145, 260], 'VMMM'))) {
      expect(obstruction).toMatchObject({ is: 'vertex', why: 'angles', piece: 'sheet' });
    }
    expect(obstructionsOf(fan([0, 120, 240], 'VMM'))[0]).toMatchObject({ is: 'vertex', why: 'angles' });
  });

  it('says when its directions do not differ by two', () => {
    for (const obstruction of obstructionsOf(fan(SOUND, 'VVMM'))) {
      expect(obstruction).toMatchObject({
        is: 'vertex',
        why: 'directions',
        creases: ['crease 0', 'crease 1', 'crease 2', 'crease 3'].sort(byMention(obstruction)),
      });
    }
    expect(obstructionsOf(fan(SOUND, 'VVVV'))[0]).toMatchObject({ why: 'directions' });
  });

  it('says when the smallest sector folds one way on both sides', () => {
    for (const obstruction of obstructionsOf(fan(SOUND, 'MMVM'))) {
      if (obstruction?.is !== 'vertex') throw new Error('no vertex');
      expect(obstruction.why).toBe('smallest-sector');
      expect(obstruction.creases.toSorted()).toEqual(['crease 0', 'crease 1']);
    }
  });

  it('takes creases worked both ways as they fit', () => {
    expect(orderPlies(poseOf(fan(SOUND, 'BBBB'))).count).toBe(4n);
    expect(orderPlies(poseOf(fan(SOUND, 'VVBB'))).obstruction).toMatchObject({ why: 'smallest-sector' });
  });

  it('is no such point when a cut ends in it, or paper is cut away there', () => {
    const cut = fan([0, 60, 145, 260], 'VMMM');
    const [first, ...rest] = cut.hinges ?? [];
    expect(first).toBeDefined();
    expect(orderPlies(poseOf({ ...cut, hinges: rest })).obstruction?.is).not.toBe('vertex');
    const { panels } = fan(SOUND, 'VVMM');
    const slit = { piece: 'sheet', name: 'slit', from: [0, 0] as const, to: [-30, 25] as const };
    expect(orderPlies(poseOf({ ...fan(SOUND, 'VVMM'), panels, cuts: [slit] })).obstruction?.is).not.toBe('vertex');
  });
});

function byMention(obstruction: { is: string; creases?: readonly string[] } | undefined) {
  return (a: string, b: string): number =>
    (obstruction?.creases?.indexOf(a) ?? 0) - (obstruction?.creases?.indexOf(b) ?? 0);
}

describe('paper in the way', () => {
  it('a flap that has to go through the fold of another: the flap, what it meets, and where', () => {
    // The right flap is folded in over the left one, which is scored to lie above it and reaches past its fold.
    const cross: Sketch = {
      panels: [
        rectangle('base', [0, 0], [60, 60], 'card'),
        rectangle('left', [-70, 0], [70, 60], 'card'),
        rectangle('right', [60, 10], [70, 40], 'card'),
      ],
      hinges: [
        { between: ['base', 'left'], from: [0, 0], to: [0, 60], fold: 'valley' },
        { between: ['base', 'right'], from: [60, 10], to: [60, 50], fold: 'valley' },
      ],
    };
    for (const obstruction of obstructionsOf(cross)) {
      expect(obstruction).toMatchObject({ is: 'through', piece: 'card' });
      if (obstruction?.is !== 'through') throw new Error('nothing in the way');
      expect([obstruction.panel, obstruction.other].toSorted()).toEqual(['left', 'right']);
      expect(['base|left', 'base|right']).toContain(obstruction.crease);
    }
    const shorter = cross.panels.map((panel) =>
      panel.name === 'right' ? rectangle('right', [60, 10], [60, 40], 'card') : panel,
    );
    expect(orderPlies(poseOf({ ...cross, panels: shorter })).count).toBe(1n);
  });

  it('creases that each could fold, but not together', () => {
    const draw = draws(101);
    for (let i = 0; i < 5; i++) draw();
    const { obstruction, count } = orderPlies(poseOf(sketchOf(soundMapOf(8, 5, draw))));
    expect(count).toBe(0n);
    expect(['through', 'circle']).toContain(obstruction?.is);
  });

  it('is known apart from a joint that does not meet: that holds nothing', () => {
    const glued = stripSketch([100, 100], 'M');
    const off = { is: 'glue', part: '1', onto: '0', p: [150, 15], q: [60, 15], partSide: 'face' } as const;
    const pose = poseOf({ ...glued, joins: [off] });
    expect(pose.gaps.map(({ joint }) => joint.is)).toEqual(['glue']);
    expect(orderPlies(pose).orders[0]?.plies).toEqual(['1', '0']);
  });
});

describe('one panel', () => {
  it('has one order', () => {
    expect(orderPlies(poseOf({ panels: [rectangle('a', [0, 0], [10, 10])] }))).toMatchObject({
      orders: [{ plies: ['a'], pairs: [] }],
      count: 1n,
      deepest: 1,
      obstruction: undefined,
    });
  });
});
