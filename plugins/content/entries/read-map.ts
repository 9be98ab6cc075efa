import type { z } from 'zod';
import { describeNode, hasErrors, type MapNode, type Problem, type SourceNode } from '../../engine/index.ts';
import { sortedProblems } from '../distinct.ts';
import { shorten } from '../lines.ts';
import { pathOfPlace } from '../paths.ts';
import { checkAgainst } from '../zod-problems.ts';
import type { ReadEntry } from './types.ts';

/** Checks the top of a file against its schema. A tree that is not `name: value` lines is a problem; no tree is none. */
export function readMap<S extends z.ZodType>(
  schema: S,
  tree: SourceNode | undefined,
  file: string,
): { map: MapNode | undefined; value: z.output<S> | undefined; problems: readonly Problem[] } {
  if (tree === undefined) return { map: undefined, value: undefined, problems: [] };
  if (tree.kind !== 'map') {
    const problem: Problem = {
      code: 'not-a-group',
      severity: 'error',
      place: { ...tree.place, file },
      path: '',
      wrote: shorten(describeNode(tree)),
      takes: '`name: value` lines',
      remedy: 'Begin with a name, a colon and a space, such as `name: Kelp stencil`.',
    };
    return { map: undefined, value: undefined, problems: [problem] };
  }
  return { map: tree, ...checkAgainst(schema, tree) };
}

/**
 * The result of reading one file: no entry where there is an error, each problem once in reading order, and problems of the YAML reader
 * with the path that they stand at.
 */
export function finish<T>(
  entry: T | undefined,
  tree: SourceNode | undefined,
  problems: readonly Problem[],
): ReadEntry<T> {
  const told = sortedProblems(problems).map((problem) =>
    problem.path === '' ? { ...problem, path: pathOfPlace(tree, problem.place) } : problem,
  );
  return { entry: hasErrors(told) ? undefined : entry, tree, problems: told };
}
