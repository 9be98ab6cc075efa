import { type SourceNode, valueAt } from '../diagnostics/index.ts';
import type { Unit } from '../units/index.ts';
import type { CreaseFold, LineWork } from './card-types.ts';
import type { LineSpec } from './piece-specs.ts';
import { MOST_MEMBERS, readCourse } from './read-courses.ts';
import { checkPlaceName, mapOr, namedEntries, textOr, wrongShape } from './read-parts.ts';
import { oneOf } from './read-words.ts';
import { join, type Report } from './report.ts';

/** The maps of a piece that hold lines, and what is done along them. */
export const LINE_KEYS: Readonly<Record<string, LineWork>> = {
  creases: 'crease',
  cuts: 'cut',
  perforations: 'perforation',
  marks: 'mark',
};

const TAKES_FOLD = '`valley`, `mountain`, `both`, or a list with one for each stretch';

/** `creases`, `cuts`, `perforations` or `marks` of a piece: lines by name. */
export function readLines(
  node: SourceNode | undefined,
  path: string,
  does: LineWork,
  units: Unit | undefined,
  report: Report,
): LineSpec[] {
  const map = mapOr(node, path, 'a group of lines by name: `{ fold: middle down }`', report);
  if (map === undefined) return [];
  return namedEntries(map, path, report).flatMap(({ key, value }) => {
    const here = join(path, key.text);
    const named = checkPlaceName(key, here, 'a name for the line', report);
    const course = readCourse(value, here, does, units, report);
    const folds = does === 'crease' ? readFolds(value, join(here, 'fold'), report) : [];
    return named && course && folds ? [{ name: key.text, does, course, folds, place: key.place, path: here }] : [];
  });
}

const FOLDS = ['valley', 'mountain', 'both'] as const;

/** `fold` of a crease; a valley when nothing is said. Undefined after reporting a word that is no direction. */
function readFolds(node: SourceNode, path: string, report: Report): CreaseFold[] | undefined {
  const fold = node.kind === 'map' ? valueAt(node, 'fold') : undefined;
  if (fold === undefined) return ['valley'];
  const items = fold.kind === 'list' ? fold.items : [fold];
  if (items.length === 0 || items.length > MOST_MEMBERS) {
    report.at(fold.place, path, wrongShape(fold, TAKES_FOLD));
    return undefined;
  }
  const all = items.flatMap((item, index) => {
    const here = fold.kind === 'list' ? join(path, index) : path;
    const text = textOr(item, here, TAKES_FOLD, report);
    return (text && oneOf(text, FOLDS, here, report)) ?? [];
  });
  return all.length === items.length ? all : undefined;
}
