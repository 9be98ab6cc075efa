import { MOST_STEPS_IN_TRIAL, MOST_STEPS_TO_EXPLAIN, type Steps } from './limits.ts';
import { NOT_ALIKE, PARITY, Rules } from './rules.ts';
import { contradict, range } from './solve.ts';

/** How often a trial goes over its rules, about. */
const PASSES = 8;

/**
 * Rules, by number and rising, that contradict each other and do so no longer when any one of them is left out. Where `steps` run
 * out on the way there may be more of them than are needed. The rules given must have no answer.
 */
export function smallestConflict(rules: Rules, steps: Steps = { left: MOST_STEPS_TO_EXPLAIN }): number[] {
  let conflict = followed(rules) ?? range(rules.count);
  const suffices = (chosen: readonly number[]): boolean => {
    const trial: Steps = { left: MOST_STEPS_IN_TRIAL };
    const own = narrowed(rules, chosen);
    const contradicts = contradict(own, range(own.count), trial);
    steps.left -= PASSES * chosen.length + MOST_STEPS_IN_TRIAL - trial.left;
    return contradicts === true;
  };
  // Most rules are about orders, and seldom are they to blame.
  const parities = conflict.filter((rule) => rules.kinds[rule] === PARITY);
  if (parities.length < conflict.length / 2 && suffices(parities)) conflict = parities;
  for (let size = Math.ceil(conflict.length / 2); size > 0; size = size > 1 ? Math.ceil(size / 2) : 0) {
    for (let at = 0; at < conflict.length; ) {
      if (steps.left < 0) return conflict;
      const without = conflict.toSpliced(at, size);
      if (suffices(without)) conflict = without;
      else at += size;
    }
  }
  return conflict;
}

/** Some rules by themselves, over the variables in them, so that what they take does not depend on how many others there are. */
function narrowed(rules: Rules, chosen: readonly number[]): Rules {
  const own = new Rules();
  const numbers = new Map<number, number>();
  for (const rule of chosen) {
    for (let i = rules.starts[rule] ?? 0; i < (rules.starts[rule + 1] ?? 0); i++) {
      const literal = rules.literals[i] ?? 0;
      const variable = numbers.get(literal >> 1) ?? numbers.size;
      numbers.set(literal >> 1, variable);
      own.literals.push(2 * variable + (literal & 1));
    }
    own.starts.push(own.literals.length);
    own.kinds.push(rules.kinds[rule] ?? PARITY);
    own.odd.push(rules.odd[rule] ?? 0);
  }
  own.variables = numbers.size;
  return own;
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
