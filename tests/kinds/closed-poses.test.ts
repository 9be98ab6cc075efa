import { describe, expect, it } from 'vitest';
import { type Card, type ClosedPose, closedPoses, isKnown, type Point, SYSTEMS } from '../../plugins/engine/index.ts';
import { cardOf, foldOf } from '../engine/support/folds.ts';
import { cardWith, kindOf, tryCard } from './support/catalogue.ts';
import { closedSizeOf } from './support/closed.ts';
import { judge, loud } from './support/judged.ts';

/*
 * Closed poses against values that were worked out from first principles and confirmed by an independent program; the three
 * conditions of the box pop-up stand in published notes too (tests/oracles/sources.md).
 */

function closed(card: Card): ClosedPose {
  const pose = judge(card).folded.closed[0]?.pose;
  if (pose === undefined) throw new Error('no pose');
  return pose;
}

/** A pose of a card by its name; undefined where it leaves angles to be solved. */
function inPose(card: Card, name: string): ClosedPose | undefined {
  const { assembly } = judge(card).folded;
  const pose = card.poses.find((one) => one.name === name);
  const [found] = pose === undefined ? [] : closedPoses(assembly, pose);
  return found !== undefined && isKnown(found) ? found : undefined;
}

/** Where a pose puts a corner of a panel that stands at these millimetres on its piece. */
function placed(pose: ClosedPose, name: string, [x, y]: readonly [number, number]): Point {
  const corners = pose.assembly.panels.get(name)?.outline ?? [];
  const index = corners.findIndex((corner) => Math.hypot(corner.x.valueOf() - x, corner.y.valueOf() - y) < 1e-6);
  const found = pose.panels.find(({ panel }) => panel === name)?.outline[index];
  if (found === undefined) throw new Error(`${name} has no corner at ${x}, ${y}`);
  return found;
}

function fails(card: Card): string[] {
  return loud(judge(card).findings).map(({ check, outcome }) => `${check} ${outcome}`);
}

/** A strip with feet `a` and `b` from the gutter and walls `l1` and `l2`, in mm, in a card of pages 150 mm wide. */
function strip(a: number, l1: number, b: number, l2: number): Card {
  return cardOf(
    foldOf(`
name: Strip
units: mm
pieces:
  base:
    across: [left 150, valley spine, right 150]
    down: 150
    marks: { left-line: { left: ${150 - a} }, right-line: { left: ${150 + b} } }
  pop: { across: [left-tab 12, valley left-score, left-wall ${l1}, mountain ridge, right-wall ${l2}, valley right-score, right-tab 12], down: 50 }
joins:
  - { glue: pop.left-tab, onto: base.left, lay: left-score along left-line, after: 50 }
  - { glue: pop.right-tab, onto: base.right, lay: right-score along right-line, after: 50 }
poses: { open: { all: flat }, closed: {} }
`),
    'metric',
  );
}

