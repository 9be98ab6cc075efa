/** Part of a side of a piece that one page shows, in mm of the piece from its zero edge. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** How much neighbouring pages show twice: at least 10 mm, so that the join can be taped. */
export const OVERLAP_MM = 12;

/** A join closer to a crease than this is moved away, if pages allow: paper taped over a crease does not fold. */
const CLEAR_OF_CREASE_MM = 8;

/** Slack for sizes that fit a page exactly, in mm. */
const FIT_MM = 1e-6;

/** Cuts a side into stretches of at most `room`, neighbours overlapping by `OVERLAP_MM`, joins clear of creases. */
export function stretchesOf(length: number, room: number, creases: readonly number[]): readonly Stretch[] {
  if (length <= room + FIT_MM) return [{ from: 0, to: length }];
  if (room < 2 * OVERLAP_MM) throw new RangeError(`pages with ${room} mm of room cannot hold a template`);
  const count = Math.ceil((length - OVERLAP_MM - FIT_MM) / (room - OVERLAP_MM));
  const stretches: Stretch[] = [];
  let from = 0;
  for (let left = count; left > 1; left--) {
    // The pages to come must be able to hold what this one leaves over.
    const least = length - ((left - 1) * (room - OVERLAP_MM) + OVERLAP_MM) + OVERLAP_MM;
    const to = clearOf(creases, from + room, Math.max(least, from + 2 * OVERLAP_MM));
    stretches.push({ from, to });
    from = to - OVERLAP_MM;
  }
  return [...stretches, { from, to: length }];
}

/** The end of a stretch, moved back from `to` (not past `least`) until its join is clear of every crease. */
function clearOf(creases: readonly number[], to: number, least: number): number {
  for (let end = to; end >= least; end -= 1) {
    const join = end - OVERLAP_MM / 2;
    if (creases.every((crease) => Math.abs(crease - join) >= CLEAR_OF_CREASE_MM)) return end;
  }
  return to;
}

/** Where two neighbouring stretches are joined: the middle of what both show. */
export function joinOf(before: Stretch, after: Stretch): number {
  return (before.to + after.from) / 2;
}
