import { Length } from '../units/index.ts';
import { type CreaseLoad, creaseLoads } from './crease-loads.ts';
import { type Lifted, liftedIn } from './lift.ts';
import type { Material, Materials } from './material.ts';
import { type Layer, type Plies, pliesOf } from './plies.ts';
import { type Springback, springbackOf } from './springback.ts';
import { regionOf, type Stack, type StackRegion, stackerOf } from './stacks.ts';
import type { PlyOrders } from './types.ts';

/** A stack with where it is, and how high its top lies over the table while panels are flat plates. */
export interface PlacedStack extends Stack {
  readonly lifted: Length;
  readonly region: StackRegion;
}

/**
 * How thick a flat pose is, region by region.
 *
 * Two figures, since paper is neither soft nor stiff: a stack's `local` height is that of its own layers alone; `lifted` is how
 * high its top lies when every panel is a flat plate. The envelope sees `overall`, the greatest that plates make; where they are
 * woven and must bend it is the greatest local stack.
 */
export interface Thickness {
  readonly stacks: readonly Stack[];
  readonly least: PlacedStack;
  readonly greatest: PlacedStack;
  readonly overall: Length;
  /** The layers that make `overall`, from the table up. */
  readonly tallest: readonly Layer[];
  /** How much of `overall` gives when it is pressed, and the roles that do. */
  readonly compressible: { readonly high: Length; readonly roles: readonly string[] };
  /** What shut folds add while nothing presses them; not in `overall`. */
  readonly springback: Springback;
  /** What lies inside each shut crease, in the order that is drawn and then in others: a maker folds in the one that goes best. */
  readonly creases: readonly (readonly CreaseLoad[])[];
  /** Roles whose thickness nobody knows: with any, the figures are too small. */
  readonly unknown: readonly string[];
  /** Roles that no supply was named for: the figures rest upon what is usual. */
  readonly assumed: readonly { readonly role: string; readonly material: Material }[];
}

/** So many orders are looked through for one in which everything has room; fewer where each takes long. */
const MOST_ORDERS = 12;
const MOST_WORK = 60_000;

/** At least one. `each`: panels times stacks. */
function ordersLookedThrough(each: number): number {
  return Math.max(1, Math.min(MOST_ORDERS, Math.floor(MOST_WORK / Math.max(1, each))));
}

/** Undefined for a pose without an order of plies or that does not lie flat. Exact, as far as calipers are. */
export function thicknessOf(orders: PlyOrders, materials: Materials): Thickness | undefined {
  if (!orders.pose.flat || orders.orders.length === 0) return undefined;
  const plies = pliesOf(orders.pose.assembly, materials);
  const stacksIn = stackerOf(orders.pose, plies);
  const stacks = orders.orders.slice(0, 1).flatMap(stacksIn);
  const lifted = liftedIn(orders, plies);
  const placed = (stack: Stack): PlacedStack => ({
    ...stack,
    lifted: liftOf(stack, lifted),
    region: regionOf(stack, orders.pose),
  });
  const [first, ...others] = stacks;
  if (first === undefined) return undefined;
  const least = others.reduce((best, stack) => (stack.local.lessThan(best.local) ? stack : best), first);
  const greatest = others.reduce((best, stack) => (stack.local.moreThan(best.local) ? stack : best), first);
  const tallest = lifted?.tallest ?? greatest.layers;
  const all = layersIn(orders, plies, stacks);
  return {
    stacks,
    least: placed(least),
    greatest: placed(greatest),
    overall: lifted?.overall ?? greatest.local,
    tallest,
    compressible: givingIn(tallest),
    springback: springbackOf(orders.pose, lifted?.panels ?? greatest.panels, plies),
    creases: orders.orders
      .slice(0, ordersLookedThrough(stacks.length * orders.pose.panels.length))
      .map((order) => creaseLoads(orders.pose, stacksIn(order), plies)),
    unknown: distinct(all.filter(({ high }) => high === undefined).map(({ role }) => role)),
    assumed: assumedIn(all),
  };
}

function liftOf({ panels, local }: Stack, lifted: Lifted | undefined): Length {
  return lifted ? panels.map(lifted.topOf).reduce(Length.larger, Length.zero) : local;
}

function layersIn({ pose }: PlyOrders, plies: Plies, stacks: readonly Stack[]): Layer[] {
  return [...pose.panels.flatMap(({ panel }) => plies.layersOf(panel)), ...stacks.flatMap(({ layers }) => layers)];
}

function givingIn(layers: readonly Layer[]): Thickness['compressible'] {
  const giving = layers.filter(({ compressible }) => compressible);
  const high = Length.sum(giving.flatMap((layer) => layer.high ?? []));
  return { high, roles: distinct(giving.map(({ role }) => role)) };
}

/** Foam that the card itself gives a height is assumed in its weight alone, and so is not named here. */
function assumedIn(layers: readonly Layer[]): Thickness['assumed'] {
  const assumed = layers.filter(({ material }) => material.assumed && material.caliper);
  return distinct(assumed.map(({ role }) => role)).flatMap((role) => {
    const material = assumed.find((layer) => layer.role === role)?.material;
    return material ? [{ role, material }] : [];
  });
}

export function distinct(names: readonly string[]): string[] {
  return [...new Set(names)];
}
