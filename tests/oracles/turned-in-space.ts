/** A point of space as three floating numbers. */
export type Triple = readonly [number, number, number];

type Quaternion = readonly [number, number, number, number];

/**
 * A point turned about a line of space by degrees, by the right-hand rule along `from` to `to`. By quaternions, as
 * v' = q v q*, where the engine uses matrices.
 */
export function turnedInSpace(point: Triple, from: Triple, to: Triple, degrees: number): Triple {
  const axis = to.map((value, i) => value - (from[i] ?? 0));
  const length = Math.hypot(...axis);
  const half = (degrees * Math.PI) / 360;
  const [x = 0, y = 0, z = 0] = axis.map((value) => (value / length) * Math.sin(half));
  const turn: Quaternion = [Math.cos(half), x, y, z];
  const back: Quaternion = [turn[0], -x, -y, -z];
  const [dx = 0, dy = 0, dz = 0] = point.map((value, i) => value - (from[i] ?? 0));
  const [, a, b, c] = product(product(turn, [0, dx, dy, dz]), back);
  return [a + from[0], b + from[1], c + from[2]];
}

function product([a, b, c, d]: Quaternion, [e, f, g, h]: Quaternion): Quaternion {
  return [
    a * e - b * f - c * g - d * h,
    a * f + b * e + c * h - d * g,
    a * g - b * h + c * e + d * f,
    a * h + b * g - c * f + d * e,
  ];
}
