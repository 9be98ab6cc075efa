import type { Box } from './box.ts';
import type { ArcOfEllipse, ScenePoint } from './scene.ts';

const QUARTER = 90;

/** The point of an arc's ellipse at an angle in degrees; exact at whole quarters. */
export function arcPoint({ centre, rx, ry }: ArcOfEllipse, degrees: number): ScenePoint {
  const [cos, sin] = direction(degrees);
  return { x: centre.x + rx * cos, y: centre.y + ry * sin };
}

/** Cosine and sine of an angle in degrees, without the error of pi at whole quarters. */
export function direction(degrees: number): readonly [cos: number, sin: number] {
  const quarters = degrees / QUARTER;
  if (Number.isInteger(quarters)) {
    const turned = ((quarters % 4) + 4) % 4;
    return [[1, 0, -1, 0][turned] ?? 1, [0, 1, 0, -1][turned] ?? 0];
  }
  const radians = (degrees * Math.PI) / 180;
  return [Math.cos(radians), Math.sin(radians)];
}

/** The smallest box round an arc. */
export function arcBox(arc: ArcOfEllipse): Box {
  const points = [arcPoint(arc, arc.from), arcPoint(arc, arc.to)];
  for (let quarter = Math.ceil(arc.from / QUARTER); quarter * QUARTER <= arc.to; quarter++)
    points.push(arcPoint(arc, quarter * QUARTER));
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

/** Where an arc meets the upright line at `at` (`x`) or the level one (`y`): degrees within `from` to `to`, rising. */
export function arcMeetings(arc: ArcOfEllipse, axis: 'x' | 'y', at: number): readonly number[] {
  const share = axis === 'x' ? (at - arc.centre.x) / arc.rx : (at - arc.centre.y) / arc.ry;
  if (Math.abs(share) > 1) return [];
  const angle = (Math.acos(share) * 180) / Math.PI;
  // cos t = share at t = angle and -angle; sin t = share a quarter later.
  const first = axis === 'x' ? [angle, -angle] : [QUARTER - angle, QUARTER + angle];
  return first
    .flatMap((degrees) => {
      const least = degrees + 360 * Math.ceil((arc.from - degrees) / 360);
      const found: number[] = [];
      for (let turn = least; turn <= arc.to; turn += 360) found.push(turn);
      return found;
    })
    .sort((a, b) => a - b);
}
