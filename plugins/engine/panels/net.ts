import { compareX, compareY, meetSegments, type Seen, sideOf } from '../geometry/index.ts';
import type { Nodes } from './nodes.ts';
import type { Divided } from './stretches.ts';

/** One straight link of the net, from node to node, and the curves that run along it. */
export interface Link {
  readonly from: number;
  readonly to: number;
  readonly uses: readonly Use[];
}

export interface Use {
  readonly curve: number;
  /** False when the curve runs from the link's `to` to its `from`. */
  readonly forward: boolean;
}

/** A link as a curve walks it. */
export interface Step {
  readonly link: number;
  readonly forward: boolean;
}

/**
 * The lines of a piece as a plane net: links meet at nodes and nowhere else. A half is a link walked one way: half 2k is link k
 * from `from` to `to`, half 2k + 1 the other way.
 */
export interface Net {
  readonly nodes: Nodes;
  readonly links: readonly Link[];
  /** For each curve the links along it, in order. */
  readonly steps: readonly (readonly Step[])[];
  /** For each half the one that follows it round the region on its right. */
  readonly next: readonly number[];
}

export function netOf({ nodes, chains }: Divided): Net {
  const plane = nodes.exact ? chains : uncrossed(chains, nodes);
  const links: { from: number; to: number; uses: Use[] }[] = [];
  const numbers = new Map<number, number>();
  const steps = plane.map((chain, curve) => {
    const walked: Step[] = [];
    for (const [i, to] of chain.entries()) {
      const from = chain[i - 1];
      if (from === undefined || from === to) continue;
      const key = Math.min(from, to) * 2 ** 26 + Math.max(from, to);
      let link = numbers.get(key);
      if (link === undefined) {
        link = links.push({ from, to, uses: [] }) - 1;
        numbers.set(key, link);
      }
      const forward = links[link]?.from === from;
      links[link]?.uses.push({ curve, forward });
      walked.push({ link, forward });
    }
    return walked;
  });
  return { nodes, links, steps, next: nextHalves(links, nodes) };
}

/** Sorted round each node; the next half round the region on the right is the first one anticlockwise from the way back. */
function nextHalves(links: readonly Link[], nodes: Nodes): number[] {
  const leaving: number[][] = nodes.all.map(() => []);
  for (const [link, { from, to }] of links.entries()) {
    leaving[from]?.push(2 * link);
    leaving[to]?.push(2 * link + 1);
  }
  const head = (half: number): Seen => {
    const link = links[half >> 1];
    return nodes.at((half & 1 ? link?.from : link?.to) ?? -1);
  };
  const next = new Array<number>(links.length * 2).fill(-1);
  for (const [node, halves] of leaving.entries()) {
    const origin = nodes.at(node);
    if (halves.length > 2) halves.sort((a, b) => clockwiseRound(origin, head(a), head(b)));
    for (const [i, half] of halves.entries()) next[half ^ 1] = halves.at(i - 1) ?? half;
  }
  return next;
}

/** Order of two directions from a point, clockwise on the drawing, beginning to the right. */
function clockwiseRound(origin: Seen, a: Seen, b: Seen): number {
  return halfTurn(origin, a) - halfTurn(origin, b) || -sideOf(origin, a, b);
}

function halfTurn(origin: Seen, point: Seen): 0 | 1 {
  const down = compareY(point, origin);
  return down > 0 || (down === 0 && compareX(point, origin) > 0) ? 0 : 1;
}

interface Straight {
  readonly chain: number;
  readonly index: number;
  readonly from: Seen;
  readonly to: Seen;
  readonly ends: readonly [number, number];
  readonly left: number;
  readonly right: number;
  readonly cuts: number[];
}

/**
 * Rounding may have bent a line across another, and a chord may cross what its arc does not: divides exactly wherever links still
 * cross, so that the net is plane whatever the rounding did.
 */
function uncrossed(chains: readonly (readonly number[])[], nodes: Nodes): readonly (readonly number[])[] {
  const straights = straightsOf(chains, nodes);
  const byLeft = [...straights].sort((a, b) => a.left - b.left);
  let crossed = false;
  for (const [i, a] of byLeft.entries())
    for (let j = i + 1; j < byLeft.length; j++) {
      const b = byLeft[j];
      if (b === undefined || b.left > a.right) break;
      if (isApartInHeight(a, b)) continue;
      const together = a.ends.filter((end) => b.ends.includes(end)).length;
      if (together === 2) continue;
      const meeting = meetSegments(a, b, true);
      if (meeting.is === 'apart') continue;
      for (const point of meeting.is === 'point' ? [meeting.at] : [meeting.from, meeting.to]) {
        const node = nodes.enterExactly(point);
        for (const one of [a, b])
          if (!one.ends.includes(node)) {
            one.cuts.push(node);
            crossed = true;
          }
      }
    }
  if (!crossed) return chains;
  const divided: number[][] = chains.map((chain) => chain.slice(0, 1));
  for (const { chain, from, to, ends, cuts } of straights) {
    const inner = [...new Set(cuts)].sort((a, b) => alongOrder(from, to, nodes.at(a), nodes.at(b)));
    divided[chain]?.push(...inner, ends[1]);
  }
  return divided;
}

function straightsOf(chains: readonly (readonly number[])[], nodes: Nodes): Straight[] {
  return chains.flatMap((chain, number) =>
    chain.slice(1).map((end, index): Straight => {
      const start = chain[index] ?? end;
      const [from, to] = [nodes.at(start), nodes.at(end)];
      const [left, right] = [Math.min(from.x, to.x), Math.max(from.x, to.x)];
      return { chain: number, index, from, to, ends: [start, end], left, right, cuts: [] };
    }),
  );
}

function isApartInHeight(a: Straight, b: Straight): boolean {
  return (
    Math.max(a.from.y, a.to.y) < Math.min(b.from.y, b.to.y) || Math.max(b.from.y, b.to.y) < Math.min(a.from.y, a.to.y)
  );
}

function alongOrder(from: Seen, to: Seen, a: Seen, b: Seen): number {
  const [alongX, alongY] = [compareX(to, from), compareY(to, from)];
  return alongX !== 0 ? alongX * compareX(a, b) : alongY * compareY(a, b);
}
