import { PRINT_REMINDER, pageFooter } from '../../wording/index.ts';
import type { SceneItem, SceneLabel } from '../scene.ts';
import { emOf, textWidth } from '../text-metrics.ts';
import { fitText } from './fit-text.ts';
import type { PageFormat } from './sheet-format.ts';

const SIZE = 2.5;
const GAP_MM = 6;
/** Letters' rise and drop, in ems, keep the text within the printable area. */
const RISE = 0.75;
const DROP = 0.22;

/** The line at a page's head: what is on it. */
export function pageHead(format: PageFormat, heading: string): readonly SceneItem[] {
  const { left, right, top } = format.printable;
  return [note(fitText(heading, SIZE, right - left), left, top + RISE * emOf(SIZE, 'regular'), 'start')];
}

/** The line at a page's foot: the name, the reminder to print at 100 %, and page k of n. */
export function pageFoot(format: PageFormat, name: string, page: number, pages: number): readonly SceneItem[] {
  const { left, right, bottom } = format.printable;
  const y = bottom - DROP * emOf(SIZE, 'regular');
  const middle = (left + right) / 2;
  const room = middle - textWidth(PRINT_REMINDER, SIZE) / 2 - GAP_MM - left;
  return [
    note(fitText(name, SIZE, room), left, y, 'start'),
    note(PRINT_REMINDER, middle, y, 'middle'),
    note(pageFooter(page, pages), right, y, 'end'),
  ];
}

function note(text: string, x: number, y: number, anchor: SceneLabel['anchor']): SceneLabel {
  return { kind: 'label', text, at: { x, y }, size: SIZE, anchor, turn: 0, role: 'note' };
}
