import type { Expression } from './expression.ts';
import type { Course, FormSpec, ShapeSpec } from './piece-specs.ts';
import type { PointSpec } from './point-spec.ts';
import type { PieceSpec } from './types.ts';

/** An expression of a piece, with what it has to come out as. */
export interface WantedOfPiece {
  readonly expression: Expression;
  readonly want: 'length' | 'angle';
}

/** The sizes that a piece is made from: earlier pieces may be measured in them, not the piece itself. */
export function sizesOfPiece(piece: PieceSpec): Expression[] {
  const bands = [...(piece.across?.bands ?? []), ...(piece.down?.bands ?? [])];
  const sizes = piece.size ? [piece.size.width, piece.size.height] : [];
  const form = piece.form?.is === 'outline' ? ofForm(piece.form) : [];
  return [...sizes, ...bands.flatMap(({ size }) => size ?? []), ...form];
}

/** The sizes of what lies on a piece, in which that piece may be measured too. */
export function sizesUponPiece(piece: PieceSpec): WantedOfPiece[] {
  const away = piece.away.flatMap((one) => (one.is === 'shape' ? [one.shape] : []));
  const radius = piece.form && 'radius' in piece.form && piece.form.radius ? [piece.form.radius] : [];
  const lengths = [
    ...[...piece.windows, ...piece.shapes, ...away].flatMap(ofShape),
    ...piece.spots.flatMap(({ at }) => ofPoint(at)),
    ...piece.lines.flatMap(({ course }) => ofCourse(course)),
    ...radius,
    ...(piece.thick ? [piece.thick] : []),
  ];
  const angles = piece.lines.flatMap(({ course }) => (course.is === 'angle' ? [course.by] : []));
  return [
    ...lengths.map((expression) => ({ expression, want: 'length' as const })),
    ...angles.map((expression) => ({ expression, want: 'angle' as const })),
  ];
}

/** Every point that lies on a piece by its rule. */
export function pointsOfPiece(piece: PieceSpec): PointSpec[] {
  const away = piece.away.flatMap((one) => (one.is === 'shape' ? [one.shape] : []));
  const ofSteps = (form: FormSpec | undefined): PointSpec[] =>
    form?.is === 'outline' ? form.path.flatMap(({ to, through }) => (through ? [to, through] : [to])) : [];
  return [
    ...piece.lines.flatMap(({ course }) =>
      course.is === 'points' ? [course.from, course.to] : course.is === 'angle' ? [course.start] : [],
    ),
    ...[...piece.windows, ...piece.shapes, ...away].flatMap(({ at, form }) => [...(at ? [at] : []), ...ofSteps(form)]),
    ...piece.spots.map(({ at }) => at),
  ];
}

function ofShape({ form, at }: ShapeSpec): Expression[] {
  return [...ofForm(form), ...(at ? ofPoint(at) : [])];
}

function ofForm(form: FormSpec): Expression[] {
  if (form.is === 'inset') return [form.by];
  if (form.is === 'outline') {
    return form.path.flatMap(({ to, through }) => [...ofPoint(to), ...(through ? ofPoint(through) : [])]);
  }
  return [form.width, form.height, ...(form.radius ? [form.radius] : [])];
}

function ofPoint(point: PointSpec): Expression[] {
  if (point.is === 'at') return [point.across, point.down];
  return point.is === 'on' ? [point.at] : [];
}

/** The lengths of a line's course. */
function ofCourse(course: Course): Expression[] {
  const given = (...all: (Expression | undefined)[]): Expression[] => all.flatMap((one) => one ?? []);
  switch (course.is) {
    case 'square':
      return [...course.at, ...given(course.start, course.end)];
    case 'middle':
      return given(course.start, course.end);
    case 'points':
      return [...ofPoint(course.from), ...ofPoint(course.to)];
    case 'angle':
      return [...ofPoint(course.start), ...given(course.long)];
  }
}
