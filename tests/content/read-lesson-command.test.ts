import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

const COMMAND = fileURLToPath(new URL('../../plugins/commands/dryfit.ts', import.meta.url));

// Common practice, no source; the sentences are made up.
const EASEL = `You need one sheet and a bit of patience.
Cut a base 11 x 4 1/4 in and score it at 2 3/4 (mountain) and 5 1/2 (valley).
Round the corners.
`;

let folder = '';

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'lesson-'));
  writeFileSync(join(folder, 'easel.txt'), EASEL);
});
afterAll(() => rmSync(folder, { recursive: true }));

function dryfit(args: readonly string[], input = ''): { code: number | null; out: string; err: string } {
  const { INIT_CWD: _, FORCE_COLOR: __, ...env } = process.env;
  const run = spawnSync(process.execPath, [COMMAND, ...args], { cwd: folder, encoding: 'utf8', env, input });
  return { code: run.status, out: run.stdout, err: run.stderr };
}

/** The recipe alone: what stands before the first empty line. */
function recipeIn(out: string): string {
  return out.slice(0, out.indexOf('\n\n') + 1);
}

// Each test starts the command anew, which is slow on a busy machine.
describe('dryfit --read', { timeout: 180_000 }, () => {
  test('prints a recipe, its dry fit and what is not in it, from a file', () => {
    const { code, out, err } = dryfit(['--read', 'easel.txt']);
    expect(err).toBe('');
    expect(recipeIn(out)).toBe('recipe:\n  - cut: 11 x 4 1/4 in\n    score: 2 3/4 mountain, 5 1/2\n');
    expect(out).toContain('easel.txt:2:42  2 3/4\n      The lesson does not say which side is scored');
    expect(out).toContain('Dry fit\n  The recipe, inch edition\n');
    expect(out).not.toContain('metric edition');
    expect(out).toMatch(/Not in the recipe:\n {2}easel\.txt:1:1 {2}You need one sheet and a bit of patience\n/);
    expect(out).toContain('  easel.txt:3:1  Round the corners\n');
    expect(out.indexOf('Dry fit')).toBeLessThan(out.indexOf('Not in the recipe'));
    expect(code).toBe(0);
  });

  test('reads what is pasted', () => {
    const { code, out } = dryfit(['--read'], 'Cut 21 x 14.8 cm.\nScore at 10.5 cm.');
    expect(recipeIn(out)).toBe('recipe:\n  - cut: 21 x 14.8 cm\n    score: 10.5\n');
    expect(out).toContain('The recipe, metric edition');
    expect(out).toContain('lesson:2:10  10.5 cm');
    expect(code).toBe(0);
  });

  test('prints what a post takes as it is', () => {
    const { out } = dryfit(['--read', 'easel.txt']);
    const head = 'title: Easel\nsummary: A card.\ndate: 2026-10-03\nunits: mm\n';
    writeFileSync(join(folder, 'post.md'), `---\n${head}${recipeIn(out)}---\n`);
    const fit = dryfit(['post.md']);
    expect(fit.out).toContain('score at 2 3/4 in and 5 1/2 in');
    expect(fit.out).not.toContain('to correct');
    expect(fit.code).toBe(0);
  });

  test('ends with 1 when the recipe does not work, and points into it', () => {
    // A slip seen in print: scores along a side that is shorter than they are.
    const { code, out } = dryfit(['--read'], 'Cut 5 1/4 x 11 in. Score the 5 1/4 side at 2 and 6 1/4.');
    expect(out).toContain('FAILS');
    expect(out).toMatch(/recipe:4:\d+ {2}recipe\[0\]\.score/);
    expect(code).toBe(1);
  });

  test('ends with 1 when the size that it promises is another', () => {
    const { code, out } = dryfit(
      ['--read'],
      'Cut 8 1/2 x 5 1/2 in, score at 4 1/4. The finished card is 5 x 5 1/2 in.',
    );
    expect(out).toContain('finished: 5 x 5 1/2 in');
    expect(code).toBe(1);
  });

  test('ends with 2 when nothing can be read, and asks about broken numbers', () => {
    const { code, out } = dryfit(['--read'], 'Score it somewhere.\nCut 53/4 x 11.');
    expect(out).toContain('No recipe could be read in lesson');
    expect(out).toContain('lesson:2:1  Cut 53/4 x 11\n      Did you mean `5 3/4`?');
    expect(code).toBe(2);
    expect(dryfit(['--read'], '').code).toBe(2);
  });

  test('reads several files; the worst answer counts', () => {
    const { code, out } = dryfit(['--read', 'easel.txt', 'nowhere.txt']);
    expect(out).toContain('recipe:\n');
    expect(out).toContain('nowhere.txt');
    expect(out).toContain('It takes   the prose of a lesson');
    expect(code).toBe(2);
  });

  test('takes no other form', () => {
    expect(dryfit(['--read', '--json'])).toMatchObject({ code: 2, out: '' });
    expect(dryfit(['--read', '--out', 'x'])).toMatchObject({ code: 2, out: '' });
    expect(dryfit(['--help']).out).toContain('--read');
  });
});
