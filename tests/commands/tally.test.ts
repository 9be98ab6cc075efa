import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { PROJECT } from '../../plugins/commands/support/project.ts';
import { formatTally, type TestReport, tally } from '../../plugins/commands/support/tally.ts';

const folder = mkdtempSync(join(tmpdir(), 'tally-'));
symlinkSync(join(PROJECT, 'node_modules'), join(folder, 'node_modules'));
afterAll(() => rmSync(folder, { recursive: true }));

/** Runs real vitest over test files and counts its report. */
function runReal(files: Record<string, string>) {
  const at = mkdtempSync(join(folder, 'run-'));
  for (const [name, body] of Object.entries(files)) {
    writeFileSync(join(at, name), `import { test, expect } from 'vitest';\n${body}`);
  }
  const report = join(at, 'report.json');
  const run = spawnSync(
    process.execPath,
    [join(PROJECT, 'node_modules/vitest/vitest.mjs'), 'run', '--root', at, '--reporter=json', `--outputFile=${report}`],
    { encoding: 'utf8' },
  );
  return tally(JSON.parse(readFileSync(report, 'utf8')) as TestReport, run.status === 0);
}

describe('counts from real runs', () => {
  test('all pass', () => {
    expect(runReal({ 'a.test.ts': `test('one', () => {}); test('two', () => {});` })).toEqual({ passed: 2, failed: 0 });
  });
  test('one fails', () => {
    const body = `test('one', () => {}); test('two', () => expect(1).toBe(2));`;
    expect(runReal({ 'a.test.ts': body })).toEqual({ passed: 1, failed: 1 });
  });
  test('a file that does not load counts as one that failed', () => {
    const files = { 'a.test.ts': `test('one', () => {});`, 'b.test.ts': `import './absent.ts';` };
    expect(runReal(files)).toEqual({ passed: 1, failed: 1 });
  });
  test('a test passed over is not one that passed', () => {
    const passedOver = ['sk', 'ip'].join('');
    const body = `test('one', () => {}); test.${passedOver}('two', () => {});`;
    expect(runReal({ 'a.test.ts': body })).toEqual({ passed: 1, failed: 1 });
  });
  test('an error outside of any test fails the run', () => {
    const body = `test('one', () => {}); setTimeout(() => { throw new Error('late'); }, 0); test('two', () => new Promise((r) => setTimeout(r, 50)));`;
    expect(runReal({ 'a.test.ts': body })).toEqual({ passed: 2, failed: 1 });
  });
});

test('no report, or nothing run, is a failure', () => {
  expect(tally(undefined, false)).toEqual({ passed: 0, failed: 1 });
  expect(tally(undefined, true)).toEqual({ passed: 0, failed: 1 });
  expect(tally({ testResults: [] }, true)).toEqual({ passed: 0, failed: 1 });
});

test('the line is the agreed one', () => {
  expect(formatTally({ passed: 12, failed: 0 })).toMatch(/^\d+ passed, \d+ failed$/);
});
