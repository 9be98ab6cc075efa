import { describe, expect, it } from 'vitest';
import type { Card, GlueJoin, HangJoin, RestJoin, SlideJoin, System } from '../../../plugins/engine/index.ts';
import { cardOf, foldOf } from '../support/folds.ts';
import { type Laid, landsAt } from '../support/laid.ts';
import {
  BRIDGE,
  EASEL,
  EXPLODING_BOX,
  EXPLOSION,
  SHAKER,
  SLIDER,
  TWISTING_EASEL,
  V_FOLD,
} from '../support/ten-folds.ts';

const INCH = 25.4;

function joinsOf(yaml: string, system: System = 'inch', given?: string): Card['joins'] {
  return cardOf(foldOf(yaml), system, given === undefined ? {} : { given }).joins;
}

/** Where points of the part lie on the receiver, in inches, to a billionth. */
function land(join: Card['joins'][number] | undefined, ...points: [number, number][]): number[][] {
  if (join === undefined || !('turn' in join)) throw new Error('no laid join');
  return points.map((at) => landsAt(join as Laid, at, INCH).map((value) => Math.round(value * 1e9) / 1e9 || 0));
}

describe('a glued line', () => {
  it('lies on its line, start on start and further on by `after`: the bridge', () => {
    const [tab, span] = joinsOf(BRIDGE);
    expect(land(tab, [3, 0], [3, 1.5], [0, 0])).toEqual([
      [12, 0, 0],
      [12, 1.5, 0],
      [9, 0, 0],
    ]);
    expect(land(span, [12, 0], [6, 0])).toEqual([
      [3, 0, 0],
      [-3, 0, 0],
    ]);
    const [low] = joinsOf(BRIDGE, 'inch', 'level: foot');
    expect(land(low, [3, 0])).toEqual([[12, 3.5, 0]]);
    expect(tab).toMatchObject({
      is: 'glue',
      partSide: 'back',
      ontoSide: 'face',
      implied: false,
      text: 'bridge.tab onto base.back',
      laid: { line: 'corner', along: 'right' },
      part: { piece: 'bridge', part: { is: 'cell', column: 'tab' } },
    });
  });

  it('does so mirrored, and with rows for columns', () => {
    const mirrored = BRIDGE.replace(
      '[wing depth, valley inner, side depth, valley outer, back width]',
      '[back width, valley outer, side depth, valley inner, wing depth]',
    )
      .replace(
        '[tab depth, valley corner, end depth, valley turn, span width]',
        '[span width, valley turn, end depth, valley corner, tab depth]',
      )
      .replace('corner along right', 'corner along left')
      .replace('right along inner', 'left along inner');
    const [tab, span] = joinsOf(mirrored);
    expect(land(tab, [9, 0], [12, 0])).toEqual([
      [0, 0, 0],
      [3, 0, 0],
    ]);
    expect(land(span, [0, 0], [6, 0])).toEqual([
      [9, 0, 0],
      [15, 0, 0],
    ]);
    const turned = BRIDGE.replaceAll('across:', 'ACROSS:')
      .replaceAll('down:', 'across:')
      .replaceAll('ACROSS:', 'down:')
      .replace('corner along right', 'corner along bottom')
      .replace('right along inner', 'bottom along inner')
      .replace('bridge.bottom', 'bridge.right')
      .replace('ornament.top', 'ornament.left');
    const [first, second, hang] = joinsOf(turned.replace('stands: base.bottom', 'stands: base.right'));
    expect(land(first, [0, 3], [1.5, 3], [0, 0])).toEqual([
      [0, 12, 0],
      [1.5, 12, 0],
      [0, 9, 0],
    ]);
    expect(land(second, [0, 12])).toEqual([[0, 3, 0]]);
    expect(hang).toMatchObject({ part: { part: { is: 'edge', edge: 'left' } } });
    expect((hang as HangJoin).away.x.equals(1)).toBe(true);
  });

  it('is turned over first where like sides meet: the twisting easel', () => {
    const joins = joinsOf(TWISTING_EASEL);
    expect(joins.map(({ text }) => text)).toEqual([
      'disc(1).left onto base.wing',
      'disc(2).left onto base.wing',
      'back of disc(1).right onto back of front',
      'back of disc(2).right onto back of front',
    ]);
    expect(land(joins[0], [1, 0], [0, 1])).toEqual([
      [2.75, 0.375, 0],
      [1.75, 1.375, 0],
    ]);
    expect(land(joins[3], [1, 0], [2, 1])).toEqual([
      [2.75, 3.125, 0],
      [1.75, 4.125, 0],
    ]);
    expect((joins[3] as GlueJoin).turn.rounded).toBeUndefined();
  });

  it('meets a slanting line in direction, by angles that are no fractions: the V-fold', () => {
    const [left, right] = joinsOf(V_FOLD);
    const sin = (degrees: number): number => Math.sin((degrees * Math.PI) / 180);
    const cos = (degrees: number): number => Math.cos((degrees * Math.PI) / 180);
    for (const [join, side] of [
      [left, -1],
      [right, 1],
    ] as const) {
      const found = land(join, [2, 2.5], [2 + side * sin(70), 2.5 - cos(70)]);
      const wanted = [
        [4.25, 2, 0],
        [4.25 + side * sin(50), 2 + cos(50), 0],
      ];
      found.flat().forEach((value, index) => void expect(value).toBeCloseTo(wanted.flat()[index] ?? Number.NaN, 8));
      expect((join as GlueJoin).turn.rounded).toBe(true);
    }
  });

  it('is exact where slopes are', () => {
    const slanted = `
name: Slope
units: in
pieces:
  base: { size: 6 x 6, marks: { slope: "[1, 1] to [4, 5]" } }
  tag: { size: 2 x 3 }
joins: [{ glue: tag, onto: base, lay: left along slope, after: 1/2 }]
`;
    const [join] = joinsOf(slanted) as GlueJoin[];
    expect([join?.turn.cos.toFraction(), join?.turn.sin.toFraction(), join?.turn.rounded]).toEqual([
      '4/5',
      '-3/5',
      undefined,
    ]);
    expect(land(join, [0, 0], [0, 2.5])).toEqual([
      [1.3, 1.4, 0],
      [2.8, 3.4, 0],
    ]);
  });

  it('counts from the edges of the panel that is named', () => {
    const rows = `
name: Rows
units: in
pieces:
  base: { across: 4, down: [head 3, valley fold, foot 5] }
  tag: 1 x 1
joins: [{ glue: tag, onto: foot, lay: left along left, after: 1 }, { glue: back of tag, onto: back of head, match: bottom-right }]
`;
    const [on, behind] = joinsOf(rows);
    expect(land(on, [0, 0])).toEqual([[0, 4, 0]]);
    expect(land(behind, [1, 1], [0, 1])).toEqual([
      [4, 3, 0],
      [5, 3, 0],
    ]);
  });

  it('keeps its lines together in the metric edition', () => {
    const card = cardOf(foldOf(BRIDGE), 'metric', {
      given: 'width: 150 mm\ndepth: 75 mm\nheight: 120 mm\nstrip: 40 mm\nlevel: centre',
    });
    const [tab, span] = card.joins as [GlueJoin, GlueJoin];
    expect(landsAt(tab, [75, 0], 1)).toEqual([300, 40, 0]);
    expect(landsAt(span, [300, 0], 1)).toEqual([75, 40, 0]);
  });
});

