import { distinctRules, type LeftRule } from './distinct-rules.ts';
import { Groups } from './groups.ts';
import { PARITY, type Rules } from './rules.ts';

/** Rules over fewer variables: those that must be alike, or opposites, are one. */
export interface Reduced {
  /** For each variable the literal that it equals, of a variable that stands for several; 0 and 1 are true and false. */
  readonly equals: Int32Array;
  /** What is left to decide, in parts that have nothing to do with each other. */
  readonly parts: readonly Part[];
}

/**
 * Rules over their own variables, counted from 0, in flat lists: each rule has four places for literals, of which `sizes` are in
 * use.
 */
export interface Part {
  /** Literals that the part's variables stand for in `equals`, halved. */
  readonly variables: readonly number[];
  /** `PARITY_LEFT`, `NOT_ALIKE_LEFT` or `EITHER_LEFT`. */
  readonly kinds: readonly number[];
  readonly literals: readonly number[];
  readonly sizes: readonly number[];
  readonly odd: readonly number[];
}

export const PARITY_LEFT = 0;
export const NOT_ALIKE_LEFT = 1;
/** At least one of two literals holds. */
export const EITHER_LEFT = 2;
export const PLACES = 4;

/**
 * Draws every conclusion that follows from rules of one and two variables, again and again until nothing new follows; undefined
 * when they contradict each other. Rules are given by number.
 */
export function reduce(rules: Rules, chosen: Iterable<number>): Reduced | undefined {
  const alike = new Alike(rules.variables + 1);
  let open = [...chosen];
  for (let changed = true; changed; ) {
    changed = false;
    const kept: number[] = [];
    for (const rule of open) {
      const result = rules.kinds[rule] === PARITY ? stepParity(rules, rule, alike) : stepNotAlike(rules, rule, alike);
      if (result === 'contradiction') return undefined;
      if (result === 'open') kept.push(rule);
      else if (result === 'learned') changed = true;
    }
    open = kept;
  }
  const equals = new Int32Array(rules.variables);
  for (let v = 0; v < rules.variables; v++) equals[v] = alike.literal(2 * (v + 1));
  return { equals, parts: partsOf(rules, open, alike) };
}

type Step = 'open' | 'done' | 'learned' | 'contradiction';

function stepParity(rules: Rules, rule: number, alike: Alike): Step {
  const { literals, odd } = parityOf(rules, rule, alike);
  const [one, other] = literals;
  if (one === undefined) return odd ? 'contradiction' : 'done';
  if (literals.length === 1) return alike.same(one, odd ? TRUE : FALSE) ? 'learned' : 'contradiction';
  if (literals.length > 2 || other === undefined) return 'open';
  return alike.same(one, other ^ odd) ? 'learned' : 'contradiction';
}

function stepNotAlike(rules: Rules, rule: number, alike: Alike): Step {
  const start = rules.starts[rule] ?? 0;
  const a = alike.literal((rules.literals[start] ?? 0) + 2);
  const b = alike.literal((rules.literals[start + 1] ?? 0) + 2);
  const c = alike.literal((rules.literals[start + 2] ?? 0) + 2);
  if (a === (b ^ 1) || b === (c ^ 1) || a === (c ^ 1)) return 'done';
  if (a !== b && b !== c && a !== c) return 'open';
  const [twice, once] = a === b ? [a, c] : b === c ? [b, a] : [a, b];
  return alike.same(once, twice ^ 1) ? 'learned' : 'contradiction';
}

/** Its literals as they now stand, without opposites, each of another variable; none that is decided. */
function parityOf(rules: Rules, rule: number, alike: Alike): { literals: number[]; odd: number } {
  const literals: number[] = [];
  let odd = rules.odd[rule] ?? 0;
  for (let i = rules.starts[rule] ?? 0; i < (rules.starts[rule + 1] ?? 0); i++) {
    const literal = alike.literal((rules.literals[i] ?? 0) + 2);
    if (literal >> 1 === 0) {
      if (literal === TRUE) odd ^= 1;
      continue;
    }
    odd ^= literal & 1;
    const found = literals.indexOf(literal & ~1);
    if (found >= 0) literals.splice(found, 1);
    else literals.push(literal & ~1);
  }
  return { literals, odd };
}

