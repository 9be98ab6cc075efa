import { type MapNode, type SourceNode, valueAt } from '../diagnostics/index.ts';
import type { Unit } from '../units/index.ts';
import type { LineWork } from './card-types.ts';
import type { Expression } from './expression.ts';
import { readText } from './parse.ts';
import type { Course } from './piece-specs.ts';
import { readPoint, readPointText } from './point-spec.ts';
import { expressionAt } from './read-parameters.ts';
import { textOr, wrongShape } from './read-parts.ts';
import { oneOf, readLineName } from './read-words.ts';
import { checkKeys, join, type Report } from './report.ts';
import { CORNERS, EDGES } from './words.ts';

/** More than any piece has in one list. Keeps every walk over lines short. */
export const MOST_MEMBERS = 200;

const TAKES_LINE =
  'a measure from the left, `middle down`, `top-left to bottom-right`, `{ left: 2 }`, or `{ start: POINT, off: LINE, by: 45 deg, towards: top-left }`';

/** Where a line runs, as a text or as a map; what is done along it decides whether it may have a `fold`. */
export function readCourse(
  node: SourceNode,
  path: string,
  does: LineWork,
  units: Unit | undefined,
  report: Report,
): Course | undefined {
  if (node.kind === 'map') return readCourseMap(node, path, does, units, report);
  const text = textOr(node, path, TAKES_LINE, report);
  if (text === undefined) return undefined;
  const runs = /^\s*middle\s+(down|across)\s*$/u.exec(text.text)?.[1];
  if (runs === 'down' || runs === 'across') return { is: 'middle', runs, start: undefined, end: undefined };
  const two = /^(.*\S)(\s+to\s+)(\S.*)$/u.exec(text.text);
  if (two) {
    const [first, word, second] = [two[1] ?? '', two[2] ?? '', two[3] ?? ''];
    const from = readPointText({ node: text, offset: 0, path }, first, units, report);
    const to = readPointText({ node: text, offset: first.length + word.length, path }, second, units, report);
    return from && to && { is: 'points', from, to };
  }
  const at = readText(text, path, units, report);
  return at && { is: 'square', edge: 'left', at: [at], listed: false, start: undefined, end: undefined };
}

function readCourseMap(
  map: MapNode,
  path: string,
  does: LineWork,
  units: Unit | undefined,
  report: Report,
): Course | undefined {
  const has = (key: string): boolean => valueAt(map, key) !== undefined;
  const edges = EDGES.filter(has);
  const ways = [...edges, ...['middle', 'start'].filter(has)];
  if (ways.length > 1) {
    const remedy = `Keep one of ${ways.map((way) => `\`${way}\``).join(' and ')}, and make another line of the other.`;
    report.at(map.place, path, {
      code: 'two-lines',
      wrote: ways.join(' and '),
      takes: 'one line under one name',
      remedy,
    });
    return undefined;
  }
  const more = does === 'crease' ? ['fold'] : [];
  const known = ways[0] === 'start' ? ['start', 'off', 'by', 'towards', 'long'] : ['from', 'to'];
  const all = ways.length === 0 ? [...EDGES, 'middle', 'start', ...known] : [...ways, ...known];
  checkKeys(map, path, { known: [...all, ...more] }, report);
  if (ways[0] === 'start') return readAngled(map, path, units, report);
  if (ways.length === 0) return readBetween(map, path, units, report);
  const [start, end] = ['from', 'to'].map((key) => optional(map, key, path, units, report));
  const incomplete = (has('from') && !start) || (has('to') && !end);
  const [edge] = edges;
  if (edge === undefined) {
    const word = textOr(valueAt(map, 'middle'), join(path, 'middle'), '`down` or `across`', report);
    const runs = word && oneOf(word, ['down', 'across'] as const, join(path, 'middle'), report);
    return runs && !incomplete ? { is: 'middle', runs, start, end } : undefined;
  }
  const at = readPositions(valueAt(map, edge), join(path, edge), units, report);
  const listed = valueAt(map, edge)?.kind === 'list';
  return at && !incomplete ? { is: 'square', edge, at, listed, start, end } : undefined;
}

/** One measure from an edge, or a list of them. */
function readPositions(
  node: SourceNode | undefined,
  path: string,
  units: Unit | undefined,
  report: Report,
): Expression[] | undefined {
  if (node?.kind !== 'list') {
    const one = node && expressionAt(node, path, units, report);
    return one && [one];
  }
  if (node.items.length === 0 || node.items.length > MOST_MEMBERS) {
    const takes = node.items.length === 0 ? 'at least one measure' : `at most ${MOST_MEMBERS} measures`;
    report.at(node.place, path, wrongShape(node, takes));
    return undefined;
  }
  const all = node.items.flatMap((item, index) => expressionAt(item, join(path, index), units, report) ?? []);
  return all.length === node.items.length ? all : undefined;
}

function readBetween(map: MapNode, path: string, units: Unit | undefined, report: Report): Course | undefined {
  if (!need(map, ['from', 'to'], path, TAKES_LINE, report)) return undefined;
  const from = readPoint(valueAt(map, 'from'), join(path, 'from'), units, report);
  const to = readPoint(valueAt(map, 'to'), join(path, 'to'), units, report);
  return from && to && { is: 'points', from, to };
}

function readAngled(map: MapNode, path: string, units: Unit | undefined, report: Report): Course | undefined {
  const takes = '`start`, `off`, `by` and `towards`: from a point, at an angle to a line, towards a corner';
  if (!need(map, ['start', 'off', 'by', 'towards'], path, takes, report)) return undefined;
  const start = readPoint(valueAt(map, 'start'), join(path, 'start'), units, report);
  const off = readLineName(valueAt(map, 'off'), join(path, 'off'), report);
  const by = optional(map, 'by', path, units, report);
  const word = textOr(valueAt(map, 'towards'), join(path, 'towards'), 'a corner', report);
  const towards = word && oneOf(word, CORNERS, join(path, 'towards'), report);
  const long = optional(map, 'long', path, units, report);
  if (!start || !off || !by || !towards || (valueAt(map, 'long') && !long)) return undefined;
  return { is: 'angle', start, off, by, towards, long };
}

function need(map: MapNode, keys: readonly string[], path: string, takes: string, report: Report): boolean {
  const missing = keys.find((key) => valueAt(map, key) === undefined);
  if (missing === undefined) return true;
  const wrote = `a line without \`${missing}\``;
  report.at(map.place, path, { code: 'line-unfinished', wrote, takes, remedy: `Add \`${missing}:\`.` });
  return false;
}

function optional(
  map: MapNode,
  key: string,
  path: string,
  units: Unit | undefined,
  report: Report,
): Expression | undefined {
  const node = valueAt(map, key);
  return node && expressionAt(node, join(path, key), units, report);
}
