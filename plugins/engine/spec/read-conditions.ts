import { type SourceNode, valueAt } from '../diagnostics/index.ts';
import type { Unit } from '../units/index.ts';
import { readCondition } from './parse.ts';
import { expressionAt } from './read-parameters.ts';
import { listOr, mapOr, textOr } from './read-parts.ts';
import { checkKeys, join, type Report } from './report.ts';
import type { EqualitySpec, Requirement } from './types.ts';

/** `require`: what must hold between sizes, and what to tell the maker when it does not. */
export function readRequirements(
  node: SourceNode | undefined,
  path: string,
  units: Unit | undefined,
  report: Report,
): Requirement[] {
  const list = listOr(node, path, 'a list of `{ that: CONDITION, else: ADVICE }`', report);
  return (list?.items ?? []).flatMap((item, index) => {
    const here = join(path, index);
    const map = mapOr(item, here, '`{ that: CONDITION, else: ADVICE }`', report);
    if (map === undefined) return [];
    checkKeys(map, here, { known: ['that', 'else'] }, report);
    for (const key of ['that', 'else']) {
      if (valueAt(map, key) !== undefined) continue;
      const remedy =
        key === 'that' ? 'Add `that:` with what must hold.' : 'Add `else:` with what the maker should do then.';
      report.at(map.place, here, { code: 'key-missing', wrote: `no \`${key}\``, takes: '`that` and `else`', remedy });
    }
    const that = textOr(valueAt(map, 'that'), join(here, 'that'), 'a condition, as `width >= 2*depth`', report);
    const otherwise = textOr(valueAt(map, 'else'), join(here, 'else'), 'a sentence for the maker', report);
    const written = that && { node: that, offset: 0, path: join(here, 'that') };
    const condition = written && readCondition(written, that.text, units, report);
    if (!condition || !otherwise) return [];
    return [{ ...condition, that: that.text, otherwise: otherwise.text, place: that.place }];
  });
}

/** `same`: lists of measures that must stay equal, exactly and in print. */
export function readEqualities(
  node: SourceNode | undefined,
  path: string,
  units: Unit | undefined,
  report: Report,
): EqualitySpec[] {
  const takes = 'lists of measures that stay equal: `[[base.front.width, base.back.width]]`';
  const list = listOr(node, path, takes, report);
  return (list?.items ?? []).flatMap((item, index) => {
    const here = join(path, index);
    const measures = listOr(item, here, 'a list of two or more measures', report);
    if (measures === undefined) return [];
    if (measures.items.length < 2) {
      const remedy = 'Name at least two measures.';
      report.at(measures.place, here, { code: 'too-few', wrote: `${measures.items.length} measure`, takes, remedy });
    }
    const read = measures.items.flatMap((measure, position) => {
      const expression = expressionAt(measure, join(here, position), units, report);
      return expression ? [{ expression, text: expression.text, place: measure.place }] : [];
    });
    return read.length < 2 ? [] : [{ measures: read, place: measures.place }];
  });
}
