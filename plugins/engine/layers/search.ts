import type { Steps } from './limits.ts';
import { EITHER_LEFT, PARITY_LEFT, type Part, PLACES } from './reduce.ts';

export interface Found {
  /** For each answer, 1 for the part's variables that are true and 0 for those that are false. */
  readonly answers: readonly Uint8Array[];
  /** Every answer is there. */
  readonly all: boolean;
}

/**
 * Answers to a part, depth first, up to a limit; always in the same sequence. Variables in most rules are tried first, and of
 * each first what `prefer` says (1 is true). One step is one rule that is looked at; `steps` may be shared with other parts.
 */
export function search(part: Part, limit: number, steps: Steps, prefer: (variable: number) => number): Found {
  const size = part.variables.length;
  const value = new Int8Array(size).fill(-1);
  const { kinds, sizes, odd } = part;
  const literals = Int32Array.from(part.literals);
  const { starts, rules } = usesOf(part);
  const often = (v: number): number => (starts[v + 1] ?? 0) - (starts[v] ?? 0);
  const order = Array.from({ length: size }, (_, v) => v).sort((a, b) => often(b) - often(a) || a - b);
  const trail: number[] = [];
  const answers: Uint8Array[] = [];
  /** Places on the trail where something was tried, and whether it was the second try. */
  const tries: { at: number; literal: number; second: boolean; next: number }[] = [];

  const set = (literal: number): void => {
    value[literal >> 1] = 1 - (literal & 1);
    trail.push(literal >> 1);
  };
  /** The literal that a rule forces now, `NOTHING` or `BROKEN`. */
  const forcedBy = (rule: number): number => {
    const count = sizes[rule] as number;
    let open = 0;
    let last = 0;
    let held = 0;
    for (let i = PLACES * rule; i < PLACES * rule + count; i++) {
      const literal = literals[i] as number;
      const known = value[literal >> 1] as number;
      if (known < 0) {
        if (++open > 1) return NOTHING;
        last = literal;
      } else held += known ^ (literal & 1);
    }
    const kind = kinds[rule];
    if (kind === PARITY_LEFT) {
      const even = (held & 1) === odd[rule];
      return open === 0 ? (even ? NOTHING : BROKEN) : even ? last ^ 1 : last;
    }
    if (kind === EITHER_LEFT) return held > 0 ? NOTHING : open === 0 ? BROKEN : last;
    if (open === 0) return held === 0 || held === count ? BROKEN : NOTHING;
    return held === 0 ? last : held === count - 1 ? last ^ 1 : NOTHING;
  };
  const follow = (from: number): boolean => {
    for (let at = from; at < trail.length; at++) {
      const variable = trail[at] as number;
      const end = starts[variable + 1] as number;
      for (let use = starts[variable] as number; use < end; use++) {
        const forced = forcedBy(rules[use] as number);
        if (forced === BROKEN) return false;
        if (forced !== NOTHING) set(forced);
      }
      steps.left -= end - (starts[variable] as number);
    }
    return true;
  };
  const back = (): number => {
    for (let last = tries.pop(); last; last = tries.pop()) {
      while (trail.length > last.at) value[trail.pop() ?? 0] = -1;
      if (last.second) continue;
      tries.push({ ...last, literal: last.literal ^ 1, second: true });
      set(last.literal ^ 1);
      return last.at;
    }
    return -1;
  };

  for (let from = 0; ; ) {
    if (steps.left < 0) return { answers, all: false };
    let next = tries.at(-1)?.next ?? 0;
    const sound = follow(from);
    while (sound && next < size && value[order[next] ?? 0] !== -1) next++;
    if (sound && next < size) {
      const variable = order[next] ?? 0;
      const literal = 2 * variable + (prefer(variable) ? 0 : 1);
      from = trail.length;
      tries.push({ at: from, literal, second: false, next });
      set(literal);
      continue;
    }
    if (sound) {
      if (answers.length === limit) return { answers, all: false };
      answers.push(Uint8Array.from(value));
    }
    from = back();
    if (from < 0) return { answers, all: true };
  }
}

const NOTHING = -1;
const BROKEN = -2;

/** For each variable, the rules that it is in: `rules` from `starts[v]` up to `starts[v + 1]`. */
function usesOf({ variables, literals, sizes }: Part): { readonly starts: Int32Array; readonly rules: Int32Array } {
  const starts = new Int32Array(variables.length + 2);
  const each = (visit: (variable: number, rule: number) => void): void => {
    for (let rule = 0; rule < sizes.length; rule++) {
      for (let i = 0; i < (sizes[rule] as number); i++) visit((literals[PLACES * rule + i] as number) >> 1, rule);
    }
  };
  each((variable) => {
    starts[variable + 2] = (starts[variable + 2] as number) + 1;
  });
  for (let v = 2; v < starts.length; v++) starts[v] = (starts[v] as number) + (starts[v - 1] as number);
  const rules = new Int32Array(starts.at(-1) ?? 0);
  // Filling moves each start to where the next one belongs.
  each((variable, rule) => {
    const next = starts[variable + 1] as number;
    rules[next] = rule;
    starts[variable + 1] = next + 1;
  });
  return { starts, rules };
}
