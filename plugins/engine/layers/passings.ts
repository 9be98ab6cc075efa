import { type Path, pathsAt, type Ray, shutLeaves } from './paths.ts';
import type { Piled } from './piled.ts';
import { facesUp, type Pile } from './piles.ts';
import type { Rules, Why } from './rules.ts';
import type { Crossing } from './survey.ts';

/** How near two rays must be to lie on each other, in radians. */
const SAME_ANGLE = 1e-6;

/**
 * Paper does not pass through paper at a line.
 *
 * Seen along the line, each path is a chord between two places on a circle around it, and chords must not cross. A place
 * is given by the ray's angle and, among rays of one angle, by the order of the leaves there. Two chords cross when just one
 * end of the one lies between the ends of the other, which makes each such rule a parity of at most four literals. The
 * conditions known as taco-tortilla, taco-taco and tortilla-tortilla (layer rules) are its cases without rays that
 * leave the plane.
 */
export function addPassings(rules: Rules, piled: Piled, crossings: readonly Crossing[]): void {
  const seen = new Set<string>();
  const pileOf = new Map(piled.piles.flatMap((pile) => pile.panels.map((panel) => [panel, pile])));
  for (const crossing of crossings) {
    addFolds(rules, piled, crossing, pileOf);
    const paths = pathsAt(piled, crossing, pileOf);
    const key = keyOf(paths);
    if (seen.has(key)) continue;
    seen.add(key);
    for (const [i, one] of paths.entries()) {
      for (let j = 0; j < i; j++) {
        const other = paths[j];
        if (other && !(one.plain && other.plain)) addPair(rules, piled, one, other);
      }
    }
  }
}

function keyOf(paths: readonly Path[]): string {
  const ray = ({ angle, leaf, rising }: Ray): string => `${angle.toFixed(5)} ${leaf} ${rising}`;
  return paths.map(({ ends }) => ends.map(ray).join()).join(';');
}

function addPair(rules: Rules, { overlaps }: Piled, one: Path, other: Path): void {
  const literals: number[] = [];
  let odd = false;
  for (const p of one.ends) {
    for (const q of other.ends) {
      if (Math.abs(p.angle - q.angle) > SAME_ANGLE) odd = odd !== p.angle < q.angle;
      else {
        if (p.leaf === q.leaf) return;
        const literal = p.rising ? overlaps.above(q.leaf, p.leaf) : overlaps.above(p.leaf, q.leaf);
        if (literal < 0) return;
        literals.push(literal);
      }
    }
  }
  rules.parity(literals, odd, (): Why => ({ is: 'passing', one: one.passes, other: other.passes }));
}

/** Which way each crease is shut says which of its two panels is the upper one. */
function addFolds(rules: Rules, piled: Piled, crossing: Crossing, pileOf: ReadonlyMap<number, Pile>): void {
  for (const number of crossing.hinges) {
    const hinge = piled.paper.hinges[number];
    if (hinge === undefined || hinge.is !== 'shut' || hinge.meets === undefined) continue;
    const [a, b] = shutLeaves(piled, crossing, hinge)?.leaves ?? [-1, -1];
    const [pile, sheet] = [pileOf.get(hinge.a), piled.paper.panels[hinge.a]];
    const literal = a < 0 || b < 0 ? -1 : piled.overlaps.above(b, a);
    if (literal < 0 || !pile || !sheet) continue;
    const upper = facesUp(pile, sheet) === (hinge.meets === 'face');
    rules.holds(upper ? literal : literal ^ 1, (): Why => ({ is: 'fold', joint: hinge.joint }));
  }
}
