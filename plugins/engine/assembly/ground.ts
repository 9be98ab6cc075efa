import type { Point } from '../geometry/index.ts';
import type { Panel } from '../panels/index.ts';

/** Areas that differ by less than this share are alike: coordinates that an arc or an angle decided are rounded. */
const ALIKE = 1e-9;

/**
 * The panel that usually stays put: the largest; of several alike the last, so that in a half fold the back lies on the
 * table and the front closes over it. Throws RangeError for no panels.
 */
export function groundOf(panels: readonly Panel[]): Panel {
  const [first, ...others] = panels;
  if (first === undefined) throw new RangeError('there is no panel to stay put');
  let [best, largest] = [first, paperOf(first)];
  for (const panel of others) {
    const area = paperOf(panel);
    if (area < largest * (1 - ALIKE)) continue;
    best = panel;
    largest = Math.max(area, largest);
  }
  return best;
}

/** Square millimetres of paper. */
function paperOf({ outline, holes }: Panel): number {
  return holes.reduce((area, hole) => area - areaOf(hole), areaOf(outline));
}

/** Never negative; by the trapezoid formula. */
function areaOf(outline: readonly Point[]): number {
  const twice = outline.reduce((sum, { x, y }, i) => {
    const next = outline[(i + 1) % outline.length];
    if (next === undefined) return sum;
    return sum + x.valueOf() * next.y.valueOf() - next.x.valueOf() * y.valueOf();
  }, 0);
  return Math.abs(twice) / 2;
}
