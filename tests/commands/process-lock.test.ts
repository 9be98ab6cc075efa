import { spawn } from 'node:child_process';
import { once } from 'node:events';
import {
  appendFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { describeProcess, takeLock } from '../../plugins/astro/process-lock.mjs';

const base = mkdtempSync(join(tmpdir(), 'process-lock-'));
afterAll(() => rmSync(base, { recursive: true }));

const MODULE = JSON.stringify(join(import.meta.dirname, '../../plugins/astro/process-lock.mjs'));

function runScript(body: string) {
  const child = spawn(process.execPath, ['--input-type=module', '-e', `import { takeLock } from ${MODULE};\n${body}`], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  return { child, ended: once(child, 'exit') };
}

/** A lock that a killed process left behind. */
async function leaveVoidLock(folder: string): Promise<void> {
  const { ended } = runScript(`await takeLock(${JSON.stringify(folder)}); process.kill(process.pid, 'SIGKILL');`);
  await ended;
}

test('a released lock leaves no trace', async () => {
  const folder = join(base, 'plain');
  const lock = await takeLock(folder);
  expect(readdirSync(folder)).toEqual(['owner']);
  lock.release();
  expect(existsSync(folder)).toBe(false);
});

test('the second waits for the first, and is told who holds it', async () => {
  const folder = join(base, 'waiting');
  const order: string[] = [];
  const first = await takeLock(folder);
  const second = takeLock(folder, (pid) => order.push(`busy ${pid}`)).then((lock) => {
    order.push('second');
    lock.release();
  });
  await new Promise((resolve) => setTimeout(resolve, 250));
  order.push('first done');
  first.release();
  await second;
  expect(order).toEqual([`busy ${process.pid}`, 'first done', 'second']);
});

test('a lock of a killed process is void', async () => {
  const folder = join(base, 'killed');
  await leaveVoidLock(folder);
  expect(readdirSync(folder)).toEqual(['owner']);
  (await takeLock(folder)).release();
  expect(existsSync(folder)).toBe(false);
});

test('a lock stays held while the process that it is also for lives', async () => {
  const folder = join(base, 'also-for');
  const other = spawn(process.execPath, ['-e', 'setTimeout(() => {}, 60000)']);
  const { ended } = runScript(
    `const lock = await takeLock(${JSON.stringify(folder)}); lock.alsoFor(${other.pid}); process.kill(process.pid, 'SIGKILL');`,
  );
  await ended;
  let taken = false;
  const waiting = takeLock(folder).then((lock) => {
    taken = true;
    lock.release();
  });
  await new Promise((resolve) => setTimeout(resolve, 350));
  expect(taken).toBe(false);
  other.kill('SIGKILL');
  await waiting;
  expect(taken).toBe(true);
});

test('another process with the number of the dead owner is not taken for it', async () => {
  const folder = join(base, 'same-number');
  const mine = describeProcess(process.pid);
  const [number = '', start = ''] = mine.split(' ');
  expect(start).not.toBe('');
  mkdirSync(folder);
  writeFileSync(join(folder, 'owner'), `${number} ${start}9`); // our number, another start
  (await takeLock(folder)).release();
  expect(existsSync(folder)).toBe(false);
});

test('files of processes killed while taking or clearing a lock do not shut it', async () => {
  const folder = join(base, 'debris');
  await leaveVoidLock(folder);
  const dead = readFileSync(join(folder, 'owner'), 'utf8');
  writeFileSync(join(folder, 'claim-1-left'), dead);
  writeFileSync(join(folder, 'clearing'), dead);
  const lock = await takeLock(folder);
  expect(readdirSync(folder)).toEqual(['owner']);
  lock.release();
});

test('of many processes at a void lock, one at a time gets in', async () => {
  const folder = join(base, 'crowd');
  const log = join(base, 'crowd.log');
  await leaveVoidLock(folder);
  appendFileSync(log, '');
  const body = `import { appendFileSync } from 'node:fs';
    for (let round = 0; round < 5; round++) {
      const lock = await takeLock(${JSON.stringify(folder)});
      appendFileSync(${JSON.stringify(log)}, 'in\\n');
      await new Promise((resolve) => setTimeout(resolve, 5));
      appendFileSync(${JSON.stringify(log)}, 'out\\n');
      lock.release();
    }`;
  await Promise.all(Array.from({ length: 6 }, () => runScript(body).ended));
  expect(readFileSync(log, 'utf8')).toBe('in\nout\n'.repeat(30));
});

test('a dead process has no description', async () => {
  const child = spawn(process.execPath, ['-e', '']);
  await once(child, 'exit');
  expect(describeProcess(child.pid ?? 0)).toBe('');
});
