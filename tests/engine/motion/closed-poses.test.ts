import { describe, expect, it } from 'vitest';
import { assemble } from '../../../plugins/engine/assembly/index.ts';
import { type Card, closedPoses, isKnown, panelsOf } from '../../../plugins/engine/index.ts';
import { type Triple, turnedInSpace } from '../../oracles/turned-in-space.ts';
import { card, inches, mm, piece, pose, posed } from '../dryfit/made-card.ts';
import { VIEWS } from '../dryfit/views.ts';
import { BRIDGE, BRIDGE_ALL_SHUT, explosionInsert, LIDDED, POP_UP, SLIDER, SPINNER } from '../support/joined-cards.ts';
import { at, line, ref, slot, withLines } from '../support/made-joins.ts';
import { boxOf, panelIn, poseCalled, poseIn, posesIn, posesOf, sizeOf } from './posed-card.ts';

/** Floating figures of the oracle against exact ones. */
const TOUCH_MM = 1e-9;

/** Angles that are no quarter turns stand on a grid. */
const ROUNDED_MM = 1e-7;

const INCH = inches('1');
const unitIn = (view: string) => (view === 'in millimetres' ? mm(10) : INCH);

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

describe('one piece', () => {
  it('lays the front of a half fold over its back, which stays as drawn', () => {
    const closed = poseIn(SIDE_FOLD);
    expect(closed.ground).toBe('base.back');
    const front = panelIn(closed, 'base.front');
    expect(front.faces).toBe('down');
    expect(front.placement.rounded).toBeUndefined();
    expect(boxOf(front, INCH)).toEqual([4.25, 0, 8.5, 5.5]);
    expect(closed).toMatchObject({ flat: true, gaps: [] });
    expect(closed.deep.valueOf()).toBe(0);
  });

  it.each(VIEWS)('folds to the sizes known in the trade: $view', ({ view, of }) => {
    for (const made of [SIDE_FOLD, GATE, PLEAT]) expect(sizeOf(poseIn(of(made)), unitIn(view))).toEqual([4.25, 5.5]);
  });

  it('keeps panels together over a crease that stays flat', () => {
    const pieces = [
      piece('card', ['flap 2 3/4', 'mountain swing', 'strip 1 3/8', 'valley spine', 'back 4 1/8'], ['5 1/2']),
    ];
    const swung = card(pieces, { poses: [pose('closed', pieces, ['swing']), pose('swung', pieces)] });
    expect(sizeOf(poseIn(swung), INCH)).toEqual([4.125, 5.5]);
    // Swung over, the flap reaches past the spine: 2 3/4 - 1 3/8 = 1 3/8 beyond it.
    expect(sizeOf(poseIn(swung, 'swung'), INCH)).toEqual([5.5, 5.5]);
  });

  it.each([
    [180, 180, 180],
    [90, 90, 90],
    [180, 0, 90],
    [-90, 180, 45],
    [30, 60, 150],
  ])('lays every panel where quaternions lay it: %d, %d, %d degrees', (first, second, third) => {
    const turns = ['a|b', 'b|c', 'c|d'].map((crease, i) => ({
      piece: 'base',
      crease,
      turn: [first, second, third][i] ?? 0,
    }));
    const [closed] = posesIn(PLEAT, posed('folded', turns));
    const { panels, hinges } = panelsOf(PLEAT);
    const whole = turns.every(({ turn }) => turn % 90 === 0);
    const inSpace = ({ x, y }: { x: { valueOf(): number }; y: { valueOf(): number } }): Triple => [
      x.valueOf(),
      -y.valueOf(),
      0,
    ];
    for (const [index, name] of ['base.a', 'base.b', 'base.c'].entries()) {
      const corners = panels.find((panel) => panel.name === name)?.outline ?? [];
      // From the panel's own crease to the ground's: each turn carries the panel and what has been turned before it.
      const placed = corners.map((corner) =>
        hinges.slice(index).reduce<Triple>((at, hinge) => {
          const said = turns.find(({ crease }) => crease === hinge.crease)?.turn ?? 0;
          // The ground is on the right, so that what turns is on the left: a valley turns it by the right-hand rule.
          const [from, to] =
            hinge.left === 'base.d' || hinge.left > hinge.right ? [hinge.to, hinge.from] : [hinge.from, hinge.to];
          return turnedInSpace(at, inSpace(from), inSpace(to), hinge.fold === 'mountain' ? -said : said);
        }, inSpace(corner)),
      );
      const found = closed && panelIn(closed, name);
      for (const [i, at] of placed.entries()) {
        const corner = found?.outline[i];
        const off = Math.hypot((corner?.x.valueOf() ?? Number.NaN) - at[0], -(corner?.y.valueOf() ?? 0) - at[1]);
        expect(off).toBeLessThan(whole ? TOUCH_MM : ROUNDED_MM);
      }
      expect(found?.placement.rounded).toBe(whole ? undefined : true);
    }
  });

  it('stands walls up square, and says how deep the tray is', () => {
    const tray = poseIn(LIDDED, 'lid-off');
    expect(tray).toMatchObject({ flat: true });
    const boxed = posesIn(
      LIDDED,
      posed('walls', [{ piece: 'tray', crease: 'left|middle', turn: 90 }], { aside: ['lid'] }),
    )[0];
    expect(boxed?.flat).toBe(false);
    expect(boxed && panelIn(boxed, 'tray.left').faces).toBe('edge-on');
    expect(boxed?.deep.equals(inches('3').mm)).toBe(true);
  });

  it('takes the panel that a pose gives as ground', () => {
    const ground = {
      piece: 'base',
      part: { is: 'cell', column: 'front', row: undefined },
      text: 'base.front',
    } as const;
    const where = { place: SIDE_FOLD.place, path: '' };
    const shut = pose('closed', SIDE_FOLD.pieces);
    const [closed] = posesIn(SIDE_FOLD, { ...shut, ground: { ...ground, ...where } });
    expect(closed?.ground).toBe('base.front');
    expect(closed && boxOf(panelIn(closed, 'base.back'), INCH)).toEqual([0, 0, 4.25, 5.5]);
  });
});