describe('glued without a line', () => {
  it('lies in the middle of its panel: layers of a box, an insert', () => {
    const box = joinsOf(EXPLODING_BOX).filter((join) => join.is === 'glue' && !join.implied);
    expect(land(box[0], [5.75, 5.75])).toEqual([[6, 6, 0]]);
    expect(land(box[1], [5.5, 5.5], [0, 0])).toEqual([
      [5.75, 5.75, 0],
      [0.25, 0.25, 0],
    ]);
    expect(land(joinsOf(EXPLOSION)[0], [2.75, 0], [0, 0])).toEqual([
      [3, 0.25, 0],
      [0.25, 0.25, 0],
    ]);
  });

  it('or point on point, turned', () => {
    const turned = (turn: string): string => `
name: Turned
units: in
parameters: { tilt: 90 deg }
pieces: { base: 6 x 6, tag: 2 x 1 }
joins: [{ glue: tag, onto: base, match: "centre to [2, 3]", turn: ${turn} }]
`;
    expect(land(joinsOf(turned('tilt'))[0], [2, 0.5])).toEqual([[2, 4, 0]]);
    expect(land(joinsOf(turned('-90 deg'))[0], [2, 0.5])).toEqual([[2, 2, 0]]);
    expect(land(joinsOf(turned('180'))[0], [2, 0.5])).toEqual([[1, 3, 0]]);
    const [askew] = joinsOf(turned('30')) as GlueJoin[];
    expect(askew?.turn.rounded).toBe(true);
    expect(askew?.turn.cos.valueOf()).toBeCloseTo(Math.sqrt(3) / 2, 11);
  });

  it('rises by foam and board', () => {
    const [ring, film, frame] = joinsOf(SHAKER);
    expect(land(ring, [2, 2.625])).toEqual([[2.125, 2.75, 0.125]]);
    expect([film, frame].map((join) => [(join as GlueJoin).foam, join?.implied])).toEqual([
      [undefined, true],
      [undefined, true],
    ]);
    const dots = joinsOf(
      '{ name: Dots, units: in, pieces: { base: 4 x 4, tag: 1 x 1 }, joins: [{ glue: tag, onto: back of base, foam: 1/8 }] }',
    );
    expect(land(dots[0], [0.5, 0.5])).toEqual([[2, 2, -0.125]]);
  });
});

