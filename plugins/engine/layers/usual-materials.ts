import Fraction from 'fraction.js';
import { caliperFor, gramsPerSquareMetre, Length } from '../units/index.ts';
import type { Material, Materials } from './material.ts';

const NO_SOURCE = 'common practice, no source';

function assumedCaliper(mm: string) {
  return { length: Length.fromMm(mm), origin: 'estimate', source: NO_SOURCE } as const;
}

const COVER_GSM = gramsPerSquareMetre(100, 'cover');

/** Card of 100 lb cover, 270 g/m2: what most card bases are made from. Its caliper is that of the published table. */
const CARD: Material = {
  name: '100 lb cover',
  sort: 'paper',
  caliper: caliperFor({ weight: { gsm: COVER_GSM, pounds: new Fraction(100), grade: 'cover' } }),
  grammage: COVER_GSM,
  assumed: true,
};

const FILM: Material = {
  name: 'clear film of 0.2 mm',
  sort: 'film',
  caliper: assumedCaliper('0.2'),
  grammage: new Fraction(260),
  assumed: true,
};

/** Its height is that of the piece or join, so none stands here. */
const FOAM: Material = { name: 'foam tape', sort: 'foam', density: new Fraction('0.1'), assumed: true };

/** Beads have no usual size: a shaker whose beads nobody measured is not tested. */
const BEADS: Material = { name: 'glass beads', sort: 'filler', density: new Fraction('1.5'), assumed: true };

/** One film of glue or of double-sided tape. */
const GLUE: Material = {
  name: 'a film of glue',
  sort: 'adhesive',
  caliper: assumedCaliper('0.05'),
  grammage: new Fraction(50),
  assumed: true,
};

/** By a word of the role's name, the first that fits. */
const BY_WORD: readonly (readonly [RegExp, Material])[] = [
  [/\bfoam\b/u, FOAM],
  [/\b(?:film|acetate|clear)\b/u, FILM],
  [/\b(?:beads?|sequins?|filler|glitter|confetti)\b/u, BEADS],
  [/\b(?:glue|adhesive)\b/u, GLUE],
];

/** Role of whatever sticks two panels together where the card does not say. */
export const GLUE_ROLE = 'glue';

/** Role of the foam of a join that does not name one. */
export const FOAM_ROLE = 'foam';

/** What a role is made of: the maker's supply, else what is usual, marked as assumed. Card for a role of any other name. */
export function materialOf(role: string, materials: Materials): Material {
  return given(role, materials) ?? BY_WORD.find(([word]) => word.test(role))?.[1] ?? CARD;
}

function given(role: string, materials: Materials): Material | undefined {
  return Object.hasOwn(materials, role) ? materials[role] : undefined;
}
