import type Fraction from 'fraction.js';
import { boundsOf, type Outline, type PathEdge, type Point, reachOf } from '../geometry/index.ts';

/** What an outline is called by those who cut it; measures in mm of the drawing. */
export type Form =
  | ({ readonly is: 'rectangle' | 'ellipse' } & FormBox)
  | ({ readonly is: 'circle'; readonly centre: Point } & FormBox)
  | ({ readonly is: 'rounded'; readonly radius: Fraction } & FormBox)
  | ({ readonly is: 'path' } & FormBox);

/** The smallest rectangle round it. */
export interface FormBox {
  readonly left: Fraction;
  readonly top: Fraction;
  readonly width: Fraction;
  readonly height: Fraction;
}

/** How far apart lengths may be that are one, in mm: what is no fraction is rounded. */
const SAME_MM = 1e-6;

export function nearly(a: Fraction, b: Fraction): boolean {
  return Math.abs(a.valueOf() - b.valueOf()) < SAME_MM;
}

export function nearlyAt(a: Point, b: Point): boolean {
  return nearly(a.x, b.x) && nearly(a.y, b.y);
}

export function formOf(outline: Outline): Form {
  const { left, top, right, bottom } = boundsOf(outline.flatMap(reachOf));
  const box: FormBox = { left, top, width: right.sub(left), height: bottom.sub(top) };
  const arcs = outline.filter((edge) => edge.is === 'arc');
  if (arcs.length === 0) return { is: isUpright(outline) && outline.length === 4 ? 'rectangle' : 'path', ...box };
  const [first] = arcs;
  if (first === undefined || !arcs.every((arc) => arc.clockwise && alike(arc, first))) return { is: 'path', ...box };
  const { centre, rx, ry } = first;
  if (arcs.length === outline.length && arcs.every((arc) => nearlyAt(arc.centre, centre)))
    return nearly(rx, ry) ? { is: 'circle', centre, ...box } : { is: 'ellipse', ...box };
  const straight = outline.filter((edge) => edge.is === 'line');
  const corners = arcs.length === 4 && arcs.every(isQuarter) && nearly(rx, ry) && straight.every(isSquare);
  return corners ? { is: 'rounded', radius: rx, ...box } : { is: 'path', ...box };
}

/** Level or upright. */
function isSquare({ from, to }: PathEdge): boolean {
  return nearly(from.x, to.x) || nearly(from.y, to.y);
}

function isUpright(outline: Outline): boolean {
  return outline.every(isSquare);
}

type Arc = PathEdge & { readonly is: 'arc' };

function alike(a: Arc, b: Arc): boolean {
  return nearly(a.rx, b.rx) && nearly(a.ry, b.ry);
}

/** From a middle of its circle's edges to the next. */
function isQuarter({ from, to, centre }: Arc): boolean {
  const level = (point: Point): boolean => nearly(point.y, centre.y);
  const upright = (point: Point): boolean => nearly(point.x, centre.x);
  return (level(from) && upright(to)) || (upright(from) && level(to));
}
