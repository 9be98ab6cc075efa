// @ts-check
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Compares what is installed with what is locked.
 *
 * npm writes `node_modules/.package-lock.json` as the last act of an install, so its absence tells of one that never
 * ended. Contents are compared, not dates: a fresh checkout changes the dates and nothing else.
 *
 * @param {string} root the project folder
 * @returns {{ state: 'ready' } | { state: 'missing', because: string } | { state: 'contradiction', because: string }}
 *   `missing`: `npm ci` cures it; `contradiction`: package.json and its lockfile say different things
 */
export function compareInstalled(root) {
  const wanted = readJson(join(root, 'package.json'));
  const locked = readJson(join(root, 'package-lock.json'));
  if (!wanted || !locked)
    return { state: 'contradiction', because: 'package.json or package-lock.json cannot be read' };
  const change = firstDifference(namedIn(wanted), namedIn(locked.packages['']));
  if (change) return { state: 'contradiction', because: `package.json and package-lock.json differ in ${change}` };
  const installed = readJson(join(root, 'node_modules', '.package-lock.json'));
  if (!installed) return { state: 'missing', because: 'the packages are not installed' };
  for (const [path, entry] of Object.entries(locked.packages)) {
    if (path === '') continue;
    const found = installed.packages[path];
    if (!found && entry.optional) continue; // for another system
    if (found?.version !== entry.version || found?.integrity !== entry.integrity) {
      return { state: 'missing', because: `${path} is not the locked version` };
    }
    if (!existsSync(join(root, path, 'package.json'))) return { state: 'missing', because: `${path} is gone` };
  }
  const stray = Object.keys(installed.packages).find((path) => !(path in locked.packages));
  if (stray) return { state: 'missing', because: `${stray} is no longer wanted` };
  return { state: 'ready' };
}

/** All packages asked for, by name. npm may list an optional one among the others too; they are one list here. */
function namedIn(/** @type {Record<string, Record<string, string>>} */ manifest) {
  return { ...manifest.dependencies, ...manifest.devDependencies, ...manifest.optionalDependencies };
}

/** @param {Record<string, string>} a @param {Record<string, string>} b */
function firstDifference(a, b) {
  return [...Object.keys(a), ...Object.keys(b)].find((name) => a[name] !== b[name]);
}

/** @param {string} file */
function readJson(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return undefined;
  }
}
