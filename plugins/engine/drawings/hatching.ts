import type { Box } from './box.ts';
import { shareWithin } from './meetings.ts';
import { common, type Rings, type Spells, spellsIn, without } from './rings.ts';
import type { SceneLine, ScenePoint } from './scene.ts';

/** Strokes shorter than this are left out, in mm. */
const LEAST_MM = 0.6;

/** What is hatched: the part of `waste` that lies in `paper`. */
export interface HatchedRegion {
  readonly waste: Rings;
  readonly paper: Rings;
}

/**
 * Hatching of regions at 45 degrees, in one pattern over the whole sheet, left out where letters stand. `spacing` in mm between
 * strokes.
 */
export function hatching(
  regions: readonly HatchedRegion[],
  lettered: readonly Box[],
  spacing: number,
): readonly SceneLine[] {
  const points = regions.flatMap(({ waste }) => waste.flat());
  if (points.length === 0) return [];
  const xs = points.map(({ x }) => x);
  const [left, right] = [Math.min(...xs) - 1, Math.max(...xs) + 1];
  const sums = points.map(({ x, y }) => x + y);
  const apart = spacing * Math.SQRT2;
  const lines: SceneLine[] = [];
  const first = Math.ceil(Math.min(...sums) / apart);
  for (let k = first; k * apart < Math.max(...sums); k++) {
    const [from, to] = [
      { x: left, y: k * apart - left },
      { x: right, y: k * apart - right },
    ];
    const inked = regions.flatMap(({ waste, paper }) => common(spellsIn(waste, from, to), spellsIn(paper, from, to)));
    for (const [a, b] of without(joined(inked), lettersOn(from, to, lettered))) {
      const stroke: SceneLine = { kind: 'line', role: 'hatch', from: along(from, to, a), to: along(from, to, b) };
      if ((b - a) * Math.hypot(to.x - from.x, to.y - from.y) >= LEAST_MM) lines.push(stroke);
    }
  }
  return lines;
}

/** Spells that overlap as one, in rising order. */
function joined(spells: Spells): Spells {
  const result: [number, number][] = [];
  for (const [from, to] of [...spells].sort((a, b) => a[0] - b[0])) {
    const last = result.at(-1);
    if (last !== undefined && from <= last[1]) last[1] = Math.max(last[1], to);
    else result.push([from, to]);
  }
  return result;
}

function lettersOn(from: ScenePoint, to: ScenePoint, lettered: readonly Box[]): Spells {
  return lettered.flatMap((box) => {
    const share = shareWithin({ from, to }, box);
    return share === undefined ? [] : [share];
  });
}

function along(from: ScenePoint, to: ScenePoint, share: number): ScenePoint {
  return { x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) };
}
