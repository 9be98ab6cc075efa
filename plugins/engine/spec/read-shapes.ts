import { type MapNode, type SourceNode, valueAt } from '../diagnostics/index.ts';
import type { Unit } from '../units/index.ts';
import type { FormSpec, ShapeSpec } from './piece-specs.ts';
import { readPoint } from './point-spec.ts';
import { FORM_KEYS, readForm } from './read-forms.ts';
import { checkPlaceName, mapOr, namedEntries } from './read-parts.ts';
import { readSizeOf } from './read-size.ts';
import { readLineName } from './read-words.ts';
import { checkKeys, join, type Report } from './report.ts';

const TAKES_SHAPE =
  'a size as `2 x 3`, or a group with `circle`, `ellipse`, `rounded`, `size`, `outline` or `inset`, and `at`';

/** `windows` or `shapes` of a piece, by name; shapes name the band that they stay with. */
export function readShapes(
  node: SourceNode | undefined,
  path: string,
  swings: boolean,
  units: Unit | undefined,
  report: Report,
): ShapeSpec[] {
  const map = mapOr(node, path, 'a group of shapes by name: `{ view: { circle: 2 } }`', report);
  if (map === undefined) return [];
  return namedEntries(map, path, report).flatMap(({ key, value }) => {
    const here = join(path, key.text);
    const named = checkPlaceName(key, here, 'a name for the shape', report);
    const shape = readShape(key.text, value, here, swings, units, report);
    return named && shape ? [{ ...shape, place: key.place }] : [];
  });
}

/** One shape, as a size or as a map. */
export function readShape(
  name: string,
  node: SourceNode,
  path: string,
  swings: boolean,
  units: Unit | undefined,
  report: Report,
): ShapeSpec | undefined {
  const plain = { name, at: undefined, within: undefined, staysWith: undefined, place: node.place, path };
  if (node.kind === 'text' && node.text.trim() !== '' && !swings) {
    const size = readSizeOf(node, path, units, report);
    return size && { ...plain, form: { is: 'rectangle', ...size, radius: undefined } };
  }
  const map = mapOr(node, path, TAKES_SHAPE, report);
  if (map === undefined) return undefined;
  const more = swings ? ['stays-with'] : [];
  checkKeys(map, path, { known: [...FORM_KEYS, 'radius', 'size', 'inset', 'at', 'in', ...more] }, report);
  const form = readForm(map, path, ['size', 'inset', ...FORM_KEYS], TAKES_SHAPE, units, report);
  const at = readPlaceOf(map, path, form, units, report);
  const within = valueAt(map, 'in') && readLineName(valueAt(map, 'in'), join(path, 'in'), report);
  const staysWith = swings ? readStaysWith(map, path, report) : undefined;
  const failed = (valueAt(map, 'in') && !within) || (valueAt(map, 'at') && !at) || (swings && !staysWith);
  return form && !failed ? { ...plain, form, at, within, staysWith } : undefined;
}

/** Where a shape's centre lies; outlines and insets lie where they are. */
function readPlaceOf(
  map: MapNode,
  path: string,
  form: FormSpec | undefined,
  units: Unit | undefined,
  report: Report,
): ShapeSpec['at'] {
  const node = valueAt(map, 'at');
  if (node && (form?.is === 'outline' || form?.is === 'inset')) {
    const remedy = `Take \`at\` out: an ${form.is} says itself where it lies.`;
    report.at(node.place, join(path, 'at'), {
      code: 'two-places',
      wrote: `${form.is} and at`,
      takes: 'one of the two',
      remedy,
    });
    return undefined;
  }
  return node && readPoint(node, join(path, 'at'), units, report);
}

function readStaysWith(map: MapNode, path: string, report: Report): ShapeSpec['staysWith'] {
  const node = valueAt(map, 'stays-with');
  if (node) return readLineName(node, join(path, 'stays-with'), report);
  const takes = '`stays-with` and the name of a band';
  const remedy = 'Add `stays-with:` with the band that the shape swings with.';
  report.at(map.place, path, { code: 'key-missing', wrote: 'a shape without `stays-with`', takes, remedy });
  return undefined;
}
