import { describe, expect, it } from 'vitest';
import type { Card, System } from '../../../plugins/engine/index.ts';
import { cardOf, foldOf } from '../support/folds.ts';
import { BRIDGE, EASEL, EXPLODING_BOX, SLIDER, TRI_SHUTTER, TWISTING_EASEL } from '../support/ten-folds.ts';

const Z_FOLD = `name: Z
units: in
parameters: { lean: 22 1/2 deg }
pieces:
  base: { across: [left 2, valley, middle 2, mountain outer, right 2], down: 5 }
  lid: { across: 2, down: [head 1, valley inner, foot 1] }
`;

/** Every pose as `name: piece.crease turn, ...`; what the pose does not say is in brackets. */
function turnsOf(card: Card): string[] {
  return card.poses.map(({ name, turns }) => {
    const said = turns.map((one) => `${one.piece}.${one.crease} ${one.said ? one.turn : `(${one.turn})`}`);
    return `${name}: ${said.join(', ')}`;
  });
}

function posesOf(poses: string): string[] {
  return turnsOf(cardOf(foldOf(`${Z_FOLD}${poses}`), 'inch'));
}

const all = (turn: unknown): string => `base.left|middle ${turn}, base.outer ${turn}, lid.inner ${turn}`;

describe('poses', () => {
  it('are open and closed when none are written', () => {
    expect(posesOf('')).toEqual([`open: ${all(0)}`, `closed: ${all(180)}`]);
  });

  it('{} shuts everything; all speaks of everything', () => {
    const written = 'poses: { open: { all: flat }, closed: {}, again: { all: 0 }, over: { all: 180 } }';
    expect(posesOf(written)).toEqual([
      `open: ${all(0)}`,
      `closed: ${all(180)}`,
      `again: ${all(0)}`,
      `over: ${all(180)}`,
    ]);
  });

  it('a crease does as its name says, then as its piece, then as the others', () => {
    expect(
      posesOf('poses: { half: { lid: shut, lid.inner: flat, others: shut }, back: { base: flat, outer: shut } }'),
    ).toEqual([
      `open: ${all(0)}`,
      'half: base.left|middle 180, base.outer 180, lid.inner 0',
      'back: base.left|middle 0, base.outer 180, lid.inner (0)',
      `closed: ${all(180)}`,
    ]);
  });

  it('what is not named stays as it was, flat before the first, and is marked as unsaid', () => {
    expect(
      posesOf(
        'poses: { one: { outer: shut }, two: { left|middle: shut, others: keep }, three: { ground: left }, closed: {} }',
      ),
    ).toEqual([
      `open: ${all(0)}`,
      'one: base.left|middle (0), base.outer 180, lid.inner (0)',
      'two: base.left|middle 180, base.outer 180, lid.inner 0',
      'three: base.left|middle (180), base.outer (180), lid.inner (0)',
      `closed: ${all(180)}`,
    ]);
  });

  it('takes degrees, with fractions, signs and parameters; and leaves creases to the paper', () => {
    expect(
      posesOf(
        'poses: { one: { outer: 22 1/2, inner: -30 deg, others: solve }, two: { outer: lean + 10 deg, all: 2*45 } }',
      ),
    ).toEqual([
      `open: ${all(0)}`,
      'one: base.left|middle solve, base.outer 22.5, lid.inner -30',
      'two: base.left|middle 90, base.outer 32.5, lid.inner 90',
      `closed: ${all(180)}`,
    ]);
  });

  it('a family speaks of all its members, and a member for itself', () => {
    const easel = cardOf(
      foldOf(TWISTING_EASEL.replace('disc(1).fold: 150', 'disc.fold: 150, disc(2).fold: 90')),
      'inch',
    );
    expect(turnsOf(easel).at(-1)).toBe('standing: base.knee 90, base.spine 60, disc(1).fold 150, disc(2).fold 90');
    const discs = cardOf(foldOf(TWISTING_EASEL.replace('disc(1).fold: 150', 'disc: 30')), 'metric');
    expect(turnsOf(discs).at(-1)).toBe('standing: base.knee 90, base.spine 60, disc(1).fold 30, disc(2).fold 30');
    const shutter = cardOf(
      foldOf(TRI_SHUTTER.replace('half: { all: 90 }', 'half: { outer: 90, inner(2): 45, others: flat }')),
      'inch',
    );
    expect(turnsOf(shutter)[1]).toBe('half: sheet.outer(1) 90, sheet.outer(2) 90, sheet.inner(1) 0, sheet.inner(2) 45');
  });

  it('says where it lies, what stands, what rests and what is laid aside', () => {
    const pose = (yaml: string, name: string, system: System = 'inch') =>
      cardOf(foldOf(yaml), system).poses.find((one) => one.name === name);
    expect(pose(EASEL, 'standing')).toMatchObject({ rests: true, ground: { piece: 'base', text: 'base.floor' } });
    expect(pose(EASEL.replace('rests: yes', 'rests: front'), 'standing')?.rests).toEqual(['front']);
    expect(pose(TWISTING_EASEL, 'standing')?.stands).toEqual([
      { piece: 'base', edge: 'bottom' },
      { piece: 'front', edge: 'bottom' },
    ]);
    expect(pose(EXPLODING_BOX, 'lid-off')?.aside).toEqual(['lid']);
    expect(
      pose(
        EXPLODING_BOX.replace('lid-off: { all: 90, aside: lid }', 'lid-off: { all: 90, aside: [layer, lid] }'),
        'lid-off',
      )?.aside,
    ).toEqual(['layer(1)', 'layer(2)', 'layer(3)', 'lid']);
  });

  it('moves sliders and pinned pieces, which else stay as they were', () => {
    const slides = (poses: string, system: System): string[] =>
      cardOf(foldOf(SLIDER.replace(/poses:.*/su, `poses: ${poses}`)), system).poses.map(
        ({ name, slides: at }) => `${name} ${at.map((slide) => `${slide.piece} ${slide.at.mm.toFraction()}`).join()}`,
      );
    const poses =
      '{ out: { slider: end }, still: { spine: 90 }, inward: { slider: 1/4 in }, back: { slider: -12 mm } }';
    expect(slides(poses, 'inch')).toEqual([
      'open slider 0',
      'out slider 127/8',
      'still slider 127/8',
      'inward slider 127/20',
      // 12 mm on a ruler with sixteenths.
      `back slider -${'127/10'}`,
      'closed slider 0',
    ]);
    const wheel = `{ name: Wheel, units: in, pieces: { base: 4 x 4, wheel: { circle: 2 } }, joins: [{ pin: wheel, to: base }], poses: { one: { wheel: 30 }, two: { ground: base }, three: { wheel: -300 deg } } }`;
    expect(cardOf(foldOf(wheel), 'inch').poses.map(({ pins }) => pins[0]?.turn)).toEqual([0, 30, 30, -300, 0]);
  });
});

