import Fraction from 'fraction.js';
import type { Point } from '../geometry/index.ts';
import type { Length } from '../units/index.ts';
import type { Corner, Edge } from './card-types.ts';
import type { Expression } from './expression.ts';
import { type Box, edgeOfBox, lineNamed } from './line-named.ts';
import { middleOf, point, pointAlong, type Segment } from './plane.ts';
import type { PointSpec } from './point-spec.ts';
import type { Piece } from './types.ts';

/** How the lengths, angles and numbers of a card are worked out. Undefined when it could not be, which is reported then. */
export interface Sizes {
  /** On the edition's marks: the number that is printed. */
  length(expression: Expression): Length | undefined;
  /** Of what is bought and not cut, as foam: by the edition's sizes, and not put on its marks. */
  height(expression: Expression): Length | undefined;
  /** In degrees. */
  angle(expression: Expression): Fraction | undefined;
  number(expression: Expression): Fraction | undefined;
}

/**
 * Where a point lies on the drawing of a piece. Undefined when its line is not there (or is several), about which nothing is said, or
 * when a length could not be worked out, which is reported.
 */
export function pointOn(piece: Piece, spec: PointSpec, sizes: Sizes): Point | undefined {
  return pointIn(piece, spec, (name) => lineNamed(piece, name), sizes);
}

/** As `pointOn`, for a piece whose lines are still being made. */
export function pointIn(
  box: Box,
  spec: PointSpec,
  lineOf: (name: string) => Segment | undefined,
  sizes: Sizes,
): Point | undefined {
  switch (spec.is) {
    case 'corner':
      return cornerOf(box, spec.corner);
    case 'edge':
      return middleOf(edgeOfBox(box, spec.edge));
    case 'centre':
      return point(box.width.mm.div(2), box.height.mm.div(2));
    case 'on': {
      const line = lineOf(spec.line);
      const at = sizes.length(spec.at);
      return line && at && pointAlong(line, at.mm);
    }
    case 'at': {
      const [x, y] = [sizes.length(spec.across), sizes.length(spec.down)];
      return x && y && point(x.mm, y.mm);
    }
  }
}

export function cornerOf({ width, height }: Box, corner: Corner): Point {
  const [vertical, horizontal] = corner.split('-') as [Edge, Edge];
  return point(horizontal === 'left' ? new Fraction(0) : width.mm, vertical === 'top' ? new Fraction(0) : height.mm);
}
