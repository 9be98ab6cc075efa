import Fraction from 'fraction.js';
import type { Band, Card, Crease, Piece } from '../spec/index.ts';
import { panelName } from './names.ts';
import type { Hinge, Panel, Panelling } from './types.ts';

/**
 * The panels of a card and the hinges between them, exact, in each piece's own drawing.
 *
 * A piece is divided into the cells of its columns and rows. A crease that is crossed by others gives one hinge for
 * each cell that it passes. Panels go piece by piece, row by row, left to right; hinges crease by crease.
 */
export function panelsOf(card: Card): Panelling {
  return {
    panels: card.pieces.flatMap(panelsOfPiece),
    hinges: card.pieces.flatMap(hingesOfPiece),
  };
}

function panelsOfPiece(piece: Piece): Panel[] {
  const xs = edgesOf(piece.columns);
  const ys = edgesOf(piece.rows);
  return piece.rows.flatMap((_, row) =>
    piece.columns.map((_, column) => {
      const [left, right, top, bottom] = [edge(xs, column), edge(xs, column + 1), edge(ys, row), edge(ys, row + 1)];
      return {
        name: panelName(piece, column, row),
        piece: piece.name,
        outline: [
          { x: left, y: top },
          { x: right, y: top },
          { x: right, y: bottom },
          { x: left, y: bottom },
        ],
      };
    }),
  );
}

function hingesOfPiece(piece: Piece): Hinge[] {
  const xs = edgesOf(piece.columns);
  const ys = edgesOf(piece.rows);
  const running = (runs: Crease['runs']): Crease[] => piece.creases.filter((crease) => crease.runs === runs);
  const common = (crease: Crease) => ({ crease: crease.name, piece: piece.name, fold: crease.fold });
  return [
    ...running('down').flatMap((crease, column) =>
      piece.rows.map((_, row) => ({
        ...common(crease),
        from: { x: edge(xs, column + 1), y: edge(ys, row) },
        to: { x: edge(xs, column + 1), y: edge(ys, row + 1) },
        before: panelName(piece, column, row),
        after: panelName(piece, column + 1, row),
      })),
    ),
    ...running('across').flatMap((crease, row) =>
      piece.columns.map((_, column) => ({
        ...common(crease),
        from: { x: edge(xs, column), y: edge(ys, row + 1) },
        to: { x: edge(xs, column + 1), y: edge(ys, row + 1) },
        before: panelName(piece, column, row),
        after: panelName(piece, column, row + 1),
      })),
    ),
  ];
}

/** Positions of the edges and creases along one side, from zero to the sum of the bands. */
function edgesOf(bands: readonly Band[]): Fraction[] {
  const edges = [new Fraction(0)];
  let at = new Fraction(0);
  for (const band of bands) {
    at = at.add(band.size.mm);
    edges.push(at);
  }
  return edges;
}

function edge(edges: readonly Fraction[], index: number): Fraction {
  const at = edges[index];
  if (at === undefined) throw new RangeError('a piece has one more edge than bands');
  return at;
}
