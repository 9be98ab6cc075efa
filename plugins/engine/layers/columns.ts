import { TOUCH_MM } from './touch.ts';

/** More columns than this say no more about where something lies. */
const MOST_COLUMNS = 256;

/** Segments by the columns that they lie in along one axis, so that few need to be looked at. */
export class Columns {
  readonly #low: number;
  readonly #width: number;
  /** The segments of column c: `items` from `starts[c]` up to `starts[c + 1]`. */
  readonly #starts: Int32Array;
  readonly #items: Int32Array;
  /** The last question in which a segment was met, so that each is met once. */
  readonly #met: Int32Array;
  #question = 0;

  /** `ends`: x and y of both ends of each segment in turn; `axis` 0 for x, 1 for y. */
  constructor(ends: ArrayLike<number>, axis: 0 | 1) {
    const count = ends.length / 4;
    const columns = Math.max(1, Math.min(MOST_COLUMNS, Math.ceil(count / 16)));
    let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (let i = axis; i < ends.length; i += 2) {
      low = Math.min(low, ends[i] as number);
      high = Math.max(high, ends[i] as number);
    }
    this.#low = low;
    this.#width = Math.max((high - low) / columns, TOUCH_MM);
    const starts = new Int32Array(columns + 2);
    const each = (visit: (column: number, segment: number) => void): void => {
      for (let s = 0; s < count; s++) {
        const [a, b] = [ends[4 * s + axis] as number, ends[4 * s + axis + 2] as number];
        const last = this.#columnOf(Math.max(a, b), columns);
        for (let c = this.#columnOf(Math.min(a, b), columns); c <= last; c++) visit(c, s);
      }
    };
    each((column) => {
      starts[column + 2] = (starts[column + 2] as number) + 1;
    });
    for (let c = 2; c < starts.length; c++) starts[c] = (starts[c] as number) + (starts[c - 1] as number);
    this.#items = new Int32Array(starts.at(-1) ?? 0);
    // Filling moves each start to where the next column begins.
    each((column, segment) => {
      const next = starts[column + 1] as number;
      this.#items[next] = segment;
      starts[column + 1] = next + 1;
    });
    this.#starts = starts.subarray(0, columns + 1);
    this.#met = new Int32Array(count);
  }

  /** Visits every segment that has a point between two values of the axis, or touches them, and some beside; says how many. */
  visit(from: number, to: number, look: (segment: number) => void): number {
    const columns = this.#starts.length - 1;
    this.#question++;
    const first = this.#starts[this.#columnOf(from - TOUCH_MM, columns)] as number;
    const end = this.#starts[this.#columnOf(to + TOUCH_MM, columns) + 1] as number;
    for (let i = first; i < end; i++) {
      const segment = this.#items[i] as number;
      if (this.#met[segment] === this.#question) continue;
      this.#met[segment] = this.#question;
      look(segment);
    }
    return end - first;
  }

  #columnOf(value: number, columns: number): number {
    return Math.max(0, Math.min(columns - 1, Math.floor((value - this.#low) / this.#width)));
  }
}
