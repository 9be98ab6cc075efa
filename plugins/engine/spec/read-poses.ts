import type { MapNode, SourceNode, TextNode } from '../diagnostics/index.ts';
import { checkName, mapOr, namedEntries, textOr } from './read-parts.ts';
import { join, notYet, type Report, suggest } from './report.ts';
import type { PoseSpec } from './types.ts';

const LATER = ['ground', 'stands', 'rests', 'aside'];
const TAKES_TURN = '`flat`, `shut`, 0 or 180';

/** `poses`: what each crease does. `{}` shuts them all; `open` and `closed` are there without being written. */
export function readPoses(node: SourceNode | undefined, path: string, report: Report): PoseSpec[] {
  const map = mapOr(node, path, 'a group of poses by name: `closed: {}`', report);
  if (map === undefined) return [];
  return namedEntries(map, path, report).flatMap(({ key, value }) => {
    const here = join(path, key.text);
    const named = checkName(key, here, 'a name for the pose', false, report);
    const settings = mapOr(
      value,
      here,
      'creases and what they do: `{ spine: shut }`, or `{}` to shut them all',
      report,
    );
    return named && settings
      ? [{ name: key.text, settings: readSettings(settings, here, report), place: key.place }]
      : [];
  });
}

function readSettings(map: MapNode, path: string, report: Report): PoseSpec['settings'] {
  return namedEntries(map, path, report).flatMap(({ key, value }) => {
    const here = join(path, key.text);
    if (LATER.includes(key.text)) {
      report.at(key.place, here, notYet(key.text, 'creases by name, `all` or `others`'));
      return [];
    }
    const node = textOr(value, here, TAKES_TURN, report);
    const turn = node && readTurn(key, node, here, report);
    return turn === undefined ? [] : [{ target: key, turn, path: here }];
  });
}

function readTurn(key: TextNode, node: TextNode, path: string, report: Report): 'flat' | 'shut' | 'keep' | undefined {
  const word = node.text.trim();
  if (word === 'flat' || /^0(?:\s*deg)?$/u.test(word)) return 'flat';
  if (word === 'shut' || /^180(?:\s*deg)?$/u.test(word)) return 'shut';
  if (word === 'keep' && key.text === 'others') return 'keep';
  if (word === 'solve' || /^-?\d+(?:\.\d+)?(?:\s*deg)?$/u.test(word))
    report.at(node.place, path, notYet(word, TAKES_TURN));
  else {
    const remedy = suggest(word, ['flat', 'shut'], 'Write `flat` for unfolded or `shut` for folded over.');
    report.at(node.place, path, { code: 'unknown-word', wrote: word, takes: TAKES_TURN, remedy });
  }
  return undefined;
}