const TRUE = 0;
const FALSE = 1;

/** Variables that are alike or opposites of each other; variable 0 is true. */
class Alike {
  /** For each variable, a literal that it equals. */
  private readonly up: Int32Array;

  constructor(size: number) {
    this.up = Int32Array.from({ length: size }, (_, i) => 2 * i);
  }

  /** The literal that stands for all that are alike. */
  literal(literal: number): number {
    const { up } = this;
    let at = literal;
    for (;;) {
      const v = at >> 1;
      const next = up[v] as number;
      if (next >> 1 === v) return at;
      const beyond = up[next >> 1] as number;
      up[v] = beyond ^ (next & 1);
      at = (up[v] as number) ^ (at & 1);
    }
  }

  /** Makes two literals one; false when they are opposites. */
  same(one: number, other: number): boolean {
    const [a, b] = [this.literal(one), this.literal(other)];
    if (a >> 1 === b >> 1) return a === b;
    // The smaller number stands for both, so that true and false stand for themselves.
    if (a < b) this.up[b >> 1] = a ^ (b & 1);
    else this.up[a >> 1] = b ^ (a & 1);
    return true;
  }
}

interface OpenPart {
  readonly variables: number[];
  readonly kinds: number[];
  readonly literals: number[];
  readonly sizes: number[];
  readonly odd: number[];
}

function partsOf(rules: Rules, open: readonly number[], alike: Alike): Part[] {
  const left = distinctRules(open.map((rule) => leftOf(rules, rule, alike)));
  const groups = new Groups(rules.variables + 1);
  for (const { literals } of left) for (const literal of literals) groups.join((literals[0] ?? 0) >> 1, literal >> 1);
  const parts: OpenPart[] = [];
  const partOf = new Int32Array(rules.variables + 1).fill(-1);
  const numbers = new Int32Array(rules.variables + 1);
  for (let v = 1; v <= rules.variables; v++) {
    if (alike.literal(2 * v) !== 2 * v) continue;
    const group = groups.of(v);
    if (partOf[group] === -1)
      partOf[group] = parts.push({ variables: [], kinds: [], literals: [], sizes: [], odd: [] }) - 1;
    numbers[v] = (parts[partOf[group] ?? 0]?.variables.push(v) ?? 1) - 1;
  }
  for (const { kind, literals, odd } of left) {
    const part = parts[partOf[groups.of((literals[0] ?? 0) >> 1)] ?? 0];
    if (part === undefined) continue;
    part.kinds.push(kind);
    part.sizes.push(literals.length);
    part.odd.push(odd);
    for (let i = 0; i < PLACES; i++) {
      const literal = literals[i] ?? 0;
      part.literals.push(2 * (numbers[literal >> 1] ?? 0) + (literal & 1));
    }
  }
  return parts;
}

function leftOf(rules: Rules, rule: number, alike: Alike): LeftRule {
  if (rules.kinds[rule] === PARITY) {
    const { literals, odd } = parityOf(rules, rule, alike);
    return { kind: PARITY_LEFT, literals: literals.sort((a, b) => a - b), odd };
  }
  const start = rules.starts[rule] as number;
  let a = alike.literal((rules.literals[start] as number) + 2);
  let b = alike.literal((rules.literals[start + 1] as number) + 2);
  let c = alike.literal((rules.literals[start + 2] as number) + 2);
  if (a > b) [a, b] = [b, a];
  if (b > c) [b, c] = [c, b];
  if (a > b) [a, b] = [b, a];
  if (a === TRUE) return { kind: EITHER_LEFT, literals: [b ^ 1, c ^ 1], odd: 0 };
  if (a === FALSE) return { kind: EITHER_LEFT, literals: [b, c], odd: 0 };
  // Three literals are not alike when their opposites are not.
  const flip = a & 1;
  return { kind: NOT_ALIKE_LEFT, literals: [a ^ flip, b ^ flip, c ^ flip], odd: 0 };
}
