import type { MapNode, SourceNode, TextNode } from '../diagnostics/index.ts';
import type { Unit } from '../units/index.ts';
import type { PoseSpec, RefSpec, Setting } from './assembly-specs.ts';
import { readText } from './parse.ts';
import { checkName, mapOr, namedEntries, textOr } from './read-parts.ts';
import { readReference, readReferences } from './read-references.ts';
import { join, Report, suggest } from './report.ts';

/** Keys of a pose that are no crease, piece or slider. */
export const POSE_KEYS: readonly string[] = ['ground', 'stands', 'rests', 'aside'];

const WORDS = ['flat', 'shut', 'keep', 'solve', 'start', 'middle', 'end'] as const;
const TAKES_SETTING = '`flat`, `shut`, `solve`, `keep` or degrees; for a slider `start`, `middle`, `end` or a distance';
const TAKES_POSE = 'creases and what they do: `{ spine: shut }`, or `{}` to shut them all';

/** `poses`: what each crease does, and how the card stands. `open` and `closed` are there without being written. */
export function readPoses(
  node: SourceNode | undefined,
  path: string,
  units: Unit | undefined,
  report: Report,
): PoseSpec[] {
  const map = mapOr(node, path, 'a group of poses by name: `closed: {}`', report);
  if (map === undefined) return [];
  return namedEntries(map, path, report).flatMap(({ key, value }) => {
    const here = join(path, key.text);
    const named = checkName(key, here, 'a name for the pose', false, report);
    const settings = mapOr(value, here, TAKES_POSE, report);
    return named && settings ? [readPose(key, settings, here, units, report)] : [];
  });
}

function readPose(key: TextNode, map: MapNode, path: string, units: Unit | undefined, report: Report): PoseSpec {
  const settings: PoseSpec['settings'][number][] = [];
  let pose: Pick<PoseSpec, 'ground' | 'stands' | 'rests' | 'aside'> = {
    ground: undefined,
    stands: [],
    rests: false,
    aside: [],
  };
  for (const { key: target, value } of namedEntries(map, path, report)) {
    const here = join(path, target.text);
    if (target.text === 'ground')
      pose = { ...pose, ground: readReference(value, here, 'a panel, as `base.floor`', report) };
    else if (target.text === 'stands') {
      pose = { ...pose, stands: readReferences(value, here, 'edges, as `base.bottom`', report) };
    } else if (target.text === 'aside')
      pose = { ...pose, aside: readReferences(value, here, 'pieces by name', report) };
    else if (target.text === 'rests') pose = { ...pose, rests: readRests(value, here, report) };
    else {
      const node = textOr(value, here, TAKES_SETTING, report);
      const setting = node && readSetting(target, node, here, units, report);
      if (node && setting) settings.push({ target, setting, node, path: here });
    }
  }
  return { name: key.text, settings, ...pose, place: key.place, path };
}

/** `rests: yes`, `no`, or the pieces that rest. */
function readRests(node: SourceNode, path: string, report: Report): boolean | readonly RefSpec[] {
  if (node.kind === 'text' && node.text.trim() === 'yes') return true;
  if (node.kind === 'text' && node.text.trim() === 'no') return false;
  return readReferences(node, path, '`yes`, or the pieces that rest', report);
}

function readSetting(
  target: TextNode,
  node: TextNode,
  path: string,
  units: Unit | undefined,
  report: Report,
): Setting | undefined {
  const text = node.text.trim();
  const word = WORDS.find((known) => known === text);
  if (word === 'keep' && target.text !== 'others') {
    const remedy = `Leave \`${target.text}\` out: what a pose does not name stays as it was.`;
    report.at(node.place, path, { code: 'keep-one', wrote: text, takes: '`keep` for `others`', remedy });
    return undefined;
  }
  if (word !== undefined) return { is: 'word', word };
  // `-30` is an angle; the signs of typesetting are read as a minus too.
  const silent = new Report();
  const amount = readText(node, path, units, silent);
  const likely = suggest(text, WORDS, '');
  if (likely !== '' && /^[\p{L} ]+$/u.test(text)) {
    report.at(node.place, path, { code: 'unknown-word', wrote: text, takes: TAKES_SETTING, remedy: likely });
    return undefined;
  }
  report.add(silent.problems);
  return amount && { is: 'amount', amount };
}
