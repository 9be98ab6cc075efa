import { atan2, cos, type Matrix, matrix, multiply, sin } from 'mathjs';

type Pair = readonly [number, number];

/**
 * Reflection of points in the line through two others, in floating point: moved to the origin, turned onto the x axis,
 * flipped, turned and moved back, by matrices of mathjs.
 */
export function reflected(points: readonly Pair[], from: Pair, to: Pair): Pair[] {
  const turn = atan2(to[1] - from[1], to[0] - from[0]);
  const steps = [
    moved(from[0], from[1]),
    turned(turn),
    matrix([
      [1, 0, 0],
      [0, -1, 0],
      [0, 0, 1],
    ]),
    turned(-turn),
    moved(-from[0], -from[1]),
  ];
  const whole = steps.reduce((product, step) => multiply(product, step));
  return points.map(([x, y]) => {
    const image = multiply(whole, matrix([x, y, 1]));
    return [image.get([0]), image.get([1])] as const;
  });
}

function moved(x: number, y: number): Matrix {
  return matrix([
    [1, 0, x],
    [0, 1, y],
    [0, 0, 1],
  ]);
}

function turned(angle: number): Matrix {
  return matrix([
    [cos(angle), -sin(angle), 0],
    [sin(angle), cos(angle), 0],
    [0, 0, 1],
  ]);
}
