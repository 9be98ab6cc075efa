import { spawnSync } from 'node:child_process';
import { chmodSync, cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { PROJECT } from '../../plugins/commands/support/project.ts';

/* The real script, with a stand-in for npm that prints and ends as npm does. */

const folder = mkdtempSync(join(tmpdir(), 'ci-run-'));
afterAll(() => rmSync(folder, { recursive: true }));

function runWith(npm: string): { lines: string[]; code: number | null } {
  const at = mkdtempSync(join(folder, 'case-'));
  mkdirSync(join(at, '.ci'));
  cpSync(join(PROJECT, '.ci/run'), join(at, '.ci/run'));
  writeFileSync(join(at, 'npm'), `#!/bin/sh\n${npm}\n`);
  chmodSync(join(at, 'npm'), 0o755);
  const { stdout, status } = spawnSync(join(at, '.ci/run'), {
    cwd: tmpdir(),
    encoding: 'utf8',
    env: { ...process.env, PATH: `${at}:${process.env.PATH}` },
  });
  return { lines: stdout.trimEnd().split('\n'), code: status };
}

test('ends with the tally, once, and with success', () => {
  const { lines, code } = runWith('echo "asked: $1"; echo; echo "12 passed, 0 failed"');
  expect(lines).toEqual(['asked: test', '', '12 passed, 0 failed']);
  expect(code).toBe(0);
});

test('keeps the code of a failure, and has the last word after npm', () => {
  const { lines, code } = runWith('echo "11 passed, 1 failed"; echo "npm error Lifecycle script failed" >&2; exit 1');
  expect(lines.at(-1)).toBe('11 passed, 1 failed');
  expect(code).toBe(1);
});

test('tests that could not start count as failed', () => {
  const { lines, code } = runWith('echo "npm ci ended with exit code 1"; exit 3');
  expect(lines.at(-1)).toBe('0 passed, 1 failed');
  expect(code).toBe(3);
});

test('a line that only looks like the tally is not one', () => {
  const { lines } = runWith('echo "Tests 5 passed, 0 failed (5)"; exit 1');
  expect(lines.at(-1)).toBe('0 passed, 1 failed');
});
