import {
  type Band,
  type Card,
  type Crease,
  type Edge,
  type Join,
  type Laying,
  Length,
  type PanelRef,
  type PathEdge,
  type Piece,
  type PlaneTurn,
  type Point,
} from '../../../plugins/engine/index.ts';

/**
 * The same card lying otherwise on the table, or made for the other ruler: what is true of one is true of all. In the
 * other system the numbers are kept and read as tens of millimetres.
 */
export const VIEWS: readonly { readonly view: string; readonly of: (made: Card) => Card }[] = [
  { view: 'as drawn', of: (made) => made },
  { view: 'turned a quarter', of: turned },
  { view: 'mirrored', of: mirrored },
  { view: 'turned and mirrored', of: (made) => mirrored(turned(made)) },
  { view: 'in millimetres', of: inMillimetres },
];

/** Ten millimetres for each inch. */
export function tens(length: Length): Length {
  return Length.fromMm(length.inches.mul(10));
}

/** What a view does to the drawing of a piece. */
interface Change {
  readonly piece: (piece: Piece) => Piece;
  readonly point: (point: Point, piece: Piece) => Point;
  readonly vector: <V extends Point>(vector: V) => V;
  readonly length: (length: Length) => Length;
  readonly reference: (ref: PanelRef) => PanelRef;
  readonly turn: (laying: Laying) => PlaneTurn;
  readonly edge: (edge: Edge) => Edge;
  readonly mirrors: boolean;
}

function changed(made: Card, change: Change): Card {
  const pieceOf = (name: string): Piece => {
    const found = made.pieces.find((piece) => piece.name === name);
    if (!found) throw new Error(`no piece ${name}`);
    return found;
  };
  const pins = (turn: number): number => (change.mirrors ? -turn : turn);
  return {
    ...made,
    pieces: made.pieces.map((piece) => withShapes(change.piece(piece), piece, change)),
    joins: made.joins.map((join) => changedJoin(join, pieceOf, change)),
    poses: made.poses.map((pose) => ({
      ...pose,
      ground: pose.ground && change.reference(pose.ground),
      slides: pose.slides.map((slide) => ({ ...slide, at: change.length(slide.at) })),
      pins: pose.pins.map((pin) => ({ ...pin, turn: pins(pin.turn) })),
    })),
    closesWithin: made.closesWithin.map(change.reference),
  };
}

function withShapes(after: Piece, before: Piece, change: Change): Piece {
  const point = (at: Point): Point => change.point(at, before);
  const region = <R extends { readonly outline: Piece['outline'] }>(one: R): R => ({
    ...one,
    outline: edges(one.outline),
  });
  const edges = (outline: Piece['outline']): Piece['outline'] => {
    const moved = outline.map((edge) => changedEdge(edge, point, change));
    return change.mirrors ? moved.toReversed() : moved;
  };
  return {
    ...after,
    outline: edges(before.outline),
    lines: before.lines.map((line) => ({ ...line, from: point(line.from), to: point(line.to) })),
    windows: before.windows.map(region),
    away: before.away.map(region),
    shapes: before.shapes.map(region),
    spots: before.spots.map((spot) => ({ ...spot, at: point(spot.at) })),
  };
}

function changedEdge(edge: PathEdge, point: (at: Point) => Point, { mirrors, length }: Change): PathEdge {
  const [from, to] = [point(edge.from), point(edge.to)];
  const ends = mirrors ? { from: to, to: from } : { from, to };
  if (edge.is === 'line') return { ...edge, ...ends };
  const [rx, ry] = [edge.rx, edge.ry].map((radius) => length(Length.fromMm(radius)).mm);
  if (!rx?.equals(ry ?? -1)) throw new Error('only circles are turned here');
  // Mirrored and gone along the other way, an arc turns as before.
  return { ...edge, ...ends, centre: point(edge.centre), rx, ry: rx };
}

function changedJoin(join: Join, pieceOf: (name: string) => Piece, change: Change): Join {
  const onPart = (at: Point): Point => change.point(at, pieceOf(join.part.piece));
  const onto = (at: Point): Point => change.point(at, pieceOf(join.onto.piece));
  const refs = { part: change.reference(join.part), onto: change.reference(join.onto) };
  const { length } = change;
  switch (join.is) {
    case 'slip':
      return { ...join, ...refs, play: length(join.play) };
    case 'rest': {
      const from = join.from && { ...join.from, start: onto(join.from.start), end: onto(join.from.end) };
      return { ...join, ...refs, touches: join.touches.map(onPart), from, away: length(join.away) };
    }
    case 'hang': {
      const { p, q, away, thread } = join;
      return { ...join, ...refs, p: onPart(p), q: onto(q), away: change.vector(away), thread: length(thread) };
    }
    case 'slide': {
      const laid = { p: onPart(join.p), q: onto(join.q), turn: change.turn(join), along: change.vector(join.along) };
      return { ...join, ...refs, ...laid, keep: length(join.keep), start: length(join.start), end: length(join.end) };
    }
    case 'glue': {
      const foam = join.foam && length(join.foam);
      const laid = join.laid && {
        line: lineIn(join.laid.line, change),
        along: lineIn(join.laid.along, change),
        after: length(join.laid.after),
      };
      return { ...join, ...refs, p: onPart(join.p), q: onto(join.q), turn: change.turn(join), foam, laid };
    }
    default:
      return { ...join, ...refs, p: onPart(join.p), q: onto(join.q), turn: change.turn(join) };
  }
}

