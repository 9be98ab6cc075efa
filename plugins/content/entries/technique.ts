import { readDocument } from '../document.ts';
import { idOfPath } from '../ids.ts';
import { techniqueSchema } from '../schemas/technique.ts';
import type { SourceFile } from '../source-file.ts';
import { finish, readMap } from './read-map.ts';
import type { ReadEntry, Technique } from './types.ts';

export function readTechnique(file: SourceFile): ReadEntry<Technique> {
  const { tree, problems } = readDocument(file);
  const { value, problems: shape } = readMap(techniqueSchema, tree, file.path);
  const entry: Technique | undefined = value && { id: idOfPath(file.path), file: file.path, ...value };
  return finish(entry, tree, [...problems, ...shape]);
}
