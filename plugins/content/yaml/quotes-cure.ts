/** The cure that helps most: the whole value in quotes, shown as it would stand. */
export function quotesFor(code: string, line: string, takes: string): { code: string; takes: string; remedy: string } {
  const parts = /^((?:- +)?[^:]+): +(.*)$/.exec(line);
  const name = parts?.[1];
  const value = parts?.[2] ?? line.replace(/^- +/, '');
  const mark = value.includes('"') ? "'" : '"';
  const inner = value.includes('"') && value.includes("'") ? value.replaceAll("'", "''") : value;
  const clean = stripOwnQuotes(inner, mark);
  const shown = name === undefined ? `${mark}${clean}${mark}` : `${name}: ${mark}${clean}${mark}`;
  return { code, takes, remedy: `Put the whole value in quotes: ${shown}` };
}

/** A value that was quoted in part, `'It's night'`, loses its outer quotes before it gets new ones. */
function stripOwnQuotes(value: string, mark: string): string {
  const outer = /^(["'])(.*)\1$/.exec(value);
  return outer?.[1] !== undefined && outer[1] !== mark && outer[2] !== undefined ? outer[2] : value;
}
