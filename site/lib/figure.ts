import type { CardMass, Length } from '../../plugins/engine/index.ts';

/** A figure of one edition: a height as a caliper shows it, a mass, or a length as a ruler shows it. */
export type Figure = { readonly height: Length } | { readonly grams: CardMass['grams'] } | { readonly length: Length };
