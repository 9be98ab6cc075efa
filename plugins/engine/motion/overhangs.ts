import { boundsOf } from '../geometry/index.ts';
import { hullOf, isInHull } from './hulls.ts';
import { type Area, type AreaPoint, filled, floats, outsideOf, unionOf } from './polygons.ts';
import type { ClosedPose, Overhang, PlacedPanel } from './types.ts';

/** Less than this outside of the cover is the grid and the float, not paper: a micrometre. */
export const OVERHANG_MM = 1e-3;

/** Where edges of a region are looked at, beside their ends: in a notch of the cover the middle can be furthest out. */
const STEPS = 8;

/** Edges that are not longer, as of arcs, are looked at in their ends alone. */
const SHORT_MM = 1;

/** The area that a closed body covers, seen square to its ground panel, in that panel's drawing frame. */
export function closedOutline(pose: ClosedPose): Area[] {
  return unionOf(pose.panels);
}

/**
 * What of a closed body sticks out past some of its panels, one entry for each connected region of each other panel.
 *
 * A window in the cover, or a gap that it closes round, covers what lies behind it. What sticks out less than
 * `OVERHANG_MM` is no overhang. None when the cover has no area.
 *
 * @param within names of the panels that should cover everything
 */
export function overhangs(pose: ClosedPose, within: readonly string[]): Overhang[] {
  const covering = pose.panels.filter(({ panel }) => within.includes(panel));
  const cover = unionOf(covering.map(({ outline }) => ({ outline, holes: [] }))).map(filled);
  if (cover.length === 0) return [];
  const box = boundsOf(covering.flatMap(({ outline }) => outline));
  const outlines = covering.map(({ outline }) => floats(outline));
  const hulls = outlines.map(hullOf);
  const measure = { edges: outlines.flatMap(edgesOf), hulls, hullEdges: hulls.flatMap(edgesOf), box };
  return pose.panels
    .filter(({ panel }) => !within.includes(panel))
    .flatMap((panel) =>
      outsideOf(panel, cover)
        .map((region) => overhangOf(panel, region, measure))
        .filter(({ mm }) => mm >= OVERHANG_MM),
    );
}

type Edge = readonly [AreaPoint, AreaPoint];

/** What an overhang is measured from. */
interface Measure {
  readonly edges: readonly Edge[];
  /** Of each panel of the cover. */
  readonly hulls: readonly (readonly AreaPoint[])[];
  readonly hullEdges: readonly Edge[];
  readonly box: ClosedPose['box'];
}

function overhangOf(panel: PlacedPanel, region: Area, measure: Measure): Overhang {
  const corners = floats(panel.outline);
  let worst = { x: 0, y: 0, mm: -1, to: { x: 0, y: 0 } };
  for (const rim of region) {
    for (const spot of alongEdges(rim)) {
      const at = rim.includes(spot) ? (corners.find((corner) => isNear(corner, spot)) ?? spot) : spot;
      const found = nearestTo(measure, at);
      // A later point must be further by more than the float's last digits, so that the choice is the same everywhere.
      if (found.mm > worst.mm + 1e-9) worst = { ...at, ...found };
    }
  }
  const { x, y, to } = worst;
  return {
    panel: panel.panel,
    region,
    worst: { x, y },
    mm: Math.round(worst.mm * 1e9) / 1e9,
    side: sideOf({ x, y }, to, measure.box),
  };
}

function edgesOf(spots: readonly AreaPoint[]): Edge[] {
  return spots.map((spot, i) => [spot, spots[(i + 1) % spots.length] ?? spot]);
}

function alongEdges(rim: readonly AreaPoint[]): AreaPoint[] {
  return edgesOf(rim).flatMap(([a, b]) => {
    const steps = Math.hypot(b.x - a.x, b.y - a.y) > SHORT_MM ? STEPS : 1;
    const between = Array.from({ length: steps - 1 }, (_, i) => ({
      x: a.x + ((b.x - a.x) * (i + 1)) / steps,
      y: a.y + ((b.y - a.y) * (i + 1)) / steps,
    }));
    return [a, ...between];
  });
}

function isNear(a: AreaPoint, b: AreaPoint): boolean {
  return Math.abs(a.x - b.x) < OVERHANG_MM && Math.abs(a.y - b.y) < OVERHANG_MM;
}

/**
 * A notch in the rim of a panel, as a shape leaves that turns away from it, makes nothing stick out further: outside of a
 * panel and its notches the distance is that from the panel as it was.
 */
function nearestTo({ edges, hulls, hullEdges }: Measure, at: AreaPoint): { mm: number; to: AreaPoint } {
  const beyond = hulls.every((hull) => !isInHull(hull, at));
  return nearestOn(beyond ? hullEdges : edges, at);
}

function nearestOn(edges: readonly Edge[], p: AreaPoint): { mm: number; to: AreaPoint } {
  let [x, y, least] = [p.x, p.y, Number.POSITIVE_INFINITY];
  for (const [a, b] of edges) {
    const dx = b.x - a.x;
    const dy = b.y - a.y;
    const square = dx * dx + dy * dy;
    const share = square === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / square));
    const [toX, toY] = [a.x + share * dx, a.y + share * dy];
    const away = (p.x - toX) * (p.x - toX) + (p.y - toY) * (p.y - toY);
    if (away < least) [x, y, least] = [toX, toY, away];
  }
  return { mm: Math.hypot(p.x - x, p.y - y), to: { x, y } };
}

/** The side of the cover's box that it is furthest past; inside of the box, the way it lies from the cover. */
function sideOf(at: AreaPoint, to: AreaPoint, box: ClosedPose['box']): Overhang['side'] {
  const past: [Overhang['side'], number][] = [
    ['left', box.left.valueOf() - at.x],
    ['right', at.x - box.right.valueOf()],
    ['top', box.top.valueOf() - at.y],
    ['bottom', at.y - box.bottom.valueOf()],
  ];
  const most = past.reduce((a, b) => (b[1] > a[1] ? b : a));
  if (most[1] > 0) return most[0];
  const [dx, dy] = [at.x - to.x, at.y - to.y];
  if (Math.abs(dx) > Math.abs(dy)) return dx < 0 ? 'left' : 'right';
  return dy < 0 ? 'top' : 'bottom';
}
