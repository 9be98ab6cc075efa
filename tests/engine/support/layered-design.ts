import Fraction from 'fraction.js';
import {
  type Card,
  type FoldedCard,
  foldCard,
  formatProblems,
  Length,
  type Material,
  type Materials,
  makeCard,
  type PaperInUse,
  type System,
} from '../../../plugins/engine/index.ts';
import { foldOf } from './folds.ts';
import { yamlTree } from './yaml-tree.ts';

/*
 * Designs of layers, drawn once in inches and made in eight ways: as they are, turned by a quarter clockwise, mirrored, both, and
 * each in inches and in millimetres. Their thickness, weight and findings are the same every time.
 */

/** In inches, in sixteenths or coarser: left, top, width, height. */
export type Box = readonly [number, number, number, number];

export interface LayeredPiece {
  readonly name: string;
  /** Inches, or bands as `front 4.25` with creases as `valley spine` between them. */
  readonly across: number | readonly string[];
  readonly down: number | readonly string[];
  readonly windows?: Readonly<Record<string, Box>>;
  readonly shapes?: Readonly<Record<string, { readonly box: Box; readonly staysWith: string }>>;
  /** Slits down the piece: across, from, to. */
  readonly slits?: readonly (readonly [number, number, number])[];
  readonly stock?: string;
  readonly thick?: number;
  readonly grain?: 'across' | 'down';
  readonly corners?: 'away';
}

export interface LayeredJoin {
  readonly part: string;
  readonly onto: string;
  /** Where the part comes to lie on the panel that receives it, with its size; centred when left out. */
  readonly at?: Box;
  readonly foam?: number;
  readonly layers?: number;
  readonly is?: 'glue' | 'pin' | 'slide';
}

export interface Design {
  readonly pieces: readonly LayeredPiece[];
  readonly joins?: readonly LayeredJoin[];
  /** Size of each panel that is glued upon with `at`, inches. */
  readonly panels?: Readonly<Record<string, readonly [number, number]>>;
  readonly stack?: readonly string[];
  /** Lines of YAML that are the same however the design is drawn. */
  readonly more?: string;
  readonly layers?: string;
}

export interface Way {
  readonly turned: boolean;
  readonly mirrored: boolean;
  readonly system: System;
}

export const WAYS: readonly Way[] = [false, true].flatMap((turned) =>
  [false, true].flatMap((mirrored) => (['inch', 'metric'] as const).map((system) => ({ turned, mirrored, system }))),
);

export function sayWay({ turned, mirrored, system }: Way): string {
  return [turned ? 'turned' : '', mirrored ? 'mirrored' : '', system].filter((word) => word !== '').join(', ');
}

/** Fine enough that no size of a design is rounded in either system: 1/16 in is 635 of these. */
const MARK = Length.fromMm('1/400');

export function made(design: Design, way: Way): Card {
  const fold = foldOf(textOf(design, way));
  const layers = design.layers === undefined ? undefined : { node: yamlTree(design.layers, 'post.md'), path: 'layers' };
  const { card, problems } = makeCard(fold, {
    system: way.system,
    mark: MARK,
    units: fold.units,
    parameters: undefined,
    own: undefined,
    recipe: [],
    layers,
  });
  if (card === undefined || problems.length > 0) throw new Error(formatProblems(problems));
  return card;
}

export function folded(design: Design, way: Way, materials: Materials, more: Partial<PaperInUse> = {}): FoldedCard {
  const paper = { envelope: undefined, clearance: Length.fromInches('1/8'), sheets: {}, promised: undefined };
  return foldCard(made(design, way), { ...paper, materials, ...more });
}

export function textOf({ pieces, joins = [], panels = {}, stack, more = '' }: Design, way: Way): string {
  const lines = ['name: Layers', `units: ${way.system === 'inch' ? 'in' : 'mm'}`, 'pieces:'];
  for (const piece of pieces) lines.push(`  ${piece.name}: { ${pieceText(piece, way)} }`);
  if (stack) lines.push(`stack: [${stack.join(', ')}]`);
  if (joins.length > 0) lines.push('joins:');
  for (const join of joins) lines.push(`  - { ${joinText(join, panels[join.onto.split(' ').at(-1) ?? ''], way)} }`);
  return `${lines.join('\n')}\n${more}`;
}

function number(inches: number, { system }: Way): string {
  return new Fraction(inches).mul(system === 'inch' ? 1 : new Fraction(127, 5)).toString();
}

