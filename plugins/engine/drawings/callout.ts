import { direction } from './arcs.ts';
import type { Board } from './board.ts';
import { extensionLine } from './dimension-line.ts';
import { FIGURE_SIZES, HALF_FIGURE } from './figure-plan.ts';
import type { SceneLabel, ScenePoint } from './scene.ts';
import { emOf, labelBox } from './text-metrics.ts';

/** Lengths of the leader, and the room between its end and the letters, in mm. */
const LEADERS_MM = [3, 6, 10, 15];
const BESIDE_MM = 0.8;

/** A figure that stands at the end of a leader. */
export interface Callout {
  readonly text: string;
  /** Where the leader may begin, by the direction in which it goes, in degrees clockwise from the right; the best first. */
  readonly starts: readonly { readonly at: ScenePoint; readonly degrees: number }[];
}

/** Draws a leader and a figure at its end, where both find room; false when they find none. */
export function drawCallout(board: Board, { text, starts }: Callout): boolean {
  for (const size of FIGURE_SIZES) {
    for (const length of LEADERS_MM) {
      for (const { at, degrees } of starts) {
        const [cos, sin] = direction(degrees);
        const end = { x: at.x + length * cos, y: at.y + length * sin };
        const leader = extensionLine(at, end);
        const label = labelBeyond(text, end, cos, size);
        if (!board.isClear(labelBox(label)) || !board.isFree(leader)) continue;
        board.add(leader, label);
        return true;
      }
    }
  }
  return false;
}

function labelBeyond(text: string, end: ScenePoint, cos: number, size: number): SceneLabel {
  const right = cos >= 0;
  return {
    kind: 'label',
    text,
    role: 'figure',
    size,
    anchor: right ? 'start' : 'end',
    at: { x: end.x + (right ? BESIDE_MM : -BESIDE_MM), y: end.y + HALF_FIGURE * emOf(size, 'regular') },
    turn: 0,
  };
}
