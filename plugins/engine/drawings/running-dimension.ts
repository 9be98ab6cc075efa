import type { Board } from './board.ts';
import { dimensionLine, extensionLine, FIRST_LINE_MM, OVERRUN_MM } from './dimension-line.ts';
import { type FigurePlan, HALF_FIGURE, LEADER_MM } from './figure-plan.ts';
import type { SceneLabel, ScenePoint } from './scene.ts';
import { emOf } from './text-metrics.ts';

const ORIGIN_RADIUS_MM = 0.9;

/** Positions along one edge, all from one zero (ISO 129-1, superimposed running dimensioning). */
export interface RunningDimension {
  /** `across`: along the top edge, dimension above. `down`: along the left edge, dimension to its left. */
  readonly axis: 'across' | 'down';
  /** The edge itself: y of the top edge, or x of the left edge. */
  readonly edge: number;
  /** Zero, and each position in the order it is measured. */
  readonly zero: RunningPlace;
  readonly places: readonly RunningPlace[];
  /** How the figures stand, zero's among them, in rising order along the edge; undefined when there is no room. */
  readonly plan: FigurePlan | undefined;
}

/** A position along the edge, with its figure. */
export interface RunningPlace {
  readonly at: number;
  readonly text: string;
  /** Where its extension line runs over the piece, in mm from the edge inwards. */
  readonly over: readonly (readonly [from: number, to: number])[];
}

/** Draws the dimension line with its arrows, the origin, the extension lines and the figures. */
export function drawRunningDimension(board: Board, dimension: RunningDimension): void {
  const { zero, places, plan } = dimension;
  const point = (along: number, out: number): ScenePoint =>
    dimension.axis === 'across' ? { x: along, y: dimension.edge - out } : { x: dimension.edge - out, y: along };
  const end = FIRST_LINE_MM + OVERRUN_MM;

  for (const { at, over } of [zero, ...places]) {
    // What begins at the edge, or goes on inwards from it, is one line with what runs outside.
    const [first = [0, 0], ...rest] = over[0]?.[0] === 0 ? over : ([[0, 0], ...over] as const);
    board.add(extensionLine(point(at, -first[1]), point(at, end)));
    for (const [from, to] of rest) board.add(extensionLine(point(at, -from), point(at, -to)));
  }
  board.add({
    kind: 'arc',
    role: 'dimension',
    centre: point(zero.at, FIRST_LINE_MM),
    rx: ORIGIN_RADIUS_MM,
    ry: ORIGIN_RADIUS_MM,
    from: 0,
    to: 360,
  });
  let previous = zero.at;
  for (const { at } of places) {
    board.add(...dimensionLine(point(previous, FIRST_LINE_MM), point(at, FIRST_LINE_MM), 'end'));
    previous = at;
  }

  if (plan === undefined) return;
  const rising = [zero, ...places].sort((a, b) => a.at - b.at);
  rising.forEach(({ at, text }, i) => {
    const middle = plan.middles[i] ?? at;
    if (plan.moved) board.add(extensionLine(point(at, end), point(middle, end + LEADER_MM)));
    board.add(figure(text, point(middle, end + plan.from), dimension.axis, plan));
  });
}

function figure(text: string, foot: ScenePoint, axis: 'across' | 'down', plan: FigurePlan): SceneLabel {
  const half = HALF_FIGURE * emOf(plan.size, 'regular');
  const label = { kind: 'label', text, size: plan.size, role: 'figure' } as const;
  if (axis === 'down') return { ...label, at: { x: foot.x, y: foot.y + half }, anchor: 'end', turn: 0 };
  if (plan.inLine) return { ...label, at: { x: foot.x + half, y: foot.y }, anchor: 'start', turn: 90 };
  return { ...label, at: foot, anchor: 'middle', turn: 0 };
}
