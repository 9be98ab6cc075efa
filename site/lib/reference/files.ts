/** The data of the maker's reference by their paths below `site/reference`: `chapters/01-a-file.yaml` to its text. */
export function referenceFiles(): ReadonlyMap<string, string> {
  const found = import.meta.glob<string>('../../reference/**/*.yaml', {
    query: '?raw',
    import: 'default',
    eager: true,
  });
  const named = Object.entries(found).map(([path, text]) => [path.replace(/^.*\/reference\//u, ''), text] as const);
  return new Map(named.sort(([a], [b]) => (a < b ? -1 : 1)));
}
