import { type Segments, type Stretch, visitStretches } from './arrangement.ts';
import { type Leaves, leavesOf } from './leaves.ts';
import { MOST_LOOKS } from './limits.ts';
import type { Paper } from './paper.ts';
import { Overlaps, type Piled, Spots } from './piled.ts';
import { inPile, type Pile, pilesOf } from './piles.ts';

/** A stretch where paper is creased or parted, with what lies to its sides. */
export interface Crossing {
  readonly pile: number;
  /** A stretch's direction in its pile's plane. */
  readonly dx: number;
  readonly dy: number;
  /** The spots to its left and right, by number. */
  readonly left: number;
  readonly right: number;
  /** Hinges that lie there, by number. */
  readonly hinges: readonly number[];
  /** Facets that have an edge or a slit there. */
  readonly ending: readonly number[];
}

export interface Survey {
  readonly piled: Piled;
  readonly crossings: readonly Crossing[];
}

/** Where everything lies: the spots of every pile, and the stretches where paper could pass through paper. Undefined for far too much paper. */
export function survey(paper: Paper): Survey | undefined {
  const steps = { left: MOST_LOOKS };
  const piles = pilesOf(paper);
  const leaves = leavesOf(paper, piles);
  const spots = new Spots();
  const crossings: Crossing[] = [];
  for (const [pile, plane] of piles.entries()) {
    const lines = linesIn(paper, leaves, plane, pile);
    const visit = (stretch: Stretch): void => {
      const sides = sidesOf(paper, leaves, plane, stretch);
      const [left, right] = [spots.add(...sides.left), spots.add(...sides.right)];
      const tags = stretch.on.map((segment) => lines.tags[segment]).filter((tag) => tag !== undefined);
      if (!tags.some((tag) => tag.is === 'parting' || (tag.is === 'hinge' && !tag.flat))) return;
      crossings.push({
        pile,
        dx: stretch.dx,
        dy: stretch.dy,
        left,
        right,
        hinges: numbers(tags, 'hinge'),
        ending: numbers(tags, 'end'),
      });
    };
    if (!visitStretches(lines.segments, visit, steps)) return undefined;
  }
  const overlaps = new Overlaps(leaves.count);
  for (const spot of spots.list) overlaps.add(spot);
  return { piled: { paper, piles, leaves, spots, overlaps }, crossings };
}

/** What a segment is: the end of a facet, a hinge or a line that parts a facet, by number. */
type Tag =
  | { readonly is: 'end' | 'parting'; readonly number: number }
  | { readonly is: 'hinge'; readonly number: number; readonly flat: boolean };

function numbers(tags: readonly Tag[], is: Tag['is']): number[] {
  return [...new Set(tags.filter((tag) => tag.is === is).map(({ number }) => number))].sort((a, b) => a - b);
}

interface TaggedLines {
  readonly segments: Segments;
  readonly tags: readonly Tag[];
}

function linesIn(paper: Paper, leaves: Leaves, plane: Pile, pile: number): TaggedLines {
  const ends: number[] = [];
  const panel: number[] = [];
  const tags: Tag[] = [];
  const add = (tag: Tag, owner: number, from: readonly number[], to: readonly number[]): void => {
    ends.push(from[0] ?? 0, from[1] ?? 0, to[0] ?? 0, to[1] ?? 0);
    panel.push(owner);
    tags.push(tag);
  };
  for (const [local, number] of plane.panels.entries()) {
    const sheet = paper.panels[number];
    const tag: Tag = { is: 'end', number: paper.facetOf[number] ?? 0 };
    for (const ring of sheet?.rings ?? []) {
      const corners = Array.from({ length: ring.length / 2 }, (_, i) =>
        sheet ? inPile(plane, sheet, ring[2 * i] ?? 0, ring[2 * i + 1] ?? 0) : [0, 0],
      );
      for (const [i, corner] of corners.entries()) add(tag, local, corner, corners[(i + 1) % corners.length] ?? corner);
    }
  }
  const here = new Set(plane.panels);
  for (const [number, { a, b, is, from, to }] of paper.hinges.entries()) {
    const sheet = paper.panels[here.has(a) ? a : b];
    if (sheet === undefined || !(here.has(a) || here.has(b))) continue;
    const tag: Tag = { is: 'hinge', number, flat: is === 'flat' };
    add(tag, -1, inPile(plane, sheet, ...from), inPile(plane, sheet, ...to));
  }
  for (const slit of leaves.slits) {
    if (slit.pile === pile) add({ is: 'end', number: slit.facet }, -1, slit.from, slit.to);
  }
  const reach = ends.reduce((most, value) => Math.max(most, Math.abs(value)), 1) * 4;
  for (const [number, { x, y, dx, dy, ...parting }] of leaves.partings.entries()) {
    if (parting.pile !== pile) continue;
    add({ is: 'parting', number }, -1, [x - reach * dx, y - reach * dy], [x + reach * dx, y + reach * dy]);
  }
  return { segments: { ends, panel }, tags };
}

type Side = [panels: number[], leaves: number[]];

function sidesOf(
  { facetOf }: Paper,
  leaves: Leaves,
  { panels }: Pile,
  { x, y, dx, dy, left, right }: Stretch,
): { left: Side; right: Side } {
  const side = (locals: readonly number[], towards: 1 | -1): Side => {
    const numbers = locals.map((local) => panels[local] ?? 0);
    return [numbers, numbers.map((number) => leaves.leafAt(facetOf[number] ?? 0, x, y, -towards * dy, towards * dx))];
  };
  return { left: side(left, 1), right: side(right, -1) };
}
