import type { LaidJoint } from '../assembly/index.ts';
import { Length } from '../units/index.ts';
import { type Paper, paperOf } from './paper.ts';
import { heightOf, type Layer, type Plies } from './plies.ts';
import type { PlyOrders } from './types.ts';

/**
 * How high every panel lies when the card lies on a table, its ground's face up.
 *
 * A panel is a flat plate: what lifts it in one place lifts it wherever it reaches, so that a front on foam, or over a stack
 * that lies inside, is as high at its rim as in the middle. Panels with a flat crease between them are one plate. Every plate lies as
 * low as what is under it allows.
 */
export interface Lifted {
  /** From the table to the underside of a panel. */
  bottomOf(panel: string): Length;
  topOf(panel: string): Length;
  /** From the table to the highest point. */
  readonly overall: Length;
  /** The layers that make it so, from the table up: each rests upon the one before. */
  readonly tallest: readonly Layer[];
  /** The panels among them. */
  readonly panels: readonly string[];
}

interface Plate {
  bottom: Length;
  /** The panel that it rests upon by which of its own, and what is between. */
  rests: { readonly under: string; readonly own: string; readonly between: readonly Layer[] } | undefined;
}

/** Undefined where overlaps go in a circle (a woven slider, flaps tucked in turn): those plies bend, and no plate is flat. */
export function liftedIn(orders: PlyOrders, plies: Plies): Lifted | undefined {
  const [order] = orders.orders;
  const paper = paperOf(orders.pose);
  const sorted = order && sortedPlates(paper, order.pairs);
  if (sorted === undefined) return undefined;
  const plateOf = (panel: string): number => paper.facetOf[paper.indexOf.get(panel) ?? 0] ?? 0;
  const plates = Array.from({ length: paper.facets }, (): Plate => ({ bottom: Length.zero, rests: undefined }));
  const bottomOf = (panel: string): Length => plates[plateOf(panel)]?.bottom ?? Length.zero;
  const topOf = (panel: string): Length => bottomOf(panel).plus(heightOf(plies.layersOf(panel)));
  const between = bondsOf(paper, plies);
  for (const number of sorted.plates) {
    const plate = plates[number];
    if (plate === undefined) continue;
    for (const { over, under } of sorted.below[number] ?? []) {
      const bonds = between(over, under);
      const bottom = topOf(under).plus(heightOf(bonds));
      if (!bottom.moreThan(plate.bottom) && plate.rests) continue;
      plate.bottom = Length.larger(bottom, plate.bottom);
      plate.rests = { under, own: over, between: bonds };
    }
  }
  const names = paper.panels.map(({ name }) => name);
  const top = names.reduce<string | undefined>(
    (best, name) => (best !== undefined && !topOf(name).moreThan(topOf(best)) ? best : name),
    undefined,
  );
  const chain = chainTo(top, plies, (panel) => plates[plateOf(panel)]?.rests);
  return { bottomOf, topOf, overall: top === undefined ? Length.zero : topOf(top), ...chain };
}

/**
 * Layers from the table up to a panel. Where a plate is held up by one of its panels and carries by another, the one that
 * it carries by is counted.
 */
function chainTo(
  top: string | undefined,
  plies: Plies,
  restsOf: (panel: string) => Plate['rests'],
): Pick<Lifted, 'tallest' | 'panels'> {
  const layers: Layer[][] = [];
  const panels: string[] = [];
  for (let panel = top; panel !== undefined; ) {
    const rests = restsOf(panel);
    panels.unshift(panel);
    layers.unshift([...(rests?.between ?? []), ...plies.layersOf(panel)]);
    panel = rests?.under;
  }
  return { tallest: layers.flat(), panels };
}

function bondsOf({ laid }: Paper, plies: Plies): (one: string, other: string) => Layer[] {
  const glued = laid.filter(({ is }) => is === 'glue');
  const holds = (joint: LaidJoint, one: string, other: string): boolean =>
    (joint.a === one && joint.b === other) || (joint.a === other && joint.b === one);
  return (one, other) => glued.filter((joint) => holds(joint, one, other)).flatMap((joint) => plies.between(joint));
}

interface Sorted {
  readonly plates: readonly number[];
  readonly below: readonly (readonly { readonly over: string; readonly under: string }[])[];
}

/** Each plate after all that lie below it. */
function sortedPlates(
  { facets, facetOf, indexOf }: Paper,
  pairs: readonly { readonly over: string; readonly under: string }[],
): Sorted | undefined {
  const below: { over: string; under: string }[][] = Array.from({ length: facets }, () => []);
  const above: number[][] = Array.from({ length: facets }, () => []);
  const waits = new Int32Array(facets);
  for (const pair of pairs) {
    const [over, under] = [pair.over, pair.under].map((name) => facetOf[indexOf.get(name) ?? 0] ?? 0);
    if (over === undefined || under === undefined) continue;
    below[over]?.push(pair);
    above[under]?.push(over);
    waits[over] = (waits[over] ?? 0) + 1;
  }
  const plates = Array.from({ length: facets }, (_, i) => i).filter((i) => waits[i] === 0);
  for (const plate of plates) {
    for (const over of above[plate] ?? []) {
      waits[over] = (waits[over] ?? 0) - 1;
      if (waits[over] === 0) plates.push(over);
    }
  }
  return plates.length === facets ? { plates, below } : undefined;
}
