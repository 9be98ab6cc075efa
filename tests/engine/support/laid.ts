import type { GlueJoin, PinJoin, SlideJoin, SlotJoin } from '../../../plugins/engine/index.ts';

/** A join that lays one drawing on another. */
export type Laid = GlueJoin | PinJoin | SlideJoin | SlotJoin;

type Matrix = readonly (readonly number[])[];

/**
 * Where a point of the part's drawing comes to lie on the receiver's drawing, and how high above its face, in the unit of `mm`: worked out
 * in space with matrices, as `Trans(q) Trans(0, 0, s h) Rz(-turn) F Trans(-p)`.
 */
export function landsAt(join: Laid, [x, y]: readonly [number, number], mm: number): readonly [number, number, number] {
  const [cos, sin] = [join.turn.cos.valueOf(), join.turn.sin.valueOf()];
  const height = join.is === 'glue' ? (join.foam?.toMm() ?? 0) : 0;
  const rise = join.ontoSide === 'face' ? height : -height;
  const flip = join.partSide === join.ontoSide;
  const shift = (dx: number, dy: number, dz: number): Matrix => [
    [1, 0, 0, dx],
    [0, 1, 0, dy],
    [0, 0, 1, dz],
    [0, 0, 0, 1],
  ];
  // Rz(-turn), with the sine of the opposite angle.
  const turned: Matrix = [
    [cos, sin, 0, 0],
    [-sin, cos, 0, 0],
    [0, 0, 1, 0],
    [0, 0, 0, 1],
  ];
  const over: Matrix = [
    [flip ? -1 : 1, 0, 0, 0],
    [0, 1, 0, 0],
    [0, 0, flip ? -1 : 1, 0],
    [0, 0, 0, 1],
  ];
  const chain = [
    shift(join.q.x.valueOf(), -join.q.y.valueOf(), 0),
    shift(0, 0, rise),
    turned,
    over,
    shift(-join.p.x.valueOf(), join.p.y.valueOf(), 0),
  ];
  const start: readonly number[] = [x * mm, -y * mm, 0, 1];
  const [X = 0, Y = 0, Z = 0] = chain.reduceRight((vector, matrix) => apply(matrix, vector), start);
  return [X / mm, -Y / mm || 0, Z / mm];
}

function apply(matrix: Matrix, vector: readonly number[]): number[] {
  return matrix.map((row) => row.reduce((sum, value, index) => sum + value * (vector[index] ?? 0), 0));
}
