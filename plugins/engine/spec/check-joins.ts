import type { GlueJoin, Join } from './card-types.ts';
import { partKey } from './part-key.ts';
import type { Report } from './report.ts';

/** Two panels are glued to each other once. */
export function checkGluedTwice(joins: readonly Join[], report: Report): void {
  const glued = joins.filter((join): join is GlueJoin => join.is === 'glue');
  const panel = ({ piece, part }: GlueJoin['part']): string => `${piece} ${partKey(part)}`;
  const pair = (join: GlueJoin): string => [panel(join.part), panel(join.onto)].sort().join(' and ');
  const first = new Map<string, GlueJoin>();
  for (const join of glued) {
    const other = first.get(pair(join));
    if (other === undefined) first.set(pair(join), join);
    else if (!join.implied || !other.implied) {
      report.at(join.place, join.path, {
        code: 'glued-twice',
        wrote: join.text,
        takes: `each pair of panels once; they are glued in line ${other.place.line} already`,
        remedy: 'Keep one of the two joins.',
      });
    }
  }
}
