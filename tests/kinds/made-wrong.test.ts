import { describe, expect, it } from 'vitest';
import { type Card, SYSTEMS } from '../../plugins/engine/index.ts';
import { type Flipped, silent, withOneFoldFlipped, withOneSideFlipped } from '../engine/support/flipped.ts';
import { CATALOGUE, type CatalogueKind, cardWith } from './support/catalogue.ts';
import { judge } from './support/judged.ts';

/** What still works when it is made the other way, and why that is no fault. */
const ALSO_WORKS: Readonly<Record<string, readonly (readonly [title: string, why: string])[]>> = {
  swing: [
    [
      'card.swing folded the other way',
      'The flap lies flat when the card is closed. Swung, it then turns inwards instead of outwards, and lies between strip and back: another card, that works.',
    ],
    [
      'card.spine folded the other way',
      'The card is made inside out: strip and flap lie behind the back instead of before it, and the disc turns as before.',
    ],
  ],
};

/**
 * Mutants of each kind that has a ring of paper: creases, stretches of creases that have directions of their own, and
 * parts that are glued.
 */
const MUTANTS: Readonly<Record<string, readonly [folds: number, sides: number]>> = {
  'box-pop-up': [4, 2],
  bridge: [4, 2],
  // Three layers and a lid of four creases each; four tabs of the lid, and two layers on another.
  'exploding-box': [16, 6],
  'explosion-insert': [4, 2],
  swing: [2, 0],
  'tri-shutter': [12, 0],
  'twisting-easel': [4, 4],
  'v-fold': [4, 2],
};

/** Without the lesson beside it: geometry alone has to tell. */
function untaught({ fold }: CatalogueKind, system: (typeof SYSTEMS)[number]): Card {
  return { ...cardWith(fold, system), lesson: [] };
}

function hasRing(kind: CatalogueKind): boolean {
  return judge(untaught(kind, 'inch')).folded.assembly.bodies.some(({ loops }) => loops.length > 0);
}

const IN_RINGS = CATALOGUE.filter(hasRing);

it('knows which kinds have a ring of paper', () => {
  expect(IN_RINGS.map(({ id }) => id)).toEqual(Object.keys(MUTANTS));
});

describe.each(IN_RINGS.map((kind) => [kind.id, kind] as const))('%s made wrong', (id, kind) => {
  const works = (ALSO_WORKS[id] ?? []).map(([title]) => title);
  it.each(SYSTEMS)('one crease folded the other way is found out: %s', (system) => {
    const made = untaught(kind, system);
    const wrong: Flipped[] = withOneFoldFlipped(made);
    expect(wrong).toHaveLength(MUTANTS[id]?.[0] ?? 0);
    expect(silent(wrong, made)).toEqual(works);
  });

  it.each(SYSTEMS)('one part glued by its other side is found out: %s', (system) => {
    const made = untaught(kind, system);
    const wrong = withOneSideFlipped(made);
    expect(wrong).toHaveLength(MUTANTS[id]?.[1] ?? 0);
    expect(silent(wrong, made)).toEqual([]);
  });
});
