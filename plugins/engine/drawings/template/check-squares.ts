import { SQUARE_WORDS } from '../../wording/index.ts';
import type { SceneItem, SceneLabel } from '../scene.ts';
import { type Flowed, paragraph } from '../text-column.ts';
import { emOf } from '../text-metrics.ts';

/** Sides of the squares to measure, in mm: 50 mm and 2 in. */
export const METRIC_SQUARE_MM = 50;
export const INCH_SQUARE_MM = 50.8;

const BETWEEN_MM = 8;
const LABEL_SIZE = 3.5;
const NOTE_SIZE = 2.5;

/** Two squares side by side and, to their right, what to do when they measure wrong. */
export function checkSquares(column: { readonly left: number; readonly top: number; readonly width: number }): Flowed {
  const top = column.top + 1;
  const second = column.left + METRIC_SQUARE_MM + BETWEEN_MM;
  const text = second + INCH_SQUARE_MM + BETWEEN_MM;
  const items: SceneItem[] = [
    ...square(column.left, top, METRIC_SQUARE_MM, SQUARE_WORDS.metric),
    ...square(second, top, INCH_SQUARE_MM, SQUARE_WORDS.inch),
  ];
  let bottom = top;
  for (const words of SQUARE_WORDS.wrong) {
    const lines = paragraph(
      words,
      { left: text, top: bottom, width: column.left + column.width - text },
      { size: NOTE_SIZE, role: 'note' },
    );
    items.push(...lines.items);
    bottom = lines.bottom + 1.5;
  }
  return { items, bottom: Math.max(bottom, top + INCH_SQUARE_MM) + 2 };
}

function square(left: number, top: number, side: number, words: string): readonly SceneItem[] {
  const corners = [
    { x: left, y: top },
    { x: left + side, y: top },
    { x: left + side, y: top + side },
    { x: left, y: top + side },
  ];
  const label: SceneLabel = {
    kind: 'label',
    text: words,
    at: { x: left + side / 2, y: top + side / 2 + 0.25 * emOf(LABEL_SIZE, 'regular') },
    size: LABEL_SIZE,
    anchor: 'middle',
    turn: 0,
    role: 'figure',
  };
  return [
    ...corners.map((from, i): SceneItem => ({ kind: 'line', role: 'frame', from, to: corners[(i + 1) % 4] ?? from })),
    label,
  ];
}
