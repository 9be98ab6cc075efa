import type { Point, Seen } from '../geometry/index.ts';

/**
 * The points of a piece where lines meet, each once. What comes nearer to an earlier one than the tolerance is that one; so
 * points that matter most are entered first.
 */
export class Nodes {
  readonly all: Seen[] = [];
  /** True when every point was one that had been entered exactly so, or a new one. */
  exact = true;
  readonly #tolerance: number;
  readonly #cell: number;
  readonly #cells = new Map<number, number[]>();

  /** `side` is the larger side of the piece and `tolerance` how near two points are one, both in mm. */
  constructor(side: number, tolerance: number) {
    this.#tolerance = tolerance;
    this.#cell = Math.max(side / 2 ** 16, tolerance * 4);
  }

  /** Number of the node at a point. */
  enter(point: Seen): number {
    const known = this.#near(point, this.#tolerance);
    return known ?? this.#add(point);
  }

  /** Number of the node at exactly a point, however near others are. */
  enterExactly(point: Seen): number {
    return this.#near(point, 0) ?? this.#add(point);
  }

  at(node: number): Seen {
    const found = this.all[node];
    if (found === undefined) throw new RangeError('no node has this number');
    return found;
  }

  #add(point: Seen): number {
    const key = this.#key(this.#index(point.x), this.#index(point.y));
    const node = this.all.push(point) - 1;
    const cell = this.#cells.get(key);
    if (cell) cell.push(node);
    else this.#cells.set(key, [node]);
    if (point.at.rounded) this.exact = false;
    return node;
  }

  #near(point: Seen, tolerance: number): number | undefined {
    const reach = Math.max(tolerance, this.#tolerance);
    for (let ix = this.#index(point.x - reach); ix <= this.#index(point.x + reach); ix++)
      for (let iy = this.#index(point.y - reach); iy <= this.#index(point.y + reach); iy++)
        for (const node of this.#cells.get(this.#key(ix, iy)) ?? []) {
          const other = this.at(node);
          if (Math.hypot(other.x - point.x, other.y - point.y) > reach) continue;
          if (isSame(other.at, point.at)) return node;
          if (tolerance > 0) {
            this.exact = false;
            return node;
          }
        }
    return undefined;
  }

  #index(value: number): number {
    return Math.floor(value / this.#cell);
  }

  #key(ix: number, iy: number): number {
    return ix * 2 ** 26 + iy;
  }
}

function isSame(a: Point, b: Point): boolean {
  return a === b || (a.x.equals(b.x) && a.y.equals(b.y));
}
