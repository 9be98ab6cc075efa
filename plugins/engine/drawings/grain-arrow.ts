import { GRAIN_WORD } from '../wording/index.ts';
import type { Board } from './board.ts';
import type { SceneLabel, SceneLine } from './scene.ts';
import { type Box, labelBox } from './text-metrics.ts';

const ARROW_MM = 14;
const SIZE = 2.5;
const WORD_OFF_MM = 1.2;

/** Draws the grain arrow with its word in the first of the panels that has room; false when none has. */
export function drawGrainArrow(board: Board, grain: 'across' | 'down', panels: readonly Box[]): boolean {
  const roomiest = [...panels].sort((a, b) => Math.round(areaOf(b) - areaOf(a)));
  for (const panel of roomiest) {
    for (const part of [0.2, 0.8, 0.35, 0.65, 0.5]) {
      const x = panel.left + (grain === 'down' ? part : 0.5) * (panel.right - panel.left);
      const y = panel.top + (grain === 'down' ? 0.5 : part) * (panel.bottom - panel.top);
      const { arrow, word } = grainArrow(grain, x, y);
      const box = union(labelBox(word), {
        left: Math.min(arrow.from.x, arrow.to.x) - 1,
        right: Math.max(arrow.from.x, arrow.to.x) + 1,
        top: Math.min(arrow.from.y, arrow.to.y) - 1,
        bottom: Math.max(arrow.from.y, arrow.to.y) + 1,
      });
      const inside =
        box.left >= panel.left && box.right <= panel.right && box.top >= panel.top && box.bottom <= panel.bottom;
      if (!inside || !board.isClear(box)) continue;
      board.add(arrow, word);
      return true;
    }
  }
  return false;
}

/** An arrow with two heads about a point, its word above it or to its left. */
export function grainArrow(grain: 'across' | 'down', x: number, y: number): { arrow: SceneLine; word: SceneLabel } {
  const half = ARROW_MM / 2;
  const ends =
    grain === 'across'
      ? [
          { x: x - half, y },
          { x: x + half, y },
        ]
      : [
          { x, y: y - half },
          { x, y: y + half },
        ];
  const [from = { x, y }, to = { x, y }] = ends;
  return {
    arrow: { kind: 'line', role: 'grain', from, to, arrows: 'both' },
    word: {
      kind: 'label',
      text: GRAIN_WORD,
      role: 'name',
      size: SIZE,
      anchor: 'middle',
      at: grain === 'across' ? { x, y: y - WORD_OFF_MM } : { x: x - WORD_OFF_MM, y },
      turn: grain === 'across' ? 0 : 90,
    },
  };
}

function areaOf(box: Box): number {
  return (box.right - box.left) * (box.bottom - box.top);
}

function union(a: Box, b: Box): Box {
  return {
    left: Math.min(a.left, b.left),
    right: Math.max(a.right, b.right),
    top: Math.min(a.top, b.top),
    bottom: Math.max(a.bottom, b.bottom),
  };
}
