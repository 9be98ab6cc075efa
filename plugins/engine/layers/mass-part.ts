import type Fraction from 'fraction.js';
import type { Material } from './material.ts';

/** Something that weighs, and where on the card. */
export interface MassPart {
  readonly is: 'panel' | 'coat' | 'glue' | 'foam' | 'filling';
  /** The panel, the join as a maker reads it, or the filling. */
  readonly name: string;
  readonly role: string;
  readonly material: Material;
  /** Undefined when nobody knows what it weighs. */
  readonly grams: Fraction | undefined;
  /** The panel that it moves with, and the middle of its mass on that panel's drawing: mm, y down, `z` out of the face. */
  readonly panel: string;
  readonly at: { readonly x: number; readonly y: number; readonly z: number };
}

/** Cubic millimetres to a cubic centimetre, and square millimetres to a square metre. */
const MM3_PER_CM3 = 1000;
const MM2_PER_M2 = 1_000_000;

/** Grams of so many square millimetres of a material, `high` for what has a height of its own. */
export function gramsOf(area: Fraction, material: Material, high: Fraction | undefined): Fraction | undefined {
  const { grammage, density } = material;
  if (high !== undefined && density) return area.mul(high).mul(density).div(MM3_PER_CM3);
  return grammage && area.mul(grammage).div(MM2_PER_M2);
}
