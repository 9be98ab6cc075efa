import { type PathEdge, type Point, type Seen, seen, ZERO } from '../geometry/index.ts';
import type { CreaseFold, Line, LineWork, Piece, Region } from '../spec/index.ts';

/** What a line on a piece belongs to: a closed region, or work along it. */
export interface Source {
  readonly is: 'outline' | 'away' | 'window' | 'shape' | LineWork;
  readonly name: string;
  /** For a region: its number among the regions of the piece. */
  readonly region: number;
  /** For a crease: as written. */
  readonly folds: readonly CreaseFold[];
  /** For a crease: between two bands. */
  readonly ofBands: boolean;
  /** For a shape: the band that it stays with. */
  readonly staysWith: string;
}

/** One edge of a source, in the piece's drawing. */
export interface Curve {
  /** Its number in the sources of the piece. */
  readonly source: number;
  readonly edge: PathEdge;
  readonly from: Seen;
  readonly to: Seen;
}

export interface LineUp {
  readonly sources: readonly Source[];
  readonly curves: readonly Curve[];
  readonly regionCount: number;
}

/**
 * Everything that is drawn on a piece, in the order in which one thing wins over another that lies upon it: its edge, what
 * is taken away, windows, shapes, band creases, then lines.
 */
export function curvesOf(piece: Piece): LineUp {
  const sources: Source[] = [];
  const curves: Curve[] = [];
  let regionCount = 0;
  const add = (source: Partial<Source> & Pick<Source, 'is' | 'name'>, edges: readonly PathEdge[]): void => {
    const number = sources.length;
    sources.push({ region: -1, folds: [], ofBands: false, staysWith: '', ...source });
    for (const edge of edges) curves.push({ source: number, edge, from: seen(edge.from), to: seen(edge.to) });
  };
  const addRegion = (is: Source['is'], { name, outline }: Pick<Region, 'name' | 'outline'>, staysWith = ''): void =>
    add({ is, name, region: regionCount++, staysWith }, outline);
  addRegion('outline', { name: '', outline: piece.outline });
  for (const region of piece.away) addRegion('away', region);
  for (const region of piece.windows) addRegion('window', region);
  for (const shape of piece.shapes) addRegion('shape', shape, shape.staysWith);
  for (const { name, runs, at, fold } of piece.creases) {
    const end: Point = runs === 'down' ? { x: at.mm, y: piece.height.mm } : { x: piece.width.mm, y: at.mm };
    const start: Point = runs === 'down' ? { x: at.mm, y: ZERO } : { x: ZERO, y: at.mm };
    add({ is: 'crease', name, folds: [fold], ofBands: true }, [{ is: 'line', from: start, to: end }]);
  }
  for (const line of piece.lines) add(sourceOfLine(line), [{ is: 'line', from: line.from, to: line.to }]);
  return { sources, curves, regionCount };
}

function sourceOfLine({ does, name, folds }: Line): Pick<Source, 'is' | 'name' | 'folds'> {
  return { is: does, name, folds };
}
