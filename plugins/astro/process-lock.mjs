// @ts-check
// Plain JavaScript, because the start script needs it before a Node that reads TypeScript is installed.
import { execFileSync } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { linkSync, mkdirSync, readdirSync, readFileSync, renameSync, rmdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as delay } from 'node:timers/promises';

const POLL_MS = 100;

/**
 * A lock between processes that a killed process does not leave shut.
 *
 * The folder holds one file, `owner`, with a line for each process that the lock is held for: its number and when it
 * started, so that a later process with the same number is not taken for it. A lock none of whose processes lives is
 * void. Every file is complete the moment it has its name: it is written under another name and linked.
 *
 * A void lock is removed under a second lock, `clearing`, so that no one removes the fresh lock of a quicker process.
 * All work under `clearing` is a few synchronous calls.
 *
 * @param {string} folder made when missing, removed on release when empty
 * @param {(owner: number) => void} [whenBusy] told once, with the process that holds the lock, before waiting for it
 * @returns {Promise<{ release(): void, alsoFor(pid: number): void }>}
 *   `alsoFor`: the lock is held as long as that process lives too, even when this one is killed
 */
export async function takeLock(folder, whenBusy = () => {}) {
  const ownerFile = join(folder, 'owner');
  let told = false;
  for (;;) {
    const claim = join(folder, `claim-${process.pid}-${randomUUID()}`);
    const taken = tryToTake(folder, claim);
    if (taken) {
      sweepClaims(folder);
      return {
        release() {
          rmSync(ownerFile, { force: true });
          removeIfEmpty(folder);
        },
        alsoFor(pid) {
          writeFileSync(claim, `${describeProcess(process.pid)}\n${describeProcess(pid)}`);
          renameSync(claim, ownerFile);
        },
      };
    }
    const owner = Number.parseInt(read(ownerFile), 10);
    if (!told && Number.isInteger(owner)) {
      told = true;
      whenBusy(owner);
    }
    await delay(POLL_MS);
  }
}

/** @param {string} folder @param {string} claim */
function tryToTake(folder, claim) {
  mkdirSync(folder, { recursive: true });
  try {
    writeFileSync(claim, describeProcess(process.pid));
  } catch (error) {
    if (codeOf(error) === 'ENOENT') return false; // the folder went with its last owner
    throw error;
  }
  try {
    if (linked(claim, join(folder, 'owner'))) return true;
    if (isHeld(join(folder, 'owner'))) return false;
    clearVoidLock(folder, claim);
    return linked(claim, join(folder, 'owner'));
  } finally {
    rmSync(claim, { force: true });
  }
}

/** @param {string} folder @param {string} claim */
function clearVoidLock(folder, claim) {
  const clearing = join(folder, 'clearing');
  if (!linked(claim, clearing)) {
    if (!isHeld(clearing)) rmSync(clearing, { force: true });
    return;
  }
  if (!isHeld(join(folder, 'owner'))) rmSync(join(folder, 'owner'), { force: true });
  rmSync(clearing, { force: true });
}

/** Claims of processes that were killed while they asked. @param {string} folder */
function sweepClaims(folder) {
  for (const name of readdirSync(folder)) {
    if (name.startsWith('claim-') && !isHeld(join(folder, name))) rmSync(join(folder, name), { force: true });
  }
}

/** @param {string} from @param {string} to */
function linked(from, to) {
  try {
    linkSync(from, to);
    return true;
  } catch (error) {
    if (codeOf(error) === 'EEXIST' || codeOf(error) === 'ENOENT') return false;
    throw error;
  }
}

/** Whether any process named in the file lives. @param {string} file */
function isHeld(file) {
  return read(file)
    .split('\n')
    .some((line) => line !== '' && describeProcess(Number.parseInt(line, 10)) === line);
}

/**
 * A process as `number start`, or an empty text when there is none (a dead one that nobody has collected counts as
 * none). Where the start cannot be told, the number alone.
 *
 * @param {number} pid
 */
export function describeProcess(pid) {
  if (process.platform === 'linux') {
    const stat = read(`/proc/${pid}/stat`);
    // The name in brackets may hold anything, so fields are counted after it: state is the 1st, start the 20th (proc(5)).
    const fields = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
    if (stat === '' || fields[0] === 'Z' || fields[0] === 'X') return '';
    return `${pid} ${read('/proc/sys/kernel/random/boot_id').trim()}:${fields[19]}`;
  }
  try {
    process.kill(pid, 0);
  } catch (error) {
    if (codeOf(error) === 'ESRCH') return '';
  }
  if (process.platform === 'win32') return `${pid}`;
  try {
    return `${pid} ${execFileSync('ps', ['-o', 'lstart=', '-p', `${pid}`], { encoding: 'utf8' }).trim()}`;
  } catch {
    return '';
  }
}

/** @param {string} folder */
function removeIfEmpty(folder) {
  try {
    rmdirSync(folder);
  } catch {
    // Someone else is asking for the lock; the folder goes with them.
  }
}

/** The text of a file, empty when there is none. @param {string} file */
function read(file) {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return '';
  }
}

/** @param {unknown} error */
function codeOf(error) {
  return error instanceof Error && 'code' in error ? error.code : undefined;
}
