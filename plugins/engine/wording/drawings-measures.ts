import Fraction from 'fraction.js';
import { formatNumber, Length, type System } from '../units/index.ts';

/** Finest parts of a ruler that a measure is said in when it is no whole number of marks: 1/64 in, a tenth of a mm. */
const FINEST: Readonly<Record<System, Length>> = { inch: Length.fromInches('1/64'), metric: Length.fromMm('1/10') };

/** A measure this near to a part of the ruler is that part: it was an angle or an arc that left it beside, in mm. */
const BESIDE_MM = 1e-6;

export interface ReadMeasure {
  /** The number without its unit. */
  readonly text: string;
  /** True when `text` is as near as a ruler goes, and not the measure itself. */
  readonly about: boolean;
}

/** A measure of a drawing in mm. One that came from an angle or an arc (`rounded`) is said to the finest part of a ruler. */
export function measureOf(mm: Fraction, rounded: boolean, system: System): ReadMeasure {
  const length = Length.fromMm(mm);
  if (!rounded) return { text: formatNumber(length, system), about: false };
  const part = FINEST[system];
  const nearest = part.times(length.per(part).round());
  const about = Math.abs(nearest.minus(length).toMm()) > BESIDE_MM;
  return { text: formatNumber(nearest, system), about };
}

/** With its unit: "2 1/4 in", "about 2 15/64 in". */
export function sayMeasure(mm: Fraction, rounded: boolean, system: System): string {
  const { text, about } = measureOf(mm, rounded, system);
  return `${about ? 'about ' : ''}${text} ${system === 'inch' ? 'in' : 'mm'}`;
}

/** A float in mm as a measure. */
export function sayFloat(mm: number, system: System): string {
  return sayMeasure(new Fraction(Math.round(mm * 1e9), 1e9), true, system);
}
