import type { MapNode, SourceNode } from '../diagnostics/index.ts';
import { type AssemblyParts, NO_PARTS } from './assembly-specs.ts';
import type { CardParts } from './card-assembly-parts.ts';
import { checkKinds } from './check-kinds.ts';
import { checkCircles, checkNames } from './check-names.ts';
import type { Amount } from './evaluate.ts';
import { expandEach, hasEach } from './expand-each.ts';
import { readAssemblyParts } from './read-assembly-parts.ts';
import { mapOr } from './read-parts.ts';
import { readPieces } from './read-pieces.ts';
import { countingOf } from './repeated-body.ts';
import { checkKeys, join, Report } from './report.ts';
import type { Additions, Fold, PieceSpec } from './types.ts';

const KEYS: readonly string[] = ['pieces', 'joins', 'stack', 'poses', 'fill'];

/** A fold with what a post adds to it. Its problems come with the card: what it means depends on the kind's sizes. */
export function withAdditions(fold: Fold, additions: Additions): Fold {
  return { ...fold, additions };
}

/**
 * The pieces and joins that are added to `whole`, the kind as the counts of one card have it. `taken`: names of all its pieces, those of
 * kinds that it uses among them.
 */
export function readAdditions(
  { node, units, path }: Additions,
  whole: Fold,
  taken: readonly string[],
  amounts: ReadonlyMap<string, Amount>,
  report: Report,
): { readonly pieces: readonly PieceSpec[]; readonly parts: AssemblyParts } {
  const map = mapOr(node, path, 'a group with `pieces`, `joins`, `stack`, `poses` or `fill`', report);
  if (map === undefined) return { pieces: [], parts: NO_PARTS };
  const own = new Report();
  checkKeys(map, path, { known: KEYS }, own);
  const known: MapNode = { ...map, entries: map.entries.filter(({ key }) => KEYS.includes(key.text)) };
  const tree = hasEach(known) ? expandEach(known, countingOf(whole, amounts, new Set()), own) : known;
  const at = (key: string): SourceNode | undefined => tree.entries.find((entry) => entry.key.text === key)?.value;
  const pieces = readPieces(at('pieces'), join(path, 'pieces'), units, own);
  const parts = readAssemblyParts(tree, units, own, path);
  for (const piece of pieces) {
    if (taken.includes(piece.name)) redefined(piece.name, 'a piece', piece, own);
  }
  const together = { ...whole, pieces: [...whole.pieces, ...pieces], parts };
  if (!own.failed) {
    checkNames(together, own);
    checkKinds({ ...together, require: [], same: [], recipe: [] }, checkCircles(whole, new Report()), new Set(), own);
  }
  report.add(own.problems);
  return { pieces, parts };
}

/** A post may add poses, but not say anew what a pose of the kind does. */
export function checkNewPoses(parts: AssemblyParts, kind: CardParts, report: Report): void {
  for (const pose of parts.poses) {
    if (kind.poses.some(({ name }) => name === pose.name)) redefined(pose.name, 'a pose', pose, report);
  }
}

function redefined(name: string, what: string, at: Pick<PieceSpec, 'place' | 'path'>, report: Report): void {
  report.at(at.place, at.path, {
    code: 'redefined',
    wrote: name,
    takes: 'a name that the kind does not have',
    remedy: `\`${name}\` is ${what} of the kind. Give yours another name, as \`my-${name}\`.`,
  });
}
