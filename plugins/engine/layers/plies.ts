import type { Assembly, LaidJoint } from '../assembly/index.ts';
import type { Panel } from '../panels/index.ts';
import type { CoatItem, GlueJoin, Piece } from '../spec/index.ts';
import { Length } from '../units/index.ts';
import { isCompressible, type Material, type Materials } from './material.ts';
import { FOAM_ROLE, GLUE_ROLE, materialOf } from './usual-materials.ts';

/** One layer of a stack: a ply of paper, foam or film, what sticks two of them, or what is laid on one. */
export interface Layer {
  readonly is: 'ply' | 'glue' | 'foam' | 'coat';
  /** The panel, or for glue and foam the join, as a maker reads it. */
  readonly name: string;
  /** Stock role, or the name of a coat's supply. */
  readonly role: string;
  readonly material: Material;
  /** Undefined when nobody knows how thick it is. */
  readonly high: Length | undefined;
  /** How that is known: a packet, a table, an estimate; or that it is assumed, or stands in the card itself. */
  readonly source: string;
  readonly compressible: boolean;
}

/** What comes with every panel and every glued join of a card. */
export interface Plies {
  readonly assembly: Assembly;
  readonly materials: Materials;
  /** A panel with what is laid on it: the coats of its back, the ply, the coats of its face. */
  layersOf(panel: string): readonly Layer[];
  /** What lies between the two panels of a glued join: foam, or a film of glue, or nothing where foam tape sticks by itself. */
  between(joint: LaidJoint): readonly Layer[];
}

const IN_THE_CARD = 'as the card has it';

export function pliesOf(assembly: Assembly, materials: Materials): Plies {
  const pieces = new Map(assembly.card.pieces.map((piece) => [piece.name, piece]));
  const coats = coatsByPanel(assembly);
  const known = new Map<string, readonly Layer[]>();
  const layersOf = (name: string): readonly Layer[] => {
    const found = known.get(name);
    if (found) return found;
    const panel = assembly.panels.get(name);
    const piece = pieces.get(panel?.piece ?? '');
    if (panel === undefined || piece === undefined) return [];
    const laid = (side: 'face' | 'back'): Layer[] =>
      (coats.get(name) ?? []).filter((coat) => coat.side === side).map(({ item }) => coatLayer(name, item, materials));
    const layers = [...laid('back').toReversed(), plyLayer(panel, piece, materials), ...laid('face')];
    known.set(name, layers);
    return layers;
  };
  return { assembly, materials, layersOf, between: (joint) => bondLayers(joint, pieces, materials) };
}

/** Which coats lie on a panel, those of a whole piece on each of its panels. */
export function coatsByPanel({ card, panels, find }: Assembly): Map<string, { side: string; item: CoatItem }[]> {
  const on = new Map<string, { side: string; item: CoatItem }[]>();
  for (const { on: ref, side, items } of card.coats) {
    const found = ref.part.is === 'whole' ? [] : find(ref.piece, ref.part);
    const names = found.length > 0 ? found : [...panels.values()].filter(({ piece }) => piece === ref.piece);
    for (const { name } of names) on.set(name, [...(on.get(name) ?? []), ...items.map((item) => ({ side, item }))]);
  }
  return on;
}

function plyLayer(panel: Panel, piece: Piece, materials: Materials): Layer {
  const material = materialOf(piece.stock, materials);
  const stated = piece.thick && { high: piece.thick, source: IN_THE_CARD };
  const solid = material.sort === 'foam' || material.sort === 'board' || material.sort === 'ornament';
  const measured = solid && material.height ? { high: material.height, source: 'as the supply has it' } : undefined;
  return layer('ply', panel.name, piece.stock, material, stated ?? measured ?? byCaliper(material));
}

/** One thing laid on a panel: as high as is written beside it, else as its supply's coats are, else nothing. */
export function coatLayer(panel: string, item: CoatItem, materials: Materials): Layer {
  const material = Object.hasOwn(materials, item.with) ? materials[item.with] : undefined;
  const known: Material = material ?? { name: item.with, sort: 'ink' };
  const high = item.thick ?? known.caliper?.length ?? Length.zero;
  const source = item.thick ? IN_THE_CARD : (known.caliper?.source ?? 'too thin to count');
  return layer('coat', panel, item.with, known, { high, source });
}

/** Foam tape sticks on both sides by itself; everything else has a film of glue. */
function bondLayers({ join }: LaidJoint, pieces: ReadonlyMap<string, Piece>, materials: Materials): Layer[] {
  if (join.is !== 'glue') return [];
  const tape = tapeLayer(join, materials);
  if (tape) return [tape];
  const isFoam = (piece: string): boolean => materialOf(pieces.get(piece)?.stock ?? '', materials).sort === 'foam';
  if (isFoam(join.part.piece) || isFoam(join.onto.piece)) return [];
  const glue = materialOf(GLUE_ROLE, materials);
  return [layer('glue', join.text, GLUE_ROLE, glue, byCaliper(glue))];
}

function tapeLayer({ tape, text }: GlueJoin, materials: Materials): Layer | undefined {
  if (tape === undefined) return undefined;
  const role = tape.stock === '' ? FOAM_ROLE : tape.stock;
  const high = tape.layer.times(tape.layers);
  return layer('foam', text, role, materialOf(role, materials), { high, source: IN_THE_CARD });
}

function byCaliper({ caliper, assumed }: Material): Pick<Layer, 'high' | 'source'> {
  const source = caliper?.source ?? 'not known';
  return { high: caliper?.length, source: assumed && caliper ? `assumed; ${source}` : source };
}

function layer(
  is: Layer['is'],
  name: string,
  role: string,
  material: Material,
  { high, source }: Pick<Layer, 'high' | 'source'>,
): Layer {
  return { is, name, role, material, high, source, compressible: isCompressible(material) };
}

/** All layers in one, those of unknown height as nothing. */
export function heightOf(layers: readonly Layer[]): Length {
  return Length.sum(layers.flatMap(({ high }) => high ?? []));
}
