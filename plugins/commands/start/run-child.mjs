// @ts-check
import { spawn } from 'node:child_process';

/**
 * Runs a program to its end and hands signals on to it, so that stopping us stops it.
 *
 * @param {string | undefined} program full path, or a name on the PATH
 * @param {readonly string[]} args
 * @param {import('node:child_process').SpawnOptions} options
 * @param {(pid: number) => void} [started]
 * @returns {Promise<{ code: number | null, signal: NodeJS.Signals | null }>} rejected when it cannot be started
 */
export function runChild(program, args, options, started) {
  return new Promise((resolve, reject) => {
    const child = spawn(program ?? '', args, options);
    /** @param {NodeJS.Signals} signal */
    const handOn = (signal) => {
      // From a terminal, Ctrl-C reaches the whole group: handed on, it would count twice.
      if (signal !== 'SIGINT' || !process.stdin.isTTY) child.kill(signal);
    };
    /** @type {NodeJS.Signals[]} */
    const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'];
    for (const signal of signals) process.on(signal, handOn);
    const stopListening = () => {
      for (const signal of signals) process.off(signal, handOn);
    };
    child.on('spawn', () => child.pid !== undefined && started?.(child.pid));
    child.on('error', (error) => {
      stopListening();
      reject(error);
    });
    child.on('exit', (code, signal) => {
      stopListening();
      resolve({ code, signal });
    });
  });
}
