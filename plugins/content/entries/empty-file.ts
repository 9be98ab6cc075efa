import type { Problem, SourceNode } from '../../engine/index.ts';
import type { SourceFile } from '../source-file.ts';

/** A YAML file in which nothing is written. */
export function emptyFile(
  tree: SourceNode | undefined,
  problems: readonly Problem[],
  file: SourceFile,
): readonly Problem[] {
  if (tree !== undefined || problems.length > 0) return [];
  return [
    {
      code: 'file-empty',
      severity: 'error',
      place: { file: file.path, line: 1, column: 1 },
      path: '',
      wrote: 'nothing',
      takes: '`name: value` lines',
      remedy: 'Write the entry, beginning with its name, or delete the file.',
    },
  ];
}
