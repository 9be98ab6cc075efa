import type { Panel } from '../panels/index.ts';
import { sayName } from '../wording/index.ts';
import type { Board } from './board.ts';
import { type Box, within } from './box.ts';
import type { DrawnPiece } from './drawn-piece.ts';
import type { SceneLabel } from './scene.ts';
import { emOf, labelBox } from './text-metrics.ts';

const SIZES = [3.5, 2.5];
/** Parts of the panel's height (or width) at which its name may stand: the middle first. */
const PARTS = [0.5, 0.35, 0.65, 0.2, 0.8];
const HALF_LETTER = 0.25;

/** A panel as drawn, and its name as it is written there. */
export interface NamedBox {
  readonly box: Box;
  readonly text: string;
}

/** Box of a panel on the sheet, in mm, with its name without its piece: `base.left-gate` is "left gate". Empty for a piece of one panel. */
export function namedBox(drawn: DrawnPiece, panel: Panel): NamedBox {
  const xs = panel.outline.map((point) => drawn.left + point.x.valueOf() * drawn.scale);
  const ys = panel.outline.map((point) => drawn.top + point.y.valueOf() * drawn.scale);
  return {
    box: { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) },
    text: sayName(panel.name.slice(panel.piece.length + 1).replaceAll('.', ' ')),
  };
}

/**
 * Writes each panel's name within it: all alike if one size and place suits all, else each as it can, turned where the
 * panel is narrow. Names without room are left out.
 */
export function drawPanelNames(board: Board, boxes: readonly NamedBox[]): void {
  const panels = boxes.filter(({ text }) => text !== '');
  for (const spot of spots()) {
    const labels = panels.map((panel) => labelAt(panel, spot));
    if (!labels.every((label, i) => fits(board, label, panels[i]))) continue;
    board.add(...labels);
    return;
  }
  for (const panel of panels)
    board.place(
      spots()
        .map((spot) => labelAt(panel, spot))
        .filter((label) => fits(board, label, panel)),
    );
}

interface Spot {
  readonly turn: 0 | 90;
  readonly size: number;
  readonly part: number;
}

function spots(): readonly Spot[] {
  return ([0, 90] as const).flatMap((turn) => SIZES.flatMap((size) => PARTS.map((part) => ({ turn, size, part }))));
}

function labelAt({ box, text }: NamedBox, { turn, size, part }: Spot): SceneLabel {
  const width = box.right - box.left;
  const height = box.bottom - box.top;
  const half = HALF_LETTER * emOf(size, 'regular');
  const at =
    turn === 0
      ? { x: box.left + width / 2, y: box.top + part * height + half }
      : { x: box.left + part * width + half, y: box.top + height / 2 };
  return { kind: 'label', text, role: 'name', anchor: 'middle', size, at, turn };
}

function fits(board: Board, label: SceneLabel, panel: NamedBox | undefined): boolean {
  const box = labelBox(label);
  return panel !== undefined && within(box, panel.box) && board.isClear(box);
}
