import Fraction from 'fraction.js';
import type { Assembly } from '../assembly/index.ts';
import { paperArea } from '../geometry/index.ts';
import type { Panel } from '../panels/index.ts';
import type { Piece } from '../spec/index.ts';
import { bondMasses } from './bond-mass.ts';
import { centroidOf } from './centroid.ts';
import { fillingMasses } from './filling-mass.ts';
import { gramsOf, type MassPart } from './mass-part.ts';
import type { Material, Materials } from './material.ts';
import { coatsByPanel } from './plies.ts';
import { materialOf } from './usual-materials.ts';

/** What a card weighs, part by part. */
export interface CardMass {
  readonly parts: readonly MassPart[];
  /** Grams of all that is known. */
  readonly grams: Fraction;
  /** Roles that nobody knows the weight of: with any, `grams` is too little. Inks and foils without a weight are left out. */
  readonly unknown: readonly string[];
  readonly assumed: readonly { readonly role: string; readonly material: Material }[];
}

/**
 * The mass of every panel after its cut-outs, of what sticks them, of coats that have a grammage, and of fillings.
 *
 * Areas are exact for straight edges; an arc is the chords that panels have, which leave less than 0.02 mm outside. Foam and glue
 * count over the whole of where two panels overlap: the heaviest that they can be.
 */
export function massOf(assembly: Assembly, materials: Materials): CardMass {
  const pieces = new Map(assembly.card.pieces.map((piece) => [piece.name, piece]));
  const panels = [...assembly.panels.values()];
  const parts = [
    ...panels.flatMap((panel) => panelMass(panel, pieces.get(panel.piece), materials, panels) ?? []),
    ...coatMasses(assembly, materials),
    ...bondMasses(assembly, pieces, materials),
    ...fillingMasses(assembly, materials),
  ];
  const unknown = parts.filter(({ grams }) => grams === undefined).map(({ role }) => role);
  const assumed = new Map(
    parts.flatMap(({ role, material }) => (material.assumed ? [[role, { role, material }] as const] : [])),
  );
  return {
    parts,
    grams: parts.reduce((sum, { grams }) => (grams ? sum.add(grams) : sum), new Fraction(0)),
    unknown: [...new Set(unknown)],
    assumed: [...assumed.values()],
  };
}

function panelMass(
  panel: Panel,
  piece: Piece | undefined,
  materials: Materials,
  panels: readonly Panel[],
): MassPart | undefined {
  const middle = middleOf(panel);
  if (piece === undefined || middle === undefined) return undefined;
  const material = materialOf(piece.stock, materials);
  const high = piece.thick ?? material.height;
  const area = paperArea(panel.outline, panel.holes);
  const grams = material.mass
    ? material.mass.mul(shareOf(panel, area, panels))
    : gramsOf(area, material, high?.mm ?? undefined);
  const z = -(high?.toMm() ?? 0) / 2;
  const { name } = panel;
  return { is: 'panel', name, role: piece.stock, material, grams, panel: name, at: { ...middle, z } };
}

/** A weighed ornament weighs what it weighs, however many panels it is drawn as. */
function shareOf({ piece }: Panel, area: Fraction, panels: readonly Panel[]): Fraction {
  const whole = panels
    .filter((panel) => panel.piece === piece)
    .reduce((sum, panel) => sum.add(paperArea(panel.outline, panel.holes)), new Fraction(0));
  return area.div(whole);
}

function coatMasses(assembly: Assembly, materials: Materials): MassPart[] {
  return [...coatsByPanel(assembly)].flatMap(([name, coats]) => {
    const panel = assembly.panels.get(name);
    const middle = panel && middleOf(panel);
    if (panel === undefined || middle === undefined) return [];
    const area = paperArea(panel.outline, panel.holes);
    return coats.flatMap(({ item }): MassPart[] => {
      const material = Object.hasOwn(materials, item.with) ? materials[item.with] : undefined;
      const grams = material && gramsOf(area, material, undefined);
      if (material === undefined || grams === undefined) return [];
      return [{ is: 'coat', name, role: item.with, material, grams, panel: name, at: { ...middle, z: 0 } }];
    });
  });
}

function middleOf({ outline, holes }: Panel): { x: number; y: number } | undefined {
  const rings = [outline, ...holes].map((ring) => ring.map(({ x, y }) => ({ x: x.valueOf(), y: y.valueOf() })));
  const middle = centroidOf(rings);
  return middle && { x: middle.x, y: middle.y };
}
