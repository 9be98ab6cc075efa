import { Length } from '../units/index.ts';
import type { Amount, Scope } from './evaluate.ts';

/** A piece as far as it can be measured. */
export interface Measured {
  readonly name: string;
  readonly columns: readonly { readonly name: string | undefined; readonly size: Length }[];
  readonly rows: readonly { readonly name: string | undefined; readonly size: Length }[];
}

/**
 * Names of a fold with their amounts, and the measures of the pieces made so far: of a piece by its name, of a band that only one piece
 * has by the band's, and then of `earlier` pieces.
 */
export function scopeOf(
  pieces: () => readonly Measured[],
  amounts: ReadonlyMap<string, Amount>,
  settle: (length: Length) => Length,
  earlier?: Scope['measure'],
): Scope {
  return {
    amount: (name) => amounts.get(name),
    settle,
    measure: (path, side) => {
      const [name = '', ...parts] = path;
      const own = pieces().find((candidate) => candidate.name === name);
      if (own) return measureOf(own, parts, side);
      const before = earlier?.(path, side);
      if (before) return before;
      const having = pieces().filter(({ columns, rows }) => [...columns, ...rows].some((band) => band.name === name));
      const [only] = having;
      return only && having.length === 1 ? measureOf(only, path, side) : undefined;
    },
  };
}

function measureOf(piece: Measured, parts: readonly string[], side: 'width' | 'height'): Length {
  const bands = side === 'width' ? piece.columns : piece.rows;
  const named = bands.find((band) => band.name !== undefined && parts.includes(band.name));
  return named?.size ?? Length.sum(bands.map(({ size }) => size));
}
