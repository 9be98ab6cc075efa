import type Fraction from 'fraction.js';
import type { Outline, Point } from '../geometry/index.ts';
import type { Piece } from '../spec/index.ts';
import { endPlace, formOf, nearly, type PieceStrokes } from '../wording/index.ts';

/** A distance from the left or top edge that a maker measures, and what lies there. */
export interface Place {
  readonly at: Fraction;
  readonly rounded: boolean;
  /** What lies at that distance, from where to where along the other side, in mm. */
  readonly spans: readonly Span[];
}

export type Span = readonly [from: number, to: number];

/** Everything that is measured on a piece along one side, in rising order, each distance once. */
export function placesOf(piece: Piece, { lines }: PieceStrokes, axis: 'across' | 'down'): readonly Place[] {
  const found: Place[] = [];
  const [way, other] = axis === 'across' ? (['x', 'y'] as const) : (['y', 'x'] as const);
  const length = (axis === 'across' ? piece.width : piece.height).toMm();
  const add = (at: Fraction, rounded: boolean, ...spans: readonly Span[]): void => {
    if (at.valueOf() > SAME_MM && at.valueOf() < length - SAME_MM) found.push({ at, rounded, spans });
  };
  const addPoint = (point: Point): void => {
    const along = point[other].valueOf();
    add(point[way], point.rounded === true, [along, along]);
  };
  const upright = axis === 'across' ? 'down' : 'across';
  for (const { runs, from, to } of lines) {
    if (runs === upright) add(from[way], from.rounded === true, spanOf(from[other], to[other]));
    else if (runs !== 'angled') for (const end of [from, to]) if (endPlace(end, piece) === 'inside') addPoint(end);
    if (runs !== 'angled') continue;
    for (const end of [from, to]) if (endPlace(end, piece) !== 'corner') addPoint(end);
  }
  for (const { outline } of [...piece.windows, ...piece.away, ...piece.shapes]) {
    for (const { at, rounded, span } of edgesOf(outline, way)) add(at, rounded, span);
  }
  if (formOf(piece.outline).is === 'path') for (const { from } of piece.outline) addPoint(from);
  return merged(found);
}

const SAME_MM = 1e-6;

interface RegionEdge {
  readonly at: Fraction;
  readonly rounded: boolean;
  readonly span: Span;
}

/** What is measured of a region along one side: a circle's centre, else its outermost edges, or the corners of a path. */
function edgesOf(outline: Outline, way: 'x' | 'y'): readonly RegionEdge[] {
  const form = formOf(outline);
  const across = way === 'x';
  const [start, size] = across ? [form.left, form.width] : [form.top, form.height];
  const [low, long] = across ? [form.top, form.height] : [form.left, form.width];
  const middle = low.valueOf() + long.valueOf() / 2;
  switch (form.is) {
    case 'circle':
      return [{ at: form.centre[way], rounded: form.centre.rounded === true, span: [middle, middle] }];
    case 'ellipse':
      return [start, start.add(size)].map((at) => ({ at, rounded: false, span: [middle, middle] }));
    case 'path':
      return outline.map(({ from }) => {
        // Corners of one distance are told by the first of them: nothing runs through the region to the others.
        const alike = outline.filter((edge) => nearly(edge.from[way], from[way]));
        const along = alike.map((edge) => edge.from[across ? 'y' : 'x'].valueOf());
        return { at: from[way], rounded: from.rounded === true, span: [Math.min(...along), Math.max(...along)] };
      });
    default: {
      const inset = form.is === 'rounded' ? form.radius.valueOf() : 0;
      const span: Span = [low.valueOf() + inset, low.valueOf() + long.valueOf() - inset];
      return [start, start.add(size)].map((at) => ({ at, rounded: false, span }));
    }
  }
}

function spanOf(a: Fraction, b: Fraction): Span {
  return [Math.min(a.valueOf(), b.valueOf()), Math.max(a.valueOf(), b.valueOf())];
}

/** In rising order, what lies at one distance together; an exact distance before a rounded one. */
function merged(places: readonly Place[]): readonly Place[] {
  const result: Place[] = [];
  for (const place of [...places].sort((a, b) => a.at.compare(b.at))) {
    const last = result.at(-1);
    if (last === undefined || !nearly(last.at, place.at)) result.push(place);
    else {
      const { at, rounded } = last.rounded ? place : last;
      result[result.length - 1] = { at, rounded, spans: [...last.spans, ...place.spans] };
    }
  }
  return result;
}

/**
 * Where an extension line must run over a piece to reach what it is for, from the edge at 0 on: past the last thing that begins
 * there, not where something lies, and `gap` off it.
 */
export function stretchesTo(spans: readonly Span[], gap: number): readonly Span[] {
  const rising = [...spans].sort((a, b) => a[0] - b[0]);
  const stretches: Span[] = [];
  let reached = 0;
  for (const [from, to] of rising) {
    if (from - gap > reached) stretches.push([reached, from - gap]);
    reached = Math.max(reached, to + gap);
  }
  return stretches;
}
