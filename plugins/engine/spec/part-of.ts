import { cornersOf, insideOf } from '../geometry/index.ts';
import type { Corner, Edge, PanelPart } from './card-types.ts';
import type { Piece } from './types.ts';
import { CORNERS, EDGES } from './words.ts';

/**
 * The part of a piece that the names after it mean: `base.front` gives `front`; none is the whole piece.
 *
 * A band wins over the edge of its name, so that `left` is the band where one is called so, and the only panel of that edge elsewhere. A
 * shape that swings is the panel that it lies in. Undefined when nothing has that name.
 */
export function partOf(piece: Piece, parts: readonly string[]): PanelPart | undefined {
  const [first, second, ...more] = parts;
  if (more.length > 0) return undefined;
  if (first === undefined) return { is: 'whole' };
  const column = piece.columns.some(({ name }) => name === first) ? first : undefined;
  if (second !== undefined) {
    const row = piece.rows.some(({ name }) => name === second) ? second : undefined;
    return column !== undefined && row !== undefined ? { is: 'cell', column, row } : undefined;
  }
  if (column !== undefined) return { is: 'cell', column, row: undefined };
  if (piece.rows.some(({ name }) => name === first)) return { is: 'cell', column: undefined, row: first };
  if ((EDGES as readonly string[]).includes(first)) return { is: 'edge', edge: first as Edge };
  if ((CORNERS as readonly string[]).includes(first)) return { is: 'corner', corner: first as Corner };
  const spot = piece.spots.find(({ name }) => name === first);
  if (spot) return { is: 'spot', at: spot.at };
  const shape = piece.shapes.find(({ name }) => name === first);
  const at = shape && insideOf(cornersOf(shape.outline));
  return at && { is: 'spot', at };
}

/** What `partOf` would find in a piece, for suggestions. */
export function partNames(piece: Piece): string[] {
  const bands = [...piece.columns, ...piece.rows].flatMap(({ name }) => (name === undefined ? [] : [name]));
  const named = [...piece.spots, ...piece.shapes].map(({ name }) => name);
  return [...bands, ...named, ...EDGES, ...CORNERS];
}
