import { NOT_ALIKE, type Rules } from './rules.ts';
import { contradict, range } from './solve.ts';

/** Steps of one trial while a conflict is made smaller, and how many trials. */
const TRIAL_STEPS = 50_000;
const MOST_TRIALS = 400;

/**
 * Rules, by number and rising, that contradict each other and do so no longer when any one of them is left out; or nearly so,
 * where finding out would take too long. The rules given must have no answer.
 */
export function smallestConflict(rules: Rules): number[] {
  let conflict = followed(rules) ?? range(rules.count);
  let trials = 0;
  for (
    let size = Math.ceil(conflict.length / 2);
    size > 0 && trials < MOST_TRIALS;
    size = size > 1 ? Math.ceil(size / 2) : 0
  ) {
    for (let at = 0; at < conflict.length && trials < MOST_TRIALS; trials++) {
      const without = conflict.toSpliced(at, size);
      if (contradict(rules, without, TRIAL_STEPS)) conflict = without;
      else at += size;
    }
  }
  return conflict;
}

/**
 * The rules behind a conflict that shows by following single conclusions from rule to rule; undefined when none shows so.
 * A quick way to leave most rules out.
 */
function followed(rules: Rules): number[] | undefined {
  const value = new Int8Array(rules.variables).fill(-1);
  const because = new Int32Array(rules.variables).fill(-1);
  const queue: number[] = [];
  const uses: number[][] = Array.from({ length: rules.variables }, () => []);
  for (let rule = 0; rule < rules.count; rule++) {
    const { starts, literals } = rules;
    for (let i = starts[rule] ?? 0; i < (starts[rule + 1] ?? 0); i++) uses[(literals[i] ?? 0) >> 1]?.push(rule);
  }
  for (const rule of range(rules.count)) {
    if (step(rules, rule, value, because, queue) === 'contradiction') return behind(rules, rule, because);
  }
  for (let next = queue.shift(); next !== undefined; next = queue.shift()) {
    for (const rule of uses[next] ?? []) {
      if (step(rules, rule, value, because, queue) === 'contradiction') return behind(rules, rule, because);
    }
  }
  return undefined;
}

function step(
  rules: Rules,
  rule: number,
  value: Int8Array,
  because: Int32Array,
  queue: number[],
): 'contradiction' | 'sound' {
  const [start, end] = [rules.starts[rule] ?? 0, rules.starts[rule + 1] ?? 0];
  let [open, last, held] = [0, 0, 0];
  for (let i = start; i < end; i++) {
    const literal = rules.literals[i] ?? 0;
    const known = value[literal >> 1] ?? -1;
    if (known < 0) {
      open++;
      last = literal;
    } else if (known !== (literal & 1)) held++;
  }
  const alike = rules.kinds[rule] === NOT_ALIKE;
  if (open === 0) {
    const broken = alike ? held === 0 || held === end - start : (held & 1) !== (rules.odd[rule] ?? 0);
    return broken ? 'contradiction' : 'sound';
  }
  if (open > 1 || (alike && held !== 0 && held !== end - start - 1)) return 'sound';
  const holds = alike ? held === 0 : (held & 1) !== (rules.odd[rule] ?? 0);
  value[last >> 1] = holds === ((last & 1) === 0) ? 1 : 0;
  because[last >> 1] = rule;
  queue.push(last >> 1);
  return 'sound';
}

function behind(rules: Rules, rule: number, because: Int32Array): number[] {
  const found = new Set([rule]);
  for (const one of found) {
    for (let i = rules.starts[one] ?? 0; i < (rules.starts[one + 1] ?? 0); i++) {
      const cause = because[(rules.literals[i] ?? 0) >> 1] ?? -1;
      if (cause >= 0) found.add(cause);
    }
  }
  return [...found].sort((a, b) => a - b);
}
