/** A rule that is left, over variables that stand for others. */
export interface LeftRule {
  readonly kind: number;
  /** Rising. */
  readonly literals: readonly number[];
  readonly odd: number;
}

/** Each rule once, by a table of hashes: a set of texts would take longer than solving. */
export function distinctRules(list: readonly LeftRule[]): LeftRule[] {
  const size = 2 ** Math.ceil(Math.log2(2 * list.length + 2));
  const table = new Int32Array(size);
  const kept: LeftRule[] = [];
  for (const rule of list) {
    let slot = hashOf(rule) & (size - 1);
    for (let known = kept[(table[slot] as number) - 1]; known && !alike(known, rule); ) {
      slot = (slot + 1) & (size - 1);
      known = kept[(table[slot] as number) - 1];
    }
    if (table[slot] === 0) table[slot] = kept.push(rule);
  }
  return kept;
}

function hashOf({ kind, literals, odd }: LeftRule): number {
  let hash = 2 * kind + odd;
  for (const literal of literals) hash = Math.imul(hash ^ literal, 0x9e37_79b1) ^ (hash >>> 15);
  return hash >>> 0;
}

function alike(one: LeftRule, other: LeftRule): boolean {
  if (one.kind !== other.kind || one.odd !== other.odd || one.literals.length !== other.literals.length) return false;
  for (let i = 0; i < one.literals.length; i++) if (one.literals[i] !== other.literals[i]) return false;
  return true;
}
