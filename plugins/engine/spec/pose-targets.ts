import type { PoseSpec } from './assembly-specs.ts';
import type { Join } from './card-types.ts';
import type { NamedPieces } from './find-references.ts';
import { familyOf } from './line-named.ts';
import { type Report, suggest } from './report.ts';
import type { Piece } from './types.ts';

/** A crease of a card. */
export interface CreaseId {
  readonly piece: string;
  readonly crease: string;
}

/** Every crease of these pieces, in file order: those between bands, then the other lines. */
export function creasesOf(pieces: readonly Piece[]): CreaseId[] {
  return pieces.flatMap((piece) =>
    [...piece.creases, ...piece.lines.filter(({ does }) => does === 'crease')].map(({ name }) => ({
      piece: piece.name,
      crease: name,
    })),
  );
}

/** What may be set in a pose. */
export interface Settable {
  readonly creases: readonly CreaseId[];
  readonly joins: readonly Join[];
  /** Pieces by the names that the fold uses, and what those pieces are called in the card. */
  readonly pieces: NamedPieces;
}

/** What one setting of a pose speaks of, from the most particular to the most general. */
export type Target =
  | { readonly is: 'rest' }
  | { readonly is: 'creases'; readonly creases: readonly CreaseId[]; readonly rank: number }
  | { readonly is: 'pieces'; readonly pieces: readonly string[] };

/** Ranks: a crease by its own name, a family of creases, a piece, a family of pieces, all. */
export const RANKS = { crease: 0, family: 1, piece: 2, pieces: 3, rest: 4 } as const;

/** What a name in a pose means. Undefined after a name that means nothing, or more than one thing, has been reported. */
export function targetOf(
  setting: PoseSpec['settings'][number],
  settable: Settable,
  report: Report,
): Target | undefined {
  const name = setting.target.text;
  if (name === 'all' || name === 'others') return { is: 'rest' };
  const { creases, pieces } = settable;
  const own = creases.filter((crease) => namesOf(crease, settable).exact.includes(name));
  const family = creases.filter((crease) => namesOf(crease, settable).loose.includes(name));
  const found = own.length > 0 ? own : family;
  if (found.length > 0) {
    const apart = new Map(found.map((crease) => [`${familyOf(crease.piece)}.${familyOf(crease.crease)}`, crease]));
    if (apart.size === 1)
      return { is: 'creases', creases: found, rank: found.length > 1 ? RANKS.family : RANKS.crease };
    const choices = [...apart.values()].map(({ piece, crease }) => `\`${piece}.${crease}\``).join(' or ');
    const takes = 'a crease, with its piece when two pieces have one of that name';
    report.at(setting.target.place, setting.path, {
      code: 'ambiguous-crease',
      wrote: name,
      takes,
      remedy: `Write ${choices}.`,
    });
    return undefined;
  }
  const named = pieces.names.filter((known) => known === name || familyOf(known) === name);
  if (named.length > 0) {
    return { is: 'pieces', pieces: named.flatMap((known) => pieces.find(known, 'body')?.name ?? []) };
  }
  const known = [...new Set(creases.map(({ crease }) => crease))];
  const qualified = creases.map(({ piece, crease }) => `${piece}.${crease}`);
  const takes = [...known, 'all', 'others', 'ground', 'stands', 'rests', 'aside'].join(', ');
  const remedy = suggest(
    name,
    [...known, ...qualified, ...pieces.names, 'all', 'others', 'ground', 'stands', 'rests', 'aside'],
    `Write one of ${takes}.`,
  );
  const wrote = name || 'a line without a name';
  report.at(setting.target.place, setting.path, { code: 'unknown-crease', wrote, takes, remedy });
  return undefined;
}

/** The names that a crease answers to: its own, and those of the families that it or its piece belongs to. */
function namesOf({ piece, crease }: CreaseId, { pieces }: Settable): { exact: string[]; loose: string[] } {
  const called = pieces.names.filter((name) => pieces.find(name, 'body')?.name === piece);
  const family = familyOf(crease);
  return {
    exact: [crease, ...called.map((name) => `${name}.${crease}`)],
    loose: [
      family,
      ...called.flatMap((name) => [`${name}.${family}`, `${familyOf(name)}.${crease}`, `${familyOf(name)}.${family}`]),
    ],
  };
}
