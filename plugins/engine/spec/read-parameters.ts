import { type MapNode, type SourceNode, type TextNode, valueAt } from '../diagnostics/index.ts';
import type { Unit } from '../units/index.ts';
import type { Expression } from './expression.ts';
import { readText } from './parse.ts';
import { checkName, mapOr, namedEntries, textOr, wrongShape } from './read-parts.ts';
import { checkKeys, join, type Report, suggest } from './report.ts';
import type { DerivedValue, Parameter } from './types.ts';
import { spaced } from './words.ts';

const TAKES_GROUP = 'a group of names, each with a size: `width: 4 1/4`';
const TAKES_PARAMETER = 'a size as `4 1/4`, or a group with `default`, `count` or `choose`';

/** `parameters`: what a post may change. */
export function readParameters(
  node: SourceNode | undefined,
  path: string,
  units: Unit | undefined,
  report: Report,
): Parameter[] {
  const map = mapOr(node, path, TAKES_GROUP, report);
  if (map === undefined) return [];
  return namedEntries(map, path, report).flatMap(({ key, value }) => {
    const here = join(path, key.text);
    const named = checkName(key, here, 'a name for the parameter', true, report);
    const parameter = readParameter(key, value, here, units, report);
    return named && parameter ? [parameter] : [];
  });
}

/** `values`: sizes made from the parameters, by name. */
export function readValues(
  node: SourceNode | undefined,
  path: string,
  units: Unit | undefined,
  report: Report,
): DerivedValue[] {
  const map = mapOr(node, path, 'a group of names, each with a size: `gate: width/2`', report);
  if (map === undefined) return [];
  return namedEntries(map, path, report).flatMap(({ key, value }) => {
    const here = join(path, key.text);
    const named = checkName(key, here, 'a name for the value', true, report);
    const expression = expressionAt(value, here, units, report);
    return named && expression ? [{ name: key.text, value: expression, place: key.place }] : [];
  });
}

function readParameter(
  key: TextNode,
  node: SourceNode,
  path: string,
  units: Unit | undefined,
  report: Report,
): Parameter | undefined {
  const plain = { name: key.text, label: spaced(key.text), place: key.place, from: undefined, to: undefined };
  const sized = { ...plain, type: 'length', choices: [], fallbackWord: undefined } as const;
  if (node.kind === 'text') {
    const fallback = expressionAt(node, path, units, report);
    return fallback && { ...sized, fallback };
  }
  const map = mapOr(node, path, TAKES_PARAMETER, report);
  if (map === undefined) return undefined;
  if (valueAt(map, 'choose') !== undefined) return readChoice(plain, map, path, units, report);
  const counts = valueAt(map, 'count') !== undefined;
  checkKeys(map, path, { known: [counts ? 'count' : 'default', 'from', 'to', 'label'] }, report);
  const first = counts ? 'count' : 'default';
  const fallback = optional(map, first, path, units, report);
  if (valueAt(map, first) === undefined) {
    report.at(map.place, path, {
      code: 'default-missing',
      wrote: `${key.text} without a default`,
      takes: TAKES_PARAMETER,
      remedy: 'Add `default:` with the size that is taken when a post gives none.',
    });
  }
  const from = optional(map, 'from', path, units, report);
  const to = optional(map, 'to', path, units, report);
  const label = labelOf(map, path, plain.label, report);
  return fallback && { ...sized, type: counts ? 'count' : 'length', fallback, from, to, label };
}

function readChoice(
  plain: Pick<Parameter, 'name' | 'label' | 'place' | 'from' | 'to'>,
  map: MapNode,
  path: string,
  units: Unit | undefined,
  report: Report,
): Parameter | undefined {
  checkKeys(map, path, { known: ['choose', 'default', 'label'] }, report);
  const here = join(path, 'choose');
  const words = mapOr(
    valueAt(map, 'choose'),
    here,
    'a group of words, each with its size: `{ top: 0, foot: height }`',
    report,
  );
  const choices = (words?.entries ?? []).flatMap(({ key, value }) => {
    const expression = expressionAt(value, join(here, key.text), units, report);
    const named = checkName(key, join(here, key.text), 'a word to choose', true, report);
    return expression && named ? [{ word: key.text, value: expression }] : [];
  });
  const known = (words?.entries ?? []).map(({ key }) => key.text);
  const label = labelOf(map, path, plain.label, report);
  const chosen = textOr(valueAt(map, 'default'), join(path, 'default'), 'one of the words', report);
  if (words?.entries.length === 0) report.at(words.place, here, wrongShape(words, 'at least one word with its size'));
  if (valueAt(map, 'default') === undefined) {
    report.at(map.place, path, {
      code: 'default-missing',
      wrote: `${plain.name} without a default`,
      takes: `one of ${known.join(', ')}`,
      remedy: `Add \`default: ${known[0] ?? 'word'}\`, or whichever word is taken when a post gives none.`,
    });
  } else if (chosen && !known.includes(chosen.text.trim())) {
    const takes = `one of ${known.join(', ')}`;
    const remedy = suggest(chosen.text, known, `Write ${takes}.`);
    report.at(chosen.place, join(path, 'default'), { code: 'unknown-word', wrote: chosen.text, takes, remedy });
  }
  if (!chosen || choices.length === 0) return undefined;
  return { ...plain, label, type: 'choice', fallback: undefined, choices, fallbackWord: chosen.text.trim() };
}

function labelOf(map: MapNode, path: string, otherwise: string, report: Report): string {
  return (
    textOr(valueAt(map, 'label'), join(path, 'label'), 'a few words that name the size', report)?.text ?? otherwise
  );
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

export function expressionAt(
  node: SourceNode,
  path: string,
  units: Unit | undefined,
  report: Report,
): Expression | undefined {
  const text = textOr(node, path, 'a size or an expression, as `width/2`', report);
  if (text === undefined) return undefined;
  return readText(text, path, units, report);
}
