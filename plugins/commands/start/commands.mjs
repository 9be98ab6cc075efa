// @ts-check

/** What `npm run` offers: each is the file of its name beside run.mjs. */
export const COMMANDS = {
  build: 'writes the site to dist',
  dev: 'shows the site while you write, at http://localhost:4321',
  preview: 'shows the built site',
  test: 'builds the site and runs all checks and tests',
  check: 'looks at format, lint, types and layers',
  format: 'puts the files into the agreed format',
  dryfit: 'folds the cards of posts or fold files and says what does not fit',
  gallery: 'draws every drawing on one page',
  bench: 'measures the build',
};

/** All commands in words, with the one that was likely meant first. @param {string | undefined} asked */
export function explainCommands(asked) {
  const names = Object.keys(COMMANDS);
  const near = asked && names.map((name) => ({ name, far: distance(asked, name) })).sort((a, b) => a.far - b.far)[0];
  return [
    asked ? `There is no command \`${asked}\`.` : 'Which command?',
    ...(near && near.far <= 2 ? [`Did you mean \`npm run ${near.name}\`?`] : []),
    '',
    ...Object.entries(COMMANDS).map(([name, does]) => `  npm run ${name.padEnd(8)} ${does}`),
  ].join('\n');
}

/** Letters to insert, delete or replace (Levenshtein). @param {string} a @param {string} b */
function distance(a, b) {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (const [i, letter] of [...a].entries()) {
    const next = [i + 1];
    for (let j = 0; j < b.length; j++) {
      next.push(Math.min((row[j + 1] ?? 0) + 1, (next[j] ?? 0) + 1, (row[j] ?? 0) + (letter === b[j] ? 0 : 1)));
    }
    row = next;
  }
  return row[b.length] ?? 0;
}
