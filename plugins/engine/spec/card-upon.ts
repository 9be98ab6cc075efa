import type Fraction from 'fraction.js';
import type { Outline, Point } from '../geometry/index.ts';
import { makeLines } from './card-lines.ts';
import { outlineWithin, radiusOf, type Shaping } from './card-outlines.ts';
import type { PartCut, Region } from './card-types.ts';
import { cellRectangle, cornerCells, tabCuts } from './corner-cells.ts';
import { ellipseOutline, hasArea, inset, type Rectangle, rectangleOutline, roundedOutline } from './outlines.ts';
import { outlineOfPath } from './path-outlines.ts';
import type { AwaySpec, FormSpec, ShapeSpec } from './piece-specs.ts';
import { point, ZERO } from './plane.ts';
import { pointOn, type Sizes } from './point-on.ts';
import type { Report } from './report.ts';
import type { Piece, PieceSpec } from './types.ts';

/** How what lies on a piece is made. */
export interface Upon {
  readonly sizes: Sizes;
  readonly onMarks: (mm: Fraction) => Fraction;
  readonly report: Report;
}

/** A piece that has its size, its bands and its edge, with all that lies upon it. */
export function withAllUpon(spec: PieceSpec, bare: Piece, upon: Upon): Piece {
  const { sizes, report } = upon;
  const lines = [...makeLines(spec, bare, sizes, report), ...tabCuts(spec, bare)];
  const piece: Piece = { ...bare, lines };
  const shaping: Shaping = { ...upon, pointOf: (at) => pointOn(piece, at, sizes) };
  const region = (shape: ShapeSpec): Region[] => {
    const outline = outlineOf(shape, spec, piece, shaping);
    return outline ? [{ name: shape.name, outline, place: shape.place, path: shape.path }] : [];
  };
  const corners = spec.corners === 'away' ? cornerCells(piece).filter(({ rectangle }) => hasArea(rectangle)) : [];
  return {
    ...piece,
    windows: spec.windows.flatMap(region),
    away: [
      ...corners.map(({ name, rectangle }) => ({
        name,
        outline: rectangleOutline(rectangle),
        place: spec.place,
        path: spec.path,
      })),
      ...spec.away.flatMap((one) => (one.is === 'cell' ? cellAway(one, piece) : region(one.shape))),
    ],
    shapes: spec.shapes.flatMap((shape): PartCut[] =>
      region(shape).map((made) => ({ ...made, staysWith: shape.staysWith?.line ?? '' })),
    ),
    spots: spec.spots.flatMap(({ name, at, place, path }) => {
      const found = pointOn(piece, at, sizes);
      return found ? [{ name, at: found, place, path }] : [];
    }),
    thick: spec.thick && sizes.height(spec.thick),
  };
}

function cellAway(cell: AwaySpec & { is: 'cell' }, piece: Piece): Region[] {
  const [first, second] = cell.parts;
  const columns = piece.columns.findIndex(({ name }) => name === first);
  const rows = piece.rows.findIndex(({ name }) => name === (second ?? first));
  const rectangle = cellRectangle(piece, columns, second === undefined && columns >= 0 ? -1 : rows);
  const { place, path, parts } = cell;
  // A band that is not there has been said; it leaves nothing to cut away.
  return hasArea(rectangle) ? [{ name: parts.join('.'), outline: rectangleOutline(rectangle), place, path }] : [];
}

function outlineOf(shape: ShapeSpec, spec: PieceSpec, piece: Piece, shaping: Shaping): Outline | undefined {
  const { form } = shape;
  if (form.is === 'outline') return outlineOfPath(form.path, shape, shaping);
  const frame = frameOf(shape, piece);
  if (form.is === 'inset') return insetOf(form, shape, frame, spec, piece, shaping);
  const [width, height] = [shaping.sizes.length(form.width)?.mm, shaping.sizes.length(form.height)?.mm];
  const middle = shape.at ? shaping.pointOf(shape.at) : middleOf(frame);
  if (!width || !height || !middle) return undefined;
  const rectangle = { left: middle.x.sub(width.div(2)), top: middle.y.sub(height.div(2)), width, height };
  return hasArea(rectangle) ? outlineWithin(form, rectangle, shape, shaping) : nothingLeft(shape, shaping.report);
}

function frameOf({ within }: ShapeSpec, piece: Piece): Rectangle {
  const name = within?.line;
  const column = name === undefined ? -1 : piece.columns.findIndex((band) => band.name === name);
  const row = name === undefined || column >= 0 ? -1 : piece.rows.findIndex((band) => band.name === name);
  return cellRectangle(piece, column, row);
}

function middleOf({ left, top, width, height }: Rectangle): Point {
  return point(left.add(width.div(2)), top.add(height.div(2)));
}

/** The edge of the piece or band, moved inwards: round and rounded pieces keep their shape. */
function insetOf(
  form: FormSpec & { is: 'inset' },
  shape: ShapeSpec,
  frame: Rectangle,
  spec: PieceSpec,
  piece: Piece,
  shaping: Shaping,
): Outline | undefined {
  const by = shaping.sizes.length(form.by)?.mm;
  if (by === undefined) return undefined;
  const inner = inset(frame, by);
  if (!hasArea(inner)) return nothingLeft(shape, shaping.report);
  const own = shape.within ? undefined : spec.form;
  if (own?.is === 'circle' || own?.is === 'ellipse') return ellipseOutline(inner);
  if (own?.is === 'rounded') {
    const whole = { width: piece.width.mm, height: piece.height.mm };
    const radius = radiusOf(own, whole, spec, shaping)?.sub(by);
    return radius && roundedOutline(inner, radius.compare(ZERO) > 0 ? radius : ZERO);
  }
  if (own?.is !== 'outline') return rectangleOutline(inner);
  const takes = '`inset` on a sheet, a circle, an ellipse or a rounded sheet';
  const remedy = 'Draw the window as an `outline` of its own.';
  shaping.report.at(shape.place, shape.path, { code: 'inset-of-outline', wrote: 'inset', takes, remedy });
  return undefined;
}

function nothingLeft({ name, place, path }: ShapeSpec, report: Report): undefined {
  report.at(place, path, {
    code: 'no-shape',
    wrote: `\`${name}\`, which comes out with no area`,
    takes: 'a shape larger than nothing',
    remedy: 'Change the sizes that it is made from.',
  });
}
