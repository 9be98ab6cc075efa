import type { Place } from '../diagnostics/index.ts';
import { dependencyOrder } from './dependency-order.ts';
import { type Expression, namesIn } from './expression.ts';
import { join, type Report } from './report.ts';
import type { DerivedValue, Fold, Parameter, PieceSpec, StripSpec } from './types.ts';

interface Named {
  readonly name: string;
  readonly what: string;
  readonly place: Place;
  readonly path: string;
}

/** No two things may answer to one name: parameters, values and pieces; and in a piece its bands and creases. */
export function checkNames(fold: Fold, report: Report): void {
  checkUnique(
    [
      ...fold.parameters.map(({ name, place }) => ({
        name,
        place,
        what: 'a parameter',
        path: join('parameters', name),
      })),
      ...fold.values.map(({ name, place }) => ({ name, place, what: 'a value', path: join('values', name) })),
      ...fold.pieces.map(({ name, place, path }) => ({ name, place, what: 'a piece', path })),
    ],
    report,
  );
  for (const piece of fold.pieces) checkPieceNames(piece, fold, report);
}

/** Columns and rows may share a name, since `.width` and `.height` tell them apart; nothing else in a piece may. */
function checkPieceNames(piece: PieceSpec, fold: Fold, report: Report): void {
  const pieces = fold.pieces.map(({ name, place, path }) => ({ name, place, path, what: 'a piece' }));
  const creases = [...creasesOf(piece.across), ...creasesOf(piece.down)];
  const upon = uponPiece(piece);
  checkUnique(bandsOf(piece.across), report);
  checkUnique(bandsOf(piece.down), report);
  checkUnique([...creases, ...upon], report);
  const bands = new Map([...bandsOf(piece.across), ...bandsOf(piece.down)].map((item) => [item.name, item]));
  for (const item of upon) {
    const other = bands.get(item.name);
    if (other) clash(item, other, report);
  }
  const taken = new Map([...pieces, ...bandsOf(piece.across), ...bandsOf(piece.down)].map((item) => [item.name, item]));
  for (const crease of [...creases, ...upon.filter(({ what }) => what === 'a crease')]) {
    const other = taken.get(crease.name);
    if (other) clash(crease, other, report);
  }
}

/** Reports each item whose name an earlier one has. */
function checkUnique(items: readonly Named[], report: Report): void {
  const first = new Map<string, Named>();
  for (const item of items) {
    const other = first.get(item.name);
    if (other === undefined) first.set(item.name, item);
    else clash(item, other, report);
  }
}

function clash(item: Named, other: Named, report: Report): void {
  if (report.problems.some(({ code, place }) => code === 'name-clash' && place === item.place)) return;
  report.at(item.place, item.path, {
    code: 'name-clash',
    wrote: item.name,
    takes: `a name that nothing else has; \`${item.name}\` is ${other.what} in line ${other.place.line}`,
    remedy: `Give one of the two another name, as \`${item.name}-2\`.`,
  });
}

function bandsOf(strip: StripSpec | undefined): Named[] {
  return (strip?.bands ?? []).flatMap(({ name, place, path }) =>
    name === undefined ? [] : [{ name, place, path, what: 'a band' }],
  );
}

function creasesOf(strip: StripSpec | undefined): Named[] {
  return (strip?.creases ?? []).flatMap(({ name, place, path }) =>
    name === undefined ? [] : [{ name, place, path, what: 'a crease' }],
  );
}

/** Everything that lies on a piece under a name of its own. */
function uponPiece(piece: PieceSpec): Named[] {
  const named = (items: readonly Omit<Named, 'what'>[], what: string): Named[] =>
    items.map(({ name, place, path }) => ({ name, place, path, what }));
  const trimmed = piece.away.flatMap((one) => (one.is === 'shape' ? [one.shape] : []));
  return [
    ...piece.lines.flatMap((line) => named([line], `a ${line.does}`)),
    ...named(piece.windows, 'a window'),
    ...named(piece.shapes, 'a shape'),
    ...named(trimmed, 'a part cut away'),
    ...named(piece.spots, 'a panel'),
  ];
}

/** What a parameter or value is worked out from. */
export function sourcesOf(item: Parameter | DerivedValue): Expression[] {
  if ('value' in item) return [item.value];
  return item.type === 'choice' ? item.choices.map(({ value }) => value) : item.fallback ? [item.fallback] : [];
}

/** Parameters and values in the order in which they can be worked out; a circle is reported. */
export function checkCircles(fold: Fold, report: Report): string[] {
  const items = [...fold.parameters, ...fold.values];
  const needs = new Map(items.map((item) => [item.name, sourcesOf(item).flatMap(namesIn)]));
  const { order, circle } = dependencyOrder(needs);
  const first = items.find((item) => item.name === circle[0]);
  if (first) {
    const chain = [...circle, circle[0]].map((name) => `\`${name}\``).join(' needs ');
    report.at(first.place, join('value' in first ? 'values' : 'parameters', first.name), {
      code: 'circle',
      wrote: chain,
      takes: 'sizes that do not need each other',
      remedy: 'Give one of them a size of its own.',
    });
  }
  return order;
}
