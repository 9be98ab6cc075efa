import type { Parameter } from './types.ts';

/** What the size of a parameter, and its limits, must come out as. */
export function wantOf({ type }: Parameter): 'number' | 'angle' | 'length' {
  return type === 'count' ? 'number' : type === 'angle' ? 'angle' : 'length';
}
