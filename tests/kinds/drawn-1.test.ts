import { describe, it } from 'vitest';
import { CATALOGUE } from './support/catalogue.ts';
import { DRAWS, drawMany } from './support/drawn.ts';

// Half of the catalogue; the other half is drawn beside it.
const HALF = CATALOGUE.filter((_, i) => i % 2 === 0);

describe(`${DRAWS} cards drawn from the ranges of each kind`, () => {
  it.each(HALF.map((kind) => [kind.id, kind] as const))('%s', (_, kind) => drawMany(kind), 120_000);
});
