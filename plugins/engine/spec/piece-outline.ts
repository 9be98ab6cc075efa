import type { Outline } from '../geometry/index.ts';
import { Length } from '../units/index.ts';
import type { Worked } from './ledger.ts';
import { boxOf, movedBy, type Rectangle } from './outlines.ts';
import { edgesOfPath, outlineOfPath, type Pathing } from './path-outlines.ts';
import type { PathStep } from './piece-specs.ts';
import { point, ZERO } from './plane.ts';
import { pointIn, type Sizes } from './point-on.ts';
import type { Report } from './report.ts';
import { type Both, sizesOf } from './sizes.ts';
import type { PieceSpec } from './types.ts';

/** How wide and high a piece is that is drawn by its outline, before its points are on marks. */
export function reachOfPath(
  path: readonly PathStep[],
  scopes: Both,
  report: Report,
): { readonly width: Worked; readonly height: Worked } | undefined {
  const box = (read: (worked: Worked) => Length): Rectangle | undefined => {
    const edges = edgesOfPath(path, pathingWith(sizesOf(scopes, read, report), report));
    return edges && boxOf(edges);
  };
  const written = box((worked) => worked.written);
  const edition = written && box((worked) => worked.edition);
  if (written === undefined || edition === undefined) return undefined;
  const side = (name: 'width' | 'height'): Worked => ({
    written: Length.fromMm(written[name]),
    edition: Length.fromMm(edition[name]),
  });
  return { width: side('width'), height: side('height') };
}

/**
 * The outline of a piece with its points on the edition's marks. It begins at the corner of the drawing; one that misses that by no more
 * than a mark, as an arc may do once its points are on marks, is moved there.
 */
export function drawnOutline(
  spec: PieceSpec,
  path: readonly PathStep[],
  sizes: Sizes,
  mark: Length,
  report: Report,
): { readonly width: Length; readonly height: Length; readonly outline: Outline } | undefined {
  const outline = outlineOfPath(path, spec, pathingWith(sizes, report));
  if (outline === undefined) return undefined;
  const { left, top, width, height, rounded } = boxOf(outline);
  if ([left, top].every((side) => side.abs().lte(mark.mm))) {
    const still = left.equals(0) && top.equals(0);
    const placed = still ? outline : movedBy(outline, point(left.neg(), top.neg(), rounded));
    return { width: Length.fromMm(width), height: Length.fromMm(height), outline: placed };
  }
  const wrong = [left.equals(ZERO) ? [] : ['left'], top.equals(ZERO) ? [] : ['top']].flat().join(' and ');
  report.at(spec.place, spec.path, {
    code: 'outline-not-at-corner',
    wrote: `an outline that does not begin at 0 at the ${wrong}`,
    takes: 'an outline whose leftmost point is at 0 across, and its topmost at 0 down',
    remedy: 'Move all its points by as much as they are off.',
  });
  return undefined;
}

/** The outline makes the places of its piece, so its points are measures alone. */
function pathingWith(sizes: Sizes, report: Report): Pathing {
  const nowhere = { width: Length.zero, height: Length.zero };
  return { pointOf: (at) => pointIn(nowhere, at, () => undefined, sizes), report };
}
