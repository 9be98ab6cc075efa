import Fraction from 'fraction.js';
import type { Point } from '../geometry/index.ts';
import type { Length } from '../units/index.ts';
import type { RefSpec } from './assembly-specs.ts';
import type { Edge, PanelPart } from './card-types.ts';
import type { Found } from './find-references.ts';
import { edgeOfBox } from './line-named.ts';
import { middleOf, pointAlong } from './plane.ts';
import { cornerOf } from './point-on.ts';
import type { Report } from './report.ts';
import type { Band, Piece } from './types.ts';
import { EDGES } from './words.ts';

const OUT: Readonly<Record<Edge, readonly [x: number, y: number]>> = {
  left: [-1, 0],
  right: [1, 0],
  top: [0, -1],
  bottom: [0, 1],
};

/** What touches when an edge or a corner of a piece rests upon something: two points, or one. */
export function edgeTouched({ piece, ref }: Found, spec: RefSpec, report: Report): Point[] | undefined {
  const { part } = ref;
  const edge = edgeNamed({ piece, ref });
  if (edge) {
    const { from, to } = edgeOfBox(piece, edge);
    return [from, to];
  }
  if (part.is === 'corner') return [cornerOf(piece, part.corner)];
  notAnEdge(piece, spec, '`PIECE.bottom`, or a corner as `PIECE.bottom-left`', report);
  return undefined;
}

export interface EdgePoint {
  readonly at: Point;
  /** Away from the paper, square to the edge. */
  readonly out: { readonly x: Fraction; readonly y: Fraction };
  /** The panel that has this point of the edge. */
  readonly panel: PanelPart;
}

/** A point of an edge: `after` from its top or left end, else its middle. */
export function edgePoint(
  { piece, ref }: Found,
  spec: RefSpec,
  after: Length | undefined,
  report: Report,
): EdgePoint | undefined {
  const edge = edgeNamed({ piece, ref });
  if (edge === undefined) {
    notAnEdge(piece, spec, 'an edge, as `PIECE.top`', report);
    return undefined;
  }
  const line = edgeOfBox(piece, edge);
  const at = after ? pointAlong(line, after.mm) : middleOf(line);
  const [x, y] = OUT[edge];
  return { at, out: { x: new Fraction(x), y: new Fraction(y) }, panel: panelAt(piece, edge, at) };
}

/** The edge that is meant: also where a band that lies on it has its name. */
export function edgeNamed({ ref: { part, text } }: Found): Edge | undefined {
  if (part.is === 'edge') return part.edge;
  const word = text.slice(text.lastIndexOf('.') + 1);
  return part.is === 'cell' ? EDGES.find((edge) => edge === word) : undefined;
}

/** The band at a point of an edge, where the bands that meet that edge have names; else the panel of the edge. */
function panelAt(piece: Piece, edge: Edge, at: Point): PanelPart {
  const across = edge === 'top' || edge === 'bottom';
  const bandAt = (bands: readonly Band[], place: Fraction): string | undefined =>
    bands.length === 1 ? undefined : bands.find(({ start, size }) => place.lte(start.plus(size).mm))?.name;
  const endBand = (bands: readonly Band[], last: boolean): string | undefined =>
    bands.length === 1 ? undefined : bands.at(last ? -1 : 0)?.name;
  const column = across ? bandAt(piece.columns, at.x) : endBand(piece.columns, edge === 'right');
  const row = across ? endBand(piece.rows, edge === 'bottom') : bandAt(piece.rows, at.y);
  if (column === undefined && row === undefined) return { is: 'edge', edge };
  return { is: 'cell', column, row };
}

function notAnEdge(piece: Piece, spec: RefSpec, takes: string, report: Report): void {
  report.at(spec.node.place, spec.path, {
    code: 'not-an-edge',
    wrote: spec.node.text,
    takes: takes.replace('PIECE', piece.name),
    remedy: `Name an edge of it: \`${piece.name}.top\`, \`.bottom\`, \`.left\` or \`.right\`.`,
  });
}
