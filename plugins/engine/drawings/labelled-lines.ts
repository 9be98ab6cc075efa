import { isNamed, type KeyedLine, lineLabel, memberOf } from '../wording/index.ts';
import type { DrawnLine } from './drawn-piece.ts';
import type { LabelledLine } from './line-labels.ts';
import type { SceneLine } from './scene.ts';

/** A line with its name, to be written once however many stretches it is drawn in. */
export interface NamedLine extends LabelledLine {
  readonly line: KeyedLine;
  /** Where it is one of a family. */
  readonly member: { readonly family: string; readonly number: string } | undefined;
}

/** Lines of one name together, in the order of the first of each. */
export function labelledLines(lines: readonly DrawnLine[]): readonly NamedLine[] {
  const told = lines.filter(({ line }) => !(line.does === 'cut' && ofCell(line.name)));
  const names = [...new Set(told.map(({ line }) => line.name))];
  return names.flatMap((name): NamedLine[] => {
    const [first, ...rest] = lines.filter(({ line }) => line.name === name);
    if (first === undefined) return [];
    // A crease that folds one way here and another there says its name alone.
    const fold = rest.every(({ line }) => line.fold === first.line.fold) ? first.line.fold : undefined;
    const line: KeyedLine = { name, does: first.line.does, fold };
    const stretches: readonly SceneLine[] = [first, ...rest].map(({ drawn }) => drawn);
    // A slit is told by its form: its name helps, and a number for it would not.
    const named = isNamed(line);
    const keyed = named && line.does !== 'cut';
    return [{ line, member: memberOf(name), lines: stretches, texts: [lineLabel(line)], named, keyed }];
  });
}

/** `left.head`: the cut that sets a corner cell loose, which the name of its panel tells. */
function ofCell(name: string): boolean {
  return name.includes('.');
}
