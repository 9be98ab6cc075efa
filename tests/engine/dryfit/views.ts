import { type Band, type Card, type Crease, Length, type Piece } from '../../../plugins/engine/index.ts';

/**
 * The same card lying otherwise on the table, or made for the other ruler: what is true of one is true of all. In the
 * other system the numbers are kept and read as tens of millimetres.
 */
export const VIEWS: readonly { readonly view: string; readonly of: (made: Card) => Card }[] = [
  { view: 'as drawn', of: (made) => made },
  { view: 'turned a quarter', of: (made) => withPieces(made, turned) },
  { view: 'mirrored', of: (made) => withPieces(made, mirrored) },
  { view: 'turned and mirrored', of: (made) => withPieces(made, (one) => mirrored(turned(one))) },
  { view: 'in millimetres', of: inMillimetres },
];

/** Ten millimetres for each inch. */
export function tens(length: Length): Length {
  return Length.fromMm(length.inches.mul(10));
}

function withPieces(made: Card, change: (one: Piece) => Piece): Card {
  return { ...made, pieces: made.pieces.map(change) };
}

/** A quarter turn clockwise: what was the left edge is the top one, and the bottom edge is the left one. */
function turned(one: Piece): Piece {
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
function mirrored(one: Piece): Piece {
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
  return {
    ...withPieces(made, (one) => ({
      ...one,
      width: tens(one.width),
      height: tens(one.height),
      columns: bands(one.columns),
      rows: bands(one.rows),
      creases: one.creases.map((crease) => ({ ...crease, at: tens(crease.at) })),
    })),
    system: 'metric',
    mark: Length.fromMm('1/2'),
  };
}