describe('what a pose leaves open', () => {
  const unsaid = (made: Card, crease: string) => {
    const [first] = made.poses;
    const turns = first?.turns.map((turn) => (turn.crease === crease ? { ...turn, said: false } : turn)) ?? [];
    return closedPoses(assemble(made, panelsOf(made)), posed('closed', turns));
  };

  it('is a crease that it says is to be solved', () => {
    const [found] = closedPoses(assemble(BRIDGE, panelsOf(BRIDGE)), poseCalled(BRIDGE, 'display'));
    expect(found).toEqual({
      pose: 'display',
      body: 0,
      creases: [
        { piece: 'base', crease: 'inner' },
        { piece: 'bridge', crease: 'corner' },
        { piece: 'bridge', crease: 'turn' },
      ],
    });
  });

  it('is a crease that it does not speak of, when a ring holds it', () => {
    expect(unsaid(BRIDGE, 'turn')).toMatchObject([{ creases: [{ piece: 'bridge', crease: 'turn' }] }]);
    // Nothing holds the spine of a side fold: it stays as it was.
    const [kept] = unsaid(SPINNER, 'spine');
    expect(kept && isKnown(kept) && sizeOf(kept, INCH)).toEqual([4, 5]);
  });
});

describe('rings of paper', () => {
  it.each(VIEWS)('closes a bridge to 9 x 5 with all creases in line, exactly: $view', ({ view, of }) => {
    const closed = poseIn(of(BRIDGE));
    expect(closed.gaps).toEqual([]);
    expect(sizeOf(closed, unitIn(view))).toEqual([5, 9]);
  });

  it.each(VIEWS)('misses by 6 when all creases of the bridge are shut: $view', ({ view, of }) => {
    const [gap, ...more] = poseIn(of(BRIDGE_ALL_SHUT), 'all-shut').gaps;
    expect(more).toEqual([]);
    expect((gap?.mm ?? 0) / unitIn(view).mm.valueOf()).toBeCloseTo(6, 9);
  });

  it.each(VIEWS)(
    'closes a parallel box pop-up when 2 + 1 = 1 + 2, and misses by what is missing: $view',
    ({ view, of }) => {
      expect(poseIn(of(POP_UP)).gaps).toEqual([]);
      const [base, strip] = POP_UP.pieces;
      if (!base || !strip) throw new Error('two pieces');
      // One wall longer by 1/4: the loop opens by as much.
      const long = piece(
        'strip',
        ['foot 1/2', 'valley', 'wall 1 1/4', 'mountain', 'top 2', 'valley', 'toe 1/2'],
        ['3'],
      );
      const [first, last] = POP_UP.joins;
      if (first?.is !== 'glue' || last?.is !== 'glue') throw new Error('two joins');
      const toe = { ...last, p: { ...last.p, x: inches('3 3/4').mm } };
      const [gap] = poseIn(of({ ...POP_UP, pieces: [base, long], joins: [first, toe] })).gaps;
      expect((gap?.mm ?? 0) / unitIn(view).mm.valueOf()).toBeCloseTo(0.25, 9);
    },
  );

  it.each(VIEWS)('collapses an explosion insert within its base: $view', ({ view, of }) => {
    const closed = poseIn(of(explosionInsert()));
    expect(closed.gaps).toEqual([]);
    expect(sizeOf(closed, unitIn(view))).toEqual([3, 6]);
  });

  it.each(VIEWS)('tears along a crease of which one stretch alone is shut: $view', ({ of }) => {
    const sheet = [piece('sheet', ['left 2', 'valley spine', 'right 2'], ['top 3', 'valley half', 'foot 3'])];
    const made = of(card(sheet));
    expect(poseIn(made).gaps).toEqual([]);
    const assembly = poseIn(made).assembly;
    expect(assembly.bodies[0]?.loops).toHaveLength(1);
    expect(poseIn(of(card(sheet, { poses: [pose('closed', sheet, ['half'])] }))).gaps).toEqual([]);
  });

  it('leaves the height of foam out of a ring that cannot close over it, and says so', () => {
    const [first, second] = explosionInsert().joins;
    if (first?.is !== 'glue' || second?.is !== 'glue') throw new Error('two joins');
    const foamed: Card = { ...explosionInsert(), joins: [{ ...first, foam: inches('1/8') }, second] };
    const closed = poseIn(foamed);
    expect(closed.gaps).toEqual([]);
    expect(closed.pressed.map(({ is }) => is)).toEqual(['glue']);
    expect(closed.deep.valueOf()).toBe(0);
  });
});

