import { describe, expect, it } from 'vitest';
import { type Card, Length, sayFinding } from '../../../plugins/engine/index.ts';
import { cardOf, foldOf } from '../support/folds.ts';
import { found } from './found.ts';
import { fold } from './made-card.ts';

interface Sides {
  readonly box: readonly [across: number, down: number];
  readonly lid: readonly [across: number, down: number];
  readonly play: number;
}

/** A box with walls of 2 and a lid with walls of 1, in inches or in centimetres. */
function boxed({ box, lid, play }: Sides, unit: 'in' | 'cm' = 'in'): Card {
  const cross = (high: number, [across, down]: readonly [number, number]): string =>
    `across: [left ${high}, valley, middle ${across}, valley, right ${high}], down: [head ${high}, valley, middle ${down}, valley, foot ${high}]`;
  return cardOf(
    foldOf(`
name: Box
units: ${unit}
pieces:
  box: { ${cross(2, box)}, corners: away }
  lid: { ${cross(1, lid)}, corners: tabs }
joins:
  - { slip: lid.middle.middle, over: box, play: ${play} }
poses:
  boxed: { all: 90, ground: box.middle.middle }
posts: boxed
`),
    unit === 'in' ? 'inch' : 'metric',
  );
}

const CASES: readonly (readonly [title: string, sides: Sides, outcome: string, room: number])[] = [
  ['as much room as is wanted', { box: [4, 4], lid: [4.125, 4.125], play: 0.125 }, 'goes-over', 0.125],
  ['more room than is wanted', { box: [4, 6], lid: [4.5, 6.5], play: 0.125 }, 'goes-over', 0.5],
  ['half of the room that is wanted, one way', { box: [4, 6], lid: [4.25, 6.5], play: 0.5 }, 'tight', 0.25],
  ['as wide as its box', { box: [4, 4], lid: [4, 4], play: 0.125 }, 'too-small', 0],
  ['narrower than its box, one way', { box: [4, 6], lid: [4.25, 5.75], play: 0.125 }, 'too-small', -0.25],
];

const turned = ({ box: [a, b], lid: [c, d], play }: Sides): Sides => ({ box: [b, a], lid: [d, c], play });
/** The lid drawn lying across its box: it is turned to go over it. */
const lidTurned = ({ box, lid: [c, d], play }: Sides): Sides => ({ box, lid: [d, c], play });

describe('lid-goes-over', () => {
  it.each(CASES)('%s', (_, sides, outcome, room) => {
    for (const view of [sides, turned(sides), lidTurned(sides)]) {
      const inch = found('lid-goes-over', fold(boxed(view)));
      expect(inch.map((one) => one.outcome)).toEqual([outcome]);
      expect(inch[0]?.figure instanceof Length && inch[0].figure.inches.valueOf()).toBe(room);
      const metric = found('lid-goes-over', fold(boxed(view, 'cm')));
      expect(metric.map((one) => one.outcome)).toEqual([outcome]);
    }
  });

  it('says by how much the lid has to be wider', () => {
    const [finding] = found('lid-goes-over', fold(boxed({ box: [4, 4], lid: [4, 4], play: 0.125 })));
    expect(finding && sayFinding(finding, 'inch')).toMatchObject({
      says: '`lid.middle.middle` is exactly as wide as `box` and does not go over it.',
      remedy: 'Make `lid.middle.middle` 1/8 in wider.',
    });
  });

  it('has nothing to say of a card without a lid, or with its lid laid aside', () => {
    const card = boxed({ box: [4, 4], lid: [4, 4], play: 0.125 });
    expect(found('lid-goes-over', fold({ ...card, joins: card.joins.filter(({ is }) => is !== 'slip') }))).toEqual([]);
    const poses = card.poses.map((pose) => ({ ...pose, aside: ['lid'] }));
    expect(found('lid-goes-over', fold({ ...card, poses }))).toEqual([]);
  });
});
