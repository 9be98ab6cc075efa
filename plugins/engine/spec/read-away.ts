import { type SourceNode, valueAt } from '../diagnostics/index.ts';
import type { Unit } from '../units/index.ts';
import type { AwaySpec, SpotSpec } from './piece-specs.ts';
import { readPoint } from './point-spec.ts';
import { checkPlaceName, listOr, mapOr, namedEntries, wrongShape } from './read-parts.ts';
import { readShape, readShapes } from './read-shapes.ts';
import { join, type Report } from './report.ts';
import { isMember } from './words.ts';

/** More parts than any piece loses. Keeps every walk over them short. */
const MOST_PARTS = 100;

const TAKES_AWAY = 'a list of cells, as `left.top`, and shapes; or a group of shapes by name';

/** `away`: cells, bands and shapes that are trimmed off. A shape without a name is called `away(1)` and so on. */
export function readAway(
  node: SourceNode | undefined,
  path: string,
  units: Unit | undefined,
  report: Report,
): AwaySpec[] {
  if (node === undefined) return [];
  if (node.kind === 'map') {
    return readShapes(node, path, false, units, report).map((shape) => ({
      ...{ is: 'shape', shape, place: shape.place, path: shape.path },
    }));
  }
  const list = listOr(node, path, TAKES_AWAY, report);
  if (list && list.items.length > MOST_PARTS) report.at(list.place, path, wrongShape(list, `at most ${MOST_PARTS}`));
  return (list?.items ?? []).slice(0, MOST_PARTS).flatMap((item, index): AwaySpec[] => {
    const here = join(path, index);
    const origin = { place: item.place, path: here };
    const parts = item.kind === 'text' ? item.text.trim().split('.') : [];
    if (parts.length > 0 && parts.length < 3 && parts.every(isMember)) return [{ is: 'cell', parts, ...origin }];
    const shape = readShape(`away(${index + 1})`, item, here, false, units, report);
    return shape ? [{ is: 'shape', shape, ...origin }] : [];
  });
}

/** `panels`: names for panels, each by a point that lies in it: `peak: [1, 1]`, or `{ at: [1, 1] }` where it is repeated. */
export function readSpots(
  node: SourceNode | undefined,
  path: string,
  units: Unit | undefined,
  report: Report,
): SpotSpec[] {
  const map = mapOr(node, path, 'a group of names, each with a point of its panel', report);
  if (map === undefined) return [];
  return namedEntries(map, path, report).flatMap(({ key, value }) => {
    const here = join(path, key.text);
    const named = checkPlaceName(key, here, 'a name for the panel', report);
    const at = readPoint(pointIn(value), here, units, report);
    return named && at ? [{ name: key.text, at, place: key.place, path: here }] : [];
  });
}

/** A group that holds nothing but a point: what an `each` leaves behind. */
function pointIn(node: SourceNode): SourceNode {
  return node.kind === 'map' && node.entries.length === 1 ? (valueAt(node, 'at') ?? node) : node;
}
