/**
 * Brute force for flat folding of a strip: every order of plies is tried against the rules of paper that cannot pass
 * through itself. Written from the rules alone, in whole numbers; knows nothing of end folds and crimps.
 *
 * Panel i lies between x[i] and x[i + 1], running back and forth; even panels have the face up. A valley brings faces
 * together, so seen from above the next panel lies higher when the face is up, and lower when it is down.
 */
export interface Strip {
  readonly lengths: readonly number[];
  /** One letter a crease: V or M. */
  readonly folds: string;
}

/** Every order in which the strip can lie flat: panel numbers from the bottom to the top, seen with panel 0 face up. */
export function everyOrder(strip: Strip): number[][] {
  return permutations(strip.lengths.map((_, i) => i)).filter((order) => canLie(strip, order));
}

export function canLie({ lengths, folds }: Strip, order: readonly number[]): boolean {
  const level = lengths.map((_, panel) => order.indexOf(panel));
  const x = [0];
  for (const [i, length] of lengths.entries()) x.push((x[i] ?? 0) + (i % 2 === 0 ? length : -length));
  const at = (list: readonly number[], i: number): number => list[i] ?? Number.NaN;
  for (let c = 0; c < folds.length; c++) {
    const higher = at(level, c + 1) > at(level, c);
    if (higher !== ((folds[c] === 'V') === (c % 2 === 0))) return false;
    const [low, high] = [at(level, c), at(level, c + 1)].sort((a, b) => a - b) as [number, number];
    const between = (panel: number): boolean => at(level, panel) > low && at(level, panel) < high;
    const fold = at(x, c + 1);
    for (let panel = 0; panel < lengths.length; panel++) {
      const [left, right] = [at(x, panel), at(x, panel + 1)].sort((a, b) => a - b) as [number, number];
      // Paper that goes on past a fold cannot lie between the two plies that the fold joins.
      if (left < fold && fold < right && between(panel)) return false;
    }
    for (let other = 0; other < c; other++) {
      // Two folds in one place and facing one way lie side by side or one inside the other, never interlocked.
      const sameWay = other % 2 === c % 2;
      if (at(x, other + 1) === fold && sameWay && between(other) !== between(other + 1)) return false;
    }
  }
  return true;
}

function permutations(items: readonly number[]): number[][] {
  if (items.length === 0) return [[]];
  return items.flatMap((item) => permutations(items.filter((other) => other !== item)).map((rest) => [item, ...rest]));
}
