/** `npm run dryfit [-- FILE...] [--json] [--out FILE] [--read]`: folds posts and folds before anybody cuts paper. */
import { existsSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join, relative, resolve, sep } from 'node:path';
import { parseArgs, styleText } from 'node:util';
import {
  type DryFitReport,
  exitCodeOf,
  exitCodeOfLesson,
  foldFiles,
  foldLesson,
  type Library,
  readContent,
  readLibrary,
  readSource,
  reportOf,
  type SourceFile,
  sayCounts,
  sayLesson,
  sayReport,
} from '../content/index.ts';
import { formatProblem, nearestName, type Problem } from '../engine/index.ts';
import { PROJECT } from './support/project.ts';

const HELP = `npm run dryfit [-- FILE...] [--json] [--out FILE]

Folds cards in the computer and says what works and what does not, in inches and in millimetres.

  FILE        posts or fold files, wherever they lie; without any, all posts and folds of the blog
  --json      prints the report for other programs
  --out FILE  writes the report into a file; as for other programs when FILE ends in .json or --json is given
  --read      reads the prose of a lesson instead, from the files or as it is pasted (end it with Ctrl-D), and prints a
              recipe for a post, its dry fit, and whatever of the lesson is not in the recipe
  --help      prints this

Ends with 0 when nothing fails, 1 when a finding fails, 2 when a file cannot be read or has an error in it,
or when no recipe can be read in a lesson.
With --json write \`npm run --silent dryfit -- --json\`, since npm prints lines of its own.
`;

const OPTIONS = {
  json: { type: 'boolean' },
  out: { type: 'string' },
  read: { type: 'boolean' },
  help: { type: 'boolean', short: 'h' },
} as const;

interface Wish {
  readonly files: readonly string[];
  readonly json: boolean;
  readonly out: string | undefined;
  readonly read: boolean;
  readonly help: boolean;
}

process.exitCode = run(process.argv.slice(2));

function run(args: readonly string[]): number {
  const wish = readArguments(args);
  if (typeof wish === 'string') {
    process.stderr.write(`${wish}\n`);
    return 2;
  }
  if (wish.help) {
    process.stdout.write(HELP);
    return 0;
  }
  if (wish.read) return readLessons(wish.files);
  const report = fold(wish.files);
  return hand(report, wish) ? exitCodeOf(report) : 2;
}

