import { type MapNode, type SourceNode, valueAt } from '../diagnostics/index.ts';
import type { Unit } from '../units/index.ts';
import type { FormSpec, PathStep } from './piece-specs.ts';
import { readPoint, TAKES_POINT } from './point-spec.ts';
import { expressionAt } from './read-parameters.ts';
import { listOr, textOr, wrongShape } from './read-parts.ts';
import { readSizeOf, TAKES_SIZE } from './read-size.ts';
import { checkKeys, join, type Report } from './report.ts';

/** More corners than any shape that is cut by hand. Keeps every walk over an outline short. */
const MOST_POINTS = 100;

/** The keys that give a shape, one of which is enough. */
export const FORM_KEYS = ['circle', 'ellipse', 'rounded', 'outline'] as const;

/**
 * The shape that a map gives by one of `keys`. Reports none and several; `size` of a piece is read by the piece.
 */
export function readForm(
  map: MapNode,
  path: string,
  keys: readonly string[],
  takes: string,
  units: Unit | undefined,
  report: Report,
): FormSpec | undefined {
  const [key, second] = keys.filter((candidate) => valueAt(map, candidate) !== undefined);
  if (second !== undefined || key === undefined) {
    const wrote = second === undefined ? 'no shape' : `${key} and ${second}`;
    const remedy = second === undefined ? `Write ${takes}.` : `Keep one of \`${key}\` and \`${second}\`.`;
    report.at(map.place, path, { code: second === undefined ? 'shape-missing' : 'two-shapes', wrote, takes, remedy });
    return undefined;
  }
  const radiusNode = valueAt(map, 'radius');
  const radius = radiusNode && expressionAt(radiusNode, join(path, 'radius'), units, report);
  if (radiusNode && key !== 'rounded') {
    const remedy = 'Take `radius` out, or write `rounded` for `size`.';
    report.at(radiusNode.place, join(path, 'radius'), {
      code: 'radius-of-what',
      wrote: 'radius',
      takes: '`radius` beside `rounded`',
      remedy,
    });
    return undefined;
  }
  const node = valueAt(map, key);
  const here = join(path, key);
  if (node === undefined || (radiusNode && !radius)) return undefined;
  if (key === 'outline') return readPath(node, here, units, report);
  if (key === 'inset') {
    const by = expressionAt(node, here, units, report);
    return by && { is: 'inset', by };
  }
  if (key === 'circle') {
    const across = expressionAt(node, here, units, report);
    return across && { is: 'circle', width: across, height: across, radius: undefined };
  }
  const text = textOr(node, here, TAKES_SIZE, report);
  const size = text && readSizeOf(text, here, units, report);
  return size && { is: key === 'size' ? 'rectangle' : (key as 'ellipse' | 'rounded'), ...size, radius };
}

const TAKES_PATH = 'a list of points in order round the shape: `[[0, 0], [2, 0], { arc: [0, 2], through: [1, 1] }]`';

/** `outline`: points in order, or arcs to a point through another. The last goes on to the first. */
function readPath(node: SourceNode, path: string, units: Unit | undefined, report: Report): FormSpec | undefined {
  const list = listOr(node, path, TAKES_PATH, report);
  if (list === undefined) return undefined;
  if (list.items.length < 2 || list.items.length > MOST_POINTS) {
    const takes = list.items.length < 2 ? TAKES_PATH : `at most ${MOST_POINTS} points`;
    report.at(list.place, path, wrongShape(list, takes));
    return undefined;
  }
  const steps = list.items.flatMap((item, index) => readStep(item, join(path, index), units, report) ?? []);
  return steps.length === list.items.length ? { is: 'outline', path: steps } : undefined;
}

function readStep(node: SourceNode, path: string, units: Unit | undefined, report: Report): PathStep | undefined {
  const origin = { place: node.place, path };
  if (node.kind !== 'map') {
    const to = readPoint(node, path, units, report);
    return to && { to, through: undefined, ...origin };
  }
  checkKeys(node, path, { known: ['arc', 'through'] }, report);
  const missing = ['arc', 'through'].find((key) => valueAt(node, key) === undefined);
  if (missing !== undefined) {
    const takes = '`{ arc: POINT, through: POINT }`: where the arc ends, and a point that it passes';
    report.at(node.place, path, {
      code: 'key-missing',
      wrote: `no \`${missing}\``,
      takes,
      remedy: `Add \`${missing}:\` with ${TAKES_POINT}.`,
    });
    return undefined;
  }
  const to = readPoint(valueAt(node, 'arc'), join(path, 'arc'), units, report);
  const through = readPoint(valueAt(node, 'through'), join(path, 'through'), units, report);
  return to && through && { to, through, ...origin };
}
