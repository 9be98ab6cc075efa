import type { MapNode, TextNode } from '../diagnostics/index.ts';
import type { Unit } from '../units/index.ts';
import { type Known, kindsOfNames, NO_PIECES_HERE, namesFor } from './check-kinds.ts';
import { sourcesOf } from './check-names.ts';
import { dependencyOrder } from './dependency-order.ts';
import { type Expression, namesIn } from './expression.ts';
import { checkKind } from './kinds.ts';
import { wantOf } from './parameter-want.ts';
import { readText } from './parse.ts';
import { textOr } from './read-parts.ts';
import { join, Report, suggest } from './report.ts';
import type { CardRequest, Fold, LocalUse, Parameter } from './types.ts';

/** A parameter that a post gives: an expression, or the word of a choice. */
export interface Given {
  readonly expression: Expression | undefined;
  readonly word: string | undefined;
  readonly node: TextNode;
  readonly path: string;
  /** Given for this edition alone, by the post or by the kind. */
  readonly edition?: boolean;
  /** Taken from the table of local sizes: what it is called there, and what the other edition has. */
  readonly local?: LocalUse;
}

/** What the kind gives for this edition, then what the post gives for all editions, and for this one. */
export function readGiven(fold: Fold, request: CardRequest, report: Report): Map<string, Given> {
  const given = new Map<string, Given>();
  const kinds = kindsOfNames(fold, allNames(fold), new Set(), new Report());
  const { system, units } = request;
  for (const [map, path, unit, edition] of [
    [fold.own?.[system], system, fold.units, true],
    [request.parameters, request.parametersPath ?? '', units, false],
    [request.own, request.ownPath ?? system, units, true],
  ] as const) {
    for (const [parameter, value] of readMap(fold, map, path, unit, kinds, report))
      given.set(parameter, { ...value, edition });
  }
  return given;
}

function* readMap(
  fold: Fold,
  map: MapNode | undefined,
  path: string,
  units: Unit | undefined,
  kinds: ReadonlyMap<string, Known>,
  report: Report,
): Generator<[string, Given]> {
  const known = fold.parameters.map(({ name }) => name);
  for (const { key, value } of map?.entries ?? []) {
    const here = join(path, key.text);
    const parameter = fold.parameters.find(({ name }) => name === key.text);
    if (parameter === undefined) {
      const takes =
        known.length === 0 ? `nothing: ${fold.name} has no parameters` : `for ${fold.name}: ${known.join(', ')}`;
      const remedy = suggest(
        key.text,
        known,
        known.length === 0 ? `Take \`${key.text}\` out.` : `Use one of ${known.join(', ')}.`,
      );
      report.at(key.place, here, { code: 'unknown-parameter', wrote: key.text, takes, remedy });
      continue;
    }
    const node = textOr(
      value,
      here,
      parameter.type === 'choice'
        ? wordsOf(parameter)
        : parameter.type === 'angle'
          ? 'one angle, as `50 deg`'
          : 'one size, as `4 1/4`',
      report,
    );
    if (node === undefined) continue;
    if (parameter.type === 'choice') {
      const word = node.text.trim();
      const words = parameter.choices.map((choice) => choice.word);
      if (words.includes(word)) yield [key.text, { word, expression: undefined, node, path: here }];
      else {
        const remedy = suggest(word, words, `Write ${wordsOf(parameter)}.`);
        report.at(node.place, here, { code: 'unknown-word', wrote: word, takes: wordsOf(parameter), remedy });
      }
      continue;
    }
    const expression = readText(node, here, units, report);
    const names = { ...namesFor(fold, [], kinds, new Set()), measure: () => NO_PIECES_HERE };
    if (expression && checkKind(expression, wantOf(parameter), names, report)) {
      yield [key.text, { expression, word: undefined, node, path: here }];
    }
  }
}

function allNames(fold: Fold): string[] {
  const items = [...fold.parameters, ...fold.values];
  return dependencyOrder(new Map(items.map((item) => [item.name, sourcesOf(item).flatMap(namesIn)]))).order;
}

function wordsOf(parameter: Parameter): string {
  return `one of ${parameter.choices.map(({ word }) => word).join(', ')}`;
}
