/*
 * What the rest of a fold says about pieces: points, lines and panels by their names.
 */
export { lineNamed, lineNames, linesNamed } from './line-named.ts';
export { partNames, partOf } from './part-of.ts';
export { pointOn, type Sizes } from './point-on.ts';
export { type PointSpec, readPoint, readPointText, TAKES_POINT } from './point-spec.ts';
