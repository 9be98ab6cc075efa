import type { ClosedPose } from '../motion/index.ts';
import type { Hinge } from '../panels/index.ts';
import { Length } from '../units/index.ts';
import { type Paper, type PaperHinge, paperOf, spaceOf } from './paper.ts';
import { heightOf, type Layer, type Plies } from './plies.ts';
import type { Stack } from './stacks.ts';
import { TOUCH_MM } from './touch.ts';

/** A shut crease and what lies inside its fold. */
export interface CreaseLoad {
  readonly hinge: Hinge;
  /** Both panels that it joins. */
  readonly panels: readonly [string, string];
  /** Caliper of its own paper. */
  readonly own: Length;
  /** Height of all that lies between its two panels where that is highest: flat panels hold each other apart everywhere. */
  readonly inside: Length;
  readonly between: readonly InnerPanel[];
  /** What the turn uses up of the paper: square corners, and a round bend. Half of it is taken from each panel. */
  readonly takes: { readonly least: Length; readonly most: Length };
}

/** A panel inside a fold. */
export interface InnerPanel {
  readonly panel: string;
  /** From the crease to the nearest of its edges that runs along it, mm. Undefined when none lies there. */
  readonly gap: number | undefined;
  /** For a sheet that is folded in the same place inside: its crease, and how far its panel and the outer one reach from there. */
  readonly nested: { readonly hinge: Hinge; readonly reach: number; readonly outer: number } | undefined;
}

/** Half a turn about its middle is pi/2 times its height. From below, so that nothing is asked that geometry does not. */
const ROUND = '1.5707963';

/** An edge counts as running along a crease when it lies near it for at least this long: a corner that points at it is no edge. */
const ALONG_MM = 3;

/** How far from a crease an edge is still looked at: more than any turn of paper uses up. */
const NEAR_MM = 12;

/** (k + 1) t to pi/2 (k + 1) t for k plies of caliper t, with their own heights in the place of k t. */
export function turnTakes(own: Length, inside: Length): CreaseLoad['takes'] {
  const least = own.plus(inside);
  return { least, most: least.times(ROUND) };
}

/** Every shut crease of a flat pose, stretches of one crease in one. */
export function creaseLoads(pose: ClosedPose, stacks: readonly Stack[], plies: Plies): CreaseLoad[] {
  const paper = paperOf(pose);
  const shut = paper.hinges.filter(({ is }) => is === 'shut');
  const loads = new Map<string, CreaseLoad>();
  for (const hinge of shut) {
    const load = loadOf(hinge, paper, shut, stacks, plies);
    const key = `${load.hinge.piece}\n${load.hinge.crease}`;
    const known = loads.get(key);
    loads.set(key, known ? together(known, load) : load);
  }
  return [...loads.values()];
}

function loadOf(
  hinge: PaperHinge,
  paper: Paper,
  shut: readonly PaperHinge[],
  stacks: readonly Stack[],
  plies: Plies,
): CreaseLoad {
  const { a, b } = hinge.joint;
  let inside = Length.zero;
  const found = new Set<string>();
  for (const stack of stacks) {
    const [low, high] = [stack.panels.indexOf(a), stack.panels.indexOf(b)].sort((x, y) => x - y);
    if (low === undefined || high === undefined || low < 0 || high - low < 2) continue;
    const names = stack.panels.slice(low + 1, high);
    for (const name of names) found.add(name);
    inside = Length.larger(inside, heightOf(layersBetween(stack, stack.panels[low] ?? '', stack.panels[high] ?? '')));
  }
  const own = heightOf(plies.layersOf(a).filter(({ is }) => is === 'ply'));
  const between = [...found].map((panel) => innerPanel(panel, hinge, paper, shut));
  return { hinge: hinge.joint.hinge, panels: [a, b], own, inside, between, takes: turnTakes(own, inside) };
}

