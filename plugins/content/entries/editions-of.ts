import { type SourceNode, type System, valueAt } from '../../engine/index.ts';
import { written } from '../measures.ts';
import { joinPath } from '../paths.ts';
import type { PerEdition, WrittenText } from './types.ts';

/** One text for both editions, or one for each: `US A7`, or `{ inch: US A7, metric: ISO C6 }`. */
export function editionsOf(node: SourceNode | undefined, path: string): PerEdition<WrittenText> {
  if (node === undefined || node.kind === 'list' || !isWritten(node)) return {};
  if (node.kind === 'text') return { inch: written(node, path), metric: written(node, path) };
  const of = (system: System): PerEdition<WrittenText> => {
    const value = valueAt(node, system);
    return value?.kind === 'text' && isWritten(value) ? { [system]: written(value, joinPath(path, system)) } : {};
  };
  return { ...of('inch'), ...of('metric') };
}

export function isWritten(node: SourceNode): boolean {
  return node.kind !== 'text' || node.text.trim() !== '';
}
