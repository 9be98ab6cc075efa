import { arcMeetsArc, lineMeetsArc } from './arc-meetings.ts';
import type { ArcEdge } from './arcs.ts';
import { samePoint } from './points.ts';
import { seen } from './seen.ts';
import { meetSegments } from './segments.ts';
import type { PathEdge, Point } from './types.ts';

/** Where a closed path meets itself other than where one edge follows another: two edges by number, and a point of both. */
export interface SelfMeeting {
  readonly first: number;
  readonly second: number;
  readonly at: Point;
}

/** The first place where a closed path crosses or touches itself; undefined for a path that does not. */
export function crossingIn(outline: readonly PathEdge[]): SelfMeeting | undefined {
  for (const [first, a] of outline.entries())
    for (let second = first + 1; second < outline.length; second++) {
      const b = outline[second];
      if (b === undefined) continue;
      const shared = [
        ...(second === first + 1 ? [a.to] : []),
        ...(first === 0 && second === outline.length - 1 ? [a.from] : []),
      ];
      const at = meetingPoints(a, b).find((point) => !shared.some((end) => samePoint(end, point)));
      if (at !== undefined) return { first, second, at };
    }
  return undefined;
}

/** The points where two edges meet; of a length that they share, its ends. */
export function meetingPoints(a: PathEdge, b: PathEdge): Point[] {
  if (a.is === 'arc') return b.is === 'arc' ? arcMeetsArc(a, b) : lineMeetsArc(b.from, b.to, a);
  if (b.is === 'arc') return lineMeetsArc(a.from, a.to, b satisfies ArcEdge);
  const meeting = meetSegments({ from: seen(a.from), to: seen(a.to) }, { from: seen(b.from), to: seen(b.to) });
  if (meeting.is === 'apart') return [];
  return meeting.is === 'point' ? [meeting.at.at] : [meeting.from.at, meeting.to.at];
}
