import { compose, laidOn, onDrawing, place } from '../geometry/index.ts';
import type { SlideJoin } from '../spec/index.ts';
import type { Carried } from './carried.ts';
import type { FoldedCard } from './types.ts';

/** A thing on foam that would have to go through a slit somewhere on the slider's way, and the slit. */
export function foamAtSlit(
  join: SlideJoin,
  receiver: string,
  { foam }: Carried,
  { assembly }: FoldedCard,
): { panel: string; slit: string } | undefined {
  const piece = assembly.panels.get(receiver)?.piece;
  const along = ({ x, y }: { x: SlideJoin['along']['x']; y: SlideJoin['along']['y'] }): number =>
    x.valueOf() * join.along.x.valueOf() + y.valueOf() * join.along.y.valueOf();
  const slits = assembly.strokes
    .filter((stroke) => stroke.does === 'cut' && stroke.piece === piece && join.through.includes(stroke.name))
    .map(({ name, edge }) => ({ name, at: (along(edge.from) + along(edge.to)) / 2 }));
  for (const { panel, placement } of foam) {
    const there = compose(laidOn(join), placement);
    const ends = (assembly.panels.get(panel)?.outline ?? []).map((corner) => along(onDrawing(place(there, corner))));
    const [low, high] = [Math.min(...ends) + join.start.toMm(), Math.max(...ends) + join.end.toMm()];
    const slit = slits.find(({ at }) => low < at && at < high);
    if (slit) return { panel, slit: slit.name };
  }
  return undefined;
}
