import type { LaidJoint } from '../assembly/index.ts';
import type { PathEdge } from '../geometry/index.ts';
import type { Paper } from './paper.ts';
import { inPile, type Pile } from './piles.ts';
import { TOUCH_MM } from './touch.ts';

/**
 * A line that parts a facet in its pile's plane: where it goes through a slit of another, or is slotted into it. The paper is
 * whole there, but on one side of the line it may lie above the other panel and on the other side below it.
 */
export interface Parting {
  readonly facet: number;
  readonly pile: number;
  readonly joint: LaidJoint;
  readonly x: number;
  readonly y: number;
  /** Direction of the line; a facet's second part lies to the left of it. */
  readonly dx: number;
  readonly dy: number;
}

/** A cut that parts no panel, in its pile's plane: where another piece can pass through a facet. */
export interface Slit {
  readonly facet: number;
  readonly pile: number;
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}

/** Facets, parted where they are woven. A leaf has one place in the order of plies. */
export interface Leaves {
  readonly partings: readonly Parting[];
  readonly slits: readonly Slit[];
  readonly count: number;
  /** The leaf of a facet at a point of its pile's plane, a hair from it in the direction given. */
  leafAt(facet: number, x: number, y: number, towardsX: number, towardsY: number): number;
  /** Every leaf of a facet with, for each of its partings in turn, whether it is to the left. */
  leavesOf(facet: number): readonly { readonly leaf: number; readonly left: readonly boolean[] }[];
  partingsOf(facet: number): readonly Parting[];
}

/** More partings of one facet than this are not looked at. */
const MOST_PARTINGS = 6;

export function leavesOf(paper: Paper, piles: readonly Pile[]): Leaves {
  const pileOf = new Map(piles.flatMap(({ panels }, pile) => panels.map((panel) => [panel, pile])));
  const partings: Parting[] = [];
  for (const joint of paper.laid) {
    const [a, b] = [paper.indexOf.get(joint.a) ?? 0, paper.indexOf.get(joint.b) ?? 0];
    const pile = pileOf.get(a);
    if (pile === undefined || pile !== pileOf.get(b)) continue;
    if (joint.join.is === 'slide') partings.push(...atSlits(paper, piles, pile, joint, a, b));
    if (joint.join.is === 'slot') partings.push(...atSlot(paper, piles, pile, joint, a, b));
  }
  const byFacet = Array.from({ length: paper.facets }, (_, facet) =>
    partings.filter((parting) => parting.facet === facet).slice(0, MOST_PARTINGS),
  );
  const first: number[] = [];
  let count = 0;
  for (const own of byFacet) {
    first.push(count);
    count += 2 ** own.length;
  }
  return {
    partings: byFacet.flat(),
    slits: slitsOf(paper, piles, pileOf),
    count,
    partingsOf: (facet) => byFacet[facet] ?? [],
    leafAt(facet, x, y, towardsX, towardsY) {
      let leaf = first[facet] ?? 0;
      for (const [i, line] of (byFacet[facet] ?? []).entries()) {
        const away = line.dx * (y - line.y) - line.dy * (x - line.x);
        const left = Math.abs(away) > TOUCH_MM ? away > 0 : line.dx * towardsY - line.dy * towardsX > 0;
        if (left) leaf += 2 ** i;
      }
      return leaf;
    },
    leavesOf: (facet) =>
      Array.from({ length: 2 ** (byFacet[facet]?.length ?? 0) }, (_, part) => ({
        leaf: (first[facet] ?? 0) + part,
        left: (byFacet[facet] ?? []).map((_, i) => ((part >> i) & 1) === 1),
      })),
  };
}

/** A slider is parted at each slit; what is further along lies to the left of the line. */
function atSlits(
  paper: Paper,
  piles: readonly Pile[],
  pile: number,
  joint: LaidJoint,
  slider: number,
  receiver: number,
): Parting[] {
  const { join } = joint;
  if (join.is !== 'slide') return [];
  const place = placer(paper, piles, pile, receiver);
  const [ox, oy] = place(0, 0);
  const [ax, ay] = place(join.along.x.valueOf(), -join.along.y.valueOf());
  const facet = paper.facetOf[slider] ?? 0;
  return cutsOf(paper, receiver, join.through).map(({ from, to }): Parting => {
    const [x, y] = place(from.x.valueOf(), -from.y.valueOf());
    const [toX, toY] = place(to.x.valueOf(), -to.y.valueOf());
    const size = Math.hypot(toX - x, toY - y);
    const forward = (toX - x) * (ay - oy) - (toY - y) * (ax - ox) > 0 ? 1 : -1;
    return { facet, pile, joint, x, y, dx: (forward * (toX - x)) / size, dy: (forward * (toY - y)) / size };
  });
}

function atSlot(
  paper: Paper,
  piles: readonly Pile[],
  pile: number,
  joint: LaidJoint,
  part: number,
  onto: number,
): Parting[] {
  const { join } = joint;
  if (join.is !== 'slot') return [];
  const place = placer(paper, piles, pile, part);
  return cutsOf(paper, part, [join.line])
    .slice(0, 1)
    .flatMap(({ from, to }) => {
      const [x, y] = place(from.x.valueOf(), -from.y.valueOf());
      const [toX, toY] = place(to.x.valueOf(), -to.y.valueOf());
      const size = Math.hypot(toX - x, toY - y);
      const line = { pile, joint, x, y, dx: (toX - x) / size, dy: (toY - y) / size };
      return [part, onto].map((panel) => ({ ...line, facet: paper.facetOf[panel] ?? 0 }));
    });
}

function cutsOf(paper: Paper, panel: number, names: readonly string[]): PathEdge[] {
  const piece = paper.panels[panel]?.piece;
  return paper.pose.assembly.strokes
    .filter((stroke) => stroke.does === 'cut' && stroke.piece === piece && names.includes(stroke.name))
    .map(({ edge }) => edge);
}

/** Straight cuts, as each facet of their piece has them. Where one parts panels, their edges say so already. */
function slitsOf(paper: Paper, piles: readonly Pile[], pileOf: ReadonlyMap<number, number>): Slit[] {
  const cuts = paper.pose.assembly.strokes.filter(({ does, edge }) => does === 'cut' && edge.is === 'line');
  const slits: Slit[] = [];
  for (const { piece, edge } of cuts) {
    const seen = new Set<number>();
    for (const [i, panel] of paper.panels.entries()) {
      const facet = paper.facetOf[i] ?? 0;
      if (panel.piece !== piece || seen.has(facet)) continue;
      seen.add(facet);
      const pile = pileOf.get(i) ?? 0;
      const place = placer(paper, piles, pile, i);
      const from = place(edge.from.x.valueOf(), -edge.from.y.valueOf());
      slits.push({ facet, pile, from, to: place(edge.to.x.valueOf(), -edge.to.y.valueOf()) });
    }
  }
  return slits;
}

function placer(paper: Paper, piles: readonly Pile[], pile: number, panel: number) {
  const [plane, sheet] = [piles[pile], paper.panels[panel]];
  if (plane === undefined || sheet === undefined) throw new RangeError('no such pile or panel');
  return (x: number, y: number): [number, number] => inPile(plane, sheet, x, y);
}
