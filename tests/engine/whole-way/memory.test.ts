import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const CHILD = fileURLToPath(new URL('go-through-worst.ts', import.meta.url));
const MOST_MB = 1024;

/** For the runner alone, in case it never ends. */
const PATIENCE_MS = 1_800_000;

it('far too much never takes a gigabyte', { timeout: PATIENCE_MS }, () => {
  const run = spawnSync(process.execPath, [`--max-old-space-size=${MOST_MB}`, CHILD], { encoding: 'utf8' });
  expect(run.stderr).toBe('');
  expect(Number(run.stdout)).toBeGreaterThan(0);
  expect(Number(run.stdout)).toBeLessThan(MOST_MB);
});
