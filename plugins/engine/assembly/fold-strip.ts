import type Fraction from 'fraction.js';
import type { FoldDirection } from '../spec/index.ts';

/** A panel of a strip as it lies in the pile: its index along the strip, and whether its face looks up. */
export interface Ply {
  readonly panel: number;
  readonly faceUp: boolean;
}

/** The end panel that stops the strip from folding: longer than its neighbour, across `crease`, by `by`. */
export interface Stuck {
  readonly panel: number;
  readonly crease: number;
  readonly by: Fraction;
}

export type StripFolding = { readonly plies: readonly Ply[] } | { readonly stuck: Stuck };

/** Panels already folded together, which from now on move as one panel. */
interface Bundle {
  readonly length: Fraction;
  /** Bottom to top, while the first panel that it was made from looks as drawn. */
  readonly plies: readonly Ply[];
}

/**
 * An order of plies for a strip with every crease shut, or what stops it.
 *
 * `folds[i]` is the crease between panels i and i + 1. Paper is taken to have no thickness, so equal panels pass.
 * A strip folds flat exactly when end folds (an end panel no longer than its neighbour is laid on it) and crimps (two
 * neighbouring creases, one each way, about a panel no longer than either neighbour) reduce it to one panel, in
 * whatever order they are done: Arkin, Bender, Demaine et al., "When can you fold a map?", Computational Geometry 29,
 * 2004. So the answer is complete for strips of any number of panels. The order of plies is one of possibly several.
 */
export function foldStrip(lengths: readonly Fraction[], folds: readonly FoldDirection[]): StripFolding {
  let bundles: Bundle[] = lengths.map((length, panel) => ({ length, plies: [{ panel, faceUp: true }] }));
  let creases = folds.map((fold, index) => ({ fold, index }));
  while (creases.length > 0) {
    const step = endFold(bundles, creases) ?? crimp(bundles, creases);
    if (step === undefined) return { stuck: stuckAt(bundles, creases) };
    bundles = step.bundles;
    creases = step.creases;
  }
  return { plies: bundles[0]?.plies ?? [] };
}

interface Creased {
  readonly fold: FoldDirection;
  /** Of the crease, along the strip as it was given. */
  readonly index: number;
}

interface Step {
  readonly bundles: Bundle[];
  readonly creases: Creased[];
}

function endFold(bundles: readonly Bundle[], creases: readonly Creased[]): Step | undefined {
  const [first, second] = bundles;
  const [left, right] = [creases[0], creases.at(-1)];
  const [last, beforeLast] = [bundles.at(-1), bundles.at(-2)];
  if (first && second && left && first.length.lte(second.length)) {
    return { bundles: [laidOn(first, second, left.fold), ...bundles.slice(2)], creases: creases.slice(1) };
  }
  if (last && beforeLast && right && last.length.lte(beforeLast.length)) {
    return { bundles: [...bundles.slice(0, -2), laidOn(last, beforeLast, right.fold)], creases: creases.slice(0, -1) };
  }
  return undefined;
}

/** A valley lays the end on the face, a mountain against the back. */
function laidOn(end: Bundle, onto: Bundle, fold: FoldDirection): Bundle {
  const turned = turnedOver(end.plies);
  return { length: onto.length, plies: fold === 'valley' ? [...onto.plies, ...turned] : [...turned, ...onto.plies] };
}

function crimp(bundles: readonly Bundle[], creases: readonly Creased[]): Step | undefined {
  for (let i = 0; i + 1 < creases.length; i++) {
    const [left, right] = [creases[i], creases[i + 1]];
    const [before, middle, after] = [bundles[i], bundles[i + 1], bundles[i + 2]];
    if (!left || !right || !before || !middle || !after || left.fold === right.fold) continue;
    if (middle.length.gt(before.length) || middle.length.gt(after.length)) continue;
    const turned = turnedOver(middle.plies);
    const folded: Bundle = {
      length: before.length.sub(middle.length).add(after.length),
      plies:
        left.fold === 'valley'
          ? [...before.plies, ...turned, ...after.plies]
          : [...after.plies, ...turned, ...before.plies],
    };
    return {
      bundles: [...bundles.slice(0, i), folded, ...bundles.slice(i + 3)],
      creases: [...creases.slice(0, i), ...creases.slice(i + 2)],
    };
  }
  return undefined;
}

/**
 * Where no step can be made both ends are longer than their neighbours, or an end fold could be. The end that is
 * nearer to going in is named; of two alike, the last.
 */
function stuckAt(bundles: readonly Bundle[], creases: readonly Creased[]): Stuck {
  const excess = (end: Bundle | undefined, next: Bundle | undefined): Fraction | undefined =>
    end && next && end.length.sub(next.length);
  const [left, right] = [creases[0], creases.at(-1)];
  const [byFirst, byLast] = [excess(bundles[0], bundles[1]), excess(bundles.at(-1), bundles.at(-2))];
  if (!left || !right || !byFirst || !byLast) throw new RangeError('a strip without creases is never stuck');
  return byFirst.lt(byLast)
    ? { panel: left.index, crease: left.index, by: byFirst }
    : { panel: right.index + 1, crease: right.index, by: byLast };
}

function turnedOver(plies: readonly Ply[]): Ply[] {
  return plies.toReversed().map(({ panel, faceUp }) => ({ panel, faceUp: !faceUp }));
}
