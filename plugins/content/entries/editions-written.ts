import type { PerEdition } from './types.ts';

/** The editions that something is written for, without keys that hold nothing. */
export function editionsWritten(
  value: { readonly inch?: string | undefined; readonly metric?: string | undefined } | undefined,
): PerEdition<string> {
  return {
    ...(value?.inch === undefined ? {} : { inch: value.inch }),
    ...(value?.metric === undefined ? {} : { metric: value.metric }),
  };
}
