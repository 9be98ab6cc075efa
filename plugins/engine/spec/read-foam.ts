import { type SourceNode, valueAt } from '../diagnostics/index.ts';
import type { Unit } from '../units/index.ts';
import type { FoamSpec } from './assembly-specs.ts';
import { readText } from './parse.ts';
import { mapOr, textOr } from './read-parts.ts';
import { checkKeys, join, type Report } from './report.ts';

/** Role of the foam where a join does not name one. */
const USUAL_FOAM = 'foam';

/** Foam of a join: its height, or one layer's height and how many lie on each other. */
export function readFoam(
  node: SourceNode | undefined,
  path: string,
  units: Unit | undefined,
  report: Report,
): FoamSpec | undefined {
  if (node === undefined) return undefined;
  const origin = { place: node.place, path };
  if (node.kind === 'text') {
    const text = textOr(node, path, 'a size, as `1/2`', report);
    const high = text && readText(text, path, units, report);
    return high && { stock: USUAL_FOAM, high, layers: undefined, ...origin };
  }
  const takes = 'a height, or `{ of: foam-tape, high: 1/16, layers: 2 }`';
  const map = mapOr(node, path, takes, report);
  if (map === undefined) return undefined;
  checkKeys(map, path, { known: ['of', 'high', 'layers'] }, report);
  if (valueAt(map, 'high') === undefined) {
    const remedy = 'Add `high:` with the height of one layer, as the packet gives it.';
    report.at(map.place, path, { code: 'key-missing', wrote: 'foam without `high`', takes, remedy });
  }
  const amount = (key: string, what: string) => {
    const text = textOr(valueAt(map, key), join(path, key), what, report);
    return text && readText(text, join(path, key), units, report);
  };
  const stock = textOr(valueAt(map, 'of'), join(path, 'of'), 'the role of the foam', report);
  const high = amount('high', 'a height, as `1/16`');
  const layers = amount('layers', 'a number of layers, as `2`');
  return high && { stock: stock?.text.trim() ?? USUAL_FOAM, high, layers, ...origin };
}
