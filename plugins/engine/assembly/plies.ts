import type Fraction from 'fraction.js';
import { panelName } from '../panels/index.ts';
import type { Band, Crease, Piece } from '../spec/index.ts';
import { foldStrip, type Stuck } from './fold-strip.ts';
import type { Turn } from './spread.ts';
import type { Obstruction } from './types.ts';

/** Panel names from the bottom to the top, seen with the ground panel's face up; or why there is no such order. */
export type PlyOrder = { readonly plies: readonly string[] } | { readonly obstruction: Obstruction };

/**
 * The order of plies of one piece whose creases are shut or flat.
 *
 * Decided in every case this stage can express, for a piece of uncut paper whose creases run from edge to edge, each
 * with one direction along its whole length:
 * - shut creases that run one way make a strip (flat ones only join panels), which `foldStrip` decides completely;
 * - two shut creases that cross never fold: where they meet, creases of one direction outnumber the others by four or
 *   by none, and flat folding needs a difference of two (Maekawa's theorem). In paper that is folded twice the second
 *   crease changes direction at the first, which such a crease cannot.
 */
export function orderOfPlies(piece: Piece, ground: string, turnOf: (crease: Crease) => Turn): PlyOrder {
  const shut = piece.creases.filter((crease) => turnOf(crease) === 'shut');
  const down = shut.find((crease) => crease.runs === 'down');
  const across = shut.find((crease) => crease.runs === 'across');
  if (down && across) {
    return { obstruction: { kind: 'crossing', panel: panelName(piece, 0, 0), crease: across.name, other: down.name } };
  }
  const runs = across ? 'across' : 'down';
  const strip = stripOf(piece, runs, turnOf);
  const lengths = strip.map((segment) => segment.length);
  const folds = shut.map((crease) => crease.fold);
  const folding = foldStrip(lengths, folds);
  if ('stuck' in folding) return { obstruction: obstructionOf(folding.stuck, strip, shut, lengths) };
  const plies = folding.plies.map((ply) => ({ ...ply, panels: strip[ply.panel]?.panels ?? [] }));
  const groundUp = plies.find((ply) => ply.panels.includes(ground))?.faceUp ?? true;
  return { plies: (groundUp ? plies : plies.toReversed()).flatMap((ply) => ply.panels) };
}

/** Bands with nothing but flat creases between them, which lie in one ply. */
interface Segment {
  readonly length: Fraction;
  readonly panels: readonly string[];
}

function stripOf(piece: Piece, runs: Crease['runs'], turnOf: (crease: Crease) => Turn): Segment[] {
  const bands = runs === 'down' ? piece.columns : piece.rows;
  const creases = piece.creases.filter((crease) => crease.runs === runs);
  const segments: { length: Fraction; panels: string[] }[] = [];
  bands.forEach((band, index) => {
    const before = creases[index - 1];
    const current = segments.at(-1);
    const panels = panelsOfBand(piece, runs, index);
    if (current === undefined || before === undefined || turnOf(before) === 'shut') {
      segments.push({ length: lengthOf(band), panels });
    } else {
      current.length = current.length.add(lengthOf(band));
      current.panels.push(...panels);
    }
  });
  return segments;
}

function panelsOfBand(piece: Piece, runs: Crease['runs'], index: number): string[] {
  return runs === 'down'
    ? piece.rows.map((_, row) => panelName(piece, index, row))
    : piece.columns.map((_, column) => panelName(piece, column, index));
}

function lengthOf(band: Band): Fraction {
  return band.size.mm;
}

function obstructionOf(
  stuck: Stuck,
  strip: readonly Segment[],
  shut: readonly Crease[],
  lengths: readonly Fraction[],
): Obstruction {
  const panels = strip[stuck.panel]?.panels ?? [];
  const trimmed = lengths.map((length, i) => (i === stuck.panel ? length.sub(stuck.by) : length));
  const cures =
    trimmed.every((length) => length.gt(0)) &&
    'plies' in
      foldStrip(
        trimmed,
        shut.map((crease) => crease.fold),
      );
  const panel = (stuck.panel === 0 ? panels[0] : panels.at(-1)) ?? '';
  return { kind: 'too-long', panel, crease: shut[stuck.crease]?.name ?? '', by: stuck.by, cures };
}
