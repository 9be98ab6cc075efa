import type { Outline, PathEdge, Point } from '../geometry/index.ts';
import type { Stroke } from '../panels/index.ts';
import type { System } from '../units/index.ts';
import {
  diameterLabel,
  type Form,
  formOf,
  liesOn,
  measureOf,
  nearly,
  type PieceStrokes,
  radiusLabel,
} from '../wording/index.ts';
import { direction } from './arcs.ts';
import type { Board } from './board.ts';
import { drawCallout } from './callout.ts';
import { type DrawnPiece, onSheet } from './drawn-piece.ts';
import { FIGURE_SIZES, HALF_FIGURE } from './figure-plan.ts';
import type { SceneLabel, SceneLine, ScenePoint } from './scene.ts';
import { emOf } from './text-metrics.ts';

/** Half of a centre cross, in mm. */
const CROSS_MM = 1.5;
/** From a circle's centre to its figure, in mm. */
const OFF_CENTRE_MM = [2.5, 5, 8];
const ASIDE_MM = [0, 5, -5, 8, -8];
/** Ways in which a leader goes from a circle, the best first. */
const WAYS = [-45, 45, -135, 135, -20, 20, -160, 160];

/** Centres, diameters and radii of everything round on a piece that its overall sizes do not say. */
export function drawRoundMarks(board: Board, drawn: DrawnPiece, strokes: PieceStrokes, system: System): void {
  const { piece } = drawn;
  const regions = [...piece.windows, ...piece.shapes, ...piece.away].map(({ outline }) => outline);
  for (const cross of centreCrosses(drawn, strokes)) board.add(cross);
  const inked = [...strokes.edges, ...strokes.windows, ...strokes.shapes];
  for (const outline of regions) {
    const form = formOf(outline);
    if (form.is === 'circle') drawDiameter(board, drawn, form, inked, system);
  }
  const said: PathEdge[] = [];
  for (const edge of [piece.outline, ...regions].flatMap(arcsWithRadius)) {
    if (said.some((other) => other.is === 'arc' && nearly(other.rx, edge.rx))) continue;
    said.push(edge);
    drawRadius(board, drawn, edge, system);
  }
}

type ArcEdge = PathEdge & { readonly is: 'arc' };

/** Arcs that are told by their radius: round corners, and parts of circles in a path. */
function arcsWithRadius(outline: Outline): readonly ArcEdge[] {
  const { is } = formOf(outline);
  if (is === 'circle' || is === 'ellipse') return [];
  return outline.filter((edge): edge is ArcEdge => edge.is === 'arc' && nearly(edge.rx, edge.ry));
}

/** A cross at the centre of each circle, for compasses; where a line runs through the centre already, only what is square to it. */
export function centreCrosses(drawn: DrawnPiece, { lines }: PieceStrokes): readonly SceneLine[] {
  const { piece } = drawn;
  const outlines = [piece.outline, ...[...piece.windows, ...piece.shapes, ...piece.away].map(({ outline }) => outline)];
  return outlines.flatMap((outline): readonly SceneLine[] => {
    const form = formOf(outline);
    if (form.is !== 'circle') return [];
    const through = (runs: 'down' | 'across'): boolean =>
      lines.some((line) => line.runs === runs && liesOn(form.centre, { is: 'line', from: line.from, to: line.to }));
    const { x, y } = onSheet(drawn, form.centre);
    const half = Math.min(CROSS_MM, (form.width.valueOf() * drawn.scale) / 4);
    return [
      ...(through('down') ? [] : [cross({ x, y: y - half }, { x, y: y + half })]),
      ...(through('across') ? [] : [cross({ x: x - half, y }, { x: x + half, y })]),
    ];
  });
}

function cross(from: ScenePoint, to: ScenePoint): SceneLine {
  return { kind: 'line', role: 'frame', from, to };
}

/** Inside the circle over or under its centre, else outside with a leader. */
function drawDiameter(
  board: Board,
  drawn: DrawnPiece,
  form: Form & { is: 'circle' },
  inked: readonly Stroke[],
  system: System,
): void {
  const text = diameterLabel(measureOf(form.width, false, system).text);
  const { x, y } = onSheet(drawn, form.centre);
  const within = FIGURE_SIZES.flatMap((size) =>
    OFF_CENTRE_MM.flatMap((off) =>
      [-1, 1].flatMap((side) =>
        ASIDE_MM.map((across): SceneLabel => {
          const half = HALF_FIGURE * emOf(size, 'regular');
          const at = { x: x + across, y: y + side * (off + half) + half };
          return { kind: 'label', text, role: 'figure', size, anchor: 'middle', turn: 0, at };
        }),
      ),
    ),
  );
  const radius = (form.width.valueOf() * drawn.scale) / 2;
  // A figure beside a small circle would cross it: those go outside at once.
  if (radius > LEAST_RADIUS_MM && board.place(within)) return;
  const centre = form.centre;
  const half = form.width.valueOf() / 2;
  const starts = WAYS.flatMap((degrees) => {
    const [cos, sin] = direction(degrees);
    const at: Point = { x: centre.x.add(half * cos), y: centre.y.add(half * sin), rounded: true };
    // Only from where the circle is drawn: a shape that swings is not cut all round.
    return inked.some(({ edge }) => liesOn(at, edge)) ? [{ at: onSheet(drawn, at), degrees }] : [];
  });
  drawCallout(board, { text, starts });
}

const LEAST_RADIUS_MM = 7;

/** At the middle of the arc, from the side of its centre, else from the other. */
function drawRadius(board: Board, drawn: DrawnPiece, edge: ArcEdge, system: System): void {
  const text = radiusLabel(measureOf(edge.rx, edge.centre.rounded === true, system).text);
  const middle = onSheet(drawn, middleOf(edge));
  const centre = onSheet(drawn, edge.centre);
  const inwards = (Math.atan2(centre.y - middle.y, centre.x - middle.x) * 180) / Math.PI;
  const starts = [0, 180].flatMap((turn) =>
    [0, -25, 25].map((aside) => ({ at: middle, degrees: inwards + turn + aside })),
  );
  drawCallout(board, { text, starts });
}

/** The point of an arc half way along, near enough to be pointed at. */
function middleOf({ from, to, centre, rx, clockwise }: ArcEdge): Pick<Point, 'x' | 'y'> {
  const start = Math.atan2(from.y.sub(centre.y).valueOf(), from.x.sub(centre.x).valueOf());
  const end = Math.atan2(to.y.sub(centre.y).valueOf(), to.x.sub(centre.x).valueOf());
  const turn = clockwise ? end - start : start - end;
  const sweep = turn > 0 ? turn : turn + 2 * Math.PI;
  const angle = start + (clockwise ? sweep : -sweep) / 2;
  const radius = rx.valueOf();
  return { x: centre.x.add(radius * Math.cos(angle)), y: centre.y.add(radius * Math.sin(angle)) };
}