describe('a parallel box pop-up', () => {
  it('a 60, b 35, walls 35 and 60: its ridge is 95 mm from the gutter when it is shut', () => {
    const card = cardWith(kindOf('box-pop-up').fold, 'metric', {
      ...{ width: '105 mm', height: '148 mm', 'left-foot': '60 mm', 'right-foot': '35 mm', strip: '50 mm' },
      tab: '12 mm',
    });
    expect(card.pieces[1]?.columns.map(({ size }) => size.mm.valueOf())).toEqual([12, 35, 60, 12]);
    const pose = closed(card);
    // Ridge on the strip: a tab and the first wall from its left edge.
    const ridge = placed(pose, 'pop.left-wall', [12 + 35, 0]);
    expect(Math.abs(ridge.x.valueOf() - 105)).toBe(95);
    expect(fails(card)).toEqual([]);
  });

  it.each([
    // Shuts when a + l1 = b + l2; lies flat when it is open when a + b = l1 + l2 as well.
    [60, 35, 35, 60, []],
    [40, 30, 30, 40, []],
    [60, 35, 35, 58, ['joins-agree misses']],
    [60, 36, 35, 60, ['joins-agree misses']],
    // These shut, but the strip is too short to lie flat when the card is open, or too long and arches.
    [60, 50, 60, 50, ['joins-agree misses']],
    [50, 60, 50, 60, ['joins-agree misses']],
  ] as const)('feet %d and %3$d mm, walls %2$d and %4$d mm', (a, l1, b, l2, expected) => {
    expect(fails(strip(a, l1, b, l2))).toEqual(expected);
  });

  it('a tent of 60 and 50 shuts, and cannot be opened flat: it locks half way', () => {
    const tent = strip(60, 50, 60, 50);
    const [pose] = judge(tent).folded.closed;
    expect(pose?.pose?.gaps).toEqual([]);
    expect(inPose(tent, 'open')?.gaps.map(({ mm }) => mm)).toEqual([20]);
  });

  it('stays inside as long as a + l1 is at most the page', () => {
    const inside = { width: '95 mm', height: '148 mm', 'left-foot': '60 mm', 'right-foot': '35 mm' };
    const { fold } = kindOf('box-pop-up');
    expect(fails(cardWith(fold, 'metric', inside))).toEqual([]);
    const { problems } = tryCard(fold, 'metric', { ...inside, width: '94 mm' });
    expect(problems.map(({ code, remedy }) => [code, remedy])).toEqual([
      ['above-range', 'Make `right-foot` at most 34 mm.'],
    ]);
    // Written without the kind, it is seen to stick out by as much.
    const out = strip(90, 70, 70, 90);
    const found = judge(out).findings.find(({ outcome }) => outcome === 'sticks-out');
    expect(found?.figure).toMatchObject({ mm: { n: 10n, d: 1n } });
  });
});

describe('a V-fold', () => {
  it.each([
    [50, 70],
    [30, 45],
    [20, 85],
    [65, 85],
    [45, 50],
  ])('shut, its ridge lies at alpha + beta from the gutter: %d and %d degrees', (alpha, beta) => {
    const { fold } = kindOf('v-fold');
    const degrees = { alpha: `${alpha} deg`, beta: `${beta} deg` };
    const settings = { width: '100 mm', height: '140 mm', apex: '50 mm', foot: '40 mm', rise: '45 mm', ...degrees };
    const pose = closed(cardWith(fold, 'metric', settings));
    const ridge = placed(pose, 'pop.top-left', [40, 0]);
    // The gutter runs down the page from the point at 100, 50; the ridge is 45 mm long.
    const [x, y] = [Math.abs(ridge.x.valueOf() - 100), ridge.y.valueOf() - 50];
    expect(Math.hypot(x, y)).toBeCloseTo(45, 6);
    expect((Math.atan2(x, y) * 180) / Math.PI).toBeCloseTo(alpha + beta, 6);
  });

  it.each([
    // The corner of the half that lies furthest out: rise sin(alpha + beta) - foot cos(alpha + beta), from the gutter.
    [100, []],
    [60, []],
    [58, ['closed-size sticks-out']],
  ] as const)('stays inside as long as it does not reach past the page: %d mm', (width, expected) => {
    const { fold } = kindOf('v-fold');
    const angle = (120 * Math.PI) / 180;
    const reach = 45 * Math.sin(angle) - 40 * Math.cos(angle);
    expect(reach).toBeGreaterThan(58);
    expect(reach).toBeLessThan(60);
    const card = cardOf(
      foldOf(`
name: V
units: mm
pieces:
  base:
    across: [left ${width}, valley spine, right ${width}]
    down: 140
    marks:
      line-(s): { each: s in left right, start: spine at 50, off: spine, by: 50 deg, towards: bottom-(s), long: 40 }
  pop:
    size: 80 x 45
    creases:
      ridge: middle down
      foot-(s): { each: s in left right, start: bottom, off: ridge, by: 70 deg, towards: top-(s), fold: mountain }
joins:
  - { each: s in left right, glue: face of pop.bottom-(s), onto: base.(s), lay: foot-(s) along line-(s) }
poses: { closed: {} }
`),
      'metric',
    );
    expect(fails(card)).toEqual(expected);
    const own = { width: `${Math.max(width, 77)} mm`, height: '140 mm', apex: '50 mm', foot: '40 mm', rise: '45 mm' };
    expect(fails(cardWith(fold, 'metric', own))).toEqual([]);
  });
});

