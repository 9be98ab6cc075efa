/** Where something was written: a file and a 1-based line and column, as an editor counts them. */
export interface Place {
  readonly file: string;
  readonly line: number;
  readonly column: number;
}

/** The place as an editor or terminal understands it: `file:line:column`. */
export function formatPlace(place: Place): string {
  return `${place.file}:${place.line}:${place.column}`;
}

/** Reading order: by file name, then line, then column. For sorting. */
export function comparePlaces(a: Place, b: Place): number {
  if (a.file !== b.file) return a.file < b.file ? -1 : 1;
  return a.line - b.line || a.column - b.column;
}
