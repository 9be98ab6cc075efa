import polygonClipping, { type Polygon, type Ring } from 'polygon-clipping';

/**
 * What a sheet falls into when it is really cut: every line is a narrow slot, taken away by somebody else's polygon clipping, and
 * what hangs together is one part. Knows nothing of nets, faces or hinges.
 */
export interface Sheet {
  readonly width: number;
  readonly height: number;
  readonly windows?: readonly (readonly (readonly [number, number])[])[];
  readonly cuts: readonly (readonly [number, number, number, number])[];
}

/** Smaller parts are not counted: the slots themselves take as much. */
export const SMALLEST = 1e-4;

/** Areas of the parts, largest first. */
export function partsOf({ width, height, cuts, windows = [] }: Sheet, slot = 1e-6): number[] {
  const sheet: Polygon = [
    ringOf([
      [0, 0],
      [width, 0],
      [width, height],
      [0, height],
    ]),
  ];
  const taken: Polygon[] = [
    ...windows.map((window): Polygon => [ringOf(window)]),
    ...cuts.map((cut) => slotAlong(cut, slot)),
  ];
  const parts = taken.length === 0 ? [sheet] : polygonClipping.difference(sheet, ...taken);
  return parts
    .map((rings) => rings.reduce((sum, ring, i) => sum + (i === 0 ? 1 : -1) * Math.abs(area(ring)), 0))
    .filter((size) => size > SMALLEST)
    .sort((a, b) => b - a);
}

/** A little longer than the cut, so that one that ends on another parts the paper there. */
function slotAlong([x1, y1, x2, y2]: readonly [number, number, number, number], wide: number): Polygon {
  const length = Math.hypot(x2 - x1, y2 - y1);
  const [ux, uy] = [((x2 - x1) / length) * wide, ((y2 - y1) / length) * wide];
  const [ax, ay, bx, by] = [x1 - 3 * ux, y1 - 3 * uy, x2 + 3 * ux, y2 + 3 * uy];
  const [nx, ny] = [-uy / 2, ux / 2];
  return [
    ringOf([
      [ax + nx, ay + ny],
      [bx + nx, by + ny],
      [bx - nx, by - ny],
      [ax - nx, ay - ny],
    ]),
  ];
}

function ringOf(corners: readonly (readonly [number, number])[]): Ring {
  return corners.map(([x, y]) => [x, y]);
}

function area(ring: Ring): number {
  return ring.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = ring[(i + 1) % ring.length] ?? [x, y];
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);
}

/** Left, top, width and height of the smallest rectangle round an ellipse. */
export type Oval = readonly [number, number, number, number];

/** Area of a sheet without the ellipses that are taken from it: each as a polygon of 720 corners. */
export function areaWithout(width: number, height: number, ovals: readonly Oval[]): number {
  const sheet: Polygon = [
    ringOf([
      [0, 0],
      [width, 0],
      [width, height],
      [0, height],
    ]),
  ];
  const taken = ovals.map(([left, top, wide, high]): Polygon => {
    const angles = Array.from({ length: 720 }, (_, i) => (i * Math.PI) / 360);
    return [
      angles.map((angle) => [left + (wide / 2) * (1 + Math.cos(angle)), top + (high / 2) * (1 + Math.sin(angle))]),
    ];
  });
  const left = taken.length === 0 ? [sheet] : polygonClipping.difference(sheet, ...taken);
  return left.reduce(
    (sum, rings) => rings.reduce((all, ring, i) => all + (i === 0 ? 1 : -1) * Math.abs(area(ring)), sum),
    0,
  );
}
