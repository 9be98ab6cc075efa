import Fraction from 'fraction.js';
import { Length } from '../units/index.ts';

/** Measured distances are put on whole nanometres: far finer than anything printed, and free of a float's last digits. */
const PER_MM = 1e6;

/** A distance that was measured in floating millimetres. */
export function measured(mm: number): Length {
  return Length.fromMm(new Fraction(Math.round(mm * PER_MM), PER_MM));
}
