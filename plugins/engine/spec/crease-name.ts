import type { CreaseSpec, StripSpec } from './types.ts';

/** An unnamed crease is called after the bands that it parts: `front|back`. */
export function creaseName(strip: StripSpec, crease: CreaseSpec, index: number): string {
  return crease.name ?? `${strip.bands[index]?.name ?? ''}|${strip.bands[index + 1]?.name ?? ''}`;
}
