import { SYSTEMS, type System } from '../../plugins/engine/index.ts';

/** Both systems, the one the maker works in first. */
export function homeFirst(home: System): readonly System[] {
  return [...SYSTEMS].sort((a, b) => Number(b === home) - Number(a === home));
}

export const EDITION_NAMES: Readonly<Record<System, string>> = { inch: 'Inch edition', metric: 'Metric edition' };

export const UNIT_NAMES: Readonly<Record<System, string>> = { inch: 'inches', metric: 'millimetres' };
