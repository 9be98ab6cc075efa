import { type SourceNode, type Unit, valueAt } from '../../engine/index.ts';

/** The unit of bare numbers that a file states; undefined when it states none, or something that is no unit. */
export function unitsOf(map: SourceNode | undefined): Unit | undefined {
  const node = map?.kind === 'map' ? valueAt(map, 'units') : undefined;
  const word = node?.kind === 'text' ? node.text.trim().toLowerCase() : undefined;
  return word === 'in' || word === 'mm' || word === 'cm' ? word : undefined;
}
