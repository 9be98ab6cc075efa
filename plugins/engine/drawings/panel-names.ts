import type { Panel } from '../panels/index.ts';
import { sayName } from '../wording/index.ts';
import type { Board } from './board.ts';
import { type Box, within } from './box.ts';
import { type DrawnPiece, onSheet } from './drawn-piece.ts';
import { holds } from './rings.ts';
import type { SceneLabel, ScenePoint } from './scene.ts';
import { emOf, labelBox } from './text-metrics.ts';

const SIZES = [3.5, 2.5];
/** Parts of the panel's height (or width) at which its name may stand: the middle first. */
const PARTS = [0.5, 0.35, 0.65, 0.2, 0.8];
const HALF_LETTER = 0.25;
/** How far a name may lie from the middle of a panel that is no rectangle, in mm. */
const OFF_MIDDLE = [0, -4, 4, -8, 8];

/** A panel as drawn, and its name as it is written there. */
export interface NamedPanel {
  readonly box: Box;
  /** Its paper: the outline, then its holes. */
  readonly rings: readonly (readonly ScenePoint[])[];
  /** A point well inside. */
  readonly inside: ScenePoint;
  readonly text: string;
}

/** A panel on the sheet, in mm, with its name without its piece: `base.left-gate` is "left gate". Empty for a piece of one panel. */
export function namedPanel(drawn: DrawnPiece, panel: Panel): NamedPanel {
  const rings = [panel.outline, ...panel.holes].map((ring) => ring.map((point) => onSheet(drawn, point)));
  const xs = (rings[0] ?? []).map(({ x }) => x);
  const ys = (rings[0] ?? []).map(({ y }) => y);
  const name = panel.name.slice(panel.piece.length + 1);
  return {
    box: { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) },
    rings,
    inside: onSheet(drawn, panel.inside),
    text: /^\d+$/.test(name) ? `panel ${name}` : sayName(name),
  };
}

/** Whether a box lies in the paper of a panel, as far as its middle tells: the board knows the lines round the panel. */
export function isWithin(box: Box, panel: NamedPanel): boolean {
  const middle = { x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 };
  return within(box, panel.box) && holds(panel.rings, middle);
}

/**
 * Writes each panel's name within it: all alike if one size and place suits all, else each as it can, turned where the
 * panel is narrow. Names without room are left out.
 */
export function drawPanelNames(board: Board, named: readonly NamedPanel[]): void {
  const panels = named.filter(({ text }) => text !== '');
  for (const spot of spots()) {
    const labels = panels.map((panel) => labelAt(panel, spot));
    if (!labels.every((label, i) => fits(board, label, panels[i]))) continue;
    board.add(...labels);
    return;
  }
  for (const panel of panels)
    board.place(
      [...spots().map((spot) => labelAt(panel, spot)), ...aboutMiddle(panel)].filter((label) =>
        fits(board, label, panel),
      ),
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

function labelAt({ box, text }: NamedPanel, { turn, size, part }: Spot): SceneLabel {
  const width = box.right - box.left;
  const height = box.bottom - box.top;
  const middle =
    turn === 0
      ? { x: box.left + width / 2, y: box.top + part * height }
      : { x: box.left + part * width, y: box.top + height / 2 };
  return nameAt(text, middle, size, turn);
}

function nameAt(text: string, middle: ScenePoint, size: number, turn: 0 | 90): SceneLabel {
  const half = HALF_LETTER * emOf(size, 'regular');
  const at = turn === 0 ? { x: middle.x, y: middle.y + half } : { x: middle.x + half, y: middle.y };
  return { kind: 'label', text, role: 'name', anchor: 'middle', size, at, turn };
}

/** Where a name may stand in a panel of any shape: about a point well inside. */
export function aboutMiddle({ text, inside }: NamedPanel): readonly SceneLabel[] {
  return SIZES.flatMap((size) =>
    ([0, 90] as const).flatMap((turn) =>
      OFF_MIDDLE.flatMap((down) =>
        OFF_MIDDLE.map((across) => nameAt(text, { x: inside.x + across, y: inside.y + down }, size, turn)),
      ),
    ),
  );
}

function fits(board: Board, label: SceneLabel, panel: NamedPanel | undefined): boolean {
  const box = labelBox(label);
  return panel !== undefined && isWithin(box, panel) && board.isClear(box);
}