/** A box on a drawing of `width` x `height`, as that is drawn. */
function drawn([left, top, width, height]: Box, [wide, high]: readonly [number, number], way: Way): Box {
  const box: Box = way.mirrored ? [wide - left - width, top, width, height] : [left, top, width, height];
  return way.turned ? [high - box[1] - box[3], box[0], box[3], box[2]] : box;
}

function pieceText(piece: LayeredPiece, way: Way): string {
  const own: readonly [number, number] = [sumOf(piece.across), sumOf(piece.down)];
  const mirror = (side: number | readonly string[]): number | readonly string[] =>
    way.mirrored && typeof side !== 'number' ? side.toReversed() : side;
  const flip = (side: number | readonly string[]): number | readonly string[] =>
    typeof side === 'number' ? side : side.toReversed();
  const [across, down] = way.turned ? [flip(piece.down), mirror(piece.across)] : [mirror(piece.across), piece.down];
  const side = (bands: number | readonly string[]): string =>
    typeof bands === 'number' ? number(bands, way) : `[${bands.map((band) => bandText(band, way)).join(', ')}]`;
  const region = (box: Box): string => {
    const [left, top, width, height] = drawn(box, own, way);
    const [x, y] = [number(left + width / 2, way), number(top + height / 2, way)];
    return `size: ${number(width, way)} x ${number(height, way)}, at: [${x}, ${y}]`;
  };
  const windows = Object.entries(piece.windows ?? {}).map(([name, box]) => `${name}: { ${region(box)} }`);
  const shapes = Object.entries(piece.shapes ?? {}).map(
    ([name, { box, staysWith }]) => `${name}: { ${region(box)}, stays-with: ${staysWith} }`,
  );
  const slits = (piece.slits ?? []).map(([x, from, to], i) => {
    const [left, top, , height] = drawn([x, from, 0, to - from], own, way);
    return way.turned
      ? `slit-${i + 1}: { top: ${number(top, way)}, from: ${number(left, way)}, to: ${number(left + to - from, way)} }`
      : `slit-${i + 1}: { left: ${number(left, way)}, from: ${number(top, way)}, to: ${number(top + height, way)} }`;
  });
  const turnedGrain = { across: 'down', down: 'across' } as const;
  const grain = piece.grain && (way.turned ? turnedGrain[piece.grain] : piece.grain);
  return [
    `across: ${side(across)}`,
    `down: ${side(down)}`,
    windows.length > 0 ? `windows: { ${windows.join(', ')} }` : '',
    shapes.length > 0 ? `shapes: { ${shapes.join(', ')} }` : '',
    slits.length > 0 ? `cuts: { ${slits.join(', ')} }` : '',
    piece.stock ? `stock: ${piece.stock}` : '',
    piece.thick ? `thick: ${number(piece.thick, way)}` : '',
    grain ? `grain: ${grain}` : '',
    piece.corners ? `corners: ${piece.corners}` : '',
  ]
    .filter((part) => part !== '')
    .join(', ');
}

function bandText(band: string, way: Way): string {
  const [name = '', size = ''] = band.split(' ');
  return /^[\d.]+$/.test(size) ? `${name} ${number(Number(size), way)}` : band;
}

function sumOf(side: number | readonly string[]): number {
  if (typeof side === 'number') return side;
  return side.reduce((sum, band) => sum + (Number(band.split(' ')[1]) || 0), 0);
}

function joinText(join: LayeredJoin, panel: readonly [number, number] | undefined, way: Way): string {
  const { is = 'glue', part, onto, at, foam, layers } = join;
  if (is === 'pin') return `pin: ${part}, to: ${onto}`;
  if (is === 'slide')
    return `slide: ${part}, in: ${onto}, through: slit-1 slit-2, shows: between, keep: ${number(0.25, way)}`;
  const text = [`glue: ${part}`, `onto: ${onto}`];
  if (at && panel) {
    const [left, top] = drawn(at, panel, way);
    text.push(`match: 'top-left to [${number(left, way)}, ${number(top, way)}]'`);
  }
  if (foam && layers) text.push(`foam: { of: foam, high: ${number(foam, way)}, layers: ${layers} }`);
  else if (foam) text.push(`foam: ${number(foam, way)}`);
  return text.join(', ');
}

/** A paper whose caliper somebody measured. */
export function paper(mm: string, gsm: number, more: Partial<Material> = {}): Material {
  const caliper = { length: Length.fromMm(mm), origin: 'measured', source: 'measured by the maker' } as const;
  return { name: `paper of ${mm} mm`, sort: 'paper', caliper, grammage: new Fraction(gsm), ...more };
}
