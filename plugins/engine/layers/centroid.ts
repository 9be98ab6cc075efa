import type { Area } from '../motion/index.ts';

/** A point of a drawing in floating millimetres, y down, and how many square millimetres it stands for. */
export interface Weighted {
  readonly x: number;
  readonly y: number;
  readonly area: number;
}

type Ring = readonly { readonly x: number; readonly y: number }[];

/** Area and centroid of rings whose inner ones turn the other way. Undefined when they enclose nothing. */
export function centroidOf(rings: readonly Ring[]): Weighted | undefined {
  const [origin] = rings[0] ?? [];
  if (origin === undefined) return undefined;
  let [twice, x, y] = [0, 0, 0];
  for (const ring of rings) {
    let before = ring.at(-1);
    for (const point of ring) {
      if (before === undefined) break;
      // Measured from one of its own points, so that nothing is lost where a drawing is far from its origin.
      const [ax, ay, bx, by] = [before.x - origin.x, before.y - origin.y, point.x - origin.x, point.y - origin.y];
      const cross = ax * by - bx * ay;
      twice += cross;
      x += (ax + bx) * cross;
      y += (ay + by) * cross;
      before = point;
    }
  }
  if (twice === 0) return undefined;
  return { x: origin.x + x / (3 * twice), y: origin.y + y / (3 * twice), area: Math.abs(twice) / 2 };
}

/** The same for areas, all of whose outer edges turn one way. */
export function centroidOfAreas(areas: readonly Area[]): Weighted | undefined {
  return centroidOf(areas.flat());
}
