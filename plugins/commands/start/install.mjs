// @ts-check
import { rmSync } from 'node:fs';
import { basename, join } from 'node:path';
import { takeLock } from '../../astro/process-lock.mjs';
import { compareInstalled } from './installed.mjs';
import { runChild } from './run-child.mjs';

/**
 * Installs the locked packages when they are not all there. Two at once: the second waits and finds the work done.
 *
 * @param {string} root the project folder
 * @param {(line: string) => void} say
 * @returns {Promise<boolean>} false when it failed; what is wrong has been said
 */
export async function ensureInstalled(root, say) {
  if (compareInstalled(root).state === 'ready') return true;
  const lock = await takeLock(join(root, '.cache', 'install'), (pid) => {
    say(`Process ${pid} is installing packages; waiting for it.`);
  });
  try {
    const before = compareInstalled(root);
    if (before.state === 'ready') return true;
    if (before.state === 'contradiction') {
      say(`Cannot install: ${before.because}. Run \`npm install\`, which brings them together.`);
      return false;
    }
    say(`Installing the locked packages (${before.because}) ...`);
    // Whatever happens from here, only an install that ran to its end counts as one.
    rmSync(join(root, 'node_modules', '.package-lock.json'), { force: true });
    const [program, ...first] = npmProgram();
    const { code, signal } = await runChild(
      program,
      // Kinds are named because a setting or NODE_ENV of the host may leave them out.
      [...first, 'ci', '--include=dev', '--include=optional', '--no-audit', '--no-fund'],
      { cwd: root, stdio: ['ignore', 'inherit', 'inherit'], shell: process.platform === 'win32' && first.length === 0 },
      (pid) => lock.alsoFor(pid),
    );
    if (code !== 0) {
      say(`npm ci ended with ${signal ?? `exit code ${code}`}; nothing was run. Run the command again to retry.`);
      return false;
    }
    const after = compareInstalled(root);
    if (after.state === 'ready') return true;
    say(`npm ci said it was done, but ${after.because}. Delete the folder node_modules and run the command again.`);
    return false;
  } finally {
    lock.release();
  }
}

/** The npm that runs us, by the host's Node; another package manager's program is not taken for it. */
function npmProgram() {
  const script = process.env.npm_execpath ?? '';
  if (/^npm(-cli)?\.c?js$/.test(basename(script))) return [process.execPath, script];
  return [process.platform === 'win32' ? 'npm.cmd' : 'npm'];
}
