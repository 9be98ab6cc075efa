import type Fraction from 'fraction.js';
import type { SourceNode } from '../diagnostics/index.ts';
import { readMass } from '../units/index.ts';
import { textOr } from './read-parts.ts';
import type { Report } from './report.ts';

/** How much is filled in, as weighed: exact grams. */
export function readMassOf(node: SourceNode | undefined, path: string, report: Report): Fraction | undefined {
  const text = textOr(node, path, 'a mass, as `3 g` or `1/8 oz`', report);
  if (text === undefined) return undefined;
  const { value, faults } = readMass(text.text);
  report.faults({ node: text, offset: 0, path }, faults);
  return value;
}
