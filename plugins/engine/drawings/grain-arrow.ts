import { GRAIN_WORD } from '../wording/index.ts';
import type { Board } from './board.ts';
import { type Box, union } from './box.ts';
import { isWithin, type NamedPanel } from './panel-names.ts';
import type { SceneLabel, SceneLine, ScenePoint } from './scene.ts';
import { labelBox } from './text-metrics.ts';

const ARROW_MM = 14;
const SIZE = 2.5;
const WORD_OFF_MM = 1.2;

/** Draws the grain arrow with its word in the first of the panels that has room; false when none has. */
export function drawGrainArrow(board: Board, grain: 'across' | 'down', panels: readonly NamedPanel[]): boolean {
  const roomiest = [...panels].sort((a, b) => Math.round(areaOf(b.box) - areaOf(a.box)));
  for (const panel of roomiest) {
    for (const { x, y } of middlesIn(panel.box, grain)) {
      const { arrow, word } = grainArrow(grain, x, y);
      const box = union(labelBox(word), {
        left: Math.min(arrow.from.x, arrow.to.x) - 1,
        right: Math.max(arrow.from.x, arrow.to.x) + 1,
        top: Math.min(arrow.from.y, arrow.to.y) - 1,
        bottom: Math.max(arrow.from.y, arrow.to.y) + 1,
      });
      if (!isWithin(box, panel) || !board.isClear(box)) continue;
      board.add(arrow, word);
      return true;
    }
  }
  return false;
}

/** Where in a panel the arrow's middle may lie: first beside its middle, square to the grain, then anywhere. */
function middlesIn(panel: Box, grain: 'across' | 'down'): readonly ScenePoint[] {
  return [0.5, 0.2, 0.8, 0.3, 0.7].flatMap((along) =>
    [0.2, 0.8, 0.35, 0.65, 0.5].map((beside) => {
      const [across, down] = grain === 'down' ? [beside, along] : [along, beside];
      return {
        x: panel.left + across * (panel.right - panel.left),
        y: panel.top + down * (panel.bottom - panel.top),
      };
    }),
  );
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
