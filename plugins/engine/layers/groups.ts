/** Things by number that are joined two at a time into groups. */
export class Groups {
  private readonly parent: Int32Array;

  constructor(size: number) {
    this.parent = Int32Array.from({ length: size }, (_, i) => i);
  }

  of(item: number): number {
    const { parent } = this;
    let at = item;
    for (let up = parent[at] ?? at; up !== at; up = parent[at] ?? at) {
      parent[at] = parent[up] ?? up;
      at = up;
    }
    return at;
  }

  join(a: number, b: number): void {
    const [one, other] = [this.of(a), this.of(b)];
    this.parent[Math.max(one, other)] = Math.min(one, other);
  }

  /** Groups numbered from 0, in the order of their first members. */
  numbered(): { readonly of: Int32Array; readonly count: number } {
    const numbers = new Int32Array(this.parent.length);
    let count = 0;
    // The smallest member stands for its group, so it is met first.
    for (let i = 0; i < numbers.length; i++) numbers[i] = this.of(i) === i ? count++ : (numbers[this.of(i)] ?? 0);
    return { of: numbers, count };
  }
}
