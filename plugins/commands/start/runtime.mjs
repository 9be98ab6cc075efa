// @ts-check
import { existsSync } from 'node:fs';
import { join } from 'node:path';

/** The oldest Node that starts us at all: what npm 10 and 11 ask for. */
export const OLDEST_HOST_MAJOR = 20;

/**
 * The Node that runs the commands: the packaged one where there is one, else the host's own if it reads TypeScript.
 *
 * @param {{ root: string, platform: string, arch: string, version: string, execPath: string }} host `version` as 20.19.1
 * @returns {{ node: string, packaged: boolean } | { needed: string }} full path, or what the host must bring
 */
export function findRuntime({ root, platform, arch, version, execPath }) {
  const system = platform === 'win32' ? 'win' : platform;
  const program = platform === 'win32' ? 'node.exe' : 'node';
  const packaged = join(root, 'node_modules', `node-${system}-${arch}`, 'bin', program);
  if (existsSync(packaged)) return { node: packaged, packaged: true };
  if (readsTypeScript(version)) return { node: execPath, packaged: false };
  return {
    needed:
      `No Node comes with the packages for ${platform} ${arch}, so your own must be 22.18 or newer ` +
      `(on the 23 line, 23.6 or newer). This one is ${version}: ${execPath}`,
  };
}

/** From 22.18 and 23.6 on, Node strips types without being asked (nodejs.org, "Type stripping"). @param {string} version */
export function readsTypeScript(version) {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  if (major === 22) return minor >= 18;
  if (major === 23) return minor >= 6;
  return major > 23;
}
