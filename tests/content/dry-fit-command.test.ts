import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type DryFitReport, dryFitReportSchema } from '../../plugins/content/index.ts';

const PROJECT = fileURLToPath(new URL('../..', import.meta.url));
const COMMAND = join(PROJECT, 'plugins', 'commands', 'dryfit.ts');

const HEAD = '---\ntitle: Out of the house\nsummary: A card.\ndate: 2026-10-03\nunits: in\n';
// Seen printed: an 8 1/2 in sheet "scored at 4 1/2" for a half fold (common practice says 4 1/4, no source).
const FILES = {
  'Good Card.md': `${HEAD}fold: side-fold\nenvelope: { inch: US A2, metric: ISO C6 }\nmetric: { width: 105 mm, height: 148 mm }\n---\n`,
  'slip.md': `${HEAD}fold: side-fold\nrecipe: [{ cut: 8 1/2 x 5 1/2, score: 4 1/2 }]\nenvelope: { inch: US A2, metric: ISO C6 }\n---\n`,
  'broken.md': `${HEAD}fold: { sidefold: {} }\nenvelope: US A22\ntools: Trimmer\n---\n`,
  'syntax.md': `${HEAD}fold: { side-fold: {}\n---\n`,
  'no-card.md': `${HEAD}---\n`,
  'kind.md':
    '---\nname: Own kind\nunits: in\npieces:\n  base: { across: [front 4, valley, back 4 1/4], down: 5 1/2 }\nrecipe: [{ cut: 8 1/4 x 5 1/2, score: 4 }]\n---\n',
  'bad-kind.md': '---\nname: Own kind\npieces:\n  base: { across: [front 4 in, vally, back 4 in], down: 5 in }\n---\n',
} as const;

let folder = '';

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'dryfit-'));
  for (const [name, text] of Object.entries(FILES)) writeFileSync(join(folder, name), text);
  mkdirSync(join(folder, 'posted'));
  writeFileSync(join(folder, 'posted', 'index.md'), FILES['Good Card.md']);
});
afterAll(() => rmSync(folder, { recursive: true }));

function dryfit(args: readonly string[], cwd = folder): { code: number | null; out: string; err: string } {
  const { INIT_CWD: _, FORCE_COLOR: __, ...env } = process.env;
  const run = spawnSync(process.execPath, [COMMAND, ...args], { cwd, encoding: 'utf8', env });
  return { code: run.status, out: run.stdout, err: run.stderr };
}

function json(args: readonly string[]): { code: number | null; report: DryFitReport } {
  const { code, out } = dryfit([...args, '--json']);
  return { code, report: dryFitReportSchema.parse(JSON.parse(out)) };
}

