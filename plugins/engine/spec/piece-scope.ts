import { Length } from '../units/index.ts';
import type { Amount, Scope } from './evaluate.ts';

/** A piece as far as it can be measured. */
export interface Measured {
  readonly name: string;
  readonly columns: readonly { readonly name: string | undefined; readonly size: Length }[];
  readonly rows: readonly { readonly name: string | undefined; readonly size: Length }[];
}

/** Names of a fold with their amounts, and the measures of the pieces made so far. */
export function scopeOf(
  pieces: () => readonly Measured[],
  amounts: ReadonlyMap<string, Amount>,
  settle: (length: Length) => Length,
): Scope {
  return {
    amount: (name) => amounts.get(name),
    settle,
    measure: ([name, ...parts], side) => {
      const piece = pieces().find((candidate) => candidate.name === name);
      if (piece === undefined) return undefined;
      const bands = side === 'width' ? piece.columns : piece.rows;
      const named = bands.find((band) => band.name !== undefined && parts.includes(band.name));
      return named?.size ?? Length.sum(bands.map(({ size }) => size));
    },
  };
}