describe('motion', () => {
  it('goes through the poses as they are written, or as it says', () => {
    const motions = (yaml: string): unknown =>
      cardOf(foldOf(yaml), 'inch').motions.map(({ name, poses }) => [name, ...poses]);
    expect(motions(Z_FOLD)).toEqual([['motion', 'open', 'closed']]);
    expect(motions(BRIDGE)).toEqual([['motion', 'closed', 'display']]);
    expect(motions(`${BRIDGE}motion: [closed, display, closed]`)).toEqual([['motion', 'closed', 'display', 'closed']]);
    expect(motions(`${BRIDGE}motion: { up: [closed, display], flat: [display, open] }`)).toEqual([
      ['up', 'closed', 'display'],
      ['flat', 'display', 'open'],
    ]);
  });
});

describe('how it is posted', () => {
  it('is closed unless the fold says; then it has the poses that it writes and no others', () => {
    const card = cardOf(foldOf(EXPLODING_BOX), 'inch');
    expect([card.posts, ...card.poses.map(({ name }) => name)]).toEqual(['boxed', 'boxed', 'lid-off', 'exploded']);
    expect(cardOf(foldOf(EASEL), 'inch').posts).toBe('closed');
    const within = (more: string): unknown =>
      cardOf(foldOf(`${BRIDGE}${more}`), 'inch').closesWithin.map(({ text }) => text);
    expect(within('')).toEqual([]);
    expect(within('closes-within: base.back')).toEqual(['base.back']);
    expect(within('closes-within: [side, base.back]')).toEqual(['side', 'base.back']);
  });
});
