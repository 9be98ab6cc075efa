import { MOST_STEPS, type Steps } from './limits.ts';
import { reduce } from './reduce.ts';
import type { Rules } from './rules.ts';
import { type Found, search } from './search.ts';

/** Answers to the rules: whether each variable is true. */
export interface Solved {
  /** In a fixed sequence, up to the limit. */
  readonly answers: readonly (readonly boolean[])[];
  /** How many there are; undefined when some part has more than the limit, or when the work was cut short. */
  readonly count: bigint | undefined;
  /** No answer exists. When there are no answers and this is false the work was cut short. */
  readonly none: boolean;
}

export function solve(rules: Rules, limit: number): Solved {
  const reduced = reduce(rules, range(rules.count));
  if (reduced === undefined) return { answers: [], count: 0n, none: true };
  const steps: Steps = { left: MOST_STEPS };
  // Where nothing is preferred, panels that come later lie above.
  const prefer = new Uint8Array(rules.variables + 1).fill(1);
  for (const literal of rules.preferred) {
    const stands = (reduced.equals[literal >> 1] ?? 0) ^ (literal & 1);
    prefer[stands >> 1] = 1 - (stands & 1);
  }
  const found: Found[] = [];
  for (const part of reduced.parts) {
    const one = search(part, limit, steps, (variable) => prefer[part.variables[variable] ?? 0] ?? 1);
    if (one.answers.length === 0) return { answers: [], count: one.all ? 0n : undefined, none: one.all };
    found.push(one);
  }
  const all = found.every((one) => one.all);
  const count = found.reduce((product, { answers }) => product * BigInt(answers.length), 1n);
  const wanted = count < BigInt(limit) ? Number(count) : limit;
  const valueAt = new Uint8Array(rules.variables + 1);
  valueAt[0] = 1;
  const answers = Array.from({ length: wanted }, (_, number) => {
    let rest = number;
    for (let i = found.length - 1; i >= 0; i--) {
      const own = found[i]?.answers ?? [];
      const answer = own[rest % own.length];
      rest = Math.floor(rest / own.length);
      for (const [at, variable] of (reduced.parts[i]?.variables ?? []).entries()) valueAt[variable] = answer?.[at] ?? 0;
    }
    return Array.from(reduced.equals, (literal) => (valueAt[literal >> 1] ?? 0) !== (literal & 1));
  });
  return { answers, count: all ? count : undefined, none: false };
}

/** Whether some rules, by number, have no answer; undefined when that takes too many steps. */
export function contradict(rules: Rules, chosen: readonly number[], steps: Steps): boolean | undefined {
  const reduced = reduce(rules, chosen);
  if (reduced === undefined) return true;
  for (const part of reduced.parts) {
    const { answers, all } = search(part, 1, steps, () => 1);
    if (answers.length === 0) return all ? true : undefined;
  }
  return false;
}

export function range(count: number): number[] {
  return Array.from({ length: count }, (_, i) => i);
}