describe('other joins', () => {
  it('counts the height of foam where nothing goes round', () => {
    const [base, mat] = [piece('base', ['front 4', 'valley spine', 'back 4'], ['5']), piece('mat', ['3'], ['4'])];
    const [join] = SPINNER.joins;
    if (!join) throw new Error('a join');
    const glued = {
      ...join,
      is: 'glue' as const,
      part: { ...join.part, piece: 'mat' },
      foam: inches('1/8'),
      laid: undefined,
    };
    const closed = poseIn(card([base, mat], { joins: [glued as Card['joins'][number]], poses: [posed('closed', [])] }));
    expect(closed.deep.equals(inches('1/8').mm)).toBe(true);
    expect(closed.flat).toBe(true);
  });

  it('turns what is pinned clockwise about its pin', () => {
    const arm = (name: string) => boxOf(panelIn(poseIn(SPINNER, name), 'arm'), INCH);
    const slanting = panelIn(poseIn(SPINNER, 'slanting'), 'arm');
    // At rest the arm reaches 2 1/2 to the right of its pin at (1, 2 1/2); turned a quarter, 2 1/2 down.
    expect(arm('turned')).toEqual([0.5, 2, 1.5, 5]);
    expect(slanting.placement.rounded).toBe(true);
    const far = Math.hypot(2.5, 0.5);
    const angle = Math.atan2(0.5, 2.5) + Math.PI / 6;
    const lowest = Math.max(...slanting.outline.map(({ y }) => y.valueOf() / 25.4));
    expect(lowest).toBeCloseTo(2.5 + far * Math.sin(angle), 9);
  });

  it('slides along its slits', () => {
    const pulled = boxOf(panelIn(poseIn(SLIDER, 'pulled'), 'pull'), INCH);
    expect(pulled).toEqual([1.25, 1, 4.25, 3]);
  });

  it.each(VIEWS)(
    'lays a lid face down over its tray, squared and centred, as high as the tray: $view',
    ({ view, of }) => {
      const unit = unitIn(view);
      const closed = poseIn(of(LIDDED));
      const top = panelIn(closed, 'lid.middle');
      expect(top.faces).toBe('down');
      expect(top.placement.t[2].equals(unit.mm.mul(3))).toBe(true);
      const [tray, lid] = [boxOf(panelIn(closed, 'tray.middle'), unit), boxOf(top, unit)];
      lid.forEach((side, i) => {
        expect(Math.abs(side - (tray[i] ?? 0))).toBeCloseTo(1 / 16, 9);
      });
      expect(closed.deep.equals(unit.mm.mul(3))).toBe(true);
    },
  );

  it.each(VIEWS)('stands a slotted piece square through the other, slit on slit: $view', ({ view, of }) => {
    const unit = unitIn(view);
    const slit = (from: string, to: string) => line('slit', at('2', from), at('2', to), [], { does: 'cut' });
    const pieces = [
      withLines(piece('one', ['4'], ['4']), slit('0', '2')),
      withLines(piece('other', ['4'], ['4']), slit('2', '4')),
    ];
    const joins = [slot([ref('other'), at('2', '2'), 'slit'], [ref('one'), at('2', '2'), 'slit'])];
    const closed = poseIn(of(card(pieces, { joins, poses: [posed('closed', [])] })));
    const [lying, standing] = [panelIn(closed, 'one'), panelIn(closed, 'other')];
    expect([lying.faces, standing.faces]).toEqual(['up', 'edge-on']);
    expect(standing.placement.rounded).toBeUndefined();
    // It goes as far over the face as under the back, and lies on the middle line of the other.
    expect(closed.deep.equals(unit.mm.mul(4))).toBe(true);
    const [left = 0, top = 0, right = 0, bottom = 0] = boxOf(standing, unit);
    const [wide, high] = [right - left, bottom - top].sort((a, b) => a - b);
    expect([wide, high]).toEqual([0, 4]);
    expect(wide === right - left ? left : top).toBe(2);
  });

  it('leaves out what is laid aside', () => {
    const [only, ...others] = posesOf(LIDDED, 'lid-off');
    expect(others).toEqual([]);
    expect(only?.panels.map(({ piece }) => piece)).toEqual(['tray', 'tray', 'tray']);
  });

  it.each(VIEWS)('hangs an ornament square to its edge, a thread away: $view', ({ view, of }) => {
    const unit = unitIn(view);
    const closed = poseIn(of(BRIDGE));
    const [span, ornament] = [panelIn(closed, 'bridge.span'), panelIn(closed, 'ornament')];
    const [one, other] = [boxOf(span, unit), boxOf(ornament, unit)];
    // The ornament begins 1/2 beyond the edge and is 1 1/2 long: it ends 2 past it.
    const beyond = one.map((side, i) => (i < 2 ? side - (other[i] ?? 0) : (other[i] ?? 0) - side));
    expect(Math.max(...beyond)).toBeCloseTo(2, 9);
  });
});
