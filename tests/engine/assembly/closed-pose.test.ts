import { describe, expect, it } from 'vitest';
import { spreadFrom } from '../../../plugins/engine/assembly/spread.ts';
import { type Card, closedPose, type FlatPose, panelsOf } from '../../../plugins/engine/index.ts';
import { reflected } from '../../oracles/reflected.ts';
import { card, piece, pose } from '../dryfit/made-card.ts';
import { VIEWS } from '../dryfit/views.ts';

/** Floating figures of the oracle against exact ones. */
const TOUCH_MM = 1e-9;

const SIDE_FOLD = card([piece('base', ['front 4 1/4', 'valley spine', 'back 4 1/4'], ['5 1/2'])]);
const GATE = card([
  piece(
    'base',
    ['left-gate 2 1/8', 'valley left-fold', 'back 4 1/4', 'valley right-fold', 'right-gate 2 1/8'],
    ['5 1/2'],
  ),
]);
// Panels 1 1/4, 2 1/2, 3 1/2, 4 1/4 pleated fold to 4 1/4 x 5 1/2: common practice, no source; the sums prove it.
const PLEAT = card([
  piece('base', ['a 1 1/4', 'valley', 'b 2 1/2', 'mountain', 'c 3 1/2', 'valley', 'd 4 1/4'], ['5 1/2']),
]);

function shut(made: Card, flat: readonly string[] = []): FlatPose {
  const [first] = made.pieces;
  if (!first) throw new Error('a card has a piece');
  return closedPose(first, panelsOf(made), pose('closed', made.pieces, flat));
}

function sizeOf({ box }: FlatPose, inch: number | string = '127/5'): number[] {
  const sides = [box.right.sub(box.left), box.bottom.sub(box.top)].map((side) => side.div(inch).valueOf());
  return sides.sort((a, b) => a - b);
}

