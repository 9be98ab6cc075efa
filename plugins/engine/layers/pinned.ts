import { addLaid, addNothingBetween, type Held } from './held-pair.ts';
import type { Paper } from './paper.ts';
import type { Piled, Spot } from './piled.ts';
import { inPile, type Pile } from './piles.ts';
import type { Rules } from './rules.ts';
import { TOUCH_MM } from './touch.ts';

/** Held at one point: what has paper there does not lie between, unless the same pin goes through it. */
export function addPin(rules: Rules, piled: Piled, one: Held, held: readonly Held[]): void {
  const { paper } = piled;
  for (const spot of piled.spots.list) addWherePresent(spot, one, () => addLaid(rules, piled, one, spot));
  const at = pointOf(paper, one);
  const pinned = new Set(
    held.filter((other) => other.joint.is === 'pin' && near(pointOf(paper, other), at)).flatMap(({ a, b }) => [a, b]),
  );
  const through = one.pile.panels.filter((panel) => holds(paper, one.pile, panel, at));
  const leaves = through.map((panel) => piled.leaves.leafAt(paper.facetOf[panel] ?? 0, at[0], at[1], 1, 0));
  const spot = { panels: through, leaves };
  addWherePresent(spot, one, () => addNothingBetween(rules, piled, one, spot, pinned));
}

function addWherePresent(spot: Spot, { a, b }: Held, add: () => void): void {
  if (spot.panels.includes(a) && spot.panels.includes(b)) add();
}

function pointOf(paper: Paper, { pile, b, joint: { join } }: Held): readonly [number, number] {
  const sheet = paper.panels[b];
  return sheet ? inPile(pile, sheet, join.q.x.valueOf(), -join.q.y.valueOf()) : [Number.NaN, Number.NaN];
}

function near(one: readonly [number, number], other: readonly [number, number]): boolean {
  return Math.hypot(one[0] - other[0], one[1] - other[1]) <= TOUCH_MM;
}

/** Whether a panel has paper at a point and a hair around it. */
function holds(paper: Paper, pile: Pile, panel: number, [x, y]: readonly [number, number]): boolean {
  const sheet = paper.panels[panel];
  let inside = false;
  for (const ring of sheet?.rings ?? []) {
    for (let i = 0; i < ring.length; i += 2) {
      const j = (i + 2) % ring.length;
      if (!sheet) return false;
      const [ax, ay] = inPile(pile, sheet, ring[i] ?? 0, ring[i + 1] ?? 0);
      const [bx, by] = inPile(pile, sheet, ring[j] ?? 0, ring[j + 1] ?? 0);
      if (toSegment(x, y, ax, ay, bx, by) <= TOUCH_MM) return false;
      if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside;
    }
  }
  return inside;
}

function toSegment(x: number, y: number, ax: number, ay: number, bx: number, by: number): number {
  const [dx, dy] = [bx - ax, by - ay];
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / square));
  return Math.hypot(x - ax - share * dx, y - ay - share * dy);
}
