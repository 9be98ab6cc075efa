import Fraction from 'fraction.js';
import { parse } from 'yaml';
import { z } from 'zod';

/**
 * `expect.yaml` of a case.
 *
 * Every question and every failure of both editions must be listed, and every problem; passes and untested checks may be.
 */
const findingShape = z.strictObject({
  edition: z.enum(['inch', 'metric']),
  check: z.string(),
  outcome: z.string(),
  state: z.enum(['pass', 'question', 'fail', 'untested']),
  /** The figure found and the limit, as lengths with their unit or as plain numbers. */
  figure: z.union([z.string(), z.number()]).optional(),
  limit: z.union([z.string(), z.number()]).optional(),
  /** Line and column in `card.md`, when the finding points there. */
  at: z.string().optional(),
  /** What the sentences must contain, word for word. */
  says: z.array(z.string()).min(1),
});

const problemShape = z.strictObject({
  code: z.string(),
  severity: z.enum(['error', 'warning']),
  at: z.string(),
  says: z.array(z.string()).min(1),
});

const shape = z.strictObject({
  findings: z.array(findingShape).default([]),
  problems: z.array(problemShape).default([]),
});

export type Expectation = z.infer<typeof shape>;
export type ExpectedFinding = z.infer<typeof findingShape>;

export function readExpectation(text: string): Expectation {
  return shape.parse(parse(text));
}

/** `4 1/2 in` or `110 mm` in exact millimetres; read here without the engine, against which it is held. */
export function millimetres(text: string): Fraction {
  const read = /^(-?)(.+) (in|mm)$/.exec(text);
  if (read === null) throw new Error(`a figure is written as 4 1/2 in or 110 mm, not ${text}`);
  const size = new Fraction(read[2] ?? '').mul(read[3] === 'in' ? '127/5' : 1);
  return read[1] === '-' ? size.neg() : size;
}