/** The options, or a sentence about what is wrong with them. */
function readArguments(args: readonly string[]): Wish | string {
  const { tokens } = parseArgs({
    args: [...args],
    options: OPTIONS,
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  for (const token of tokens) {
    if (token.kind !== 'option') continue;
    if (!Object.hasOwn(OPTIONS, token.name)) {
      const near = nearestName(token.name, Object.keys(OPTIONS));
      const remedy = near === undefined ? 'Try `npm run dryfit -- --help`.' : `Did you mean --${near}?`;
      return `There is no option ${token.rawName}. ${remedy}`;
    }
    if (token.name === 'out' && (token.value === undefined || token.value === ''))
      return '--out needs the name of a file after it.';
    if (token.name !== 'out' && token.value !== undefined) return `--${token.name} takes no value.`;
  }
  const { values, positionals } = parseArgs({ args: [...args], options: OPTIONS, allowPositionals: true });
  const { json = false, out, read = false, help = false } = values;
  if (read && (json || out !== undefined)) return '--read prints a recipe to paste; it takes no --json and no --out.';
  return { files: positionals, json, out, read, help };
}

/** Prints the recipe of each lesson. The worst of their answers counts. */
function readLessons(named: readonly string[]): number {
  const { library } = readLibrary(readContent(PROJECT));
  const files = named.length === 0 ? [pasted()] : named.map((name) => findFile(name, library, 'the prose of a lesson'));
  const codes = files.map((file, index) => {
    if (index > 0) process.stdout.write('\n');
    if ('code' in file) {
      process.stdout.write(`${paint(formatProblem(file), 'error')}\n`);
      return 2;
    }
    const lesson = foldLesson(file, library);
    process.stdout.write(sayLesson(lesson, paint));
    return exitCodeOfLesson(lesson);
  });
  return Math.max(...codes);
}

/** What comes in by standard input. */
function pasted(): SourceFile {
  if (process.stdin.isTTY) process.stderr.write('Paste the lesson, then press Enter and Ctrl-D.\n');
  try {
    return { path: 'lesson', text: readFileSync(process.stdin.fd, 'utf8') };
  } catch {
    // Nothing is connected there: nothing has been pasted.
    return { path: 'lesson', text: '' };
  }
}

/** npm goes to the project's folder first; names of files count from where the person stands. */
function standingAt(): string {
  const here = process.cwd();
  const { INIT_CWD } = process.env;
  return here === PROJECT ? (INIT_CWD ?? here) : here;
}

function fold(named: readonly string[]): DryFitReport {
  const content = readContent(PROJECT);
  const read = readLibrary(content);
  if (named.length === 0) {
    const { folded } = foldFiles([...content.posts, ...content.folds], read);
    return reportOf(folded, read.problems);
  }
  const found = named.map((name) => findFile(name, read.library));
  const { folded, problems } = foldFiles(
    found.flatMap((each) => ('text' in each ? [each] : [])),
    read,
  );
  return reportOf(folded, [...problems, ...found.flatMap((each) => ('code' in each ? [each] : []))]);
}

/** The file under a name, or why it cannot be read. */
function findFile(name: string, library: Library | undefined, takes = 'a post or a fold file'): SourceFile | Problem {
  const path = resolve(standingAt(), name);
  const inside = relative(PROJECT, path);
  const shown = inside.startsWith('..') || resolve(PROJECT, inside) !== path ? name : inside.split(sep).join('/');
  const index = join(path, 'index.md');
  try {
    if (statSync(path).isDirectory() && existsSync(index)) return readSource(index, `${shown}/index.md`);
    return readSource(path, shown);
  } catch (error) {
    return unreadable(shown, name, error, library, takes);
  }
}

function unreadable(shown: string, name: string, error: unknown, library: Library | undefined, takes: string): Problem {
  const { code } = error as NodeJS.ErrnoException;
  const files = [...(library?.posts.values() ?? []), ...(library?.folds.values() ?? [])].map(({ file }) => file);
  const id = name.replace(/\.md$/, '').split(/[/\\]/).at(-1) ?? '';
  const named = files.find((file) => file.includes(`/${id}.md`) || file.includes(`/${id}/`));
  const near = named ?? nearestName(shown, files);
  return {
    code: 'file-unreadable',
    severity: 'error',
    place: { file: shown, line: 1, column: 1 },
    path: '',
    wrote: name,
    takes,
    remedy:
      code === 'ENOENT' || code === 'ENOTDIR'
        ? near === undefined
          ? 'There is no such file. Check the path.'
          : `There is no such file. Did you mean ${near}?`
        : code === 'EISDIR'
          ? 'This is a folder. Name the file in it.'
          : `The file cannot be read (${code ?? String(error)}). Check its permissions.`,
  };
}

/** Prints or writes the report. False when it cannot be written. */
function hand(report: DryFitReport, { json, out }: Wish): boolean {
  const machine = `${JSON.stringify(report, null, 2)}\n`;
  if (out === undefined) {
    process.stdout.write(json ? machine : sayReport(report, paint));
    return true;
  }
  const path = resolve(standingAt(), out);
  try {
    writeFileSync(path, json || path.endsWith('.json') ? machine : sayReport(report));
  } catch (error) {
    process.stderr.write(
      `The report cannot be written to ${out} (${(error as NodeJS.ErrnoException).code ?? String(error)}).\n`,
    );
    return false;
  }
  process.stdout.write(`${sayCounts(report)} The report is in ${out}.\n`);
  return true;
}

/** Bold and faint on a terminal; plain when piped or when colour is not wanted. */
function paint(text: string, state: 'pass' | 'question' | 'fail' | 'untested' | 'error'): string {
  if (state === 'untested') return text;
  const style = state === 'pass' ? 'dim' : 'bold';
  return styleText(style, text, { stream: process.stdout });
}
