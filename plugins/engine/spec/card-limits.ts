import type { Outline } from '../geometry/index.ts';
import { formatLength, Length, type System } from '../units/index.ts';
import type { Pose } from './card-types.ts';
import type { Report } from './report.ts';
import type { Piece } from './types.ts';

/*
 * What a card may be made of, so that every answer about it is there in a moment: far more than anybody cuts and folds. How often
 * something may stand in the text is limited where it is read.
 */

/** Pieces of one card, those of the kinds that it is made of included. */
export const MOST_PIECES = 100;

/** Longest side of a piece: about ten metres. */
export const LONGEST_SIDE = Length.fromInches(400);

/** Edges and lines on all pieces together. A round edge is worked out at many points and counts as two, so that a circle counts as eight. */
export const MOST_LINES = 1000;

/** Poses of one card. */
export const MOST_POSES = 60;

/** Reports what of a card goes beyond its limits. */
export function checkLimits(pieces: readonly Piece[], poses: readonly Pose[], system: System, report: Report): void {
  const extra = pieces[MOST_PIECES];
  if (extra) {
    report.at(extra.place, extra.path, {
      code: 'too-many',
      wrote: `${pieces.length} pieces`,
      takes: `at most ${MOST_PIECES} pieces in one card`,
      remedy: 'Make several cards of it.',
    });
  }
  for (const piece of pieces) checkSides(piece, system, report);
  checkLines(pieces, report);
  const pose = poses[MOST_POSES];
  if (pose) {
    report.at(pose.place, pose.path, {
      code: 'too-many',
      wrote: `${poses.length} poses`,
      takes: `at most ${MOST_POSES} poses`,
      remedy: 'Keep the poses that somebody will look at.',
    });
  }
}

function checkSides({ name, width, height, place, path }: Piece, system: System, report: Report): void {
  const side = width.lessThan(height) ? height : width;
  if (side.abs().compare(LONGEST_SIDE) <= 0) return;
  report.at(place, path, {
    code: 'too-large',
    wrote: `\`${name}\`, which comes out ${formatLength(side, system)} long`,
    takes: `a piece of at most ${formatLength(LONGEST_SIDE, system)} a side`,
    remedy: `Change the sizes that \`${name}\` is made from, or join it from several pieces.`,
  });
}

function checkLines(pieces: readonly Piece[], report: Report): void {
  let count = 0;
  const full = pieces.find((piece) => {
    count += linesOn(piece);
    return count > MOST_LINES;
  });
  if (full === undefined) return;
  report.at(full.place, full.path, {
    code: 'too-many',
    wrote: `\`${full.name}\`, with which the card has ${count} edges and lines`,
    takes: `at most ${MOST_LINES} edges and lines in one card; a circle counts as eight`,
    remedy: 'Leave out windows or lines, or draw them by hand.',
  });
}

function linesOn({ outline, windows, away, shapes, lines, creases }: Piece): number {
  const edges = [outline, ...[...windows, ...away, ...shapes].map((region): Outline => region.outline)];
  return edges.flat().reduce((sum, { is }) => sum + (is === 'arc' ? 2 : 1), lines.length + creases.length);
}
