import { Length } from '../units/index.ts';
import type { PoseSpec } from './assembly-specs.ts';
import type { Pose, SlideJoin } from './card-types.ts';
import { edgeNamed } from './edge-points.ts';
import { findPanel, findPiece, type NamedPieces } from './find-references.ts';
import { familyOf } from './line-named.ts';
import { degreesOf, type Said, type Settling, type Written, workedOut } from './pose-turns.ts';
import type { Report } from './report.ts';

/** What names of pieces and panels are looked up with. */
export interface Naming {
  readonly pieces: NamedPieces;
  readonly report: Report;
}

function saidOf(piece: string, said: readonly Said[]): Written | undefined {
  return said.find(({ target }) => target.is === 'pieces' && target.pieces.includes(piece))?.written;
}

/** How far a slider is out: as said, else as before. */
export function slideIn(
  join: SlideJoin,
  said: readonly Said[],
  before: Pose,
  making: Settling,
): Pose['slides'][number] {
  const { piece } = join.part;
  const written = saidOf(piece, said);
  const at = written && distanceOf(written, join, making);
  return { piece, at: at ?? before.slides.find((slide) => slide.piece === piece)?.at ?? Length.zero };
}

function distanceOf(written: Written, { start, end }: SlideJoin, { sizes, report }: Settling): Length | undefined {
  const { setting } = written;
  if (setting.is === 'amount') {
    const takes = 'a distance from the middle, as `1/2 in`, or `start`, `middle`, `end`';
    return workedOut(written, takes, report, () => sizes.length(setting.amount));
  }
  if (setting.word === 'start') return start;
  if (setting.word === 'end') return end;
  return setting.word === 'middle' ? Length.zero : undefined;
}

/** How far a pinned piece is turned: as said, else as before. */
export function pinIn(piece: string, said: readonly Said[], before: Pose, making: Settling): Pose['pins'][number] {
  const written = saidOf(piece, said);
  const turn = written && degreesOf(written, 360, making);
  return { piece, turn: turn ?? before.pins.find((pin) => pin.piece === piece)?.turn ?? 0 };
}

/** An edge that stands on the table. */
export function standsOn(ref: PoseSpec['stands'][number], { pieces, report }: Naming): Pose['stands'] {
  const found = findPanel(ref, 'body', pieces, report);
  const edge = found && edgeNamed(found);
  if (found && edge) return [{ piece: found.piece.name, edge }];
  if (found) {
    const takes = 'edges that stand on the table, as `base.bottom`';
    const remedy = `Name an edge: \`${found.piece.name}.bottom\`, say.`;
    report.at(ref.node.place, ref.path, { code: 'not-an-edge', wrote: ref.node.text, takes, remedy });
  }
  return [];
}

/** A piece, or every member of a family. */
export function piecesNamed(ref: PoseSpec['aside'][number], { pieces, report }: Naming): string[] {
  const members = pieces.names.filter((name) => familyOf(name) === ref.node.text);
  if (members.length === 0) findPiece(ref, 'body', pieces, report);
  return members.flatMap((name) => pieces.whole(name).map((piece) => piece.name));
}
