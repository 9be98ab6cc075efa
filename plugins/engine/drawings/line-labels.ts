import type { Board } from './board.ts';
import type { SceneLabel, SceneLine } from './scene.ts';
import { emOf, textWidth } from './text-metrics.ts';

/** From a crease to the nearest part of its letters, in mm, and letters' rise and drop in ems. */
const BESIDE_MM = 0.8;
const BEYOND_MM = 0.4;
const RISE = 0.72;
const DROP = 0.2;

/** Parts of the crease's length at which its name may stand: the middle first. */
const ALONG = [0.5, 0.3, 0.7, 0.2, 0.8];
const SIZES = [3.5, 2.5];
/** A direction this near to upright or level is. */
const SQUARE = 1e-9;

/** A line of a piece as drawn, and what is to be written at it. */
export interface LabelledLine {
  /** As far as there is paper: a line with a window in its way is two. At least one. */
  readonly lines: readonly SceneLine[];
  /** What to write: the first that fits at all lines alike, else the first that fits at this one. */
  readonly texts: readonly string[];
  /** Whether its texts say more than the line and its legend: only then they are worth a place of their own. */
  readonly named: boolean;
  /** Whether a number may stand in for them. */
  readonly keyed: boolean;
}

export interface LineLabelOptions<Item> {
  /** A text may also stand past a straight line's lower or right end. */
  readonly beyond: boolean;
  /** The first of the numbers that stand where a name has no room; undefined when none may. */
  readonly firstKey: number | undefined;
  /** Of very many lines, which get their last text when not all have room for it; the fullest choice first. */
  readonly thinned?: readonly ((item: Item) => boolean)[];
}

/** What stands at a line: one of its texts, a number, or nothing. */
export interface PlacedLabel<Item> {
  readonly item: Item;
  readonly text: string | undefined;
  readonly key: number | undefined;
}

/** Writes at each line its text. Returns what was written, in the order of the lines. */
export function drawLineLabels<Item extends LabelledLine>(
  board: Board,
  items: readonly Item[],
  { beyond, firstKey, thinned = [] }: LineLabelOptions<Item>,
): readonly PlacedLabel<Item>[] {
  const most = Math.max(0, ...items.map(({ texts }) => texts.length));
  for (let choice = 0; choice < most; choice++) {
    const textOf = ({ texts }: Item): string => texts[choice] ?? texts.at(-1) ?? '';
    for (const size of SIZES) {
      const alike = (copy: Board): boolean =>
        items.every((item) => copy.place(candidates(item.lines, textOf(item), [size], beyond)));
      if (board.try(alike)) return items.map((item) => ({ item, text: textOf(item), key: undefined }));
    }
  }
  for (const takes of thinned) {
    const some = (copy: Board): boolean =>
      items.every((item) => {
        const [text] = item.texts.slice(-1);
        return text === undefined || !takes(item) || copy.place(candidates(item.lines, text, SIZES.slice(-1), beyond));
      });
    if (board.try(some))
      return items.map((item) => ({ item, text: takes(item) ? item.texts.at(-1) : undefined, key: undefined }));
  }
  let next = firstKey ?? 0;
  return items.map((item): PlacedLabel<Item> => {
    if (!item.named) return { item, text: undefined, key: undefined };
    const text = item.texts.find((each) => board.place(candidates(item.lines, each, SIZES, beyond)));
    if (text !== undefined || firstKey === undefined || !item.keyed) return { item, text, key: undefined };
    const keyed = board.place(candidates(item.lines, String(next), SIZES, beyond));
    return { item, text, key: keyed ? next++ : undefined };
  });
}

function* candidates(
  lines: readonly SceneLine[],
  text: string,
  sizes: readonly number[],
  beyond: boolean,
): Generator<SceneLabel> {
  const longest = [...lines].sort((a, b) => Math.round(1000 * (lengthOf(b) - lengthOf(a))));
  for (const line of longest) yield* beside(line, text, sizes);
  if (!beyond) return;
  for (const line of longest) yield* past(line, text, sizes);
}

function lengthOf({ from, to }: SceneLine): number {
  return Math.hypot(to.x - from.x, to.y - from.y);
}

/** Along the line, on either side. At a sloping line the text stands level. */
function* beside({ from, to }: SceneLine, text: string, sizes: readonly number[]): Generator<SceneLabel> {
  const label = { kind: 'label', text, role: 'name', anchor: 'middle' } as const;
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const way = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  const [upright, level] = [Math.abs(way.x) < SQUARE, Math.abs(way.y) < SQUARE];
  for (const size of sizes) {
    const em = emOf(size, 'regular');
    for (const part of ALONG) {
      const middle = { x: from.x + part * (to.x - from.x), y: from.y + part * (to.y - from.y) };
      if (!upright && !level) {
        const halfWidth = textWidth(text, size) / 2;
        const halfHeight = ((RISE + DROP) / 2) * em;
        // Far enough off that the nearest corner of the letters' box clears the line.
        const off = BESIDE_MM + Math.abs(way.y) * halfWidth + Math.abs(way.x) * halfHeight;
        for (const side of [1, -1]) {
          const y = middle.y - side * way.x * off + ((RISE - DROP) / 2) * em;
          yield { ...label, size, at: { x: middle.x + side * way.y * off, y }, turn: 0 };
        }
        continue;
      }
      for (const offset of [-DROP * em - BESIDE_MM, RISE * em + BESIDE_MM]) {
        yield upright
          ? { ...label, size, at: { x: middle.x + offset, y: middle.y }, turn: 90 }
          : { ...label, size, at: { x: middle.x, y: middle.y + offset }, turn: 0 };
      }
    }
  }
}

/** Past the lower end of an upright line, the right end of a level one, either end of one that slopes. */
function* past({ from, to }: SceneLine, text: string, sizes: readonly number[]): Generator<SceneLabel> {
  const label = { kind: 'label', text, role: 'name', anchor: 'middle', turn: 0 } as const;
  const [upright, level] = [from.x === to.x, from.y === to.y];
  for (const size of sizes) {
    const em = emOf(size, 'regular');
    if (upright) yield { ...label, size, at: { x: to.x, y: Math.max(from.y, to.y) + RISE * em + BEYOND_MM } };
    else if (level)
      yield { ...label, size, anchor: 'start', at: { x: Math.max(from.x, to.x) + BEYOND_MM, y: to.y + 0.25 * em } };
    else {
      for (const [near, end] of [
        [from, to],
        [to, from],
      ] as const) {
        const right = end.x > near.x;
        const at = { x: end.x + (right ? BESIDE_MM : -BESIDE_MM), y: end.y + 0.25 * em };
        yield { ...label, size, anchor: right ? 'start' : 'end', at };
      }
    }
  }
}
