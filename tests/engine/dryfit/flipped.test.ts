import { describe, expect, it } from 'vitest';
import { type Card, SYSTEMS } from '../../../plugins/engine/index.ts';
import { complaints, creasesInRings, silent, withOneFoldFlipped, withOneSideFlipped } from '../support/flipped.ts';
import { cardOf, foldOf } from '../support/folds.ts';
import { BRIDGE, explosionInsert, POP_UP } from '../support/joined-cards.ts';
import {
  BRIDGE as BRIDGE_FOLD,
  EXPLODING_BOX,
  EXPLOSION,
  TRI_SHUTTER,
  TWISTING_EASEL,
  V_FOLD,
} from '../support/ten-folds.ts';
import { VIEWS } from './views.ts';

/** Wrong cards of one whose rings of paper hold some of its creases: only of those can a ring tell. */
function foldsInRings(made: Card) {
  const held = creasesInRings(made);
  return withOneFoldFlipped(made).filter(({ title }) => held.some((crease) => title.startsWith(`${crease} `)));
}

/** A crease that lies flat when posted may fold either way, as far as that pose shows. */
function flatWhenPosted(made: Card): string[] {
  const posted = made.poses.find(({ name }) => name === made.posts);
  return (posted?.turns ?? []).filter(({ turn }) => turn === 0).map(({ piece, crease }) => `${piece}.${crease} `);
}

const MADE: readonly (readonly [string, Card])[] = [
  ['a bridge', BRIDGE],
  ['a parallel box pop-up', POP_UP],
  ['an explosion insert', explosionInsert()],
];

describe.each(MADE)('%s made wrong', (_, made) => {
  it.each(VIEWS)('is found out: $view', ({ of }) => {
    const seen = of(made);
    expect(withOneSideFlipped(seen)).toHaveLength(2);
    expect(silent(withOneSideFlipped(seen), seen)).toEqual([]);
    const flat = flatWhenPosted(seen);
    const wrong = foldsInRings(seen).filter(({ title }) => !flat.some((name) => title.startsWith(name)));
    expect(wrong.length).toBeGreaterThan(1);
    expect(silent(wrong, seen)).toEqual([]);
  });
});

interface Read {
  readonly name: string;
  readonly text: string;
  /** Creases that rings hold, counting each stretch with a direction of its own. */
  readonly held: number;
  /** What no pose can tell whose angles are all given. */
  readonly untold: readonly string[];
}

const READ: readonly Read[] = [
  { name: 'a bridge', text: BRIDGE_FOLD, held: 4, untold: ['base.inner', 'bridge.corner'] },
  { name: 'a twisting easel', text: TWISTING_EASEL, held: 2, untold: [] },
  { name: 'a tri-shutter', text: TRI_SHUTTER, held: 12, untold: [] },
  { name: 'a V-fold', text: V_FOLD, held: 4, untold: [] },
  { name: 'an explosion insert', text: EXPLOSION, held: 4, untold: [] },
  { name: 'an exploding box', text: EXPLODING_BOX, held: 4, untold: [] },
];

describe.each(READ)('$name with one crease folded the other way', ({ text, held, untold }) => {
  it.each(SYSTEMS)('is found out: %s', (system) => {
    const made = cardOf(foldOf(text), system);
    const wrong = foldsInRings(made);
    expect(wrong).toHaveLength(held);
    expect(complaints(made).filter((one) => !one.startsWith('fits-sheet') && !one.includes('sticks-out'))).toEqual([]);
    expect(silent(wrong, made)).toEqual(untold.map((crease) => `${crease} folded the other way`));
  });
});

// A tri-shutter has no glue; the layers of a box are in no ring with each other.
const GLUED = READ.filter(({ name }) => !['a tri-shutter', 'an exploding box'].includes(name));

describe.each(GLUED)('$name with one part glued by its other side', ({ text }) => {
  it.each(SYSTEMS)('is found out: %s', (system) => {
    const made = cardOf(foldOf(text), system);
    expect(withOneSideFlipped(made).length).toBeGreaterThan(1);
    expect(silent(withOneSideFlipped(made), made)).toEqual([]);
  });
});
