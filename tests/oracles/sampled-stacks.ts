/**
 * Thickness by looking at points: which plies are over a point, by counting edges to its right, and their heights added up. Knows
 * nothing of regions, orders or plates but what it is told here.
 */
export interface SampledPly {
  readonly name: string;
  /** Where it lies: x and y. */
  readonly corners: readonly (readonly [number, number])[];
  readonly holes?: readonly (readonly (readonly [number, number])[])[];
  readonly high: number;
}

/** What is between two plies wherever both are. */
export interface SampledBond {
  readonly between: readonly [string, string];
  readonly high: number;
}

/** Names over each point, sorted and joined by spaces, with the sum of their heights and of what is between them. */
export function sampledStacks(
  plies: readonly SampledPly[],
  bonds: readonly SampledBond[],
  points: readonly (readonly [number, number])[],
): Map<string, number> {
  const found = new Map<string, number>();
  for (const point of points) {
    const here = pliesAt(plies, point);
    if (here.length === 0) continue;
    const names = here.map(({ name }) => name);
    const glue = bonds.filter(({ between }) => between.every((name) => names.includes(name)));
    const sum = [...here, ...glue].reduce((total, { high }) => total + high, 0);
    found.set(names.sort().join(' '), sum);
  }
  return found;
}

/** How high stiff plies lie at their highest, pushed up point by point until nothing has to move; `order` from the bottom to the top. */
export function sampledPlates(
  plies: readonly SampledPly[],
  bonds: readonly SampledBond[],
  points: readonly (readonly [number, number])[],
  order: readonly string[],
): number {
  const bottom = new Map(plies.map(({ name }) => [name, 0]));
  const stacks = points.map((point) =>
    pliesAt(plies, point).sort((a, b) => order.indexOf(a.name) - order.indexOf(b.name)),
  );
  const bond = (one: string, other: string): number =>
    bonds
      .filter(({ between }) => between.includes(one) && between.includes(other))
      .reduce((sum, { high }) => sum + high, 0);
  for (let moved = true; moved; ) {
    moved = false;
    for (const stack of stacks) {
      for (const [i, upper] of stack.entries()) {
        for (const lower of stack.slice(0, i)) {
          const least = (bottom.get(lower.name) ?? 0) + lower.high + bond(lower.name, upper.name);
          if ((bottom.get(upper.name) ?? 0) >= least - 1e-9) continue;
          bottom.set(upper.name, least);
          moved = true;
        }
      }
    }
  }
  return Math.max(...plies.map(({ name, high }) => (bottom.get(name) ?? 0) + high));
}

function pliesAt(plies: readonly SampledPly[], point: readonly [number, number]): SampledPly[] {
  return plies.filter(
    ({ corners, holes = [] }) => isInside(point, corners) && !holes.some((hole) => isInside(point, hole)),
  );
}

function isInside([x, y]: readonly [number, number], corners: readonly (readonly [number, number])[]): boolean {
  let inside = false;
  for (const [i, [bx, by]] of corners.entries()) {
    const [ax, ay] = corners.at(i - 1) ?? [bx, by];
    if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside;
  }
  return inside;
}