describe('other joins', () => {
  it('rest: an edge upon a panel, away from a line', () => {
    const rest = joinsOf(EASEL)[1] as RestJoin;
    const inches = (point: { x: { valueOf(): number }; y: { valueOf(): number } } | undefined): number[] =>
      point ? [point.x.valueOf() / INCH, point.y.valueOf() / INCH] : [];
    expect(rest.touches.map(inches)).toEqual([
      [0, 5.5],
      [4.25, 5.5],
    ]);
    expect([inches(rest.from?.start), inches(rest.from?.end), rest.away.inches.toFraction()]).toEqual([
      [0, 5.5],
      [4.25, 5.5],
      '11/4',
    ]);
  });

  it('hang: from a point of an edge, square away from it', () => {
    const hang = joinsOf(BRIDGE)[2] as HangJoin;
    expect([hang.q.x.valueOf(), hang.q.y.valueOf()]).toEqual([190.5, 38.1]);
    expect([hang.p.x.valueOf(), hang.p.y.valueOf()]).toEqual([19.05, 0]);
    expect([hang.away.x.valueOf(), hang.away.y.valueOf(), hang.thread.inches.valueOf()]).toEqual([0, 1, 0.5]);
    expect(hang.onto.part).toEqual({ is: 'cell', column: 'span', row: undefined });
  });

  it('slide: the way is what is left beyond the slits, less what is kept', () => {
    const slide = joinsOf(SLIDER)[0] as SlideJoin;
    expect(slide).toMatchObject({
      through: ['slit(1)', 'slit(2)'],
      shows: 'between',
      partSide: 'back',
      ontoSide: 'back',
    });
    expect([slide.start, slide.end].map((at) => at.inches.toFraction())).toEqual(['-5/8', '5/8']);
    expect([slide.along.x.valueOf(), slide.along.y.valueOf()]).toEqual([1, 0]);
    expect(land(slide, [2, 1.4375])).toEqual([[2.125, 2.75, 0]]);
    const turned = SLIDER.replace('across:', 'down:')
      .replace('down: tall', 'across: tall')
      .replace('slit: { left:', 'slit: { top:')
      .replace('size: long x slit - 1/8', 'size: slit - 1/8 x long');
    const down = joinsOf(turned)[0] as SlideJoin;
    expect([down.along.x.valueOf(), down.along.y.valueOf()]).toEqual([0, 1]);
    expect([down.start, down.end].map((at) => at.inches.toFraction())).toEqual(['-5/8', '5/8']);
    const greedy = joinsOf(SLIDER.replace('keep: 1/2', 'keep: 2'))[0] as SlideJoin;
    expect(greedy.start.moreThan(greedy.end)).toBe(true);
  });

  it('slip: play between a lid and its box', () => {
    const slip = joinsOf(EXPLODING_BOX).find(({ is }) => is === 'slip');
    expect(slip).toMatchObject({ text: 'lid.middle.middle over layer(1)', onto: { part: { is: 'whole' } } });
    const silent = joinsOf(
      '{ name: Lid, units: in, pieces: { box: 4 x 4, lid: 4 x 4 }, joins: [{ slip: lid, over: box }] }',
    );
    expect(silent[0]).toMatchObject({ is: 'slip' });
    expect((silent[0] as { play: { inches: { toFraction(): string } } }).play.inches.toFraction()).toBe('1/32');
  });

  it('pin: at one point, by its own middle or another', () => {
    const pinned = (more: string): Card['joins'] =>
      joinsOf(
        `{ name: Wheel, units: in, pieces: { base: 6 x 4, wheel: { circle: 2 } }, joins: [{ pin: wheel, to: back of base, at: "[2, 1]"${more} }] }`,
      );
    expect(land(pinned('')[0], [1, 1])).toEqual([[2, 1, 0]]);
    expect(land(pinned(', by: top, turn: 180')[0], [1, 0], [1, 2])).toEqual([
      [2, 1, 0],
      [2, -1, 0],
    ]);
  });

  it('slot: each slit holds the paper of the other', () => {
    const tree = `
name: Tree
units: in
pieces:
  one: { size: 3 x 4, cuts: { slit: { left: 1 1/2, from: 2, to: 4 } } }
  two: { size: 3 x 4, cuts: { slit: { left: 1 1/2, from: 0, to: 2 } } }
joins: [{ slot: one, into: two }]
`;
    const [slot] = joinsOf(tree);
    // The mouth of one's slit lies at the foot, where two has paper; and the other way round.
    expect(land(slot, [1.5, 2], [1.5, 4], [1.5, 0])).toEqual([
      [1.5, 2, 0],
      [1.5, 4, 0],
      [1.5, 0, 0],
    ]);
    expect(slot).toMatchObject({ line: 'slit', along: 'slit' });
    const upside = tree.replace('from: 0, to: 2', 'from: 2, to: 4');
    expect(land(joinsOf(upside)[0], [1.5, 4])).toEqual([[1.5, 0, 0]]);
  });
});
