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
  /** Where zero is, along the edge, and each position in the order it is measured. */
  readonly zero: number;
  readonly places: readonly { readonly at: number; readonly text: string }[];
  /** How the figures stand, zero's among them, in rising order along the edge; undefined when there is no room. */
  readonly plan: FigurePlan | undefined;
}

/** Draws the dimension line with its arrows, the origin, the extension lines and the figures. */
export function drawRunningDimension(board: Board, dimension: RunningDimension): void {
  const { zero, places, plan } = dimension;
  const point = (along: number, out: number): ScenePoint =>
    dimension.axis === 'across' ? { x: along, y: dimension.edge - out } : { x: dimension.edge - out, y: along };
  const end = FIRST_LINE_MM + OVERRUN_MM;

  for (const along of [zero, ...places.map((place) => place.at)])
    board.add(extensionLine(point(along, 0), point(along, end)));
  board.add({
    kind: 'arc',
    role: 'dimension',
    centre: point(zero, FIRST_LINE_MM),
    radius: ORIGIN_RADIUS_MM,
    from: 0,
    to: 360,
  });
  let previous = zero;
  for (const { at } of places) {
    board.add(...dimensionLine(point(previous, FIRST_LINE_MM), point(at, FIRST_LINE_MM), 'end'));
    previous = at;
  }

  if (plan === undefined) return;
  const rising = [{ at: zero, text: '0' }, ...places].sort((a, b) => a.at - b.at);
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