describe('closedPose', () => {
  it('lays the front of a half fold over its back, which stays as drawn', () => {
    const closed = shut(SIDE_FOLD);
    expect(closed.ground).toBe('base.back');
    expect(closed.plies).toEqual(['base.back', 'base.front']);
    const front = closed.panels.find(({ panel }) => panel === 'base.front');
    expect(front?.placement.faceUp).toBe(false);
    expect(front?.outline.map(({ x, y }) => [x.valueOf() / 25.4, y.valueOf() / 25.4])).toEqual([
      [8.5, 0],
      [4.25, 0],
      [4.25, 5.5],
      [8.5, 5.5],
    ]);
  });

  it.each(VIEWS)('folds to the sizes known in the trade: $view', ({ view, of }) => {
    const inch = view === 'in millimetres' ? 10 : '127/5';
    for (const made of [SIDE_FOLD, GATE, PLEAT]) expect(sizeOf(shut(of(made)), inch)).toEqual([4.25, 5.5]);
  });

  it.each(VIEWS)('orders the plies of a pleat one on the other: $view', ({ of }) => {
    const plies = shut(of(PLEAT))
      .plies?.map((name) => name.slice(-1))
      .join('');
    // The largest panel is the ground, and the others lie on its face in turn.
    expect(plies).toBe('dcba');
  });

  it('puts a mountain fold under the ground panel, and both gates over it', () => {
    const tent = card([piece('base', ['front 3', 'mountain', 'back 4'], ['5'])]);
    expect(shut(tent).plies).toEqual(['base.front', 'base.back']);
    expect(shut(GATE).plies?.[0]).toBe('base.back');
  });

  it('keeps panels together over a crease that stays flat', () => {
    const swing = card([
      piece('card', ['flap 2 3/4', 'mountain swing', 'strip 1 3/8', 'valley spine', 'back 4 1/8'], ['5 1/2']),
    ]);
    expect(sizeOf(shut(swing, ['swing']))).toEqual([4.125, 5.5]);
    expect(shut(swing, ['swing']).plies).toEqual(['card.back', 'card.flap', 'card.strip']);
    // Swung over, the flap reaches past the spine: 2 3/4 - 1 3/8 = 1 3/8 beyond it.
    expect(sizeOf(shut(swing))).toEqual([5.5, 5.5]);
  });

  it.each(VIEWS)('names the panel that is too long and by how much: $view', ({ view, of }) => {
    const letter = of(card([piece('base', ['head 4', 'valley', 'middle 3 3/4', 'valley', 'foot 3 7/8'], ['6'])]));
    const { plies, obstruction } = shut(letter);
    expect(plies).toBeUndefined();
    expect(obstruction).toMatchObject({ kind: 'too-long', panel: 'base.foot', crease: 'middle|foot', cures: true });
    const by = obstruction?.kind === 'too-long' ? obstruction.by.valueOf() : Number.NaN;
    expect(by).toBeCloseTo(view === 'in millimetres' ? 1.25 : 25.4 / 8, 9);
  });

  it('says when shortening one panel is not enough', () => {
    const roll = card([
      piece('base', ['a 2', 'valley', 'b 1', 'valley', 'c 2', 'valley', 'd 1', 'valley', 'e 2'], ['6']),
    ]);
    expect(shut(roll).obstruction).toMatchObject({ kind: 'too-long', panel: 'base.e', cures: false });
  });

  it.each(VIEWS)('refuses two creases that cross and are both shut, but not one of them: $view', ({ of }) => {
    const crossed = of(
      card([piece('sheet', ['left 2', 'valley spine', 'right 2'], ['top 3', 'mountain half', 'foot 3'])]),
    );
    const { plies, obstruction } = shut(crossed);
    expect(plies).toBeUndefined();
    expect(obstruction?.kind).toBe('crossing');
    expect(obstruction?.kind === 'crossing' && [obstruction.crease, obstruction.other].sort()).toEqual([
      'half',
      'spine',
    ]);
    expect(shut(crossed, ['half']).plies).toHaveLength(4);
    expect(shut(crossed, ['spine']).plies).toHaveLength(4);
  });

  it('lays every panel where floating reflections lay it (mathjs)', () => {
    const closed = shut(PLEAT);
    const { panels, hinges } = panelsOf(PLEAT);
    const outline = (name: string) =>
      (panels.find((panel) => panel.name === name)?.outline ?? []).map(
        ({ x, y }) => [x.valueOf(), y.valueOf()] as const,
      );
    // From the ground, panel d, back to a: the nearest crease first in the paper is the last to be folded here.
    for (const [index, name] of ['base.a', 'base.b', 'base.c'].entries()) {
      const folded = hinges.slice(index).reduce(
        (points, hinge) => {
          return reflected(
            points,
            [hinge.from.x.valueOf(), hinge.from.y.valueOf()],
            [hinge.to.x.valueOf(), hinge.to.y.valueOf()],
          );
        },
        outline(name) as readonly (readonly [number, number])[],
      );
      const placed = closed.panels.find(({ panel }) => panel === name)?.outline ?? [];
      placed.forEach(({ x, y }, i) => {
        expect(Math.abs(x.valueOf() - (folded[i]?.[0] ?? Number.NaN))).toBeLessThan(TOUCH_MM);
        expect(Math.abs(y.valueOf() - (folded[i]?.[1] ?? Number.NaN))).toBeLessThan(TOUCH_MM);
      });
    }
  });
});

describe('loops of hinges', () => {
  const crossed = card([piece('sheet', ['left 2', 'valley spine', 'right 2'], ['top 3', 'valley half', 'foot 3'])]);
  const { panels, hinges } = panelsOf(crossed);
  const [ground] = panels;

  it('close exactly when a crease does one thing along its whole length', () => {
    if (!ground) throw new Error('a sheet has panels');
    expect(spreadFrom(ground, hinges, () => 'shut').gaps).toEqual([]);
    expect(spreadFrom(ground, hinges, ({ crease }) => (crease === 'half' ? 'flat' : 'shut')).gaps).toEqual([]);
  });

  it('show a gap when one stretch of a crease is shut and the rest is flat', () => {
    if (!ground) throw new Error('a sheet has panels');
    const [stretch] = hinges;
    const { gaps, placements } = spreadFrom(ground, hinges, (hinge) => (hinge === stretch ? 'shut' : 'flat'));
    expect(gaps).toHaveLength(1);
    expect(placements.size).toBe(4);
  });
});
