import type { ScenePoint } from './scene.ts';

/** Closed paths of straight edges; by the even-odd rule, one inside another is a hole. */
export type Rings = readonly (readonly ScenePoint[])[];

/** Whether a point lies inside. */
export function holds(rings: Rings, { x, y }: ScenePoint): boolean {
  let inside = false;
  for (const ring of rings) {
    let a = ring.at(-1);
    for (const b of ring) {
      if (a === undefined) break;
      if (a.y > y !== b.y > y && x < ((b.x - a.x) * (y - a.y)) / (b.y - a.y) + a.x) inside = !inside;
      a = b;
    }
  }
  return inside;
}

/** Shares of a line, in rising order, at which it goes into the paths and out of them. */
export type Spells = readonly (readonly [into: number, outOf: number])[];

/** Where a straight line, which goes on both ways, lies inside, as shares of the way between two of its points. */
export function spellsIn(rings: Rings, from: ScenePoint, to: ScenePoint): Spells {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const sideOf = ({ x, y }: ScenePoint): number => dx * (y - from.y) - dy * (x - from.x);
  const shares: number[] = [];
  for (const ring of rings) {
    let a = ring.at(-1);
    for (const b of ring) {
      if (a === undefined) break;
      const [sa, sb] = [sideOf(a), sideOf(b)];
      if (sa < 0 !== sb < 0) {
        const t = sa / (sa - sb);
        const [x, y] = [a.x + t * (b.x - a.x), a.y + t * (b.y - a.y)];
        shares.push(((x - from.x) * dx + (y - from.y) * dy) / (dx * dx + dy * dy));
      }
      a = b;
    }
  }
  shares.sort((a, b) => a - b);
  const spells: [number, number][] = [];
  for (let i = 0; i + 1 < shares.length; i += 2) spells.push([shares[i] ?? 0, shares[i + 1] ?? 0]);
  return spells;
}

/** Where two sets of spells hold together. */
export function common(a: Spells, b: Spells): Spells {
  return a.flatMap(([from, to]) =>
    b.flatMap(([low, high]): [number, number][] => {
      const [first, last] = [Math.max(from, low), Math.min(to, high)];
      return first < last ? [[first, last]] : [];
    }),
  );
}

/** What is left of spells where none of the others holds. */
export function without(spells: Spells, others: Spells): Spells {
  return others.reduce<Spells>(
    (left, [low, high]) =>
      left.flatMap(([from, to]): [number, number][] => {
        if (high <= from || low >= to) return [[from, to]];
        return [
          ...(low > from ? [[from, low] as [number, number]] : []),
          ...(high < to ? [[high, to] as [number, number]] : []),
        ];
      }),
    spells,
  );
}
