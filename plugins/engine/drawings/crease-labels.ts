import type { Board } from './board.ts';
import type { SceneLabel, SceneLine } from './scene.ts';
import { emOf } from './text-metrics.ts';

/** From a crease to the nearest part of its letters, in mm, and letters' rise and drop in ems. */
const BESIDE_MM = 0.8;
const BEYOND_MM = 0.4;
const RISE = 0.72;
const DROP = 0.2;

/** Parts of the crease's length at which its name may stand: the middle first. */
const ALONG = [0.5, 0.3, 0.7, 0.2, 0.8];
const SIZES = [3.5, 2.5];

/** A crease as drawn, upright or level, and what is to be written at it. */
export interface LabelledCrease {
  readonly line: SceneLine;
  /** What to write: the first that fits at all creases alike, else the first that fits at this one. */
  readonly texts: readonly string[];
  /** Whether its texts say more than the line and its legend: only then a number may stand in for them. */
  readonly named: boolean;
}

export interface CreaseLabelOptions {
  /** A text may also stand past the crease's lower or right end. */
  readonly beyond: boolean;
  /** A number, counted from 1, stands where a name has no room. */
  readonly numbers: boolean;
}

/** Writes beside each crease its text. Returns the creases that got numbers, in the order of these. */
export function drawCreaseLabels<Item extends LabelledCrease>(
  board: Board,
  creases: readonly Item[],
  { beyond, numbers }: CreaseLabelOptions,
): readonly Item[] {
  const most = Math.max(0, ...creases.map(({ texts }) => texts.length));
  for (let choice = 0; choice < most; choice++) {
    for (const size of SIZES) {
      const alike = (copy: Board): boolean =>
        creases.every(({ line, texts }) => copy.place(candidates(line, texts[choice] ?? '', [size], beyond)));
      if (board.try(alike)) return [];
    }
  }
  const keyed: Item[] = [];
  for (const crease of creases.filter(({ named }) => named)) {
    if (crease.texts.some((text) => board.place(candidates(crease.line, text, SIZES, beyond)))) continue;
    if (!numbers) continue;
    if (board.place(candidates(crease.line, String(keyed.length + 1), SIZES, beyond))) keyed.push(crease);
  }
  return keyed;
}

function* candidates(
  { from, to }: SceneLine,
  text: string,
  sizes: readonly number[],
  beyond: boolean,
): Generator<SceneLabel> {
  const label = { kind: 'label', text, role: 'name', anchor: 'middle' } as const;
  const upright = from.x === to.x;
  for (const size of sizes) {
    const em = emOf(size, 'regular');
    for (const part of ALONG) {
      const middle = { x: from.x + part * (to.x - from.x), y: from.y + part * (to.y - from.y) };
      for (const offset of [-DROP * em - BESIDE_MM, RISE * em + BESIDE_MM]) {
        yield upright
          ? { ...label, size, at: { x: middle.x + offset, y: middle.y }, turn: 90 }
          : { ...label, size, at: { x: middle.x, y: middle.y + offset }, turn: 0 };
      }
    }
  }
  if (!beyond) return;
  for (const size of sizes) {
    const em = emOf(size, 'regular');
    if (upright) yield { ...label, size, at: { x: to.x, y: to.y + RISE * em + BEYOND_MM }, turn: 0 };
    else yield { ...label, size, anchor: 'start', at: { x: to.x + BEYOND_MM, y: to.y + 0.25 * em }, turn: 0 };
  }
}
