import type { AssemblyParts } from './assembly-specs.ts';
import type { ActsAs, Join } from './card-types.ts';
import { findPiece, type NamedPieces } from './find-references.ts';
import type { Report } from './report.ts';

/** The piece that stands for the card, and the one that lies on top of it. */
export function actsAs(
  parts: AssemblyParts,
  joins: readonly Join[],
  { pieces, report }: { readonly pieces: NamedPieces; readonly report: Report },
): ActsAs | undefined {
  const node = parts.actsAs;
  const piece = node && findPiece({ node, side: undefined, path: 'acts-as' }, 'body', pieces, report);
  if (node === undefined || piece === undefined) return undefined;
  return { piece: piece.name, top: topmost(piece.name, joins), place: node.place, path: 'acts-as' };
}

/** Follows what is glued with its back onto a face, from piece to piece; of several on one face the last. */
function topmost(start: string, joins: readonly Join[]): string {
  const seen = new Set([start]);
  let top = start;
  for (;;) {
    const next = joins.findLast(
      (join) =>
        join.is === 'glue' &&
        join.onto.piece === top &&
        join.ontoSide === 'face' &&
        join.partSide === 'back' &&
        !seen.has(join.part.piece),
    );
    if (next === undefined) return top;
    top = next.part.piece;
    seen.add(top);
  }
}
