import type { Assembly } from '../assembly/index.ts';
import {
  coatLayer,
  type Layer,
  type Materials,
  materialOf,
  type Plies,
  pliesOf,
  type WorkOrder,
} from '../layers/index.ts';
import type { Coat, CoatItem, Filling, Join, Piece } from '../spec/index.ts';
import { Length } from '../units/index.ts';
import { sayList, sayName } from './drawings-names.ts';

/** One line of the layer list: what hands do, and what it adds to the height where it lies. */
export interface LayerLine {
  readonly is: 'piece' | 'coat' | 'join' | 'fill';
  /** A sentence. */
  readonly says: string;
  /** The maker's own words to it. */
  readonly note: string | undefined;
  /** Undefined where it lies in a chamber or adds no layer of its own; zero where it is too thin to count. */
  readonly adds: Length | undefined;
  /** Its height is not known, and is missing from every sum. */
  readonly unknown: boolean;
  /** Nobody named a supply for it: a usual one stands in. */
  readonly assumed: boolean;
  /** Height of one layer of foam, where several lie on each other. */
  readonly each: Length | undefined;
  /** What it is made of, and how its height is known; undefined where it has no height of its own. */
  readonly made: { readonly name: string; readonly source: string } | undefined;
  /** The filling's name, whose mass is told beside it. */
  readonly filling: string | undefined;
}

/**
 * Every layer of a card in the order of work: each piece when it is first taken up, what is laid on it, what is stuck where, and what is
 * filled in before its chamber is closed.
 */
export function sayLayers(order: WorkOrder, assembly: Assembly, materials: Materials): LayerLine[] {
  const saying: Saying = { assembly, materials, plies: pliesOf(assembly, materials) };
  const lines: LayerLine[] = [];
  const taken = new Set<string>();
  const take = (...names: readonly string[]): void => {
    for (const name of names) {
      const piece = assembly.card.pieces.find((one) => one.name === name);
      if (piece !== undefined && !taken.has(name)) lines.push(pieceLine(piece, saying));
      taken.add(name);
    }
  };
  for (const step of order.steps) {
    if (step.is === 'coat') {
      take(step.coat.on.piece);
      lines.push(...step.coat.items.map((item) => coatLine(item, step.coat, saying)));
    } else if (step.is === 'fill') {
      take(step.filling.piece);
      lines.push(fillLine(step.filling, saying));
    } else if (step.join.is !== 'rest') {
      take(step.join.onto.piece, step.join.part.piece);
      lines.push(joinLine(step.join, saying));
    }
  }
  take(...order.loose.map(({ name }) => name));
  return lines;
}

interface Saying {
  readonly assembly: Assembly;
  readonly materials: Materials;
  readonly plies: Plies;
}

const NOTHING = {
  note: undefined,
  adds: undefined,
  unknown: false,
  assumed: false,
  each: undefined,
  made: undefined,
  filling: undefined,
};

function pieceLine(piece: Piece, { assembly, plies, materials }: Saying): LayerLine {
  const panel = [...assembly.panels.values()].find((one) => one.piece === piece.name);
  const ply = panel && plies.layersOf(panel.name).find(({ is }) => is === 'ply');
  const material = materialOf(piece.stock, materials);
  const layers = layersIn(piece.thick, material.height);
  const of = layers === undefined ? material.name : sayFoam(layers, material.name);
  const says = `${capital(sayName(piece.name))}: ${of}.`;
  const each = layers === undefined ? undefined : material.height;
  return { ...NOTHING, is: 'piece', says, each, ...heightOf(ply ? [ply] : []) };
}

function coatLine(item: CoatItem, { on, side }: Coat, { materials }: Saying): LayerLine {
  const where = `${side === 'back' ? 'the back of ' : ''}${sayName(on.text)}`;
  const name = (text: string): string => (Object.hasOwn(materials, text) ? (materials[text]?.name ?? text) : text);
  const through = item.through === undefined ? '' : `, through ${name(item.through)}`;
  const begin = item.as === undefined || item.as === 'other' ? 'On' : `${capital(item.as)} on`;
  const { high: adds = Length.zero, material, source } = coatLayer(on.text, item, materials);
  const made = adds.isZero ? undefined : { name: material.name, source };
  const says = `${begin} ${where}${through}: ${name(item.with)}.`;
  return { ...NOTHING, is: 'coat', says, note: item.note, adds, made };
}

const JOIN_VERBS: Readonly<Record<Exclude<Join['is'], 'rest'>, string>> = {
  glue: 'Stick',
  pin: 'Pin',
  slide: 'Slide',
  slip: 'Slip',
  slot: 'Push',
  hang: 'Hang',
};

function joinLine(join: Exclude<Join, { is: 'rest' }>, { assembly, plies }: Saying): LayerLine {
  const joint = assembly.joints.find((one) => 'join' in one && one.join === join);
  const between = joint?.is === 'glue' ? plies.between(joint) : [];
  const says = `${JOIN_VERBS[join.is]} ${sayName(join.text)}`;
  if (join.is !== 'glue' || joint === undefined) return { ...NOTHING, is: 'join', says: `${says}.` };
  if (between.length === 0) return { ...NOTHING, is: 'join', says: `${says}; the foam holds it.` };
  const { tape } = join;
  const held = between.map(({ is, material: { name } }) =>
    is === 'foam' && tape !== undefined ? sayFoam(tape.layers, name) : name,
  );
  return { ...NOTHING, is: 'join', says: `${says}, with ${sayList(held)}.`, each: tape?.layer, ...heightOf(between) };
}

function fillLine({ name, stock, piece, window, full, mass }: Filling, { materials }: Saying): LayerLine {
  const material = materialOf(stock, materials);
  const amount = mass === undefined ? `, ${full.toFraction()} full` : '';
  const says = `Fill the ${sayName(window)} of ${sayName(piece)} with ${material.name}${amount}.`;
  return { ...NOTHING, is: 'fill', says, filling: name, assumed: material.assumed ?? false };
}

/** How many layers of one height make a height; undefined when they do not, or one does. */
function layersIn(high: Length | undefined, layer: Length | undefined): number | undefined {
  if (high === undefined || layer === undefined || layer.isZero) return undefined;
  const count = high.per(layer);
  return count.d === 1n && count.n > 1n ? Number(count.n) : undefined;
}

function sayFoam(layers: number, name: string): string {
  return `${layers} ${layers === 1 ? 'layer' : 'layers'} of ${name}`;
}

function heightOf(layers: readonly Layer[]): Pick<LayerLine, 'adds' | 'unknown' | 'assumed' | 'made'> {
  const [first] = layers;
  const known = layers.flatMap(({ high }) => high ?? []);
  return {
    adds: known.length === 0 ? undefined : Length.sum(known),
    unknown: known.length < layers.length,
    assumed: layers.some(({ material }) => material.assumed),
    made: first && { name: first.material.name, source: first.source },
  };
}

function capital(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}