describe('gates', () => {
  it('of 110 mm on a back of 200 mm close one after the other: two orders, three deep', () => {
    const { folded } = judge(
      cardWith(kindOf('gate').fold, 'metric', { width: '200 mm', height: '150 mm', overlap: '20 mm' }),
    );
    const [body] = folded.closed;
    expect(folded.card.pieces[0]?.columns.map(({ size }) => size.mm.valueOf())).toEqual([110, 200, 110]);
    expect([body?.plies?.count, body?.plies?.deepest]).toEqual([2n, 3]);
    const firsts = body?.plies?.orders.map(({ plies }) => plies?.at(-1)).toSorted();
    expect(firsts).toEqual(['base.left-gate', 'base.right-gate']);
  });

  it('that meet lie beside each other: two deep', () => {
    const { folded } = judge(cardWith(kindOf('gate').fold, 'metric', { width: '200 mm', height: '150 mm' }));
    expect(folded.closed[0]?.plies?.deepest).toBe(2);
  });
});

describe('an explosion insert', () => {
  it.each(SYSTEMS)('collapses to a triangle as long as its square and half as high: %s', (system) => {
    const mm = system === 'inch' ? 25.4 : 1;
    const [side, width, height] = system === 'inch' ? [5.5, 3, 6] : [140, 75, 150];
    const unit = system === 'inch' ? 'in' : 'mm';
    const card = cardWith(kindOf('explosion-insert').fold, system, {
      ...{ width: `${width} ${unit}`, height: `${height} ${unit}` },
      side: `${side} ${unit}`,
    });
    const pose = closed(card);
    const corners = pose.panels.filter(({ piece }) => piece === 'insert').flatMap(({ outline }) => outline);
    const span = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);
    expect(span(corners.map(({ x }) => x.valueOf()))).toBeCloseTo((side / 2) * mm, 9);
    expect(span(corners.map(({ y }) => y.valueOf()))).toBeCloseTo(side * mm, 9);
  });
});

describe('a swing', () => {
  it('closes to 4 1/8 in with a die of 2 3/4 in, and takes no larger one', () => {
    const { fold } = kindOf('swing');
    const judged = judge(cardWith(fold, 'inch', { die: '2 3/4' }));
    expect(closedSizeOf(judged, 'inch')).toBe('4 1/8 x 5 1/2 in');
    expect(loud(judged.findings)).toEqual([]);
    expect(tryCard(fold, 'inch', { die: '2 13/16' }).problems.map(({ remedy }) => remedy)).toEqual([
      'Make `die` at most 2 3/4 in.',
    ]);
  });
});

describe('a bridge', () => {
  it('stands square: a frame of 6, 3, 6 and 3 in meets with every crease at a right angle', () => {
    const pose = inPose(cardWith(kindOf('bridge').fold, 'inch', { width: '6', depth: '3' }), 'display');
    expect(pose?.gaps).toEqual([]);
    expect(pose?.deep.div('127/5').valueOf()).toBe(3);
  });
});

describe('plies at the thickest, as the texts of the kinds tell them', () => {
  // Counted by hand: two pages and a part between them, and so on.
  it.each([
    ['accordion', 4],
    ['box-pop-up', 6],
    ['bridge', 4],
    ['easel', 4],
    ['explosion-insert', 6],
    ['graduated-pleat', 5],
    ['inner-card', 4],
    ['tri-shutter', 3],
    ['twisting-easel', 6],
    ['v-fold', 6],
    ['z-fold', 3],
  ])('%s: %d', (id, plies) => {
    for (const system of SYSTEMS) {
      const { folded } = judge(cardWith(kindOf(id).fold, system));
      expect(folded.closed[0]?.plies?.deepest).toBe(plies);
    }
  });
});