/** Lines keep their names; edges are called by where they come to lie. */
function lineIn(name: string, { edge }: Change): string {
  return name in QUARTER ? edge(name as Edge) : name;
}

const QUARTER: Readonly<Record<Edge, Edge>> = { left: 'top', top: 'right', right: 'bottom', bottom: 'left' };
const MIRRORED: Readonly<Record<Edge, Edge>> = { left: 'right', right: 'left', top: 'top', bottom: 'bottom' };

/** A quarter turn clockwise: what was the left edge is the top one, and the bottom edge is the left one. */
function turned(made: Card): Card {
  return changed(made, {
    piece: turnedBands,
    point: ({ x, y, ...more }, piece) => ({ x: piece.height.mm.sub(y), y: x, ...more }),
    vector: (vector) => ({ ...vector, x: vector.y.neg(), y: vector.x }),
    length: (length) => length,
    reference: (ref) => {
      const { part } = ref;
      if (part.is === 'cell') return { ...ref, part: { ...part, column: part.row, row: part.column } };
      return part.is === 'edge' ? { ...ref, part: { ...part, edge: QUARTER[part.edge] } } : ref;
    },
    edge: (edge) => QUARTER[edge],
    // Like sides turn a part over left for right, which on the turned drawing is top for bottom: half a turn from it.
    turn: ({ turn, partSide, ontoSide }) =>
      partSide === ontoSide ? { ...turn, cos: turn.cos.neg(), sin: turn.sin.neg() } : turn,
    mirrors: false,
  });
}

function turnedBands(one: Piece): Piece {
  const across = one.creases.filter(({ runs }) => runs === 'across');
  const down = one.creases.filter(({ runs }) => runs === 'down');
  return {
    ...one,
    width: one.height,
    height: one.width,
    columns: reversedBands(one.rows, one.height),
    rows: one.columns,
    creases: [
      ...reversedCreases(across, one.height).map((crease) => ({ ...crease, runs: 'down' as const })),
      ...down.map((crease) => ({ ...crease, runs: 'across' as const })),
    ],
  };
}

/** Left for right: a valley stays a valley, since the face stays up. */
function mirrored(made: Card): Card {
  return changed(made, {
    piece: mirroredBands,
    point: ({ x, ...more }, piece) => ({ ...more, x: piece.width.mm.sub(x) }),
    vector: (vector) => ({ ...vector, x: vector.x.neg() }),
    length: (length) => length,
    reference: (ref) =>
      ref.part.is === 'edge' ? { ...ref, part: { ...ref.part, edge: MIRRORED[ref.part.edge] } } : ref,
    turn: ({ turn }) => ({ ...turn, sin: turn.sin.neg() }),
    edge: (edge) => MIRRORED[edge],
    mirrors: true,
  });
}

function mirroredBands(one: Piece): Piece {
  return {
    ...one,
    columns: reversedBands(one.columns, one.width),
    creases: [
      ...reversedCreases(
        one.creases.filter(({ runs }) => runs === 'down'),
        one.width,
      ),
      ...one.creases.filter(({ runs }) => runs === 'across'),
    ],
  };
}

function reversedBands(bands: readonly Band[], side: Length): Band[] {
  return bands.toReversed().map((band) => ({ ...band, start: side.minus(band.start).minus(band.size) }));
}

function reversedCreases(creases: readonly Crease[], side: Length): Crease[] {
  return creases.toReversed().map((crease) => ({ ...crease, at: side.minus(crease.at) }));
}

function inMillimetres(made: Card): Card {
  const bands = (list: readonly Band[]): Band[] =>
    list.map((band) => ({ ...band, start: tens(band.start), size: tens(band.size), exact: tens(band.exact) }));
  const changedCard = changed(made, {
    piece: (one) => ({
      ...one,
      width: tens(one.width),
      height: tens(one.height),
      columns: bands(one.columns),
      rows: bands(one.rows),
      creases: one.creases.map((crease) => ({ ...crease, at: tens(crease.at) })),
    }),
    point: ({ x, y, ...more }) => ({ x: tens(Length.fromMm(x)).mm, y: tens(Length.fromMm(y)).mm, ...more }),
    vector: (vector) => vector,
    length: tens,
    reference: (ref) => ref,
    turn: ({ turn }) => turn,
    edge: (edge) => edge,
    mirrors: false,
  });
  return { ...changedCard, system: 'metric', mark: Length.fromMm('1/2') };
}