/** Layers of a stack between the plies of two of its panels, glue and foam among them. */
function layersBetween({ layers }: Stack, lower: string, upper: string): readonly Layer[] {
  const isOf = (panel: string) => (layer: Layer) => layer.name === panel && (layer.is === 'ply' || layer.is === 'coat');
  return layers.slice(layers.findLastIndex(isOf(lower)) + 1, layers.findIndex(isOf(upper)));
}

function innerPanel(name: string, outer: PaperHinge, paper: Paper, shut: readonly PaperHinge[]): InnerPanel {
  const line = lineOf(outer, paper);
  const index = paper.indexOf.get(name) ?? 0;
  const nested = shut.find(
    (one) => one !== outer && (one.a === index || one.b === index) && ends(one, paper).every((end) => isOn(line, end)),
  );
  const corners = cornersOf(index, paper).map(line);
  if (nested) {
    const [first, second] = [outer.a, outer.b].map((panel) => reachOf(cornersOf(panel, paper).map(line)));
    const reach = { reach: reachOf(corners), outer: Math.min(first ?? 0, second ?? 0) };
    return { panel: name, gap: undefined, nested: { hinge: nested.joint.hinge, ...reach } };
  }
  return { panel: name, gap: gapTo(corners), nested: undefined };
}

type Point = readonly [number, number];
/** How far a point is from a crease and how far along it, mm. */
type FromLine = (point: Point) => { readonly off: number; readonly along: number };

function lineOf(hinge: PaperHinge, paper: Paper): FromLine {
  const [from, to] = ends(hinge, paper);
  const [dx, dy] = [(to?.[0] ?? 0) - (from?.[0] ?? 0), (to?.[1] ?? 0) - (from?.[1] ?? 0)];
  const size = Math.hypot(dx, dy);
  return ([x, y]) => {
    const [px, py] = [x - (from?.[0] ?? 0), y - (from?.[1] ?? 0)];
    return { off: Math.abs(dx * py - dy * px) / size, along: (dx * px + dy * py) / size };
  };
}

function ends({ a, from, to }: PaperHinge, paper: Paper): Point[] {
  const sheet = paper.panels[a];
  return sheet ? [from, to].map(([x, y]) => spaceOf(sheet, x, y).slice(0, 2) as [number, number]) : [];
}

function cornersOf(panel: number, paper: Paper): Point[] {
  const sheet = paper.panels[panel];
  const ring = sheet?.rings[0] ?? new Float64Array();
  return Array.from({ length: ring.length / 2 }, (_, i) => {
    const [x, y] = sheet ? spaceOf(sheet, ring[2 * i] ?? 0, ring[2 * i + 1] ?? 0) : [0, 0];
    return [x, y];
  });
}

function isOn(line: FromLine, point: Point): boolean {
  return line(point).off <= TOUCH_MM;
}

function reachOf(corners: readonly { readonly off: number }[]): number {
  return Math.max(...corners.map(({ off }) => off));
}

/** The distance of the nearest edge whose two ends lie about as far from the line, over a length that counts. */
function gapTo(corners: readonly { readonly off: number; readonly along: number }[]): number | undefined {
  const gaps = corners.flatMap((corner, i) => {
    const next = corners[(i + 1) % corners.length] ?? corner;
    const length = Math.abs(next.along - corner.along);
    const runs = length >= ALONG_MM && Math.abs(next.off - corner.off) <= length / 10;
    const gap = Math.max(corner.off, next.off);
    return runs && gap <= NEAR_MM ? [gap] : [];
  });
  return gaps.length === 0 ? undefined : Math.min(...gaps);
}

/** Two stretches of one crease: it has to go round the higher of the two. */
function together(one: CreaseLoad, other: CreaseLoad): CreaseLoad {
  const higher = other.inside.moreThan(one.inside) ? other : one;
  const named = new Set(one.between.map(({ panel }) => panel));
  return { ...higher, between: [...one.between, ...other.between.filter(({ panel }) => !named.has(panel))] };
}
