import type { Piled } from './piled.ts';
import type { PlyOrder } from './types.ts';

/** Turns answers into orders of named panels; what is the same for all of them is prepared once. */
export function orderWriter({ paper, spots, overlaps }: Piled): (answer: readonly boolean[]) => PlyOrder {
  const names = paper.panels.map(({ name }) => name);
  const overlapping: { literal: number; upper: number; lower: number; said: Said; saidTurned: Said }[] = [];
  const seen = new Set<number>();
  for (const { panels, leaves } of spots.list) {
    for (const [i, upper] of panels.entries()) {
      for (let j = 0; j < i; j++) {
        const lower = panels[j] ?? 0;
        const literal = overlaps.above(leaves[i] ?? 0, leaves[j] ?? 0);
        const key = (upper * names.length + lower) * overlaps.pairs.length + (literal >> 1);
        if (literal < 0 || seen.has(key)) continue;
        seen.add(key);
        const [above, below] = [names[upper] ?? '', names[lower] ?? ''];
        const [said, saidTurned] = [
          { over: above, under: below },
          { over: below, under: above },
        ];
        overlapping.push({ literal, upper, lower, said, saidTurned });
      }
    }
  }
  return (answer) => {
    const pairs: Said[] = [];
    const above: number[][] = names.map(() => []);
    const below = new Int32Array(names.length);
    for (const { literal, upper, lower, said, saidTurned } of overlapping) {
      const asNamed = answer[literal >> 1] === ((literal & 1) === 0);
      pairs.push(asNamed ? said : saidTurned);
      const [over, under] = asNamed ? [upper, lower] : [lower, upper];
      above[under]?.push(over);
      below[over] = (below[over] ?? 0) + 1;
    }
    return { plies: fromTheBottom(names, above, below), pairs };
  };
}

type Said = PlyOrder['pairs'][number];

/** Each panel after all that lie below it; where that leaves a choice, in the order of the pose. */
function fromTheBottom(
  names: readonly string[],
  above: readonly (readonly number[])[],
  below: Int32Array,
): readonly string[] | undefined {
  const plies: string[] = [];
  const ready = names.flatMap((_, panel) => (below[panel] === 0 ? [panel] : []));
  for (let panel = takeLeast(ready); panel !== undefined; panel = takeLeast(ready)) {
    plies.push(names[panel] ?? '');
    for (const over of above[panel] ?? []) {
      below[over] = (below[over] ?? 0) - 1;
      if (below[over] === 0) ready.push(over);
    }
  }
  return plies.length === names.length ? plies : undefined;
}

function takeLeast(list: number[]): number | undefined {
  const least = list.length === 0 ? undefined : Math.min(...list);
  if (least !== undefined) list.splice(list.indexOf(least), 1);
  return least;
}