// Each test starts the command anew, which is slow on a busy machine.
describe('dryfit', { timeout: 180_000 }, () => {
  test('of the whole blog finds nothing that fails', () => {
    const { code, out } = dryfit([]);
    expect(out).toContain('Side fold  (content/folds/side-fold.md)');
    expect(out).toMatch(/\n\d+ files folded: .*\d+ work\.\n$/);
    expect(code).toBe(0);
  });

  test('takes a file wherever it lies and whatever it is called, and a folder with an index.md', () => {
    const { code, report } = json(['Good Card.md', join(folder, 'posted'), 'kind.md']);
    expect(report.problems).toEqual([]);
    expect(report.files.map(({ file, type, title }) => [file, type, title])).toEqual([
      ['Good Card.md', 'post', 'Out of the house'],
      [join(folder, 'posted', 'index.md'), 'post', 'Out of the house'],
      ['kind.md', 'fold', 'Own kind'],
    ]);
    expect(code).toBe(0);
  });

  test('of a card that fails ends with 1, and says what, where and what to do, before what works', () => {
    const { code, out, err } = dryfit(['slip.md']);
    expect(code).toBe(1);
    expect(err).toBe('');
    const lines = out.split('\n').map((line) => line.trim());
    const fails = lines.findIndex((line) => line.startsWith('FAILS'));
    expect(fails).toBeGreaterThan(0);
    expect(lines[fails]).toContain('4 1/2');
    expect(lines[fails + 1]).toMatch(/^Do this: .*4 1\/4/);
    expect(lines[fails + 2]).toMatch(/^slip\.md:7:\d+ {2}recipe/);
    expect(lines.findIndex((line) => line.startsWith('works'))).toBeGreaterThan(fails);
    expect(out).toContain('inch edition');
    expect(out).toContain('metric edition');
  });

  test('of a file with errors ends with 2 and tells them all, beside what could be folded', () => {
    const { code, report } = json(['broken.md', 'slip.md', 'syntax.md', 'bad-kind.md']);
    expect(code).toBe(2);
    expect(report.files.map(({ file }) => file)).toEqual(['slip.md']);
    expect(report.problems.map(({ file, line, code: what }) => `${file}:${line} ${what}`)).toEqual([
      expect.stringMatching(/^bad-kind\.md:4 /),
      'broken.md:6 fold-unknown',
      'broken.md:7 size-unknown',
      'broken.md:8 value-shape',
      'syntax.md:6 bracket-not-closed',
    ]);
    expect(report.counts).toMatchObject({ errors: 5, fail: 1 });
  });

  test('of a file that is not there ends with 2 and names one that is', () => {
    const { code, out } = dryfit(['side-fold.md']);
    expect(code).toBe(2);
    expect(out).toContain('There is no such file. Did you mean content/folds/side-fold.md?');
    expect(dryfit(['.']).code).toBe(2);
  });

  test('of a post without a card says so', () => {
    const { code, out } = dryfit(['no-card.md']);
    expect(code).toBe(0);
    expect(out).toContain('no card in this post');
  });

  test('has no colour codes when piped', () => {
    expect(dryfit(['slip.md', 'broken.md']).out).not.toContain('\u001b');
  });

  test('writes its report into a file, for programs when the name says so', () => {
    const { code, out } = dryfit(['slip.md', '--out', 'report.json']);
    expect(code).toBe(1);
    expect(out).toMatch(/^1 file folded: 1 fail, .* The report is in report\.json\.\n$/);
    const report = dryFitReportSchema.parse(JSON.parse(readFileSync(join(folder, 'report.json'), 'utf8')));
    expect(report).toEqual(json(['slip.md']).report);
    dryfit(['slip.md', '--out=report.txt']);
    expect(readFileSync(join(folder, 'report.txt'), 'utf8')).toBe(dryfit(['slip.md']).out);
    dryfit(['slip.md', '--json', '--out', 'other']);
    expect(JSON.parse(readFileSync(join(folder, 'other'), 'utf8'))).toEqual(report);
  });

  test('ends with 2 when the report cannot be written', () => {
    const { code, err } = dryfit(['Good Card.md', '--out', join('nowhere', 'report.json')]);
    expect(code).toBe(2);
    expect(err).toContain('ENOENT');
    expect(existsSync(join(folder, 'nowhere'))).toBe(false);
  });

  test.each([
    [['--jsno'], 'There is no option --jsno. Did you mean --json?'],
    [['-x'], 'There is no option -x.'],
    [['--out'], '--out needs the name of a file after it.'],
    [['--json=1'], '--json takes no value.'],
  ])('refuses %j', (args, words) => {
    const { code, out, err } = dryfit(args);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toContain(words);
  });

  test('explains itself', () => {
    const { code, out } = dryfit(['--help']);
    expect(code).toBe(0);
    for (const word of ['--json', '--out', 'FILE', '0', '1', '2']) expect(out).toContain(word);
  });

  test('counts file names from where npm was started', () => {
    const run = spawnSync(process.execPath, [COMMAND, 'kind.md'], {
      cwd: PROJECT,
      encoding: 'utf8',
      env: { ...process.env, INIT_CWD: folder },
    });
    expect(run.status).toBe(0);
    expect(run.stdout).toContain('Own kind');
  });
});
