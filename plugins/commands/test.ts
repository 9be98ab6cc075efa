/**
 * `npm test [-- FILTER...]`: everything that is proven about the project, or only the test files whose path holds a
 * filter. Builds the site apart from `dist` and drives a real browser. The last line is `N passed, N failed`.
 */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { repair } from '../astro/safe-build.ts';
import { DIST, PROJECT, sayBusy } from './support/project.ts';
import { formatTally, type TestReport, tally } from './support/tally.ts';

const report = join(PROJECT, '.cache', `test-report-${process.pid}.json`);
mkdirSync(dirname(report), { recursive: true });

await repair(DIST, sayBusy);

const vitest = join(PROJECT, 'node_modules', 'vitest', 'vitest.mjs');
const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
const run = spawn(process.execPath, [vitest, 'run', ...reporters, ...process.argv.slice(2)], {
  cwd: PROJECT,
  stdio: 'inherit',
});
const [code] = await once(run, 'exit');

const result = tally(readReport(), code === 0);
rmSync(report, { force: true });
console.log(`\n${formatTally(result)}`);
process.exitCode = result.failed === 0 ? 0 : 1;

function readReport(): TestReport | undefined {
  try {
    return JSON.parse(readFileSync(report, 'utf8')) as TestReport;
  } catch {
    return undefined;
  }
}
