import { creaseName } from './crease-name.ts';
import { dependencyOrder } from './dependency-order.ts';
import { familyOf } from './line-named.ts';
import { pointsOfPiece } from './piece-expressions.ts';
import type { LineName, LineSpec } from './piece-specs.ts';
import type { PointSpec } from './point-spec.ts';
import { type Report, suggest } from './report.ts';
import type { PieceSpec, StripSpec } from './types.ts';
import { EDGES } from './words.ts';

/** Checks that what lies on a piece speaks of lines and bands that the piece has, and that no line needs itself. */
export function checkPlaces(piece: PieceSpec, report: Report): void {
  const lines = namesOfLines(piece);
  const asked: LineName[] = [
    ...pointsOfPiece(piece).flatMap((point) => (point.is === 'on' ? [{ ...point }] : [])),
    ...piece.lines.flatMap(({ course }) => (course.is === 'angle' ? [course.off] : [])),
  ];
  for (const name of asked) checkLine(name, piece, lines, report);
  checkCircle(piece, report);
  checkBands(piece, report);
  checkOwnOutline(piece, report);
}

/** Every line of a piece by its own name, members written out. */
export function namesOfLines(piece: PieceSpec): string[] {
  const strip = (side: StripSpec | undefined): string[] =>
    side?.creases.map((crease, index) => creaseName(side, crease, index)) ?? [];
  return [...EDGES, ...strip(piece.across), ...strip(piece.down), ...piece.lines.flatMap(membersOfLine)];
}

/** The names of the lines that one entry gives. */
export function membersOfLine({ name, course }: LineSpec): string[] {
  const listed = course.is === 'square' && course.listed;
  return listed ? course.at.map((_, index) => `${name}(${index + 1})`) : [name];
}

/** The line that a name means among names: itself, or the only member of a family. */
export function meantLines(name: string, lines: readonly string[]): readonly string[] {
  return lines.includes(name) ? [name] : lines.filter((line) => familyOf(line) === name);
}

function checkLine({ line, place, path }: LineName, piece: PieceSpec, lines: readonly string[], report: Report): void {
  const meant = meantLines(line, lines);
  if (meant.length === 1) return;
  const takes = `a line of \`${piece.name}\`: ${lines.join(', ')}`;
  if (meant.length > 1) {
    const remedy = `Write ${meant.map((name) => `\`${name}\``).join(' or ')}.`;
    report.at(place, path, { code: 'several-lines', wrote: line, takes, remedy });
    return;
  }
  const remedy = suggest(line, lines, `\`${piece.name}\` has no line called \`${line}\`.`);
  report.at(place, path, { code: 'unknown-line', wrote: line, takes, remedy });
}

/** The lines that a line's course is made from. */
export function linesNeeded({ course }: LineSpec): string[] {
  const onLine = (point: PointSpec): string[] => (point.is === 'on' ? [point.line] : []);
  if (course.is === 'points') return [...onLine(course.from), ...onLine(course.to)];
  return course.is === 'angle' ? [...onLine(course.start), course.off.line] : [];
}

/** Lines in an order in which each comes after those that it is made from. */
export function orderOfLines(piece: PieceSpec): { order: readonly string[]; circle: readonly string[] } {
  const every = piece.lines.flatMap(membersOfLine);
  const owners = new Map(piece.lines.flatMap((line) => membersOfLine(line).map((member) => [member, line.name])));
  const needs = piece.lines.map((line): [string, string[]] => [
    line.name,
    linesNeeded(line).flatMap((name) => meantLines(name, every).flatMap((member) => owners.get(member) ?? [])),
  ]);
  return dependencyOrder(new Map(needs));
}

function checkCircle(piece: PieceSpec, report: Report): void {
  const { circle } = orderOfLines(piece);
  const first = piece.lines.find(({ name }) => name === circle[0]);
  if (first === undefined) return;
  const wrote = [...circle, circle[0]].map((name) => `\`${name}\``).join(' needs ');
  const remedy = 'Begin one of them at a corner, at an edge or at a line between bands.';
  report.at(first.place, first.path, { code: 'circle', wrote, takes: 'lines that do not need each other', remedy });
}

function checkBands(piece: PieceSpec, report: Report): void {
  const names = (side: StripSpec | undefined): string[] => side?.bands.flatMap(({ name }) => name ?? []) ?? [];
  const [columns, rows] = [names(piece.across), names(piece.down)];
  const bands = [...columns, ...rows];
  const takes =
    bands.length === 0 ? `a band; \`${piece.name}\` has none` : `a band of \`${piece.name}\`: ${bands.join(', ')}`;
  const unknown = (wrote: string, { place, path }: Omit<LineName, 'line'>): void => {
    const otherwise = bands.length === 0 ? 'Give the piece bands with `across` or `down`.' : `Write ${takes}.`;
    report.at(place, path, { code: 'unknown-band', wrote, takes, remedy: suggest(wrote, bands, otherwise) });
  };
  const away = piece.away.flatMap((one) => (one.is === 'shape' ? [one.shape] : []));
  for (const { staysWith, within } of [...piece.windows, ...piece.shapes, ...away]) {
    for (const name of [staysWith, within]) if (name && !bands.includes(name.line)) unknown(name.line, name);
  }
  for (const cell of piece.away) {
    if (cell.is === 'shape') continue;
    const [first = '', second] = cell.parts;
    if (second === undefined && !bands.includes(first)) unknown(first, cell);
    else if (second !== undefined && !columns.includes(first)) unknown(first, cell);
    else if (second !== undefined && !rows.includes(second)) unknown(second, cell);
  }
  const across = piece.across?.bands.length ?? 1;
  const down = piece.down?.bands.length ?? 1;
  if (piece.corners === undefined || (across > 2 && down > 2)) return;
  report.at(piece.place, piece.path, {
    code: 'corners-of-what',
    wrote: `corners: ${piece.corners}`,
    takes: '`corners` where three bands or more run both ways',
    remedy:
      'Give the piece walls on all four sides: `across: [left D, valley, middle D, valley, right D]`, and `down` likewise.',
  });
}

/** The outline of a piece makes its corners and edges, so it cannot be made from them. */
function checkOwnOutline(piece: PieceSpec, report: Report): void {
  if (piece.form?.is !== 'outline') return;
  for (const { to, through } of piece.form.path) {
    for (const point of through ? [to, through] : [to]) {
      if (point.is === 'at') continue;
      const remedy = 'Write the point as `[2, 3]`: across, then down.';
      const takes = 'points by their measures';
      report.at(point.place, point.path, { code: 'point-too-early', wrote: point.text, takes, remedy });
    }
  }
}
