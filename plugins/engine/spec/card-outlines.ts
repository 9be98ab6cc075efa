import Fraction from 'fraction.js';
import type { Outline, Point } from '../geometry/index.ts';
import type { Origin } from './card-types.ts';
import { ellipseOutline, type Rectangle, rectangleOutline, roundedOutline } from './outlines.ts';
import type { FormSpec } from './piece-specs.ts';
import type { Sizes } from './point-on.ts';
import type { PointSpec } from './point-spec.ts';
import type { Report } from './report.ts';

/** Radius of rounded corners where nothing is said, in millimetres: 1/4 in. */
const USUAL_RADIUS_MM = new Fraction(127, 20);

/** What the making of a shape needs to know. */
export interface Shaping {
  readonly sizes: Sizes;
  /** Puts the usual radius on the edition's marks. */
  readonly onMarks: (mm: Fraction) => Fraction;
  readonly pointOf: (spec: PointSpec) => Point | undefined;
  readonly report: Report;
}

/** The outline of a circle, an ellipse, a rectangle or a rounded one, as large as `rectangle`. */
export function outlineWithin(
  form: Exclude<FormSpec, { is: 'outline' | 'inset' }>,
  rectangle: Rectangle,
  origin: Origin,
  shaping: Shaping,
): Outline | undefined {
  if (form.is === 'rectangle') return rectangleOutline(rectangle);
  if (form.is !== 'rounded') return ellipseOutline(rectangle);
  const radius = radiusOf(form, rectangle, origin, shaping);
  return radius && roundedOutline(rectangle, radius);
}

/** The radius as stated, at most half the shorter side; the usual one gives way on what is small. */
export function radiusOf(
  form: Exclude<FormSpec, { is: 'outline' | 'inset' }>,
  { width, height }: Pick<Rectangle, 'width' | 'height'>,
  { place, path }: Origin,
  { sizes, onMarks, report }: Shaping,
): Fraction | undefined {
  const most = (width.lte(height) ? width : height).div(2);
  if (form.radius === undefined) {
    const usual = onMarks(USUAL_RADIUS_MM);
    return usual.lte(most) ? usual : most;
  }
  const radius = sizes.length(form.radius);
  if (radius === undefined) return undefined;
  if (radius.mm.lte(most) && radius.mm.gte(0)) return radius.mm;
  const { node, path: within } = form.radius.written;
  report.at(node.place ?? place, within || path, {
    code: 'radius-too-large',
    wrote: form.radius.text,
    takes: 'a radius of at most half the shorter side',
    remedy: 'Make the radius smaller, or write `ellipse` or `circle`.',
  });
  return undefined;
}
