import type { HingeJoint, LaidJoint, SlipJoint } from '../assembly/index.ts';

/** Why a rule holds; panels by index. */
export type Why =
  /** A crease is shut the way it is scored, or a joint lays one panel on the other. */
  | { readonly is: 'fold'; readonly joint: HingeJoint }
  | { readonly is: 'laid'; readonly joint: LaidJoint | SlipJoint }
  /** Paper does not pass through paper at a line, where it is creased or goes straight on. */
  | { readonly is: 'passing'; readonly one: Passes; readonly other: Passes }
  /** Nothing lies between two panels that are held to each other. */
  | { readonly is: 'between'; readonly joint: LaidJoint; readonly panel: number }
  /** What lies above another lies above all that is below that. */
  | { readonly is: 'order' };

const ORDER: Why = { is: 'order' };

/** What paper does at a line: it is creased there, or a panel goes straight on; `joint` where it is woven or slotted there. */
export type Passes =
  | { readonly is: 'creased'; readonly joint: HingeJoint }
  | { readonly is: 'straight'; readonly panel: number; readonly joint: LaidJoint | undefined };

/**
 * Statements about which of two leaves lies above the other, each a yes or no: a variable.
 *
 * A literal is `2 * variable`, plus one for its opposite. Two kinds of rule are enough:
 * - the number of literals that hold is even, or is odd (`PARITY`): everything that keeps paper from passing through paper
 *   at a line, and everything that glue says;
 * - of three literals neither all hold nor none (`NOT_ALIKE`): an order does not run in a circle.
 */
export class Rules {
  /** Variables in use. */
  variables = 0;
  readonly kinds: number[] = [];
  /** Where the literals of each rule begin, and where those of the last one end. */
  readonly starts: number[] = [0];
  readonly literals: number[] = [];
  /** For a parity: 1 when the number that hold is odd. */
  readonly odd: number[] = [];
  readonly why: Why[] = [];
  /** Literals that the first answer should have where it can. */
  readonly preferred: number[] = [];
  private readonly seen = new Set<number | string>();
  private readonly seenAlike = new Set<number>();

  get count(): number {
    return this.kinds.length;
  }

  /** That the number of these literals that hold is odd, or even. Literals that cancel leave; a rule said twice is one. */
  parity(literals: readonly number[], odd: boolean, why: () => Why): void {
    let rest = odd ? 1 : 0;
    const variables: number[] = [];
    for (const literal of literals) {
      rest ^= literal & 1;
      const found = variables.indexOf(literal >> 1);
      if (found >= 0) variables.splice(found, 1);
      else variables.push(literal >> 1);
    }
    if (variables.length === 0 && rest === 0) return;
    variables.sort((a, b) => a - b);
    if (this.known(keyOf(variables, rest))) return;
    this.add(
      PARITY,
      variables.map((variable) => 2 * variable),
      rest,
      why(),
    );
  }

  /** That a literal holds. */
  holds(literal: number, why: () => Why): void {
    this.parity([literal], true, why);
  }

  /** That two literals hold together or not at all. */
  alike(one: number, other: number, why: () => Why): void {
    // Said at every spot where it shows, and so most often of all.
    const pair = one * 2 ** 26 + other;
    if (this.seenAlike.has(pair)) return;
    this.seenAlike.add(pair);
    this.parity([one, other], false, why);
  }

  /** That of three literals neither all hold nor none. */
  notAlike(a: number, b: number, c: number): void {
    this.kinds.push(NOT_ALIKE);
    this.literals.push(a, b, c);
    this.starts.push(this.literals.length);
    this.odd.push(0);
    this.why.push(ORDER);
  }

  private known(key: number | string): boolean {
    if (this.seen.has(key)) return true;
    this.seen.add(key);
    return false;
  }

  private add(kind: number, literals: readonly number[], odd: number, why: Why): void {
    this.kinds.push(kind);
    for (const literal of literals) this.literals.push(literal);
    this.starts.push(this.literals.length);
    this.odd.push(odd);
    this.why.push(why);
  }
}

export const PARITY = 0;
export const NOT_ALIKE = 1;

/** Up to four variables below 4096 fit into one exact number; others become a text. */
function keyOf(variables: readonly number[], odd: number): number | string {
  if (variables.length > 4 || (variables.at(-1) ?? 0) >= 4095) return `${odd} ${variables.join(' ')}`;
  let key = odd + 2;
  for (const variable of variables) key = key * 4096 + variable + 1;
  return key;
}
