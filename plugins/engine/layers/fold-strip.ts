import type { FoldDirection } from '../spec/index.ts';
import { TOUCH_MM } from './touch.ts';

/** The end panel that stops a strip from folding: longer than its neighbour, across `crease`, by `mm`. */
export interface Stuck {
  readonly panel: number;
  readonly crease: number;
  readonly mm: number;
}

/** Panels already folded together, which from now on move as one, and the crease after them. */
interface Bundle {
  readonly length: number;
  /** Along the strip as it was given, with its direction; undefined after the last. */
  readonly crease: { readonly fold: FoldDirection; readonly index: number } | undefined;
}

/**
 * What stops a strip with every crease shut from folding; undefined when it folds.
 *
 * `folds[i]` is the crease between panels i and i + 1; lengths are millimetres. Paper has no thickness, so equal panels pass.
 * A strip folds flat exactly when end folds (an end panel no longer than its neighbour is laid on it) and crimps (two
 * neighbouring creases, one each way, about a panel no longer than either neighbour) reduce it to one panel, in
 * whatever order they are done (strips). So the answer is complete for strips of any number of panels.
 */
export function foldStrip(lengths: readonly number[], folds: readonly FoldDirection[]): Stuck | undefined {
  let bundles: Bundle[] = lengths.map((length, index) => {
    const fold = folds[index];
    return { length, crease: fold && { fold, index } };
  });
  while (bundles.length > 1) {
    const next = endFold(bundles) ?? crimp(bundles);
    if (next === undefined) return stuckAt(bundles);
    bundles = next;
  }
  return undefined;
}

function endFold(bundles: readonly Bundle[]): Bundle[] | undefined {
  const [first, second] = bundles;
  const [last, beforeLast] = [bundles.at(-1), bundles.at(-2)];
  if (first && second && reaches(second, first)) return bundles.slice(1);
  if (last && beforeLast && reaches(beforeLast, last)) {
    return [...bundles.slice(0, -2), { length: beforeLast.length, crease: undefined }];
  }
  return undefined;
}

function crimp(bundles: readonly Bundle[]): Bundle[] | undefined {
  for (let i = 0; i + 2 < bundles.length; i++) {
    const [before, middle, after] = [bundles[i], bundles[i + 1], bundles[i + 2]];
    if (!before || !middle || !after || before.crease?.fold === middle.crease?.fold) continue;
    if (!reaches(before, middle) || !reaches(after, middle)) continue;
    const folded = { length: before.length - middle.length + after.length, crease: after.crease };
    return [...bundles.slice(0, i), folded, ...bundles.slice(i + 3)];
  }
  return undefined;
}

/** Whether paper is at least as long as other paper that has to find room on it. */
function reaches(paper: Bundle, other: Bundle): boolean {
  return other.length <= paper.length + TOUCH_MM;
}

/** Where no step can be made both ends are longer than their neighbours. The one that is nearer to going in is named. */
function stuckAt(bundles: readonly Bundle[]): Stuck {
  const [first, second] = bundles;
  const [last, beforeLast] = [bundles.at(-1), bundles.at(-2)];
  const [left, right] = [first?.crease, beforeLast?.crease];
  if (!first || !second || !last || !beforeLast || !left || !right)
    throw new RangeError('a strip without creases folds');
  const byFirst = first.length - second.length;
  const byLast = last.length - beforeLast.length;
  return byFirst < byLast - TOUCH_MM
    ? { panel: left.index, crease: left.index, mm: byFirst }
    : { panel: right.index + 1, crease: right.index, mm: byLast };
}
