import { boundsOf, reachOf } from '../geometry/index.ts';
import type { PieceStrokes } from '../wording/index.ts';

/** Where a piece first and last touches each side of the smallest rectangle round it, in mm along that side. */
export interface Reach {
  readonly left: readonly [first: number, last: number];
  readonly right: readonly [first: number, last: number];
  readonly top: readonly [first: number, last: number];
  readonly bottom: readonly [first: number, last: number];
}

/** A circle touches each side at its middle; a sheet with its corners cut away between them. */
export function reachOfPiece({ edges }: PieceStrokes): Reach {
  const points = edges.flatMap(({ edge }) => reachOf(edge));
  const box = boundsOf(points);
  const on = (axis: 'x' | 'y', at: typeof box.left): readonly [number, number] => {
    const along = points
      .filter((point) => Math.abs(point[axis].valueOf() - at.valueOf()) < 1e-6)
      .map((point) => point[axis === 'x' ? 'y' : 'x'].valueOf());
    return along.length === 0 ? [0, 0] : [Math.min(...along), Math.max(...along)];
  };
  return { left: on('x', box.left), right: on('x', box.right), top: on('y', box.top), bottom: on('y', box.bottom) };
}
